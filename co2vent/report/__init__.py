"""The job on paper."""

"""Files that survive: the recording, settings, jobs."""

"""Measured figures of the verdict and of speed."""

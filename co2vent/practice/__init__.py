"""Exercises and emulated gauges on the section model."""

"""Threads: a source feeding the core and the recorder."""

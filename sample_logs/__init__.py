"""Sample logs, all simulated."""

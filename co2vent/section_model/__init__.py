"""A physical model of a trapped section, its gauge and its operator."""

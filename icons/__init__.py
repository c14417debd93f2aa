"""Icons of the program (SVG)."""

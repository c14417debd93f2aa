"""From text to readings: the log format, foreign headers, units at the edge."""

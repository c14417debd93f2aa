"""co2vent: what is left in a CO2 (R-744) section being vented, how sure, what to do next."""

__version__ = "0.1.0"

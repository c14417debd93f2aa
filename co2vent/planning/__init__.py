"""Before the vent: volumes, charge, stop pressure, room, time."""

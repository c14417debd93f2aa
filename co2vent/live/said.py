"""What the person says and the source does not: the valve, and a note for the next reading."""

from co2vent.readings.reading import Reading


class Said:
    """Kept until a reading comes that it can be put into."""

    def __init__(self) -> None:
        """Nothing has been said."""
        self.vent_open: bool | None = None
        self.note: str | None = None

    def add_note(self, text: str) -> None:
        """Keep a note beside those that wait already."""
        self.note = f"{self.note}; {text}" if self.note else text

    def put_into(self, reading: Reading) -> Reading:
        """Return the reading with the person's valve where it has none, and the waiting note."""
        if self.note is None and (self.vent_open is None or reading.vent_open is not None):
            return reading
        note, self.note = self.note, None
        if note and reading.note:
            note = f"{reading.note}; {note}"
        return reading._replace(
            vent_open=self.vent_open if reading.vent_open is None else reading.vent_open,
            note=note or reading.note,
        )

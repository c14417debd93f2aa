"""Failures, told apart by what the person in front of them can do."""


class Co2ventError(Exception):
    """Base of all errors meant for a user: one sentence that says what to do."""

    @property
    def text(self) -> str:
        """The sentence as it was given; `str` of an error forgets how it was made."""
        return self.args[0] if self.args and isinstance(self.args[0], str) else str(self)


class RefusedInputError(Co2ventError):
    """A file, option or stream whose meaning is not certain; nothing was guessed."""


class OutOfRangeError(Co2ventError, ValueError):
    """A property was asked for outside the range in which it is valid."""


class SourceUnavailableError(Co2ventError):
    """A gauge or file could not be opened."""


class SourceLostError(Co2ventError):
    """A source that was open has stopped; trying again may help."""


class StoreError(Co2ventError):
    """A file could not be written whole; the old content, if any, is untouched."""

"""Bytes to lines, in any cutting: bounded, NUL tails dropped, encoding from the first bytes."""

import codecs
from typing import Final, NamedTuple

MAX_LINE_BYTES: Final = 8192  # a row is under 200 bytes, a note some hundred; more is not a line


class Line(NamedTuple):
    """One line of text: its number from 1 in the source. `text` is `None` where it was too long."""

    number: int
    text: str | None
    ended: bool = True  # False: the source stopped before the line end


class LineAssembler:
    """Cut a byte stream into lines at LF, CR or CRLF; memory is bounded by `MAX_LINE_BYTES`.

    UTF-8 (with or without byte order mark), UTF-16 with a mark or recognisable by its NULs, and
    Windows-1252 line by line where a line is not valid UTF-8.
    """

    def __init__(self) -> None:
        """Start at line 1 with nothing read."""
        self._head: bytes | None = b""  # first bytes until the encoding is known
        self._wide: codecs.IncrementalDecoder | None = None
        self._line = bytearray()
        self._too_long = False
        self._swallow_lf = False
        self.next_number = 1

    @property
    def between_lines(self) -> bool:
        """Whether all that was fed ended in a line end, in an encoding that extends ASCII."""
        pending = self._head is not None or self._line or self._too_long or self._swallow_lf
        return self._wide is None and not pending

    def feed(self, data: bytes) -> list[Line]:
        """Take the next bytes; return the lines that ended in them."""
        if self._head is not None:
            self._head += data
            if len(self._head) < 4:
                return []
            data = self._choose_encoding()
        if self._wide is not None:
            data = self._wide.decode(data).encode("utf-8", "replace")
        return self._split(data)

    def feed_text(self, text: str) -> list[Line]:
        """Take the next characters; return the lines that ended in them."""
        self._head = None
        return self._split(text.encode("utf-8", "replace"))

    def finish(self) -> list[Line]:
        """Return what is left at the end of the source as an unended line."""
        lines: list[Line] = []
        if self._head is not None:
            data = self._choose_encoding()
            if self._wide is not None:
                data = self._wide.decode(data).encode("utf-8", "replace")
            lines = self._split(data)
        if self._wide is not None:
            lines += self._split(self._wide.decode(b"", True).encode("utf-8", "replace"))
        if self._line or self._too_long:
            lines.append(self._end_line()._replace(ended=False))
        return lines

    def _choose_encoding(self) -> bytes:
        head, self._head = self._head or b"", None
        if head.startswith(codecs.BOM_UTF8):
            return head[3:]
        if head.startswith((codecs.BOM_UTF16_LE, codecs.BOM_UTF16_BE)):
            name = "utf-16-le" if head.startswith(codecs.BOM_UTF16_LE) else "utf-16-be"
            self._wide = codecs.getincrementaldecoder(name)("replace")
            return head[2:]
        if len(head) >= 4 and head[1] == head[3] == 0 and head[0] and head[2]:
            self._wide = codecs.getincrementaldecoder("utf-16-le")("replace")
        return head

    def _split(self, data: bytes) -> list[Line]:
        lines: list[Line] = []
        pieces = data.replace(b"\r", b"\n\r").split(b"\n")
        # A CR ends the line and leaves a mark, so that an LF right behind it, in this call or
        # in the next, does not count as a second line end.
        for i, piece in enumerate(pieces):
            if i > 0:
                if self._swallow_lf and not piece.startswith(b"\r"):
                    self._swallow_lf = False
                else:
                    lines.append(self._end_line())
            if piece.startswith(b"\r"):
                self._swallow_lf = True
                piece = piece[1:]
            if piece:
                self._swallow_lf = False
                self._append(piece)
        return lines

    def _append(self, piece: bytes) -> None:
        if self._too_long:
            return
        if not self._line:
            piece = piece.lstrip(b"\0")  # padding of a pre-allocated file is not data
        self._line += piece
        if len(self._line) > MAX_LINE_BYTES:
            self._line.clear()
            self._too_long = True

    def _end_line(self) -> Line:
        number = self.next_number
        self.next_number += 1
        raw, too_long = bytes(self._line), self._too_long
        self._line.clear()
        self._too_long = False
        return Line(number, None if too_long else _to_text(raw))


def _to_text(raw: bytes) -> str:
    raw = raw.rstrip(b"\0")
    try:
        text = raw.decode("utf-8")
    except UnicodeDecodeError:
        text = raw.decode("cp1252", "replace")
    return text.removeprefix("\ufeff")

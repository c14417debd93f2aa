"""Bytes to whole lines: torn, overlong and unreadable ones never reach the decoder as data.

No port and no clock here, so that every cut of a stream can be tested.
"""

from dataclasses import dataclass, field
from typing import Final

from co2vent.wire.source import NO_READING

# A row of the log is under 200 bytes; notes and metadata may be longer. (own choice)
LONGEST_LINE_BYTES: Final = 4096
# A wrong baud rate turns most characters into control or invalid bytes; a noisy cable a few.
# Share of the last bytes above which the whole stream is called unreadable. (own choice)
UNREADABLE_SHARE: Final = 0.2
UNREADABLE_WINDOW_BYTES: Final = 256
# Unbroken clean lines after which an unreadable stream is believed again. (own choice)
CLEAN_LINES_TO_TRUST: Final = 3

_TEXT: Final = bytes(range(0x20, 0x7F)) + b"\t\r\n" + bytes(range(0x80, 0x100))


@dataclass(slots=True)
class LineAssembler:
    """Collects bytes and gives out whole lines only; LF, CR LF and CR end a line.

    A line is withheld, and a line that no decoder takes for a reading given in its place, when it
    is overlong, or follows at once on an unreadable one: the chance clean line between two of
    garbage is how a wrong baud rate could become a number.
    """

    skip_first: bool = False  # the stream was joined midway: its first line may be a tail
    unreadable: bool = False
    _pending: bytearray = field(default_factory=bytearray)
    _overlong: bool = False
    _fresh: bool = True
    _clean_run: int = CLEAN_LINES_TO_TRUST
    _recent: bytearray = field(default_factory=bytearray)
    _ended_in_cr: bool = False
    _doubtful_header: bytes | None = None

    def feed(self, data: bytes) -> bytes:
        """Return the lines that `data` completed, each ending in LF whatever it ended in."""
        self._judge(data)
        if self._ended_in_cr and data.startswith(b"\n"):
            data = data[1:]
        self._ended_in_cr = data.endswith(b"\r") if data else self._ended_in_cr
        data = data.replace(b"\r\n", b"\n").replace(b"\r", b"\n")
        out = bytearray()
        parts = data.split(b"\n")
        for part in parts[:-1]:
            self._pending += part
            out += self._complete()
        self._pending += parts[-1]
        if len(self._pending) > LONGEST_LINE_BYTES:
            self._overlong = True
            self._pending.clear()
        return bytes(out)

    def cut(self) -> None:
        """Forget the line in progress: the connection broke, its end will never come."""
        self._pending.clear()
        self._recent.clear()
        self._overlong = False
        self._ended_in_cr = False
        self._doubtful_header = None
        self.unreadable = False
        self._fresh = True
        self._clean_run = CLEAN_LINES_TO_TRUST

    def rest(self) -> bytes:
        """Return the last line of a stream that has ended whole, without a newline after it."""
        return self._complete() if self._pending else b""

    def _complete(self) -> bytes:
        """Return the pending line as the decoder may see it, and start the next."""
        line = bytes(self._pending)
        overlong = self._overlong or len(line) > LONGEST_LINE_BYTES
        self._pending.clear()
        self._overlong = False
        may_be_tail = self._fresh and self.skip_first and not _begins_a_stream(line)
        self._fresh = False
        if may_be_tail:
            self._doubtful_header = line if line[:1].isalpha() and is_text(line) else None
            return b""
        header = self._settle_header(line)
        clean = not overlong and is_text(line)
        before = self._clean_run
        self._clean_run = self._clean_run + 1 if clean else 0
        if self.unreadable and self._clean_run >= CLEAN_LINES_TO_TRUST:
            self.unreadable = False
            self._recent.clear()
        if overlong:
            return f"{NO_READING}: line longer than {LONGEST_LINE_BYTES} bytes\n".encode()
        if not clean:
            return f"{NO_READING}: unreadable bytes\n".encode()
        if before == 0 or self.unreadable:
            return f"{NO_READING}: line among unreadable ones\n".encode()
        return header + line + b"\n"

    def _settle_header(self, line: bytes) -> bytes:
        """Return the header that came first, if the row after it shows that it was whole."""
        header = self._doubtful_header
        if header is None or line.startswith(b"#"):
            return b""
        self._doubtful_header = None
        whole = all(header.count(mark) == line.count(mark) for mark in (b",", b";", b"\t"))
        return header + b"\n" if whole else b""

    def _judge(self, data: bytes) -> None:
        self._recent += data
        del self._recent[:-UNREADABLE_WINDOW_BYTES]
        if len(self._recent) < UNREADABLE_WINDOW_BYTES // 4:
            return
        if _bad_share(bytes(self._recent)) > UNREADABLE_SHARE:
            self.unreadable = True


def is_text(line: bytes) -> bool:
    """Return whether `line` is text: no control characters but tab and CR, valid UTF-8.

    A lone degree sign of an 8-bit code page (0xB0) is let through: loggers write it in headers.
    """
    if line.translate(None, _TEXT):
        return False
    try:
        line.replace(b"\xb0", b"").decode("utf-8")
    except UnicodeDecodeError:
        try:
            line.decode("utf-8")
        except UnicodeDecodeError:
            return False
    return True


def _begins_a_stream(line: bytes) -> bool:
    """Return whether `line` is whole for certain: metadata, or a header after a byte order mark."""
    return line.startswith((b"#", b"\xef\xbb\xbf", b"elapsed_s,", b"time,"))


def _bad_share(data: bytes) -> float:
    """Return the share of bytes that are no text; invalid UTF-8 counts as one each."""
    controls = len(data.translate(None, _TEXT))
    invalid = data.decode("utf-8", "replace").count("\ufffd")
    return (controls + invalid) / len(data)

"""A CSV that another program is writing: followed from its first row, as it grows."""

import os
import time
from pathlib import Path
from typing import BinaryIO, Final

from co2vent.sentence import Sentence
from co2vent.wire.source import ReadOnlySource, lost, unavailable, words_of

POLL_S: Final = 0.1  # how often a file that has not grown is looked at
_CHUNK_BYTES: Final = 65536


class GrowingFileSource(ReadOnlySource):
    """Follows a file. A shorter or another file under the name is read from its beginning."""

    stamped_on_arrival = False  # rows may be older than the reading of them

    def __init__(self, path: Path) -> None:
        """Name the file; nothing is opened yet."""
        self.label = str(path)
        self._path = path
        self._file: BinaryIO | None = None

    def open(self) -> None:
        """Open the file at its beginning."""
        try:
            if self._path.is_dir():
                raise IsADirectoryError(21, "is a folder, not a log")
            self._file = self._path.open("rb", buffering=0)
        except OSError as error:
            advice = "give the log that the other program writes"
            raise unavailable(self.label, error, advice) from error

    def read(self, timeout_s: float) -> bytes:
        """Return what was added; raises `SourceLostError` where the file was replaced or cut."""
        give_up_at = time.monotonic() + timeout_s
        while True:
            data = self._read_chunk()
            if data:
                return data
            gone = self._gone()
            if gone:
                # what was written between the last read and the change of files
                data = self._read_chunk()
                if data:
                    return data
                raise lost(self.label, gone)
            left_s = give_up_at - time.monotonic()
            if left_s <= 0.0:
                return b""
            time.sleep(min(POLL_S, left_s))

    def close(self) -> None:
        """Close the file."""
        if self._file is not None:
            self._file.close()
            self._file = None

    def _read_chunk(self) -> bytes:
        if self._file is None:
            raise lost(self.label, Sentence("not open"))
        try:
            return self._file.read(_CHUNK_BYTES) or b""
        except OSError as error:
            raise lost(self.label, error) from error

    def _gone(self) -> str:
        """Return why the file is not the one under the name any more; empty while it is."""
        if self._file is None:
            return ""
        try:
            now = os.stat(self._path)  # noqa: PTH116 - both calls return the same type
            mine = os.fstat(self._file.fileno())
        except OSError as error:
            return words_of(error)
        if (now.st_dev, now.st_ino) != (mine.st_dev, mine.st_ino):
            return Sentence("replaced by another file")
        cut = Sentence("cut short by another program")
        return cut if mine.st_size < self._file.tell() else ""

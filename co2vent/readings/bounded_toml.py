"""TOML from a person's file, bounded in time: the standard reader alone is not."""

import re
import tomllib
from typing import Any, Final

# A key of n parts costs the reader n squared: 30,000 parts, 60 kB, took it 26 s. No file here has
# more than three; the limit is high because it also counts the full stops of a text.
MOST_DOTS: Final = 100
_BETWEEN: Final = re.compile(r"[=,\[\]{}\n]")


def read_toml(text: str) -> dict[str, Any]:
    """Return the tables of `text`, whose size the caller has bounded.

    Raises:
        ValueError: not TOML, or nested too deep; the message says where.
    """
    text = text.replace("\r\n", "\n")
    if any(piece.count(".") > MOST_DOTS for piece in _BETWEEN.split(text)):
        raise ValueError(f"more than {MOST_DOTS} dots in a row of names")
    try:
        return tomllib.loads(text)
    except RecursionError:
        raise ValueError("brackets nested too deep") from None

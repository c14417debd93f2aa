"""Compiling the benchmark's section models with numba."""

from collections.abc import Callable
from hashlib import sha256
from pathlib import Path
from typing import Any, Final, TypeVar, cast

from numba import njit

F = TypeVar("F", bound=Callable[..., Any])


def _digest() -> str:
    """Return a digest of all source that the compiled functions are made of."""
    here = Path(__file__).parent
    models = (*here.glob("other_*.py"), *here.glob("plain_*.py"))
    files = [*sorted(models), *sorted((here.parent / "co2").glob("*.py"))]
    return sha256(b"".join(file.read_bytes() for file in files)).hexdigest()[:12]


_SOURCE: Final = _digest()


def fast(function: F) -> F:
    """Compile with numba, kept on disk where a folder can hold it.

    numba's cache would not notice a change in a function called from another file, and a benchmark
    on yesterday's physics is worse than a slow start: the name carries a digest of the source.
    """
    function.__qualname__ = f"{function.__name__}_{_SOURCE}"
    try:
        return cast(F, njit(cache=True, nogil=True, error_model="numpy")(function))
    except RuntimeError:  # no folder to write to
        return cast(F, njit(nogil=True, error_model="numpy")(function))

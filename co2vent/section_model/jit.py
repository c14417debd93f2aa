"""The one place that imports numba; only the compiled modules import it, when a run starts."""

from collections.abc import Callable
from typing import Any, TypeVar, cast

from numba import njit  # noqa: TID253 - reached only when a run starts

F = TypeVar("F", bound=Callable[..., Any])
Rec = Any  # a numpy record of one of the types in `layout`


def jit(function: F) -> F:
    """Compile `function` for use by other compiled functions."""
    return cast(F, njit(nogil=True, error_model="numpy")(function))


def jit_cached(function: F) -> F:
    """Compile `function` and keep the machine code on disk, where a folder can hold it."""
    try:
        return cast(F, njit(cache=True, nogil=True, error_model="numpy")(function))
    except RuntimeError:  # no folder to write to: compile anew in each process
        return jit(function)

"""The kernels once more, compiled by numba or on numpy arrays: the equations exist only once."""

from collections.abc import Callable
from functools import cache
from hashlib import sha256
from importlib.util import find_spec, module_from_spec
from types import FunctionType, ModuleType
from typing import Any

import numpy as np

from co2vent.co2 import coefficients

KERNELS = "co2vent.co2.kernels"


def _fresh_copy(name: str) -> ModuleType:
    """Execute the kernels' file into a new module object."""
    spec = find_spec(KERNELS)
    if spec is None or spec.loader is None:
        raise ImportError(f"{KERNELS} has no source to copy")
    module = module_from_spec(spec)
    spec.loader.exec_module(module)
    module.__name__ = name
    return module


@cache
def compiled() -> ModuleType:
    """Return the kernels with every function compiled by numba (`nogil`, cached on disk).

    The functions keep their names and can be called from other compiled functions. Nothing is
    compiled before its first call. numba's disk cache knows a function by its name and its own
    file's age, so the name carries a digest of the coefficients, which live in another file.
    """
    import numba  # costly to import: only who simulates many vents needs it

    module = _fresh_copy(f"{KERNELS}_compiled")
    tables = {name: table for name, table in vars(coefficients).items() if name.isupper()}
    digest = sha256(repr(tables).encode()).hexdigest()[:12]
    for name, function in list(vars(module).items()):
        if isinstance(function, FunctionType) and function.__code__.co_filename == module.__file__:
            function.__qualname__ = f"{name}_{digest}"
            setattr(module, name, _compile(numba.njit, function))
    return module


def _compile(njit: Callable[..., Any], function: FunctionType) -> Any:
    """Compile with the disk cache, or without it where no folder can hold one."""
    try:
        return njit(function, cache=True, nogil=True)
    except RuntimeError:
        return njit(function, nogil=True)


@cache
def vectorised() -> ModuleType:
    """Return the kernels on numpy arrays; only those without branches or loops are meaningful."""
    module = _fresh_copy(f"{KERNELS}_vectorised")
    vars(module).update(exp=np.exp, log=np.log, sqrt=np.sqrt, max=np.maximum)
    return module

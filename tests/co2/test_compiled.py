"""The compiled copy is the same equations, and nothing compiles until it is asked for."""

import subprocess
import sys

import pytest

from co2vent import co2
from co2vent.co2 import kernels


def test_compiled_kernels_equal_the_plain_ones() -> None:
    fast = co2.compiled()
    assert fast is co2.compiled()
    for name, arguments in (
        ("saturation_pressure_pa", (250.0,)),
        ("saturation_temperature_k", (2e6,)),
        ("equilibrium_pressure_pa", (200.0,)),
        ("vapor_pressure_pa", (50.0, 260.0)),
        ("vapor_internal_energy_j_kg", (50.0, 260.0)),
        ("vapor_density_kg_m3", (2e6, 260.0)),
        ("vapor_mass_flux_kg_s_m2", (2e6, 260.0, 1e5)),
        ("liquid_pressure_pa", (983.0, 270.0)),
    ):
        plain = getattr(kernels, name)(*arguments)
        assert getattr(fast, name)(*arguments) == pytest.approx(plain, rel=1e-12)


def test_importing_the_package_imports_no_compiler_and_no_property_library() -> None:
    code = (
        "import sys, co2vent.co2; "
        "print([m for m in ('numba', 'CoolProp', 'scipy', 'PySide6') if m in sys.modules])"
    )
    done = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, check=True)
    assert done.stdout.strip() == "[]"

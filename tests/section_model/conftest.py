"""Sections for the checks: adiabatic ones, to be compared with equilibrium tables."""

from collections.abc import Callable
from dataclasses import replace

import pytest

from co2vent.section_model.parameters import Contents, Pocket, Section, Setting, VentPath


@pytest.fixture
def adiabatic() -> Callable[..., Setting]:
    """Return a maker of sections without any heat from metal or surroundings."""

    def make(
        contents: Contents,
        bore_m: float = 0.0006,
        volume_m3: float = 0.01,
        longest_step_s: float = 0.1,
        **vent: float,
    ) -> Setting:
        section = Section(
            volume_m3=volume_m3,
            outside_w_per_m2k=0.0,
            gas_factor=0.0,
            film_condensation_w_per_m2k=0.0,
            interface_w_per_m2k=0.0,
            mist_s=0.1,
            pockets=(
                Pocket(boil_w_per_m2k=0.0, snow_contact_w_per_m2k=0.0, boil_s=0.1, snow_s=1.0),
            ),
        )
        path = VentPath(bore_m=bore_m, hose_bore_m=0.02, carry_over_fill=1.0)
        return Setting(
            section=section,
            contents=contents,
            vent=replace(path, **vent),
            longest_step_s=longest_step_s,
        )

    return make

"""The options that describe a vent before it starts; `plan` and `simulate` share them."""

import argparse
from math import isfinite
from typing import Final

from co2vent.errors import RefusedInputError
from co2vent.planning.expansion import volume_by_expansion
from co2vent.planning.exposure import Country
from co2vent.planning.metal import METAL_RANGE_C
from co2vent.planning.pipes import find_pipe
from co2vent.planning.shapes import (
    DEFAULT_AMBIENT_K,
    DEFAULT_BORE_M,
    DEFAULT_DISCHARGE_COEFFICIENT,
    DEFAULT_LIQUID_FRACTION,
    PlanInput,
)
from co2vent.planning.volume import (
    Part,
    PipeRun,
    SectionVolume,
    cylinder_area_m2,
    find_part,
    section_volume,
)
from co2vent.readings.metadata import build_setup
from co2vent.readings.reading import Gas, Setup
from co2vent.units import ZERO_CELSIUS_K

DEFAULT_BORE_MM: Final = DEFAULT_BORE_M * 1e3
DEFAULT_FULL_SCALE_BAR: Final = 60.0
DEFAULT_ACCURACY_PERCENT: Final = 0.5
BOTTLE_UNCERTAINTY: Final = 0.01  # of its stamped volume; common practice, no source


def number(text: str) -> float:
    """Return a finite number; argparse's own float takes nan and inf."""
    value = float(text)
    if not isfinite(value):
        raise argparse.ArgumentTypeError(f"{text!r} is not a number")
    return value


number.__name__ = "number"


def metal_c(text: str) -> float:
    """Return a rating that a metal can have; the simulator asks no planner."""
    value = number(text)
    low, high = METAL_RANGE_C
    if not low <= value <= high:
        raise argparse.ArgumentTypeError(f"{text!r}: no metal; give {low:g} to {high:g} degC")
    return value


metal_c.__name__ = "number"


def add_plan_options(parser: argparse.ArgumentParser) -> None:
    """Add the options of `plan`: section, charge, gauge, vent, surroundings, room."""
    section = parser.add_argument_group("the section and its charge before the vent")
    section.add_argument("--volume-l", type=number, metavar="L", help="inner volume, litres")
    section.add_argument(
        "--pipe", action="append", default=[], metavar="SIZE=METRES",
        help="instead of --volume-l, as often as needed: a size of the table and a length, "
        "e.g. 'ASME B36.10M, NPS 2, sch 40=3.5' (co2vent plan --list-sizes prints them)",
    )  # fmt: skip
    section.add_argument(
        "--part", action="append", default=[], metavar="NAME[=COUNT]",
        help="with or without --pipe: a shell, strainer, casing or cavity, e.g. 'pump casing=2' "
        "(co2vent plan --list-sizes prints them)",
    )  # fmt: skip
    section.add_argument(
        "--bottle", metavar="L,BAR,BAR,BAR,C[,GAS]",
        help="instead of --volume-l: the volume measured by letting a bottle into the section: "
        "bottle litres, bottle, section and common pressure in bar g, temperature in degC, and "
        "nitrogen (default) or co2, e.g. 5,40,0,12.8,15",
    )  # fmt: skip
    section.add_argument(
        "--temperature-c", type=number, metavar="C",
        help="temperature of the charge, degC; or give --pressure-bar-g",
    )  # fmt: skip
    section.add_argument(
        "--pressure-bar-g", type=number, metavar="BAR",
        help="pressure of the charge, bar g (saturated); or give --temperature-c",
    )  # fmt: skip
    section.add_argument(
        "--liquid-fraction", type=number, metavar="SHARE",
        help=f"liquid, share of the volume, 0 to 1 (default {DEFAULT_LIQUID_FRACTION:g})",
    )  # fmt: skip
    section.add_argument(
        "--relief-bar-g", type=number, metavar="BAR",
        help="relief setting, bar g (default: not known)",
    )  # fmt: skip
    section.add_argument(
        "--metal-minimum-c", type=metal_c, metavar="C",
        help="lowest rated temperature of the metal, degC (default: usual metals are compared)",
    )  # fmt: skip
    around = parser.add_argument_group("gauge, vent and surroundings")
    around.add_argument("--altitude-m", type=number, metavar="M", help="altitude, m (default 0)")
    around.add_argument(
        "--gauge-full-scale-bar", type=number, metavar="BAR",
        help=f"end of the gauge's scale, bar g (default {DEFAULT_FULL_SCALE_BAR:g})",
    )  # fmt: skip
    around.add_argument(
        "--gauge-accuracy-percent", type=number, metavar="PERCENT",
        help=f"accuracy of the gauge, %% of full scale (default {DEFAULT_ACCURACY_PERCENT:g})",
    )  # fmt: skip
    around.add_argument(
        "--vent-bore-mm", type=number, metavar="MM",
        help=f"narrowest bore of the vent, mm (default {DEFAULT_BORE_MM:g})",
    )  # fmt: skip
    around.add_argument(
        "--discharge-coefficient", type=number, metavar="CD",
        default=DEFAULT_DISCHARGE_COEFFICIENT,
        help="of the vent, 0.05 to 1 (default %(default)g, a sharp valve seat)",
    )  # fmt: skip
    around.add_argument(
        "--ambient-c", type=number, metavar="C", default=DEFAULT_AMBIENT_K - ZERO_CELSIUS_K,
        help="temperature around the section, degC (default %(default)g)",
    )  # fmt: skip
    around.add_argument(
        "--room-m3", type=number, metavar="M3",
        help="volume of the room, if the vent ends in one, m3 (default: outdoors)",
    )  # fmt: skip
    around.add_argument(
        "--air-changes-per-hour", type=number, metavar="N",
        help="fresh air of that room (default: not known, none is counted on)",
    )  # fmt: skip
    around.add_argument(
        "--limits", choices=[country.value for country in Country], default=Country.US.value,
        help="whose exposure limits to compare with (default %(default)s)",
    )  # fmt: skip


def _pipe_run(text: str) -> PipeRun:
    size, separator, length = text.rpartition("=")
    try:
        metres = number(length)
    except (ValueError, argparse.ArgumentTypeError):
        separator = ""
    if not separator:
        raise RefusedInputError(
            f"--pipe {text!r}: write SIZE=METRES as in 'ASME B36.10M, NPS 2, sch 40=3.5'"
        )
    return PipeRun(find_pipe(size), metres)


def _part(text: str) -> tuple[Part, int]:
    name, separator, count = text.rpartition("=")
    if not separator:
        return find_part(text), 1
    if not count.strip().isdecimal():
        raise RefusedInputError(f"--part {text!r}: write NAME=COUNT with a whole number")
    return find_part(name), int(count)


def _measured(text: str, setup: Setup) -> SectionVolume:
    """Return the volume measured with a bottle, by the gauge of `setup`."""
    fields = [field.strip() for field in text.split(",")]
    try:
        litres, bottle, section, common, celsius = map(number, fields[:5])
        gas = Gas(fields[5]) if len(fields) == 6 else Gas.NITROGEN
        if len(fields) > 6:
            raise ValueError
    except (ValueError, argparse.ArgumentTypeError):
        raise RefusedInputError(
            f"--bottle {text!r}: write bottle litres, bottle, section and common pressure in bar "
            "g, temperature in degC and optionally nitrogen or co2, as in 5,40,0,12.8,15"
        ) from None
    ambient = setup.ambient_pressure_pa
    measured = volume_by_expansion(
        bottle_volume_m3=litres / 1e3,
        bottle_pressure_pa=bottle * 1e5 + ambient,
        section_pressure_pa=section * 1e5 + ambient,
        common_pressure_pa=common * 1e5 + ambient,
        temperature_k=celsius + ZERO_CELSIUS_K,
        gas=gas,
        gauge_error_pa=setup.gauge_error_pa,
        bottle_uncertainty_m3=BOTTLE_UNCERTAINTY * litres / 1e3,
    )
    return SectionVolume(
        measured.volume_m3,
        measured.uncertainty_m3,
        cylinder_area_m2(measured.volume_m3),
        ("measured by gas expansion; the bound holds the gauge's class and 1 % of the bottle",),
    )


def section_from(args: argparse.Namespace, setup: Setup) -> SectionVolume | None:
    """Return the volume built from --pipe and --part or --bottle; None with --volume-l.

    Raises:
        RefusedInputError: none or several, or a size or part that is not in the tables.
    """
    given = [args.volume_l is not None, bool(args.pipe or args.part), args.bottle is not None]
    if sum(given) != 1:
        raise RefusedInputError(
            "give one of --volume-l, --pipe with --part (a section built from tables), or --bottle"
        )
    if args.bottle is not None:
        return _measured(args.bottle, setup)
    if args.volume_l is not None:
        return None
    return section_volume([_pipe_run(text) for text in args.pipe], [_part(t) for t in args.part])


def plan_input(args: argparse.Namespace) -> tuple[PlanInput, tuple[str, ...]]:
    """Return what the options say, and the notes on where the volume comes from.

    Raises:
        RefusedInputError: both or neither of temperature and pressure, of volume and pipes, or a
            value that can't be.
    """
    if (args.temperature_c is None) == (args.pressure_bar_g is None):
        how = "both were" if args.temperature_c is not None else "neither was"
        raise RefusedInputError(
            f"give --temperature-c or --pressure-bar-g of the charge, one of them; {how} given"
        )
    assumed: list[str] = []

    def or_default(value: float | None, default: float, what: str) -> float:
        if value is not None:
            return value
        assumed.append(f"{what} not given: {default:g} is assumed.")
        return default

    scale = or_default(args.gauge_full_scale_bar, DEFAULT_FULL_SCALE_BAR, "Gauge range, bar")
    accuracy = or_default(
        args.gauge_accuracy_percent, DEFAULT_ACCURACY_PERCENT, "Gauge accuracy, % of full scale,"
    )
    bore_mm = or_default(args.vent_bore_mm, DEFAULT_BORE_MM, "Vent bore, mm,")
    metadata = {"gauge_full_scale": f"{scale!r} bar_g", "gauge_accuracy_percent": repr(accuracy)}
    if args.altitude_m is not None:
        metadata["altitude_m"] = repr(args.altitude_m)
    setup = build_setup(metadata)
    section = section_from(args, setup)
    given = PlanInput(
        volume_m3=args.volume_l / 1e3 if section is None else section.volume_m3,
        volume_uncertainty_m3=None if section is None else section.uncertainty_m3,
        outer_area_m2=None if section is None else section.outer_area_m2,
        temperature_k=_kelvin(args.temperature_c),
        pressure_pa_gauge=None if args.pressure_bar_g is None else args.pressure_bar_g * 1e5,
        liquid_fraction=args.liquid_fraction,
        setup=setup,
        vent_bore_m=bore_mm / 1e3,
        discharge_coefficient=args.discharge_coefficient,
        ambient_k=args.ambient_c + ZERO_CELSIUS_K,
        relief_pa_gauge=None if args.relief_bar_g is None else args.relief_bar_g * 1e5,
        metal_minimum_k=_kelvin(args.metal_minimum_c),
        room_m3=args.room_m3,
        air_changes_per_hour=args.air_changes_per_hour,
        country=Country(args.limits),
        assumed=tuple(assumed),
    )
    return given, () if section is None else section.notes


def _kelvin(celsius: float | None) -> float | None:
    return None if celsius is None else celsius + ZERO_CELSIUS_K

"""How the screen looks to this person: theme, units, text size; kept between runs."""

from dataclasses import dataclass, field
from pathlib import Path
from typing import Any

from PySide6.QtWidgets import QWidget

from co2vent.errors import StoreError
from co2vent.store.settings import load_settings, save_settings
from co2vent.window.sentences import speak_units
from co2vent.window.sizes import Sizes, sizes_for
from co2vent.window.text import UnitChoice
from co2vent.window.theme import OUTDOOR, PALETTES, Palette

TEXT_SCALES = (0.85, 1.0, 1.15, 1.3)


@dataclass(slots=True)
class Look:
    """The choices, and where they are kept."""

    path: Path | None = None  # None: the usual place of the user's settings
    palette: Palette = OUTDOOR
    units: UnitChoice = UnitChoice.BAR
    followed: UnitChoice = UnitChoice.BAR  # the units of the newest log, or those of the beginning
    units_chosen: bool = False  # by a person: then no log changes them
    text_scale: float = 1.0
    calibration: float = 1.0  # true dots per inch over what the screen's driver says
    language: str = ""
    source: str = ""
    kept: dict[str, Any] = field(default_factory=dict)

    def __post_init__(self) -> None:
        """Let sentences speak the units of this look."""
        self._speak()

    @classmethod
    def load(cls, path: Path | None = None) -> "Look":
        """Return the choices as they were kept; what can't be used is left at its default."""
        kept = load_settings(path)
        look = cls(path=path, kept=kept)
        palette = PALETTES.get(str(kept.get("theme", "")))
        look.palette = palette or OUTDOOR
        try:
            look.units = UnitChoice(str(kept["units"]))
            look.units_chosen = True
        except (KeyError, ValueError):
            look.units = UnitChoice.BAR
        look.text_scale = _number(kept.get("text_scale"), 0.7, 1.6)
        look.calibration = _number(kept.get("calibration"), 0.3, 3.0)
        look.language = str(kept.get("language", ""))
        look.source = str(kept.get("source", ""))
        look._speak()
        return look

    def save(self) -> None:
        """Keep the choices; a settings file that can't be written is no reason to stop."""
        if self.units_chosen:
            self.kept["units"] = self.units.value
        self.kept.update(
            theme=self.palette.name,
            text_scale=self.text_scale,
            calibration=self.calibration,
            language=self.language,
            source=self.source,
        )
        try:
            save_settings(self.kept, self.path)
        except StoreError:
            return

    def folder(self) -> Path:
        """Return the folder for recordings and saved pictures."""
        return Path(str(self.kept.get("folder") or Path.home() / "co2vent"))

    def sizes(self, widget: QWidget) -> Sizes:
        """Return the sizes for a page of the size of `widget` on its screen."""
        return sizes_for(
            widget.width(),
            widget.height(),
            widget.screen().physicalDotsPerInch() / 1.0,
            self.text_scale,
            self.calibration,
        )

    def next_palette(self) -> None:
        """Turn to the other theme."""
        names = list(PALETTES)
        self.palette = PALETTES[names[(names.index(self.palette.name) + 1) % len(names)]]

    def next_units(self) -> None:
        """Turn to the next choice of units; from now on it is the person's."""
        self.units_chosen = True
        choices = list(UnitChoice)
        self.units = choices[(choices.index(self.units) + 1) % len(choices)]
        self._speak()

    def follow(self, pressure_unit: str) -> None:
        """Take the units that a log speaks, unless a person has chosen others."""
        if self.units_chosen or self.units is not self.followed:
            return
        psi = pressure_unit.startswith("psi")
        self.units = self.followed = UnitChoice.PSI if psi else UnitChoice.BAR
        self._speak()

    def _speak(self) -> None:
        speak_units(self.units.pressure, self.units.temperature)

    def next_text_scale(self) -> None:
        """Turn to the next text size."""
        larger = [scale for scale in TEXT_SCALES if scale > self.text_scale + 1e-6]
        self.text_scale = larger[0] if larger else TEXT_SCALES[0]


def _number(value: object, low: float, high: float) -> float:
    if isinstance(value, (int, float)) and low <= value <= high:
        return float(value)
    return 1.0

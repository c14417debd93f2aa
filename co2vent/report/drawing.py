"""A drawing as a list of strokes in millimetres, and as SVG; lines differ by dashes."""

from collections.abc import Sequence
from dataclasses import dataclass

from co2vent.report.markup import text

Point = tuple[float, float]


@dataclass(frozen=True, slots=True)
class Stroke:
    """A polyline. `dash`: lengths of ink and gap [mm], none for a solid line; `grey` 0 is black."""

    points: tuple[Point, ...]
    width: float = 0.25
    dash: tuple[float, ...] = ()
    grey: float = 0.0


@dataclass(frozen=True, slots=True)
class Box:
    """A filled rectangle, for the ground of a hold."""

    x: float
    y: float
    width: float
    height: float
    grey: float = 0.9


@dataclass(frozen=True, slots=True)
class Label:
    """A text: `anchor` is start, middle or end of it at (x, y), the baseline; `size` is in mm."""

    x: float
    y: float
    text: str
    size: float = 2.6
    anchor: str = "start"
    bold: bool = False


@dataclass(frozen=True, slots=True)
class Drawing:
    """Boxes first, then strokes, then labels, on `width` by `height` mm."""

    width: float
    height: float
    boxes: tuple[Box, ...] = ()
    strokes: tuple[Stroke, ...] = ()
    labels: tuple[Label, ...] = ()


def shade(grey: float) -> str:
    """Return a grey as an HTML colour."""
    level = round(255 * grey)
    return f"#{level:02x}{level:02x}{level:02x}"


def _pairs(points: Sequence[Point]) -> str:
    return " ".join(f"{x:.2f},{y:.2f}" for x, y in points)


def to_svg(drawing: Drawing, title: str) -> str:
    """Return the drawing as an inline SVG element; texts are escaped."""
    parts = [
        f'<svg xmlns="http://www.w3.org/2000/svg" role="img" aria-label="{text(title)}" '
        f'viewBox="0 0 {drawing.width:g} {drawing.height:g}" font-family="sans-serif">'
    ]
    parts += [
        f'<rect x="{box.x:.2f}" y="{box.y:.2f}" width="{box.width:.2f}" '
        f'height="{box.height:.2f}" fill="{shade(box.grey)}"/>'
        for box in drawing.boxes
    ]
    for stroke in drawing.strokes:
        dash = " ".join(f"{length:g}" for length in stroke.dash)
        dashed = f' stroke-dasharray="{dash}"' if dash else ""
        parts.append(
            f'<polyline points="{_pairs(stroke.points)}" fill="none" '
            f'stroke="{shade(stroke.grey)}" stroke-width="{stroke.width:g}" '
            f'stroke-linejoin="round"{dashed}/>'
        )
    parts += [
        f'<text x="{label.x:.2f}" y="{label.y:.2f}" font-size="{label.size:g}" '
        f'text-anchor="{label.anchor}" font-weight="{"bold" if label.bold else "normal"}">'
        f"{text(label.text)}</text>"
        for label in drawing.labels
    ]
    return "".join(parts) + "</svg>"

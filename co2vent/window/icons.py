"""The project's own drawings, painted in one colour of the theme."""

from functools import lru_cache
from importlib.resources import files

from PySide6.QtCore import QByteArray, QRectF, QSize, Qt
from PySide6.QtGui import QIcon, QPainter, QPixmap
from PySide6.QtSvg import QSvgRenderer


@lru_cache(maxsize=256)
def _renderer(name: str, colour: str | None) -> QSvgRenderer:
    svg = files("co2vent.icons").joinpath(f"{name}.svg").read_text(encoding="utf-8")
    if colour is not None:
        svg = svg.replace("#000000", colour)
    renderer = QSvgRenderer(QByteArray(svg.encode()))
    if not renderer.isValid():
        raise ValueError(f"icon {name!r} is not a drawing")
    return renderer


def paint_icon(painter: QPainter, name: str, colour: str, area: QRectF) -> None:
    """Paint the drawing `name` in `colour` into `area`."""
    _renderer(name, colour).render(painter, area)


def pixmap(name: str, colour: str | None, size: int, ratio: float = 1.0) -> QPixmap:
    """Return the drawing as a square pixmap of `size` logical pixels; None keeps its colours."""
    picture = QPixmap(QSize(round(size * ratio), round(size * ratio)))
    picture.fill(Qt.GlobalColor.transparent)
    painter = QPainter(picture)
    _renderer(name, colour).render(painter, QRectF(picture.rect()))
    painter.end()
    picture.setDevicePixelRatio(ratio)
    return picture


def icon(name: str, colour: str | None = None) -> QIcon:
    """Return the drawing as an icon in the sizes that desktops and keys ask for."""
    found = QIcon()
    for size in (16, 24, 32, 48, 64, 128):
        found.addPixmap(pixmap(name, colour, size))
    return found

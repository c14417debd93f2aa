"""A plot as an SVG file, with the words of the banner in it."""

from pathlib import Path
from typing import Any

from PySide6.QtGui import QColor, QPainter
from PySide6.QtSvg import QSvgGenerator


def save_svg(path: Path, widget: Any, plot: Any, page: str, words: str) -> bool:
    """Write what `widget` shows as SVG on the colour `page`; return whether it was written.

    `words` stand above `plot` in the file only: a drawing of practice says that it is one.
    """
    generator = QSvgGenerator()
    generator.setFileName(str(path))
    generator.setSize(widget.size())
    generator.setViewBox(widget.rect())
    generator.setTitle(words or "co2vent")
    plot.setTitle(words or None)
    painter = QPainter()
    try:
        if not painter.begin(generator):
            return False
        painter.fillRect(widget.rect(), QColor(page))
        widget.scene().render(painter)
        painter.end()
    finally:
        plot.setTitle(None)
    return path.exists()

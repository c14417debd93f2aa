"""The names of the stop line and of the triple point's line, and of the fall, clear of the trace.

A name stands on a ground of the page's colour: over the trace it would hide where the pressure is,
just where that matters most.
"""

from typing import Any, Final

import numpy as np
import pyqtgraph as pg
from PySide6.QtCore import QPointF, QRectF

from co2vent.window.name_places import Places, Points, as_points, box_at, pixels_of

ENDS: Final = (1.0, 0.0, 0.7, 0.5, 0.3)  # an end of the line first, else the middle
DOWNS: Final = (0.0, 0.16, 0.32, 0.48, 0.64, 0.8)  # of the height, from the top
INSET: Final = 0.005  # of the width, from the edge


class LevelNames:
    """Places the labels of two levels."""

    def __init__(self, plot: pg.PlotItem, stop: Any, triple: Any) -> None:
        self._plot = plot
        self._stop = stop
        self._triple = triple
        self._places = Places()

    def place(self, seen: Points) -> None:
        """Put the names where nothing is `seen` (points in the view box), one after the other."""
        box = self._plot.getViewBox()
        room = QRectF(0.0, 0.0, box.width(), box.height())
        if room.isEmpty():
            return
        taken: list[QRectF] = []
        for name, line, other in (
            ("stop", self._stop, self._triple),
            ("triple", self._triple, self._stop),
        ):
            taken.append(self._place_one(name, line, other, room, seen, taken))

    def _place_one(
        self, name: str, line: Any, other: Any, room: QRectF, seen: Points, taken: list[QRectF]
    ) -> QRectF:
        """Place a name below its line or, where there is no room, above; return its box."""
        view_box = self._plot.getViewBox()
        (_, y), (_, other_y) = pixels_of(view_box, [0, 0], [line.value(), other.value()]).tolist()
        size = line.label.boundingRect().size()
        below, above = (0.0, 1.0), (1.0, 0.0)  # the first side is tried first
        sides = above if y < other_y < y + size.height() else below
        places = [(end, side) for side in sides for end in ENDS]
        wide = room.width() * (1.0 - 2.0 * INSET)
        boxes = [
            box_at(QPointF(room.width() * INSET + end * wide, y), size, (end, side))
            for end, side in places
        ]
        level = as_points(view_box, [(self._plot.viewRange()[0], [other.value()] * 2)])
        best, _under = self._places.choose(name, boxes, room, np.vstack([seen, level]), taken)
        end, side = places[best]
        line.label.orthoPos = INSET + (1.0 - 2.0 * INSET) * end
        line.label.anchors = [(end, side), (end, side)]
        line.label.updatePosition()
        return boxes[best]

    def place_words(self, words: Any, seen: Points) -> None:
        """Put other words at the top right or, where something is, elsewhere."""
        box = self._plot.getViewBox()
        room = QRectF(0.0, 0.0, box.width(), box.height())
        if room.isEmpty() or not words.isVisible():
            return
        size = words.boundingRect().size()
        places = [(across, down) for down in DOWNS for across in (1.0, 0.6, 0.0)]
        lowest = room.height() - size.height()
        points = [
            QPointF(across * room.width(), min(down * room.height(), lowest))
            for across, down in places
        ]
        boxes = [
            box_at(point, size, (across, 0.0))
            for point, (across, _down) in zip(points, places, strict=True)
        ]
        labels = (self._stop.label, self._triple.label)
        taken = [
            box.mapRectFromScene(label.mapRectToScene(label.boundingRect())) for label in labels
        ]
        best, _under = self._places.choose("words", boxes, room, seen, taken)
        words.setAnchor((places[best][0], 0.0))
        words.setPos(box.mapToView(points[best]))

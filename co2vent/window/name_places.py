"""Where a name in a picture stands: clear of the lines and of the other names.

Everything is in pixels of the picture, y downwards. A name that finds no clear place takes the one
with the least under it; whoever draws it gives it a ground then, so that it can be read.
"""

from collections.abc import Iterable, Sequence
from typing import Any, Final

import numpy as np
import numpy.typing as npt
from PySide6.QtCore import QPointF, QRectF, QSizeF

Points = npt.NDArray[np.float64]

NO_POINTS: Final = np.empty((0, 2))
STEP_PX: Final = 3.0  # so dense a line is looked at: no name is lower
EDGE_PX: Final = 4.0  # the margin of a text in a picture
AIR_PX: Final = 2.0  # letters that touch a line are as hard to read
TAKEN: Final = 10_000  # over another name: worse than over any line


def pixels_of(box: Any, across: Any, up: Any) -> Points:
    """Return points of a picture's view box as pixels in it, one a row."""
    (left, right), (low, high) = box.viewRange()
    x = (np.asarray(across, np.float64) - left) / (right - left) * box.width()
    y = (high - np.asarray(up, np.float64)) / (high - low) * box.height()
    return np.column_stack([x, y])


def dense(across: Any, down: Any) -> Points:
    """Return a line as points so dense that it passes no name unseen; gaps stay gaps."""
    x, y = np.asarray(across, np.float64), np.asarray(down, np.float64)
    if x.size < 2:
        return np.column_stack([x, y])
    x, y = np.clip(x, -1e5, 1e5), np.clip(y, -1e5, 1e5)
    lengths = np.hypot(np.diff(x), np.diff(y))
    pieces = np.where(np.isfinite(lengths), np.ceil(lengths / STEP_PX), 1.0).astype(int)
    pieces = np.clip(pieces, 1, 4000)
    first = np.repeat(np.arange(x.size - 1), pieces)
    place = np.arange(first.size) - np.repeat(np.cumsum(pieces) - pieces, pieces)
    share = place / pieces[first]
    found = np.column_stack(
        [x[first] + share * (x[first + 1] - x[first]), y[first] + share * (y[first + 1] - y[first])]
    )
    found = np.vstack([found, [[x[-1], y[-1]]]])
    kept: Points = found[np.isfinite(found).all(axis=1)]
    return kept


def as_points(box: Any, lines: Iterable[tuple[Any, Any]]) -> Points:
    """Return lines of a picture (across and up) as dense points in pixels of its view box."""
    found = [dense(*pixels_of(box, across, up).T) for across, up in lines if len(across)]
    return np.vstack(found) if found else NO_POINTS


def box_at(point: QPointF, size: QSizeF, anchor: tuple[float, float]) -> QRectF:
    """Return the box of a name that hangs on `point` by `anchor`, shares of its own size."""
    left = point.x() - anchor[0] * size.width()
    return QRectF(QPointF(left, point.y() - anchor[1] * size.height()), size)


def covered(
    box: QRectF, lines: Points, names: Iterable[QRectF] = (), *, grounded: bool = False
) -> int:
    """Return how much of the lines lies under `box`, or very much where another name does.

    The edge of a box is empty: the letters begin `EDGE_PX` within. Where names have a `grounded`
    box, one with a colour, the edge hides a line as well.
    """
    over_lines = box if grounded else _letters(box).adjusted(-AIR_PX, -AIR_PX, AIR_PX, AIR_PX)
    x, y = lines[:, 0], lines[:, 1]
    inside = (
        (x >= over_lines.left())
        & (x <= over_lines.right())
        & (y >= over_lines.top())
        & (y <= over_lines.bottom())
    )
    over = sum(box.intersects(_letters(name)) for name in names)
    return int(np.count_nonzero(inside)) + TAKEN * over


def _letters(box: QRectF) -> QRectF:
    return box.adjusted(EDGE_PX, EDGE_PX, -EDGE_PX, -EDGE_PX)


def clearest(
    boxes: Sequence[QRectF],
    room: QRectF,
    lines: Points,
    names: Sequence[QRectF] = (),
    *,
    grounded: bool = False,
) -> tuple[int, int]:
    """Return the number of the first box with nothing under it, and how much lies under it.

    Where every box has something under it, an earlier one may have a little more: its place is the
    better one. A box that leaves the `room` is taken only where all do.
    """
    inside = [number for number, box in enumerate(boxes) if room.contains(_letters(box))]
    under: dict[int, int] = {}
    for number in inside or range(len(boxes)):
        under[number] = covered(boxes[number], lines, names, grounded=grounded)
        if not under[number]:
            return number, 0
    best = min(under, key=lambda number: under[number] + number)
    return best, under[best]


class Places:
    """Chooses places; a name stays where it is while that is clear: what jumps can't be read."""

    def __init__(self, *, grounded: bool = True) -> None:
        self._grounded = grounded
        self._last: dict[str, int] = {}

    def choose(
        self,
        name: str,
        boxes: Sequence[QRectF],
        room: QRectF,
        lines: Points,
        names: Sequence[QRectF] = (),
    ) -> tuple[int, int]:
        """Return the number of the box for `name`, and how much lies under it."""
        last = self._last.get(name, len(boxes))
        fits = last < len(boxes) and room.contains(_letters(boxes[last]))
        if fits and not covered(boxes[last], lines, names, grounded=self._grounded):
            return last, 0
        best, under = clearest(boxes, room, lines, names, grounded=self._grounded)
        self._last[name] = best
        return best, under

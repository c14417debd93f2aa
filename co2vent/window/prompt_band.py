"""The prompt: the largest thing on the screen. Word, shape and luminance say the same."""

from typing import Final

from PySide6.QtCore import QPointF, QRectF, Qt, QTimer
from PySide6.QtGui import (
    QColor,
    QPainter,
    QPainterPath,
    QPaintEvent,
    QPen,
    QPolygonF,
    QResizeEvent,
)
from PySide6.QtWidgets import QWidget

from co2vent.guidance.events import Severity
from co2vent.inference.outcome import Instruction
from co2vent.window.fit_label import FitLabel
from co2vent.window.icons import paint_icon
from co2vent.window.shown import Shown
from co2vent.window.sizes import Sizes
from co2vent.window.theme import OUTDOOR, Palette

# Half periods [ms]: 0.6 Hz and 2 Hz, inside 0.4-0.8 and 1.4-2.8 Hz (IEC 60073, from memory) and
# below three flashes a second (WCAG 2.2, 2.3.1).
FLASH_HALF_PERIOD_MS: Final = {Severity.CAUTION: 833, Severity.DANGER: 250}

HEADLINE_SHARES: Final = (0.62, 0.55, 0.46)  # of the height


def outline(severity: Severity, area: QRectF) -> QPolygonF | None:
    """Return the outline of the state's sign: none, square, triangle or octagon.

    Calm has a circle, which is painted as such.
    """
    left, top, right, bottom = area.left(), area.top(), area.right(), area.bottom()
    if severity is Severity.DO:
        return QPolygonF(area)
    if severity is Severity.CAUTION:
        middle = area.center().x()
        return QPolygonF([QPointF(middle, top), QPointF(right, bottom), QPointF(left, bottom)])
    if severity is Severity.DANGER:
        cut = area.width() * 0.293
        corners = [
            (left + cut, top), (right - cut, top), (right, top + cut), (right, bottom - cut),
            (right - cut, bottom), (left + cut, bottom), (left, bottom - cut), (left, top + cut),
        ]  # fmt: skip
        return QPolygonF([QPointF(x, y) for x, y in corners])
    return None


class PromptBand(QWidget):
    """What to do now, and why."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._palette: Palette = OUTDOOR
        self._severity = Severity.CALM
        self._instruction = Instruction.WAIT
        self._frame_px = 8
        self._reason_px = 15
        self._lit = True
        self.headline = FitLabel(self, max_px=60, bold=True, wrap=True)
        self.reason = FitLabel(self, max_px=20)
        self._flash = QTimer(self)
        self._flash.timeout.connect(self._toggle)

    def set_theme(self, palette: Palette) -> None:
        """Paint in the colours of `palette`."""
        self._palette = palette
        self._colour_texts()
        self.update()

    def set_sizes(self, sizes: Sizes) -> None:
        """Take the sizes of the screen."""
        self._frame_px = max(7, round(8 * max(1.0, sizes.scale)))
        self.headline.set_max_px(sizes.digit_font_px)
        self.reason.set_max_px(round(sizes.text_px * 1.25))
        self._reason_px = round(sizes.text_px * 0.95)
        self._place()

    def show_prompt(self, shown: Shown, *, flashing: bool) -> None:
        """Show the prompt; the frame flashes while an alarm is not acknowledged."""
        self.headline.say(shown.headline)
        reason = shown.reason.replace("/", "/\u2060")  # no break inside a unit
        longer = abs(len(reason) - len(self.reason.text())) > 4
        self.reason.say(reason)
        if longer:
            self._place()
        if (shown.severity, shown.instruction) != (self._severity, self._instruction):
            self._severity, self._instruction = shown.severity, shown.instruction
            self.setAccessibleName(f"{shown.headline}. {shown.reason}")
            self._colour_texts()
            self._place()
            self.update()
        self._set_flashing(flashing)

    @property
    def severity(self) -> Severity:
        """The severity that is painted."""
        return self._severity

    @property
    def flash_hz(self) -> float:
        """How often a second the frame flashes; 0 when it stands."""
        return 500.0 / self._flash.interval() if self._flash.isActive() else 0.0

    def _set_flashing(self, flashing: bool) -> None:
        half_period = FLASH_HALF_PERIOD_MS.get(self._severity)
        if not flashing or half_period is None:
            if self._flash.isActive():
                self._flash.stop()
                self._lit = True
                self.update()
        elif not self._flash.isActive() or self._flash.interval() != half_period:
            self._flash.start(half_period)

    def _toggle(self) -> None:
        self._lit = not self._lit
        self.update()

    def _colour_texts(self) -> None:
        ink = self._palette.band(self._severity).ink
        self.headline.set_ink(ink)
        self.reason.set_ink(ink)

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Place the words beside the sign."""
        super().resizeEvent(event)
        self._place()

    def _sign(self) -> QRectF:
        inset = self._frame_px * 2.0
        side = max(10.0, min(self.height() - 2 * inset, self.width() * 0.16))
        return QRectF(inset, (self.height() - side) / 2.0, side, side)

    def _place(self) -> None:
        sign = self._sign()
        left = round(sign.right() + self._frame_px * 1.5)
        top = round(self._frame_px * 1.25)
        width = max(10, round(self.width() - left - self._frame_px * 2))
        height = max(20, self.height() - 2 * top)
        for (
            share
        ) in HEADLINE_SHARES:  # a long reason takes room from the headline, not from reading
            split = round(height * share)
            self.reason.setGeometry(left, top + split, width, height - split)
            if self.reason.font_px >= self._reason_px:
                break
        self.headline.setGeometry(left, top, width, split)

    def paintEvent(self, _event: QPaintEvent) -> None:
        """Paint ground, frame and sign."""
        band = self._palette.band(self._severity)
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.fillRect(self.rect(), QColor(band.ground))
        if self._lit:
            self._paint_frame(painter, QColor(band.ink))
        self._paint_sign(painter, band.ink)
        painter.end()

    def _paint_frame(self, painter: QPainter, ink: QColor) -> None:
        width = float(self._frame_px)
        area = QRectF(self.rect())
        if self._severity is Severity.DANGER:  # striped frame
            ring = QPainterPath()
            ring.addRect(area)
            ring.addRect(area.adjusted(width, width, -width, -width))
            painter.save()
            painter.setClipPath(ring)
            painter.setPen(QPen(ink, width))
            x = -area.height()
            while x < area.width() + area.height():
                painter.drawLine(QPointF(x, area.height()), QPointF(x + area.height(), 0.0))
                x += width * 3.0
            painter.restore()
        elif self._severity is Severity.CAUTION:
            painter.setPen(QPen(ink, width / 2.0))
            edge = width / 2.0
            painter.drawRect(area.adjusted(edge, edge, -edge, -edge))
        elif self._severity is Severity.CALM:
            painter.setPen(QPen(QColor(self._palette.rule), 2.0))
            painter.drawRect(area.adjusted(1, 1, -1, -1))

    def _paint_sign(self, painter: QPainter, ink: str) -> None:
        area = self._sign()
        pen = QPen(QColor(ink), max(3.0, area.width() / 18.0))
        pen.setJoinStyle(Qt.PenJoinStyle.MiterJoin)
        painter.setPen(pen)
        painter.setBrush(Qt.BrushStyle.NoBrush)
        polygon = outline(self._severity, area)
        if polygon is None:
            painter.drawEllipse(area)
        else:
            painter.drawPolygon(polygon)
        share = 0.44 if self._severity is Severity.CAUTION else 0.56
        side = area.width() * share
        lift = area.height() * (0.30 if self._severity is Severity.CAUTION else 0.5)
        glyph = QRectF(
            area.center().x() - side / 2.0,
            area.bottom() - lift - side / 2.0,
            side,
            side,
        )
        paint_icon(painter, self._instruction.value, ink, glyph)

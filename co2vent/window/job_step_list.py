"""All steps of a job in one column; the running one is kept in sight."""

from PySide6.QtCore import QRect, Qt
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QScrollArea, QWidget

from co2vent.guidance.job import Job, StepState
from co2vent.window.job_parts import MET, OPEN, WrapLabel
from co2vent.window.sentences import spoken
from co2vent.window.sizes import Sizes
from co2vent.window.theme import Palette

STATE_MARKS = {
    StepState.WAITING: OPEN,
    StepState.RUNNING: "▶",
    StepState.DONE: MET,
    StepState.SKIPPED: "✗",
}


class StepList(QScrollArea):
    """Where the job stands among its steps."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._lines: list[str] = []
        self._current = 0
        self.words = WrapLabel("", self)
        self.words.setAlignment(Qt.AlignmentFlag.AlignTop)
        self.setWidgetResizable(True)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setWidget(self.words)
        # the range changes last, when the words have been laid out anew
        self.verticalScrollBar().rangeChanged.connect(self._follow)

    def show_job(self, job: Job) -> None:
        """Show every step's state, and scroll where another step runs."""
        self._lines = [
            f"{STATE_MARKS[state.state]} {place}. {spoken(one.title)}"
            + (f" ({state.reason})" if state.reason else "")
            for place, (one, state) in enumerate(
                zip(job.procedure.steps, job.steps, strict=True), 1
            )
        ]
        self.words.setText("\n".join(self._lines))
        if job.current != self._current:
            self._current = job.current
            self._follow()

    def running_place(self) -> QRect:
        """Return where the running step's line stands in the column."""
        current = min(self._current, len(self._lines) - 1)
        top, end = self._height_of(current), self._height_of(current + 1)
        return QRect(0, top, 1, max(end - top, 1))

    def _height_of(self, lines: int) -> int:
        if lines <= 0:
            return 0
        wide = QRect(0, 0, self.words.contentsRect().width(), 1_000_000)
        flags = int(Qt.TextFlag.TextWordWrap.value) | int(Qt.AlignmentFlag.AlignTop.value)
        text = "\n".join(self._lines[:lines])
        return self.words.fontMetrics().boundingRect(wide, flags, text).height()

    def _follow(self) -> None:
        """Keep the running step in the middle, as far as there is something to scroll."""
        if self._lines:
            middle = self.running_place().center().y()
            self.verticalScrollBar().setValue(middle - self.viewport().height() // 2)

    def set_look(self, palette: Palette, sizes: Sizes) -> None:
        """Take theme and sizes."""
        font = self.words.font()
        font.setPixelSize(sizes.small_px)
        self.words.setFont(font)
        self.words.setStyleSheet(f"background: {palette.page}; color: {palette.ink};")
        self.setStyleSheet(f"QScrollBar:vertical {{ width: {round(sizes.target_px * 0.6)}px; }}")

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Another width breaks the lines elsewhere."""
        super().resizeEvent(event)
        self._follow()

"""The rows of the running step, scrolled: what to do, cautions, and what lets the job go on."""

from collections.abc import Sequence
from typing import Final

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QScrollArea, QVBoxLayout, QWidget

from co2vent.window.job_parts import Row
from co2vent.window.sizes import Sizes
from co2vent.window.theme import Palette

SIGHT_PX: Final = 24  # of the row before, so that the step does not seem to begin here
Typed = dict[tuple[type[Row], str], list[str]]


class StepView(QScrollArea):
    """Holds the rows. They are made and listened to by whoever knows the job."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.rows: list[Row] = []
        self._content = QWidget()
        self._content.setObjectName("content")
        self._column = QVBoxLayout(self._content)
        self._column.setSpacing(8)
        self.setWidgetResizable(True)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setWidget(self._content)

    @property
    def typed(self) -> str:
        """What is typed in a row and not kept yet; empty: nothing is lost with the step."""
        return next((row.typed for row in self.rows if row.typed), "")

    def show_rows(self, rows: Sequence[Row]) -> None:
        """Put other rows in place of those that are shown, from the top on."""
        self.rows = list(rows)
        while (item := self._column.takeAt(0)) is not None:
            widget = item.widget()
            if widget is not None:
                widget.hide()
                widget.deleteLater()
        for row in self.rows:
            self._column.addWidget(row)
        self._column.addStretch(1)
        self.verticalScrollBar().setValue(0)
        before: QWidget = self
        for row in self.rows:
            for part in _keyboard_parts(row):
                self.setTabOrder(before, part)
                before = part

    def bring(self, row: Row) -> None:
        """Bring a row into sight, and the keyboard to what can be done in it."""
        self.verticalScrollBar().setValue(row.geometry().top() - SIGHT_PX)
        parts = [part for part in _keyboard_parts(row) if part.isVisibleTo(row)]
        (parts[0] if parts else self).setFocus()

    def all_typed(self) -> Typed:
        """Return what stands in the fields, to be put back into the same rows made anew."""
        return {
            (type(row), row.wants): [field.text() for field in row.fields()] for row in self.rows
        }

    def put_back(self, typed: Typed) -> None:
        """Fill in again what was typed."""
        for row in self.rows:
            texts = typed.get((type(row), row.wants), [])
            for field, text in zip(row.fields(), texts, strict=False):
                field.setText(text)

    def set_look(self, palette: Palette, sizes: Sizes) -> None:
        """Take theme and sizes."""
        self._content.setStyleSheet(
            f"QWidget#content, QLabel {{ background: {palette.page}; color: {palette.ink}; }}"
        )
        self.setStyleSheet(f"QScrollBar:vertical {{ width: {round(sizes.target_px * 0.6)}px; }}")
        for row in self.rows:
            row.set_look(palette, sizes)


def _keyboard_parts(row: Row) -> list[QWidget]:
    parts = row.findChildren(QWidget)
    return [part for part in parts if part.focusPolicy() & Qt.FocusPolicy.TabFocus]

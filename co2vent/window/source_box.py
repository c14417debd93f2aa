"""The field for the source: typed, or chosen from the ports that are there when it is opened."""

from PySide6.QtCore import QModelIndex, QPersistentModelIndex, QSize, Qt, Signal
from PySide6.QtGui import QFont
from PySide6.QtWidgets import (
    QComboBox,
    QStyledItemDelegate,
    QStyleOptionViewItem,
    QWidget,
)

from co2vent.wire.ports import list_ports

DESCRIPTION = Qt.ItemDataRole.UserRole


class _PortRow(QStyledItemDelegate):
    """A port with what the system says of it, high enough for a gloved finger."""

    height_px = 57

    def initStyleOption(
        self, option: QStyleOptionViewItem, index: QModelIndex | QPersistentModelIndex
    ) -> None:
        super().initStyleOption(option, index)
        description = index.data(DESCRIPTION)
        if description:
            option.text = f"{option.text}   {description}"

    def sizeHint(
        self, option: QStyleOptionViewItem, index: QModelIndex | QPersistentModelIndex
    ) -> QSize:
        size = super().sizeHint(option, index)
        return QSize(size.width(), max(size.height(), self.height_px))


class SourceBox(QComboBox):
    """An editable list of ports, looked up anew each time it is opened."""

    entered = Signal()  # the key Return in the text

    def __init__(self, used_before: str, parent: QWidget | None = None) -> None:
        """Offer `used_before` first, then the ports."""
        super().__init__(parent)
        self._used_before = used_before
        self._row = _PortRow(self)
        self.setItemDelegate(self._row)
        self.setEditable(True)
        self.setInsertPolicy(QComboBox.InsertPolicy.NoInsert)
        self.setPlaceholderText("/dev/ttyUSB0   COM3   tcp://host:port   modbus-tcp://…")
        edit = self.lineEdit()
        assert edit is not None
        edit.setPlaceholderText(self.placeholderText())
        edit.returnPressed.connect(self.entered)
        self._list_ports()

    def showPopup(self) -> None:
        """List the ports that are there now; a gauge may have been plugged in since."""
        typed = self.currentText()
        self.blockSignals(True)
        self._list_ports()
        self.setEditText(typed)
        self.blockSignals(False)
        super().showPopup()

    def set_row_height(self, height_px: int) -> None:
        """Set the height of a row of the list [logical pixels]."""
        self._row.height_px = height_px

    def setFont(self, font: QFont | str) -> None:  # type: ignore[override]
        """Give the text the font too: the style sheet keeps it from following."""
        super().setFont(font)
        edit = self.lineEdit()
        if edit is not None:
            edit.setFont(font)

    def _list_ports(self) -> None:
        self.clear()
        if self._used_before:
            self.addItem(self._used_before)
        for port in list_ports():
            if port.device != self._used_before:
                self.addItem(port.device)
                described = port.description if port.description != "n/a" else ""
                self.setItemData(self.count() - 1, described, DESCRIPTION)

"""The line at the foot of the job page: a reason, a note or a role, kept until the job has it."""

from PySide6.QtWidgets import QLineEdit, QWidget

from co2vent.guidance.job_items import MAX_NOTE
from co2vent.window.words import translate


class FootLine(QLineEdit):
    """Hidden until asked for. What was begun for one purpose is there again when asked anew."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.purpose = ""  # empty while it is away
        self._drafts: dict[str, str] = {}
        self.setMaxLength(MAX_NOTE)
        self.hide()

    @property
    def typed(self) -> str:
        """What was typed for any purpose and is not kept yet."""
        return self.text().strip() or next((text for text in self._drafts.values() if text), "")

    def ask(self, purpose: str) -> None:
        """Show the line for skip, back, note, sign or "withdraw ID"; asking again puts it away."""
        if self.purpose == purpose and self.isVisible():
            self.put_away()
            return
        self.put_away()
        self.purpose = purpose
        self.setText(self._drafts.pop(purpose, ""))
        self.speak()
        self.show()
        self.setFocus()

    def speak(self) -> None:
        """Say in the language of the screen what is to be written."""
        if not self.purpose:
            return
        self.setPlaceholderText(
            {
                "skip": translate("Job", "Why is this step left out? Enter keeps it"),
                "back": translate("Job", "Why one step back? Enter keeps it"),
                "withdraw": translate("Job", "Why is it taken back? Enter keeps it"),
                "note": translate("Job", "Note for the record. Enter keeps it"),
                "sign": translate("Job", "Your role, such as technician. Enter signs"),
            }[self.purpose.partition(" ")[0]]
        )
        self.setAccessibleName(self.placeholderText())

    def put_away(self) -> None:
        """Hide the line; its words stay for the next time."""
        if self.purpose and self.text().strip():
            self._drafts[self.purpose] = self.text()
        self._close()

    def kept(self) -> None:
        """Hide the line and forget its words: the job has them."""
        self._close()

    def forget(self) -> None:
        """Forget everything: another job begins."""
        self._drafts.clear()
        self._close()

    def _close(self) -> None:
        self.purpose = ""
        self.clear()
        self.hide()

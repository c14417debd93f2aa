"""The style sheet of keys, lists and fields, from the palette."""

from co2vent.window.theme import Palette


def style_sheet(palette: Palette, target_px: int) -> str:
    """Return the style sheet of the whole window; scroll bars are `target_px` wide, for gloves."""
    return f"""
    QMainWindow, QStackedWidget, QDialog {{ background: {palette.page}; color: {palette.ink}; }}
    QToolButton, QPushButton {{
        background: {palette.key}; color: {palette.key_ink};
        border: 2px solid {palette.rule}; border-radius: 4px; padding: 2px 6px;
    }}
    QToolButton:focus, QPushButton:focus {{ border: 4px solid {palette.ink}; }}
    QToolButton:pressed, QPushButton:pressed, QToolButton:checked {{
        background: {palette.ink}; color: {palette.page};
    }}
    QToolButton:disabled, QPushButton:disabled {{
        background: {palette.surface}; color: {palette.faint}; border-style: dashed;
    }}
    QLineEdit, QComboBox, QSpinBox, QDoubleSpinBox, QListWidget, QPlainTextEdit, QTextEdit {{
        background: {palette.page}; color: {palette.ink};
        border: 2px solid {palette.rule}; padding: 3px;
        selection-background-color: {palette.ink}; selection-color: {palette.page};
    }}
    QLineEdit:focus, QComboBox:focus, QListWidget:focus, QDoubleSpinBox:focus {{
        border: 3px solid {palette.ink};
    }}
    QScrollBar:vertical {{ width: {target_px}px; background: {palette.surface}; margin: 0; }}
    QScrollBar:horizontal {{ height: {target_px}px; background: {palette.surface}; margin: 0; }}
    QScrollBar::handle {{ background: {palette.rule}; border-radius: 4px; }}
    QScrollBar::handle:vertical {{ min-height: {target_px}px; }}
    QScrollBar::handle:horizontal {{ min-width: {target_px}px; }}
    QScrollBar::add-line, QScrollBar::sub-line {{ width: 0; height: 0; }}
    QLabel {{ color: {palette.ink}; }}
    QMenu {{ background: {palette.page}; color: {palette.ink}; border: 2px solid {palette.ink}; }}
    QMenu::item {{ padding: 12px 24px; }}
    QMenu::item:selected {{ background: {palette.ink}; color: {palette.page}; }}
    """

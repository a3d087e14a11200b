"""Sizes of type and spaces of every window, and the style sheet made of them and of its colours."""

from __future__ import annotations

from dataclasses import dataclass
from pathlib import Path
from string import Template

from coach.desktop.shared.looks import looks
from coach.desktop.shared.palettes import Palette


@dataclass(frozen=True, slots=True)
class TypeScale:
    """Sizes of type in pixels, for windows read from the desk's distance."""

    small_px: int
    body_px: int
    lead_px: int
    title_px: int
    display_px: int


def type_scale(factor: float | None = None) -> TypeScale:
    """Give the sizes enlarged by ``factor`` (1 to 2), by default as the windows have it now."""
    factor = looks().text if factor is None else factor
    return TypeScale(*(round(size * factor) for size in (13, 16, 20, 27, 44)))


SPACES_PX = (4, 8, 12, 20, 32, 52)
"""The only distances between parts of a window."""

TARGET_PX = 44
"""Least height of anything to be pressed, as WCAG 2.2's criterion 2.5.5 (AAA) asks."""

_PADDING_PX = 8
_BORDER_PX = 2
_ARROW_PX, _MARK_PX = 28, 12
ARROWS = Path(__file__).with_name("arrows")
"""A folder a palette: in its ``accent``, where nothing can be done its ``line``, and on a filled
ground its ``on_accent``. Style sheets call it ``arrows:``, for Qt reads no quotation mark in a path
there."""

_IN_SHEET = [name for name in Palette.__slots__ if name not in ("series", "scene")]

_SHEET = Template("""
* { color: $ink; }
QMainWindow, QDialog, QWidget#page { background: $paper; }
QToolTip { background: $ink; color: $card; border: 0; padding: 6px; }
QLabel { background: transparent; }
QLabel[role="soft"] { color: $ink_soft; }
QLabel[role="lead"] { font-size: ${lead}px; }
QLabel[role="title"] { font-size: ${title}px; font-weight: bold; }
QLabel[role="display"] { font-size: ${display}px; font-weight: bold; }
QLabel[role="badge"] {
    background: $accent; color: $on_accent; border-radius: 10px; padding: 4px 14px;
}
QLabel[role="caution"] { color: $caution; font-weight: bold; }
QFrame[role="card"] { background: $card; border: 1px solid $hairline; border-radius: 14px; }
QFrame[role="warning"] {
    background: $caution_wash; border: 2px solid $caution; border-radius: 14px;
}
QPushButton {
    background: $card; color: $accent; border: ${border}px solid $accent; border-radius: 12px;
    padding: ${padding}px 18px; min-height: ${target}px; font-weight: bold;
}
QPushButton:hover { background: $accent_wash; }
QPushButton:pressed { background: $accent_deep; color: $on_accent; }
QPushButton:checked, QPushButton[role="primary"] { background: $accent; color: $on_accent; }
QPushButton[role="primary"]:hover { background: $accent_deep; }
QPushButton[role="stop"] { color: $caution; border-color: $caution; }
QPushButton[role="stop"]:hover { background: $caution_wash; }
QPushButton[role="stop"]:pressed { background: $caution; color: $card; }
QPushButton:focus, QPushButton[role="primary"]:focus, QPushButton[role="stop"]:focus {
    border: 4px solid $focus; padding: 6px 16px;
}
QPushButton:disabled, QPushButton[role="primary"]:disabled, QPushButton[role="stop"]:disabled {
    color: $ink_soft; border-color: $hairline; background: $paper;
}
QPushButton:checked:disabled { border-color: $line; background: $hairline; }
QLineEdit, QPlainTextEdit, QComboBox, QAbstractSpinBox, QDateEdit {
    background: $card; border: 1px solid $line; border-radius: 8px; padding: 6px 10px;
    min-height: 28px; selection-background-color: $accent; selection-color: $on_accent;
    placeholder-text-color: $ink_soft;
}
QLineEdit:focus, QPlainTextEdit:focus, QComboBox:focus, QAbstractSpinBox:focus {
    border: 3px solid $focus;
}
QLineEdit:disabled, QPlainTextEdit:disabled, QComboBox:disabled, QAbstractSpinBox:disabled {
    background: $paper; color: $ink_soft; border-color: $hairline;
}
QComboBox, QAbstractSpinBox { padding-right: ${arrow}px; }
QComboBox::drop-down, QAbstractSpinBox::up-button, QAbstractSpinBox::down-button,
QDateEdit::drop-down {
    subcontrol-origin: border; width: ${arrow}px; background: transparent; border: 0;
    border-radius: 7px;
}
QComboBox::drop-down, QDateEdit::drop-down { subcontrol-position: center right; }
QAbstractSpinBox::up-button { subcontrol-position: top right; }
QAbstractSpinBox::down-button { subcontrol-position: bottom right; }
QAbstractSpinBox::up-button:hover, QAbstractSpinBox::down-button:hover,
QComboBox::drop-down:hover, QDateEdit::drop-down:hover { background: $accent_wash; }
QAbstractSpinBox::up-button:pressed, QAbstractSpinBox::down-button:pressed {
    background: $hairline;
}
QAbstractSpinBox::up-arrow, QAbstractSpinBox::down-arrow, QComboBox::down-arrow {
    width: ${mark}px; height: ${mark}px;
}
QAbstractSpinBox::up-arrow { image: url("$arrows/up.svg"); }
QAbstractSpinBox::down-arrow, QComboBox::down-arrow { image: url("$arrows/down.svg"); }
QAbstractSpinBox::up-arrow:disabled, QAbstractSpinBox::up-arrow:off {
    image: url("$arrows/up_off.svg");
}
QAbstractSpinBox::down-arrow:disabled, QAbstractSpinBox::down-arrow:off,
QComboBox::down-arrow:disabled {
    image: url("$arrows/down_off.svg");
}
QCheckBox { border: 2px solid transparent; border-radius: 6px; }
QCheckBox::indicator {
    width: ${mark}px; height: ${mark}px; background: $card; border: 2px solid $line;
    border-radius: 4px;
}
QCheckBox::indicator:checked {
    background: $accent; border-color: $accent; image: url("$arrows/check.svg");
}
QCheckBox::indicator:checked:disabled { background: $line; border-color: $line; }
QPushButton::menu-indicator {
    image: url("$arrows/down_on.svg"); width: ${mark}px; height: ${mark}px;
    subcontrol-origin: padding; subcontrol-position: center right; right: 4px;
}
QCheckBox:focus { border-color: $focus; }
QCheckBox:disabled, QRadioButton:disabled, QLabel:disabled, QGroupBox:disabled {
    color: $ink_soft;
}
QAbstractItemView {
    background: $card; border: 1px solid $line; border-radius: 8px; gridline-color: $hairline;
    alternate-background-color: $paper;
    selection-background-color: $accent_wash; selection-color: $ink;
}
QScrollArea[role="reading"]:focus { border: 3px solid $focus; border-radius: 8px; }
QAbstractItemView:focus { border: 3px solid $focus; }
QListView::item:selected, QTreeView::item:selected { background: $accent_wash; color: $ink; }
QHeaderView { background: $paper; border: 0; border-radius: 0; }
QHeaderView::section {
    background: $paper; color: $ink_soft; border: 0; border-bottom: 2px solid $line;
    padding: 8px 5px; font-weight: bold;
}
QProgressBar {
    background: $hairline; border: 0; border-radius: 6px; height: 12px; color: transparent;
}
QProgressBar::chunk { background: $accent; border-radius: 6px; }
QMenuBar { background: $card; border-bottom: 1px solid $hairline; padding: 2px 8px; }
QMenuBar::item { padding: 6px 12px; border-radius: 6px; background: transparent; }
QMenuBar::item:selected { background: $accent_wash; }
QTabWidget::pane { border: 0; }
QTabBar { background: $paper; }
QTabBar::tab {
    background: transparent; color: $ink_soft; padding: 8px 20px; margin-left: 8px;
    border: 2px solid transparent; border-bottom: 4px solid transparent;
}
QTabBar::tab:selected { color: $accent; border-bottom: 4px solid $accent; font-weight: bold; }
QTabBar::tab:hover { background: $accent_wash; }
QTabBar::tab:selected:focus { border: 2px solid $focus; border-bottom: 4px solid $accent; }
QMenu { background: $card; border: 1px solid $line; padding: 6px; }
QMenu::item { padding: 8px 24px; }
QMenu::item:selected { background: $accent; color: $on_accent; }
QScrollBar:vertical { background: transparent; width: 14px; margin: 0; }
QScrollBar::handle:vertical { background: $line; border-radius: 7px; min-height: 40px; }
QScrollBar:horizontal { background: transparent; height: 14px; margin: 0; }
QScrollBar::handle:horizontal { background: $line; border-radius: 7px; min-width: 40px; }
QScrollBar::add-line, QScrollBar::sub-line { width: 0; height: 0; }
QScrollBar::add-page, QScrollBar::sub-page { background: transparent; }
""")


def style_sheet(palette: Palette, factor: float) -> str:
    """Give the style sheet of the whole application.

    Widgets choose their looks by the dynamic property ``role``: labels ``soft``, ``lead``,
    ``title``, ``display``, ``caution``; frames ``card``, ``warning``; buttons ``primary``,
    ``stop``.
    """
    sizes = type_scale(factor)
    return _SHEET.substitute(
        {
            name: getattr(palette, name)
            for name in Palette.__slots__
            if name not in ("series", "scene")
        },
        border=_BORDER_PX,
        arrow=round(_ARROW_PX * factor),
        mark=round(_MARK_PX * factor),
        arrows=f"arrows:{palette.name}",
        padding=_PADDING_PX,
        lead=sizes.lead_px,
        title=sizes.title_px,
        display=sizes.display_px,
        target=TARGET_PX - 2 * (_PADDING_PX + _BORDER_PX),
    )

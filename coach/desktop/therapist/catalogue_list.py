"""The catalogue to choose from: grouped by position, narrowed down by typing."""

from __future__ import annotations

from PyQt6.QtCore import Qt, pyqtSignal
from PyQt6.QtGui import QKeyEvent
from PyQt6.QtWidgets import QLineEdit, QListWidget, QListWidgetItem, QVBoxLayout, QWidget

from coach.catalogue import Catalogue, exercise_title
from coach.desktop.shared.theme import SPACES_PX, type_scale
from coach.desktop.shared.typeface import font
from coach.desktop.therapist.keys import key_name
from coach.desktop.therapist.plan_fields import camera_text
from coach.desktop.therapist.rows import set_rows
from coach.domain.exercise import Exercise
from coach.domain.movement import Position
from coach.review.wording import movement_name
from coach.texts import translate

_ROLE = Qt.ItemDataRole.UserRole


class FilterBox(QLineEdit):
    """A line whose arrow keys move in the list below it."""

    moved = pyqtSignal(int)

    def keyPressEvent(self, event: QKeyEvent | None) -> None:  # noqa: N802
        """Hand on Up and Down."""
        step = {Qt.Key.Key_Up: -1, Qt.Key.Key_Down: 1}
        if event is not None and event.key() in step:
            self.moved.emit(step[Qt.Key(event.key())])
            return
        super().keyPressEvent(event)


class CatalogueList(QWidget):
    """Tells by its slug which exercise is wanted: Enter in the box or in the list."""

    wanted = pyqtSignal(str)

    def __init__(self, exercises: Catalogue) -> None:
        """Show all exercises."""
        super().__init__()
        self.filter = FilterBox()
        self.filter.setAccessibleName(translate("plans", "Filter the catalogue"))
        hint = translate("plans", "Filter ({find}), {enter} adds")
        self.filter.setPlaceholderText(
            hint.format(find=key_name("Ctrl+F"), enter=key_name("Enter"))
        )
        self.list = QListWidget()
        self.list.setAccessibleName(translate("plans", "Exercises of the catalogue by position"))
        self.list.setWordWrap(True)
        self.list.setTextElideMode(Qt.TextElideMode.ElideNone)
        self.list.setResizeMode(QListWidget.ResizeMode.Adjust)
        self.list.setVerticalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOn)
        set_rows(self.list, wrapped=True)
        self.list.setFont(font(type_scale().small_px + 1))
        self.list.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        for position in Position:
            self._group(position, [e for e in exercises.all if e.position is position])
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(SPACES_PX[1])
        column.addWidget(self.filter)
        column.addWidget(self.list, 1)
        self.filter.textChanged.connect(self._narrow)
        self.filter.moved.connect(self._move)
        self.filter.returnPressed.connect(lambda: self._want(self.list.currentItem()))
        self.list.itemActivated.connect(self._want)
        self._narrow("")

    def _group(self, position: Position, exercises: list[Exercise]) -> None:
        if not exercises:
            return
        heading = QListWidgetItem(_heading(position))
        heading.setFlags(Qt.ItemFlag.NoItemFlags)
        heading.setFont(font(type_scale().small_px + 1, bold=True))
        self.list.addItem(heading)
        for exercise in exercises:
            name, movement = exercise_title(exercise), exercise.movement
            item = QListWidgetItem(name.removesuffix(f", {position}"))
            measured = (
                translate("catalogue", "by time") if movement is None else movement_name(movement)
            )
            words = (name, exercise.name, exercise.exercise, measured, _heading(position))
            known = (*words, position, movement or "", *exercise.equipment)
            item.setData(_ROLE, (exercise.exercise, " ".join(known).lower()))
            item.setToolTip(_how(exercise))
            self.list.addItem(item)

    def _items(self) -> list[QListWidgetItem]:
        found = (self.list.item(row) for row in range(self.list.count()))
        return [item for item in found if item is not None]

    def _narrow(self, text: str) -> None:
        """Show what has every word typed; choose the first of them."""
        wanted = text.lower().split()
        heading: QListWidgetItem | None = None
        for item in self._items():
            data = item.data(_ROLE)
            if data is None:
                heading = item
                item.setHidden(True)
                continue
            hidden = not all(word in data[1] for word in wanted)
            item.setHidden(hidden)
            if not hidden and heading is not None:
                heading.setHidden(False)
        shown = self._shown()
        self.list.setCurrentItem(shown[0] if shown else None)

    def _shown(self) -> list[QListWidgetItem]:
        return [i for i in self._items() if i.data(_ROLE) is not None and not i.isHidden()]

    def _move(self, step: int) -> None:
        shown, current = self._shown(), self.list.currentItem()
        if shown:
            at = shown.index(current) + step if current in shown else 0
            self.list.setCurrentItem(shown[max(0, min(at, len(shown) - 1))])

    def _want(self, item: QListWidgetItem | None) -> None:
        if item is not None and not item.isHidden() and (data := item.data(_ROLE)) is not None:
            self.wanted.emit(data[0])
            self.filter.selectAll()


def _heading(position: Position) -> str:
    match position:
        case Position.STANDING:
            return translate("plans", "Standing")
        case Position.SITTING:
            return translate("plans", "Sitting")
        case Position.SUPINE:
            return translate("plans", "Supine")
        case Position.PRONE:
            return translate("plans", "Prone")
        case Position.SIDE_LYING:
            return translate("plans", "Side-lying")
        case Position.DOORWAY:
            return translate("plans", "Door frame")


def _how(exercise: Exercise) -> str:
    camera = camera_text(exercise.view)
    if exercise.movement is None:
        return translate("plans", "By time, not measured; {camera}").format(camera=camera)
    measured = translate("plans", "Measured: {movement}; {camera}")
    return measured.format(movement=movement_name(exercise.movement), camera=camera)

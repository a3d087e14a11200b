"""The place of a demonstration, which stays empty for an exercise that has none."""

from __future__ import annotations

from PyQt6.QtWidgets import QVBoxLayout, QWidget

from coach.catalogue import catalogue
from coach.desktop.patient.demonstration import Demonstration
from coach.domain.exercise import Exercise
from coach.domain.movement import Side
from coach.domain.plan import PlannedExercise


class DemonstrationPlace(QWidget):
    """Plays the demonstration of the planned exercise; hidden for a bare movement."""

    def __init__(self, parent: QWidget | None = None) -> None:
        """Begin hidden."""
        super().__init__(parent)
        self._shown: tuple[Exercise, Side] | None = None
        self.demonstration: Demonstration | None = None
        self._column = QVBoxLayout(self)
        self._column.setContentsMargins(0, 0, 0, 0)
        self.hide()

    def show_planned(self, planned: PlannedExercise | None) -> bool:
        """Show this exercise and say whether there is anything to show."""
        exercise = None if planned is None else catalogue().by_name.get(planned.exercise or "")
        if planned is None or exercise is None:
            self._shown = None
            self.hide()
            return False
        if self._shown != (exercise, planned.side):
            self._shown = (exercise, planned.side)
            if self.demonstration is None:
                # The live picture beside it is a mirror, so this is one as well.
                self.demonstration = Demonstration(
                    exercise, planned.side, mirrored=True, parent=self
                )
                self._column.addWidget(self.demonstration)
            else:
                self.demonstration.show_exercise(exercise, planned.side)
        self.show()
        return True

"""Getting ready for an exercise: when somebody is in place and it may begin."""

from __future__ import annotations

from coach import cues, placing
from coach.domain.agenda import AgendaItem
from coach.domain.pose import Pose
from coach.domain.reading import Doubt

READY_S = 1.0
"""So long must everything be right before an exercise begins."""
ADVICE_S = 10.0
"""A second person about, or little room, is told for so long before the exercise begins all the
same: it may be the best there is."""
UNSEEN_S = 20.0
"""Where nothing is measured, so long is waited for somebody to come into view."""
_ADVICE = (None, Doubt.NOT_ALONE, Doubt.NO_ROOM, Doubt.NO_ROOM_ABOVE)


class Readying:
    """Watches somebody get ready for one exercise, frame by frame."""

    def __init__(self, item: AgendaItem, now_s: float) -> None:
        """Begin to look at frame stamp ``now_s``."""
        self._item = item
        self._since_s = now_s
        self._placing = placing.begin(item.planned)
        self.told = False
        """Whether somebody said so, by hand or key."""

    @property
    def doubt(self) -> Doubt | None:
        """The one thing to change before the exercise can begin."""
        return self._placing.doubt

    def advance(self, now_s: float, pose: Pose | None, hearing: cues.Hearing) -> bool:
        """Take a frame; tell whether the exercise may begin: in place, and with all heard."""
        self._placing = placing.advance(self._placing, now_s, pose)
        here_s = now_s - self._since_s
        if self.told:
            return True
        bearable = self.doubt in _ADVICE and here_s >= ADVICE_S
        if hearing.awaits(self._item):
            return False
        if self._item.planned.movement is not None:
            return bearable or self._placing.ready_s >= READY_S
        return bearable or self.doubt is None or here_s >= UNSEEN_S

"""How far an arm goes up, as an arc seen from the front; examples, never this patient's arm."""

from __future__ import annotations

import math

from PyQt6.QtCore import QCoreApplication, Qt

from coach.catalogue.pages import Drawing
from coach.desktop.patient.drawings.board import LEFT, Board
from coach.desktop.shared.looks import colours

translate = QCoreApplication.translate

_FREE_DEG = 170.0
"""A free arm: abduction of healthy people is 165 (Walker 1984) to 184 (Boone & Azen 1979)."""
_EXAMPLES = {
    Drawing.REACH_PAINFUL: (60.0, 110.0),
    Drawing.REACH_STIFF: (65.0, 95.0),
    Drawing.REACH_THAWING: (100.0, 132.0),
}
"""Free of pain up to, and stopped at, in degrees: chosen to be told apart, of nobody."""
_SHY_DEG = 6.0
"""How far before the sore part the arm turns back."""
_X, _Y, _ARM = 27.0, 43.0, 33.0


def paint_reach(board: Board, drawing: Drawing) -> None:
    """Paint the trunk, a free arm's way as a dashed arc, and this phase's way within it."""
    easy_deg, end_deg = _EXAMPLES[drawing]
    painful = drawing is Drawing.REACH_PAINFUL
    board.fill(board.sector(_X, _Y, _ARM, 0, easy_deg), colours().rest, 0.55)
    edge = board.sector(_X, _Y, _ARM, easy_deg, end_deg)
    board.fill(edge, colours().caution_wash if painful else colours().hold, 0.9 if painful else 0.5)
    board.hatch(edge, colours().caution if painful else colours().series[1])
    board.line(
        *(_on(_ARM, at) for at in range(0, round(_FREE_DEG) + 1, 2)),
        colour=colours().ink_soft,
        width=0.6,
        style=Qt.PenStyle.DashLine,
    )
    trunk = board.path([(8, 40), (26, 40), (25, 60), (24, 82), (10, 82), (8, 60)], closed=True)
    board.fill(trunk, colours().accent_wash)
    board.stroke(trunk, colours().accent, 0.7)
    head = board.disc(16, 27, 8.5)
    board.fill(head, colours().accent_wash)
    board.stroke(head, colours().accent, 0.7)
    arm_deg = easy_deg - _SHY_DEG if painful else (easy_deg + end_deg) / 2
    board.line((_X - 2, _Y), _on(_ARM, arm_deg), colour=colours().accent, width=3.0)
    last = (
        translate("drawings", "sore: turn back before")
        if painful
        else translate("drawings", "a mild pull: stay here")
    )
    _key(board, 5, "free", translate("drawings", "how far a free arm goes"))
    _key(board, 25, "easy", translate("drawings", "easy, without pain"))
    _key(board, 45, "sore" if painful else "pull", last)
    board.word((64, 66, 36, 14), translate("drawings", "An example, not your arm"), size=3.8)


def _on(reach: float, at_deg: float) -> tuple[float, float]:
    return (
        _X + reach * math.sin(math.radians(at_deg)),
        _Y + reach * math.cos(math.radians(at_deg)),
    )


def _key(board: Board, top: float, kind: str, words: str) -> None:
    middle = top + 4
    if kind == "free":
        board.line(
            (64, middle),
            (70, middle),
            colour=colours().ink_soft,
            width=0.6,
            style=Qt.PenStyle.DashLine,
        )
    else:
        box = board.box(64, top + 1, 6, 6)
        if kind == "easy":
            board.fill(box, colours().rest, 0.55)
        else:
            sore = kind == "sore"
            board.fill(box, colours().caution_wash if sore else colours().hold, 0.7)
            board.hatch(box, colours().caution if sore else colours().series[1])
        board.stroke(box, colours().line, 0.4)
    board.word((72, top - 4, 28, 16), words, size=4.3, align=LEFT)

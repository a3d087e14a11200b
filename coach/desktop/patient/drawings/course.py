"""The three phases over time, each fading into the next; and pain after a session."""

from __future__ import annotations

from PyQt6.QtCore import QCoreApplication, Qt

from coach.desktop.patient.drawings.board import LEFT, Board
from coach.desktop.shared.looks import colours
from coach.domain.exercise import StiffnessPhase

translate = QCoreApplication.translate

_FLOOR, _TOP = 58.0, 26.0
_HUMPS = {
    StiffnessPhase.PAINFUL: (2.0, 20.0, 46.0, 1),
    StiffnessPhase.STIFF: (20.0, 46.0, 72.0, 0),
    StiffnessPhase.THAWING: (46.0, 78.0, 98.0, 2),
}
"""Where each begins, is at its height and ends on the board, and which of the series it is: without
a scale, since the published lengths differ."""


def paint_course(board: Board, phase: StiffnessPhase | None) -> None:
    """Paint three humps that overlap; ``phase`` is the one the therapist set."""
    names = {
        StiffnessPhase.PAINFUL: translate("drawings", "painful"),
        StiffnessPhase.STIFF: translate("drawings", "stiff"),
        StiffnessPhase.THAWING: translate("drawings", "loosening"),
    }
    for each, (begin, peak, end, place) in _HUMPS.items():
        colour = colours().series[place]
        hump = board.path(
            [
                (begin, _FLOOR),
                (begin + 0.45 * (peak - begin), _TOP + 18),
                (peak, _TOP),
                (peak + 0.55 * (end - peak), _TOP + 18),
                (end, _FLOOR),
            ]
        )
        board.fill(hump, colour, 0.28)
        own = each is phase
        board.stroke(hump, colour, 1.6 if own else 0.8)
        board.word((peak - 16, _TOP + 14, 32, 8), names[each], size=5.2, bold=True)
        if own:
            board.word(
                (max(0.0, min(peak - 22, 56)), 3, 44, 12),
                translate("drawings", "here, as your therapist sees it now"),
                size=4.4,
                bold=True,
            )
            board.arrow((peak, 16), (peak, _TOP - 2))
    board.arrow((1, _FLOOR), (99, _FLOOR))
    board.word((60, _FLOOR + 2, 38, 7), translate("drawings", "months and years"), size=4.4)
    board.word(
        (0, 70, 100, 12),
        translate("drawings", "No sharp borders, and every shoulder takes its own time"),
        size=4.4,
    )


def paint_afterwards(board: Board) -> None:
    """Paint pain over the hours after a session: soon down again, or still up."""
    floor, before = 66.0, 48.0
    board.arrow((14, floor), (98, floor))
    board.arrow((14, floor), (14, 12))
    board.word((0, 2, 34, 8), translate("drawings", "pain"), bold=True, align=LEFT)
    board.word((20, floor + 1, 18, 14), translate("drawings", "session"), size=4.2)
    board.word((40, floor + 1, 24, 14), translate("drawings", "half an hour"), size=4.2)
    board.word((76, floor + 1, 22, 14), translate("drawings", "night"), size=4.2)
    session = board.box(22, 12, 14, floor - 12)
    board.fill(session, colours().accent_wash)
    board.line((52, 12), (52, floor), colour=colours().ink_soft, style=Qt.PenStyle.DashLine)
    board.line(
        (14, before), (98, before), colour=colours().ink_soft, width=0.5, style=Qt.PenStyle.DotLine
    )
    soon = [(14.0, before), (24.0, 46.0), (34.0, 34.0), (44.0, 42.0), (54.0, 47.5), (96.0, 48.0)]
    stays = [(14.0, before), (24.0, 44.0), (34.0, 25.0), (52.0, 23.0), (74.0, 22.0), (96.0, 21.0)]
    board.stroke(board.path(soon), colours().series[2], 1.6)
    board.stroke(board.path(stays), colours().caution, 1.6, Qt.PenStyle.DashLine)
    board.word(
        (55, 7, 43, 13),
        translate("drawings", "still up: ring"),
        bold=True,
        colour=colours().caution,
    )
    board.word((55, 50, 43, 13), translate("drawings", "down again: all right"), bold=True)

"""The scale from nothing over a pull to pain, and a hand that says where to stay."""

from __future__ import annotations

from PyQt6.QtCore import QCoreApplication

from coach.desktop.patient.drawings.board import CENTRE, Board
from coach.desktop.shared.looks import colours

translate = QCoreApplication.translate

_LEFT, _TOP, _TALL = 4.0, 34.0, 17.0
_ZONES = (30.0, 34.0, 28.0)


def paint_pull(board: Board) -> None:
    """Paint three zones side by side, with the pointing hand over the middle one."""
    names = (
        translate("drawings", "nothing yet"),
        translate("drawings", "it pulls"),
        translate("drawings", "it hurts"),
    )
    below = (
        translate("drawings", "go on slowly"),
        translate("drawings", "stay here and breathe"),
        translate("drawings", "too far: ease off"),
    )
    x = _LEFT
    for index, (width, name, words) in enumerate(zip(_ZONES, names, below, strict=True)):
        zone = board.box(x, _TOP, width, _TALL)
        if index == 0:
            board.fill(zone, colours().rest, 0.4)
        elif index == 1:
            board.fill(zone, colours().hold, 0.75)
        else:
            board.fill(zone, colours().caution_wash)
            board.hatch(zone, colours().caution)
            plate = board.box(x + 2, _TOP + 4, width - 4, _TALL - 8)
            board.fill(plate, colours().caution_wash)
        board.stroke(zone, colours().ink, 1.5 if index == 1 else 0.6)
        board.word((x + 1, _TOP, width - 2, _TALL), name, size=5.4, bold=True)
        board.word((x, _TOP + _TALL + 3, width, 14), words, size=4.6, align=CENTRE)
        x += width
    board.arrow((_LEFT, 75), (96, 75))
    board.word((20, 76, 60, 7), translate("drawings", "the further the arm goes"), size=4.2)
    _hand(board, _LEFT + _ZONES[0] + 10, _TOP - 2)


def _hand(board: Board, x: float, tip: float) -> None:
    """Paint a hand that points down at ``x``, ``tip``."""
    hand = board.path(
        [
            (x, tip),
            (x - 2.4, tip - 2.5),
            (x - 2.3, tip - 13),
            (x - 4.8, tip - 14),
            (x - 6.5, tip - 9),
            (x - 8.8, tip - 9.6),
            (x - 7.8, tip - 17),
            (x - 5, tip - 23),
            (x - 4.6, tip - 30),
            (x + 8.6, tip - 30),
            (x + 9.2, tip - 22),
            (x + 11.6, tip - 16),
            (x + 10.6, tip - 12),
            (x + 7.4, tip - 11.4),
            (x + 4.2, tip - 11),
            (x + 2.3, tip - 12.4),
            (x + 2.4, tip - 2.5),
        ],
        closed=True,
    )
    board.fill(hand, colours().card)
    board.stroke(hand, colours().ink, 0.9)
    for dx in (5.0, 8.0):
        board.line((x + dx, tip - 12), (x + dx, tip - 17), colour=colours().ink, width=0.6)

"""The shoulder joint from the front, twice: its capsule loose and thin, and thick and short.

Ball, socket, capsule and the fold below it as any anatomy has them, simplified (common practice);
not to scale.
"""

from __future__ import annotations

from PyQt6.QtCore import QCoreApplication

from coach.desktop.patient.drawings.board import Board
from coach.desktop.shared.looks import colours

translate = QCoreApplication.translate

_LOOSE = ((17, 14), (27, 11), (36, 16), (40, 27), (38, 38), (36, 50), (28, 57), (19, 53), (15, 43))
_TIGHT = ((17, 15), (27, 13), (35, 17), (39, 27), (38, 37), (33, 42), (25, 44), (18, 42), (15, 39))


def paint_joint(board: Board) -> None:
    """Paint both; the socket at the left, the arm hanging at the right."""
    _one(board, 0.0, _LOOSE, 0.9, 0.30)
    _one(board, 50.0, _TIGHT, 3.4, 0.60)
    board.line((50, 6), (50, 82), colour=colours().hairline, width=0.5)
    board.word((0, 0, 49, 7), translate("drawings", "A loose joint"), bold=True)
    board.word((51, 0, 49, 7), translate("drawings", "A frozen joint"), bold=True)
    board.word((0, 44, 14, 6), translate("drawings", "socket"), size=3.8)
    board.word((50.5, 44, 14, 6), translate("drawings", "socket"), size=3.8)
    board.word((20, 22, 15, 7), translate("drawings", "ball"), size=4.4)
    board.word((70, 22, 15, 7), translate("drawings", "ball"), size=4.4)
    board.line((27, 57), (24, 66), colour=colours().ink_soft, width=0.5)
    board.word((1, 66, 28, 12), translate("drawings", "thin bag with a loose fold"), size=4.2)
    board.line((76, 44), (72, 66), colour=colours().ink_soft, width=0.5)
    board.word((52, 66, 26, 12), translate("drawings", "thick bag, no fold"), size=4.2)


def _one(
    board: Board,
    left: float,
    outline: tuple[tuple[float, float], ...],
    wall: float,
    tint: float,
) -> None:
    shift = [(x + left, float(y)) for x, y in outline]
    ball = board.disc(left + 27.5, 27, 10.5)
    arm = (
        board.path(
            [
                (left + 25, 34),
                (left + 38, 30),
                (left + 41, 45),
                (left + 40.5, 79),
                (left + 32, 79),
                (left + 32, 48),
            ],
            closed=True,
        )
        .united(ball)
        .simplified()
    )
    capsule = board.path(shift, closed=True)
    board.fill(capsule, colours().hold, tint)
    board.fill(arm, colours().scene.bone)
    board.stroke(arm, colours().ink, 0.6)
    socket = board.path(
        [
            (left + 5, 27),
            (left + 13, 13),
            (left + 17.5, 15),
            (left + 15.5, 27),
            (left + 17.5, 40),
            (left + 12, 42),
        ],
        closed=True,
    )
    board.fill(socket, colours().scene.bone)
    board.stroke(socket, colours().ink, 0.6)
    board.stroke(capsule, colours().series[1], wall)

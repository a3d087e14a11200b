"""The printed card's columns in landmarks.csv."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

import numpy as np
import pytest
from scipy.spatial.transform import Rotation

from coach.documents.card_columns import CARD_COLUMNS
from coach.documents.landmarks import (
    landmark_header,
    landmark_row,
    landmark_text,
    read_landmarks,
    write_landmarks,
)
from coach.domain.fault import Fault
from coach.domain.pose import Card, Pose

FACING = np.array([[0.0, 0, -1], [0, -1, 0], [-1, 0, 0]])


def a_pose(time_s: float, card: Card | None) -> Pose:
    return Pose(
        time_s, (1280, 720), np.ones((33, 2)), np.zeros((33, 3)), np.full(33, 0.9), card=card
    )


def cards(count: int) -> list[Card]:
    turns = Rotation.random(count, random_state=5).as_matrix()
    return [Card(turn @ FACING, 1.2 + 0.1 * n, 0.6) for n, turn in enumerate(turns)]


def text_of(poses: list[Pose]) -> str:
    return landmark_text("".join(landmark_row(pose.time_s, pose) for pose in poses))


def test_a_card_comes_back_within_its_rounding() -> None:
    given: list[Card | None] = []
    for card in cards(20):
        given += [card, None]
    text = text_of([a_pose(0.1 * n, card) for n, card in enumerate(given)])
    assert text.splitlines()[0].split(",")[-8:] == list(CARD_COLUMNS)
    table = read_landmarks(text.encode(), "landmarks.csv")
    for card, pose in zip(given, table.poses(), strict=True):
        if card is None:
            assert pose.card is None
            continue
        assert pose.card is not None
        off = Rotation.from_matrix(card.axes.T @ pose.card.axes).magnitude()
        assert np.degrees(off) < 0.01
        np.testing.assert_allclose(pose.card.axes.T @ pose.card.axes, np.eye(3), atol=1e-12)
        assert pose.card.turn_error_deg == pytest.approx(card.turn_error_deg, abs=0.051)
        assert pose.card.tilt_error_deg == pytest.approx(card.tilt_error_deg, abs=0.051)
    again = read_landmarks(write_landmarks(table), "t")
    for once, twice in zip(table.poses(), again.poses(), strict=True):
        if once.card is not None and twice.card is not None:
            np.testing.assert_allclose(twice.card.axes, once.card.axes, atol=1e-4)
        assert (once.card is None) == (twice.card is None)


def test_without_a_card_the_table_is_as_it_always_was() -> None:
    text = text_of([a_pose(0.1 * n, None) for n in range(3)])
    header, *rows = text.splitlines()
    assert "card" not in header
    assert f"{header}\n" == landmark_header()
    assert all(row.count(",") == header.count(",") for row in rows)
    assert all(pose.card is None for pose in read_landmarks(text.encode(), "t").poses())
    assert landmark_text("") == landmark_header()


def test_a_card_half_known_is_none() -> None:
    lines = text_of([a_pose(0.0, cards(1)[0])]).splitlines()
    cells = lines[1].split(",")
    cells[-3] = ""
    table = read_landmarks(f"{lines[0]}\n{','.join(cells)}\n".encode(), "t")
    assert next(table.poses()).card is None
    some = "time_s,picture_width_px,picture_height_px,card_up_x\n0,1280,720,0.5\n"
    assert next(read_landmarks(some.encode(), "t").poses()).card is None


@pytest.mark.parametrize(
    ("column", "cell"),
    [("card_up_y", "1.5"), ("card_forward_x", "-2"), ("card_turn_error_deg", "-1"),
     ("card_tilt_error_deg", "1000")],
)  # fmt: skip
def test_what_no_card_has_is_refused(column: str, cell: str) -> None:
    text = f"time_s,picture_width_px,picture_height_px,{column}\n0,1280,720,{cell}\n"
    with pytest.raises(Fault, match=column):
        read_landmarks(text.encode(), "landmarks.csv")


def test_two_equal_axes_are_no_card() -> None:
    lines = text_of([a_pose(0.0, cards(1)[0])]).splitlines()
    cells = lines[1].split(",")
    cells[-8:] = ["0", "1", "0", "0", "1", "0", "1.0", "1.0"]
    table = read_landmarks(f"{lines[0]}\n{','.join(cells)}\n".encode(), "t")
    assert next(table.poses()).card is None


def test_the_guide_names_the_columns() -> None:
    guide = (Path(__file__).parents[2] / "docs" / "session_file.md").read_text(encoding="utf-8")
    part = guide.split("## landmarks.csv")[1].split("## Plan file")[0]
    for column in CARD_COLUMNS:
        assert f"`{column}`" in part


def test_a_table_of_others_needs_no_card() -> None:
    text = text_of([a_pose(0.0, cards(1)[0])])
    bare = replace(read_landmarks(text.encode(), "t"), card=None)
    assert write_landmarks(bare).decode().splitlines()[0] == landmark_header().strip()

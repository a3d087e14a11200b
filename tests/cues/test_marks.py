import pytest

from coach.cues.marks import hold_marks, marks_ahead, next_number_s

LAST = ["5", "4", "3", "2", "1"]


@pytest.mark.parametrize(
    ("hold_s", "said"),
    [
        (60.0, ["halfway", "10", *LAST]),
        (30.0, ["halfway", "10", *LAST]),
        (20.0, ["10", *LAST]),  # halfway is ten
        (12.0, ["10", *LAST]),  # halfway is six, a second before five
        (10.0, LAST),  # ten is the start
        (5.0, ["4", "3", "2", "1"]),
        (2.0, ["1"]),
        (1.0, []),
    ],
)
def test_numbers_of_a_hold_that_is_announced_at_its_very_start(
    hold_s: float, said: list[str]
) -> None:
    marks = marks_ahead(hold_marks(hold_s), remaining_s=hold_s)
    assert [mark.key.removeprefix("number.") for mark in marks] == said


def test_a_late_announcement_leaves_out_the_numbers_it_would_run_into() -> None:
    assert [m.key for m in marks_ahead(hold_marks(5.0), remaining_s=4.2)] == [
        "number.3",
        "number.2",
        "number.1",
    ]


def test_the_next_number_comes_when_its_second_comes() -> None:
    assert next_number_s(time_s=100.0, hold_s=30.0, remaining_s=12.5) == 102.5
    assert next_number_s(time_s=100.0, hold_s=30.0, remaining_s=5.0) == 101.0
    assert next_number_s(time_s=100.0, hold_s=30.0, remaining_s=0.25) == 100.25

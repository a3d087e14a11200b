"""An error as written against the error itself: never less, and less than one step more."""

import pytest
from hypothesis import example, given
from hypothesis import strategies as some

from coach.domain.movement import Unit
from coach.review.wording import change_with_error, half_width, least, with_error


@given(some.floats(0.0, 360.0), some.booleans())
@example(8.5, False)
@example(7.999_999_999, False)
def test_an_error_is_never_written_smaller_than_it_is(error: float, fine: bool) -> None:
    step = 0.1 if fine else 1.0
    written = float(half_width(error, fine=fine))
    assert written >= max(error, step) - 1e-5
    assert written - max(error, step) < step


@pytest.mark.parametrize("error", [6.0, 5.999_999_999, 6.000_000_001])
def test_noise_of_floats_is_no_degree(error: float) -> None:
    assert with_error(100.0, error, Unit.DEGREES) == "100° ± 6°"


@given(some.floats(1.0, 180.0), some.booleans())
@example(8.4, False)
def test_what_a_change_must_exceed_reads_as_its_error_does(error: float, fine: bool) -> None:
    assert with_error(100.0, error, Unit.DEGREES, fine=fine).endswith(
        f" {least(error, Unit.DEGREES, fine=fine)}"
    )


@pytest.mark.parametrize(
    ("change", "fine", "written"),
    [
        (0.3, True, "+0.3"),
        (-0.3, True, "\N{MINUS SIGN}0.3"),
        (0.04, True, "0.0"),
        (0.3, False, "0"),
    ],
)
def test_a_change_has_its_sign_in_the_digits_that_are_written(
    change: float, fine: bool, written: str
) -> None:
    degrees = change_with_error(change, 0.1, Unit.DEGREES, fine=fine)
    assert degrees.split(" ")[0] == f"{written}\N{DEGREE SIGN}"
    percent = change_with_error(change / 100, 0.001, Unit.RATIO, fine=fine)
    ways = {"+": " down", "\N{MINUS SIGN}": " up"}
    assert percent.partition("%")[2] == ways.get(written[0], "")

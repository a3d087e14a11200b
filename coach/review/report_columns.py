"""The columns of the report's table and how its figures were measured, in words."""

from __future__ import annotations

from coach.texts import translate

COLUMNS = (
    "Movement", "Sessions", "First", "Last", "Best", "Of other side", "Change",
    "Detectable from", "Verdict",
)  # fmt: skip
"""Keys of the cells; ``column_title`` says them in the chosen language."""


def column_title(column: str) -> str:
    """Give the heading of a column."""
    return {
        "Movement": translate("review", "Movement"),
        "Sessions": translate("review", "Sessions"),
        "First": translate("review", "First"),
        "Last": translate("review", "Last"),
        "Best": translate("review", "Best"),
        "Of other side": translate("review", "Of other side"),
        "Change": translate("review", "Change"),
        "Detectable from": translate("review", "Detectable from"),
        "Verdict": translate("review", "Verdict"),
    }[column]


def method() -> str:
    """Say how it was measured."""
    return translate(
        "review",
        "Humerothoracic angle (arm against trunk, the shoulder blade's share included) measured by "
        "one camera at home in a self-assisted stretch: neither an active nor a passive range. A "
        "session's value is the median of its completed holds with a still trunk. First and last "
        "are means of up to a week of sessions. Errors are half widths of 95 % intervals; the "
        "share of the other side has only this side's error in it.",
    )

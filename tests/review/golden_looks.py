"""What a look at some invented patients tells, as stores keep it.

``python -m tests.review.golden_looks`` writes ``golden/looks.json`` anew, after ``cohort.RULES``
was raised.
"""

from __future__ import annotations

from pathlib import Path

import msgspec
import numpy as np

from coach.domain.session import SessionDocument
from coach.review.cohort import RULES, Looked, looked_at
from tests.review.six_patients import hold, sitting, six_patients

PATH = Path(__file__).with_name("golden") / "looks.json"


class GoldenLooks(msgspec.Struct, frozen=True):
    """Looks, and the number of the rules by which they were made."""

    rules: int
    looks: tuple[Looked, ...]


def patients() -> dict[str, tuple[SessionDocument, ...]]:
    """Sessions by code, so that there is every concern."""
    days = range(20)
    falling = [hold(1, value) for value in np.linspace(120, 90, 20)]
    found = {
        f"{documents[0].plan.patient_code}-{seed}": documents
        for seed in range(3)
        for documents in six_patients(seed).values()
    }
    found["SH-201"] = tuple(sitting("SH-201", d, [falling[d]]) for d in days)
    found["SH-202"] = tuple(sitting("SH-202", d, [hold(1, 100)], pain=(2, 9)) for d in days)
    found["SH-203"] = tuple(sitting("SH-203", d, [hold(1, 100, seen=0.5)]) for d in days)
    found["SH-204"] = tuple(sitting("SH-204", d, []) for d in days)
    found["SH-205"] = (sitting("SH-205", 0, [], timed=()),)
    return found


def now() -> GoldenLooks:
    """Look at them by today's rules."""
    return GoldenLooks(RULES, tuple(looked_at(code, of) for code, of in patients().items()))


def written() -> GoldenLooks:
    """Read what was told when the rules were last raised."""
    return msgspec.json.decode(PATH.read_bytes(), type=GoldenLooks)


if __name__ == "__main__":
    PATH.write_bytes(msgspec.json.format(msgspec.json.encode(now())) + b"\n")

"""A fixed part of the fuzzing of each reader: ``python -m tests.fuzz`` goes on from there."""

from __future__ import annotations

import pytest

from coach.domain.fault import Fault
from tests.fuzz.judge import Figures, judge, run, wrong_with
from tests.fuzz.mutations import changed_json
from tests.fuzz.readers import Reader, readers

CASES = 10_000


@pytest.mark.parametrize(
    ("name", "part"),
    [(each.name, part) for each in readers().values() for part in range(each.parts)],
)
def test_changed_documents_are_used_or_refused_in_a_sentence(name: str, part: int) -> None:
    reader, figures = readers()[name], Figures()
    most = len(reader.seeds()) + -(-CASES // reader.parts)
    run(reader, figures, part, lambda so_far: so_far.cases < most)
    assert figures.finds == []
    assert figures.used
    assert figures.refused > figures.cases / 5


def test_the_judge_finds_what_it_looks_for() -> None:
    def read(data: bytes) -> None:
        raise (Fault("x is broken; mend it.") if data == b"good" else KeyError(data))

    figures = Figures()
    reader = Reader("x", tuple, changed_json, read)
    judge(reader, b"good", figures)
    assert figures.finds == []
    judge(reader, b"bad", figures)
    assert "KeyError" in figures.finds[0][0]


@pytest.mark.parametrize(
    ("sentence", "what"),
    [
        ("x is broken; mend it.", None),
        ("x holds 'A. B'; mend it.", None),
        ("x is broken; mend it", "no full stop"),
        ("x is broken. Mend it, please.", "more than one"),
        ("x is broken.", "nothing to do"),
    ],
)
def test_a_sentence_says_what_and_what_to_do(sentence: str, what: str | None) -> None:
    found = wrong_with(sentence)
    assert (found is None) if what is None else (found or "").startswith(what)

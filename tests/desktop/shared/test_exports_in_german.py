"""What leaves the program while it speaks German: the note is German, the rest is as it was."""

from collections.abc import Iterator
from datetime import UTC, date, datetime

import msgspec
import pytest
from PyQt6.QtWidgets import QApplication

from coach.catalogue import catalogue
from coach.desktop.shared.language import choose_language
from coach.domain.plan import NextStep
from coach.exchange.export import exported
from coach.exchange.kind import Kind
from coach.review.cohort import standing
from coach.review.cohort_reasons import Concern
from coach.storage.exercise_titles import TITLES
from tests.exchange.records import full_session, own_records
from tests.review.six_patients import hold, sitting

NOW = datetime(2026, 4, 1, 12, tzinfo=UTC)
RECORD = [full_session(n) for n in range(3)]


def written(kind: Kind) -> bytes:
    return exported(RECORD, kind, NOW, own_records())


@pytest.fixture
def german(qapp: QApplication) -> Iterator[None]:
    choose_language(qapp, "de")
    yield
    choose_language(qapp, "en")


@pytest.mark.parametrize("kind", [kind for kind in Kind if kind is not Kind.NOTE])
def test_what_other_programs_read_is_the_same_in_every_language(
    qapp: QApplication, kind: Kind
) -> None:
    before = written(kind)
    choose_language(qapp, "de")
    try:
        assert written(kind) == before
    finally:
        choose_language(qapp, "en")


def test_the_note_is_german_from_its_head_to_its_method(german: None) -> None:
    note = written(Kind.NOTE).decode()
    for heading in ("S (subjektiv)", "O (objektiv)", "A (Beurteilung)", "P (Plan)"):
        assert f"\n{heading}\n" in note
    assert note.startswith("Schulterübungen zu Hause")
    assert "Gegenseite" in note
    for english in ("session", "first ", "hold ", " left", " right", "measured", "Flexion,"):
        assert english not in note, note


def test_a_next_step_names_the_exercise_in_german(german: None) -> None:
    done = [sitting("SH-104", day, [hold(1, 100.0)]) for day in range(3)]
    asked = done[0].plan.exercises[1]
    ready = msgspec.structs.replace(asked, next_step=NextStep(sessions=2))
    plan = msgspec.structs.replace(done[0].plan, exercises=(done[0].plan.exercises[0], ready))
    told = [
        msgspec.structs.replace(
            document,
            plan=plan,
            exercises=(
                document.exercises[0],
                msgspec.structs.replace(document.exercises[1], pain_after=1),
            ),
        )
        for document in done
    ]
    (reason,) = [
        r.sentence
        for r in standing("SH-104", told, date(2026, 1, 8), TITLES).reasons
        if r.concern is Concern.NEXT_STEP
    ]
    title = catalogue().get(asked.exercise).telling["de"].title
    assert reason.startswith(f"{title}, ")
    assert "Entschieden wird therapeutisch." in reason

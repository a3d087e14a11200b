"""What leaves the program while it speaks German: the note is German, the rest is as it was."""

from collections.abc import Iterator
from datetime import UTC, datetime

import pytest
from PyQt6.QtWidgets import QApplication

from coach.desktop.shared.language import choose_language
from coach.exchange.export import exported
from coach.exchange.kind import Kind
from tests.exchange.records import full_session, own_records

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

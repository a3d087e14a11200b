import ast
import xml.etree.ElementTree as ElementTree
from collections.abc import Iterator
from pathlib import Path

import pytest
from PyQt6.QtCore import QCoreApplication, QLocale
from PyQt6.QtWidgets import QApplication

from coach import texts
from coach.app import chosen_language
from coach.cues.language import languages
from coach.cues.wording import sentence
from coach.desktop.patient.cautions_page import CautionsPage
from coach.desktop.shared.application import create_application
from coach.desktop.shared.language import choose_language, choose_texts, system_language
from coach.domain.movement import Movement, Side
from coach.domain.plan import Plan, PlannedExercise
from docs.make_translations import FOLDER, ROOT, SAFETY_CUES, missing, missing_of

TABLES = sorted(FOLDER.glob("*.ts"))


@pytest.fixture
def german() -> Iterator[QApplication]:
    application = create_application(["test"], language="de")
    yield application
    choose_language(application, "en")


def texts_in_code() -> set[str]:
    """Every text handed to ``translate`` or ``tr`` as it stands in the code."""
    found = set()
    for path in (ROOT / "coach").rglob("*.py"):
        for node in ast.walk(ast.parse(path.read_text(encoding="utf-8"))):
            if isinstance(node, ast.Call) and node.args:
                name = getattr(node.func, "attr", getattr(node.func, "id", ""))
                last = node.args[-1]
                if name in ("translate", "tr") and isinstance(getattr(last, "value", None), str):
                    found.add(last.value)
    return found


def messages(table: Path) -> Iterator[tuple[str, str, str]]:
    for context in ElementTree.parse(table).getroot().iter("context"):
        for message in context.iter("message"):
            yield (
                context.findtext("name") or "",
                message.findtext("source") or "",
                message.findtext("translation") or "",
            )


@pytest.mark.parametrize("table", TABLES, ids=lambda table: table.stem)
def test_a_table_knows_every_text_of_the_code_and_its_compiled_form_is_of_today(
    qapp: QApplication, table: Path
) -> None:
    known = {source for _, source, _ in messages(table)}
    assert texts_in_code() == known, "run python -m docs.make_translations"
    choose_language(qapp, table.stem)
    try:
        for context, source, translation in messages(table):
            assert QCoreApplication.translate(context, source) == (translation or source)
    finally:
        choose_language(qapp, "en")


@pytest.mark.parametrize("table", TABLES, ids=lambda table: table.stem)
def test_without_a_window_every_text_is_the_same(table: Path) -> None:
    with texts.as_before():
        choose_texts(table.stem)
        for context, source, translation in messages(table):
            assert texts.translate(context, source) == (translation or source)
    assert texts.language() == "en"


def test_german_lacks_nothing_and_keeps_the_places_of_every_text() -> None:
    table = FOLDER / "de.ts"
    assert missing(table) == []
    for _, source, translation in messages(table):
        for place in ("{", "}"):
            assert source.count(place) == translation.count(place), source


def test_a_german_window_speaks_writes_and_counts_german(german: QApplication) -> None:
    assert QCoreApplication.translate("WelcomePage", "Start") == "Beginnen"
    assert texts.translate("dates", "Mar") == "M\u00e4rz"
    assert sentence("hold").spoken == "Halten."
    assert texts.localised("7.5") == "7,5"
    assert QLocale().toString(1.5) == "1,5"


def test_back_in_english_nothing_german_is_left(german: QApplication) -> None:
    choose_language(german, "en")
    assert QCoreApplication.translate("WelcomePage", "Start") == "Start"
    assert sentence("hold").spoken == "Hold."
    assert texts.localised("7.5") == "7.5"


def test_what_a_language_lacks_is_listed_in_all_three_places() -> None:
    assert missing_of("de") == {"safety": [], "cues": [], "catalogue": [], "windows": []}
    begun, unknown = missing_of("fr"), missing_of("xx")
    assert "hold" not in begun["cues"]
    assert "hold" in unknown["cues"]
    assert {"exercise pendulum", "page stiff"} <= set(begun["catalogue"])
    assert {"rule fracture", "cue pain-stop", "no table yet"} <= set(unknown["safety"])
    assert "WelcomePage: Start" not in begun["windows"]
    assert "WelcomePage: No picture" in begun["windows"]
    assert unknown["windows"] == ["no table yet"]


def test_what_keeps_people_from_harm_is_whole_in_every_language_that_can_be_chosen() -> None:
    """A page of cautions half in a language reads as if it were whole."""
    assert set(SAFETY_CUES) <= set(languages()["en"].sentences)
    assert missing_of("xx")["safety"] != []
    assert {code: missing_of(code)["safety"] for code in languages() if code != "en"} == {
        code: [] for code in languages() if code != "en"
    }


def test_a_page_of_cautions_is_of_one_language(qapp: QApplication) -> None:
    plan = Plan(
        patient_code="A",
        contact="0",
        exercises=(PlannedExercise(movement=Movement.FLEXION, side=Side.LEFT, repetitions=2,
                                   hold_s=7.0),),
    )  # fmt: skip
    english = set(lines(CautionsPage(plan)))
    for code in languages():
        choose_language(qapp, code)
        try:
            told = set(lines(CautionsPage(plan)))
        finally:
            choose_language(qapp, "en")
        assert told & english == (english if code == "en" else set()), code


def lines(page: CautionsPage) -> list[str]:
    """What is to be read on it, line by line, with its buttons."""
    buttons = (page.stop_button, page.aloud_button, page.read_button)
    return [*page.words.splitlines(), *(button.text() for button in buttons), page.prompt]


def test_a_language_that_is_only_begun_is_never_chosen_by_itself(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    monkeypatch.setattr(chosen_language, "system_language", lambda known: ",".join(sorted(known)))
    assert languages()["fr"].begun
    assert chosen_language.chosen_language(None) == "de,en"
    assert chosen_language.chosen_language("fr") == "fr"


def test_what_a_begun_language_lacks_is_said_and_shown_in_english(qapp: QApplication) -> None:
    choose_language(qapp, "fr")
    try:
        assert QCoreApplication.translate("WelcomePage", "Start") == "Commencer"
        assert QCoreApplication.translate("WelcomePage", "No picture") == "No picture"
        assert sentence("hold").spoken == "Tenez."
        assert sentence("rest").spoken == languages()["en"].sentences["rest"][0]
    finally:
        choose_language(qapp, "en")


def test_a_text_without_a_translation_stands_in_english(german: QApplication) -> None:
    assert texts.translate("nowhere", "Not there yet") == "Not there yet"


def test_the_system_language_is_taken_where_it_is_known() -> None:
    assert system_language(()) == "en"
    assert system_language({"en", "de"}) in {"en", "de"}


def test_no_class_that_others_derive_from_uses_tr() -> None:
    """PyQt's tr looks under the name of the object's own class, where a base's texts are not."""
    uses_tr, bases = set(), set()
    for path in (ROOT / "coach" / "desktop").rglob("*.py"):
        for node in ast.walk(ast.parse(path.read_text(encoding="utf-8"))):
            if isinstance(node, ast.ClassDef):
                bases |= {base.id for base in node.bases if isinstance(base, ast.Name)}
                calls = (inner for inner in ast.walk(node) if isinstance(inner, ast.Call))
                if any(getattr(call.func, "attr", "") == "tr" for call in calls):
                    uses_tr.add(node.name)
    assert not uses_tr & bases

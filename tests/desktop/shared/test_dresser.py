"""Windows follow the system and what is chosen, and what is chosen is kept."""

from __future__ import annotations

import re
from datetime import date
from pathlib import Path

import pytest
from PyQt6.QtCore import Qt
from PyQt6.QtGui import QFont, QFontDatabase
from PyQt6.QtWidgets import QApplication, QLabel, QWidget
from pytestqt.qtbot import QtBot

from coach.app.chosen_looks import Wishes, chosen_looks
from coach.desktop.shared import dresser as dressing
from coach.desktop.shared.application import create_application
from coach.desktop.shared.chart import chart_png
from coach.desktop.shared.dresser import Dresser, dresser, system_text
from coach.desktop.shared.looks import Looks, colours, looks, wear
from coach.desktop.shared.palettes import DARK, LIGHT
from coach.desktop.shared.report_page import report_pdf
from coach.domain.fault import Fault
from coach.domain.settings import TEXT_SIZES, Appearance, Settings, next_size
from coach.review.report import report
from coach.storage.settings_file import SETTINGS_FILE, read_settings
from tests.review.six_patients import six_patients


@pytest.fixture
def app(qapp: QApplication):  # type: ignore[no-untyped-def]
    yield create_application(["test"])
    create_application(["test"])


def page(qtbot: QtBot) -> QWidget:
    made = QWidget()
    made.setObjectName("page")
    made.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
    made.resize(40, 40)
    qtbot.addWidget(made)
    return made


def ground(widget: QWidget) -> str:
    return widget.grab().toImage().pixelColor(20, 20).name().upper()


def test_the_system_changes_what_is_open_already(
    app: QApplication, qtbot: QtBot, monkeypatch: pytest.MonkeyPatch
) -> None:
    dark = False
    monkeypatch.setattr(dressing, "system_is_dark", lambda application: dark)
    create_application(["test"], settings=Settings())
    shown = page(qtbot)
    assert ground(shown) == LIGHT.paper
    dark = True
    hints = app.styleHints()
    assert hints is not None
    hints.colorSchemeChanged.emit(Qt.ColorScheme.Dark)
    assert ground(shown) == DARK.paper
    now = dresser()
    assert now is not None
    now.appear(Appearance.LIGHT)
    assert ground(shown) == LIGHT.paper
    hints.colorSchemeChanged.emit(Qt.ColorScheme.Dark)
    assert colours() is LIGHT, "what was chosen goes before the system"


def test_only_one_dresses_the_windows(app: QApplication) -> None:
    create_application(["test"], settings=Settings(appearance=Appearance.DARK))
    create_application(["test"])
    assert len(app.findChildren(Dresser)) == 1
    assert colours() is LIGHT


def test_text_of_every_label_grows(app: QApplication, qtbot: QtBot) -> None:
    create_application(["test"], settings=Settings(text_percent=100))
    label = QLabel("Hold")
    label.setProperty("role", "title")
    qtbot.addWidget(label)
    label.ensurePolished()
    before = label.fontMetrics().height()
    now = dresser()
    assert now is not None
    for _ in range(9):
        now.larger(1)
    assert looks().text == 2.0
    assert label.fontMetrics().height() == pytest.approx(2 * before, abs=2)
    now.larger(-1)
    assert looks().text == 1.75


def test_steps_end_at_both_ends() -> None:
    assert [next_size(size, 1) for size in TEXT_SIZES] == [125, 150, 175, 200, 200]
    assert [next_size(size, -1) for size in TEXT_SIZES] == [100, 100, 125, 150, 175]
    assert next_size(160, 1) == 175


@pytest.mark.parametrize(
    ("platform", "px", "text"),
    [
        ("win32", 12, 1.0),
        ("win32", 18, 1.5),
        ("win32", 27, 2.0),
        ("darwin", 13, 1.0),
        ("linux", 15, 1.0),
        ("linux", 9, 1.0),
        ("linux", 22, 1.5),
    ],
)
def test_the_size_of_the_systems_type_is_followed(
    app: QApplication, monkeypatch: pytest.MonkeyPatch, platform: str, px: int, text: float
) -> None:
    own = QFont(app.font())
    own.setPixelSize(px)
    monkeypatch.setattr(QFontDatabase, "systemFont", lambda kind: own)
    monkeypatch.setattr("sys.platform", platform)
    assert system_text() == text


def test_what_is_chosen_in_the_window_is_there_at_the_next_start(
    app: QApplication, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setenv("STIFF_SHOULDER_COACH_FOLDER", str(tmp_path))
    settings, keep = chosen_looks(Wishes(text_percent=150))
    create_application(["test"], settings=settings, keep=keep)
    assert looks().text == 1.5
    assert not (tmp_path / SETTINGS_FILE).exists(), "asked for on the command line for once"
    now = dresser()
    assert now is not None
    now.turn()
    now.larger(1)
    now.calm()
    kept = read_settings(tmp_path / SETTINGS_FILE)
    assert (kept.appearance, kept.text_percent, kept.still) == (Appearance.DARK, 175, True)
    assert chosen_looks(Wishes())[0] == kept
    assert chosen_looks(Wishes(Appearance.LIGHT))[0].appearance is Appearance.LIGHT


@pytest.mark.parametrize(
    "data", [b"", b"{", b"[]", b'{"text_percent": 5000}', b'{"appearance": 3}', b"\xff" * 20_000]
)
def test_broken_settings_are_none(tmp_path: Path, data: bytes) -> None:
    place = tmp_path / SETTINGS_FILE
    place.write_bytes(data)
    assert read_settings(place) == Settings()
    assert read_settings(tmp_path) == Settings()


def test_a_disk_that_refuses_changes_the_window_all_the_same(
    app: QApplication, capsys: pytest.CaptureFixture[str]
) -> None:
    def full(settings: Settings) -> None:
        raise Fault("There is no room.")

    create_application(["test"], settings=Settings(appearance=Appearance.LIGHT), keep=full)
    now = dresser()
    assert now is not None
    now.turn()
    assert colours() is DARK
    assert "no room" in capsys.readouterr().err


def test_paper_stays_light(app: QApplication) -> None:
    content = report(next(iter(six_patients(1).values())), printed_on=date(2026, 2, 16))

    def printed() -> tuple[bytes, bytes]:
        page = re.sub(
            rb"D:\d+|uuid:[0-9a-f-]+|/ID[^\n]*|\d{4}-\d\d-\d\dT[^<]*", b"", report_pdf(content)
        )
        return page, chart_png(content.rows[0].chart)

    wear(Looks(LIGHT))
    light = printed()
    wear(Looks(DARK, text=2.0))
    assert printed() == light

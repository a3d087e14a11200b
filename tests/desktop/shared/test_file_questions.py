"""File dialogs begin where a person keeps files, and then where they last had one."""

from __future__ import annotations

from pathlib import Path
from typing import Any

import pytest
from PyQt6.QtCore import QStandardPaths
from PyQt6.QtWidgets import QFileDialog, QWidget
from pytestqt.qtbot import QtBot

from coach.desktop.shared.file_questions import (
    ask_file,
    ask_files,
    ask_folder,
    ask_new_file,
    start_folder,
)


class Asked:
    """Answers every file dialog, and notes where each began."""

    def __init__(self, monkeypatch: pytest.MonkeyPatch) -> None:
        self.began: list[str] = []
        self.answer: Any = ""

        def told(one: bool) -> Any:
            def ask(_over: object, _title: str, place: str, *_kinds: str) -> Any:
                self.began.append(place)
                return self.answer if one else (self.answer, "")

            return ask

        for name in ("getOpenFileName", "getOpenFileNames", "getSaveFileName"):
            monkeypatch.setattr(QFileDialog, name, told(False))
        monkeypatch.setattr(QFileDialog, "getExistingDirectory", told(True))


@pytest.fixture
def asked(monkeypatch: pytest.MonkeyPatch) -> Asked:
    return Asked(monkeypatch)


@pytest.fixture
def documents(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    # Given as freedesktop.org's user-dirs file gives it.
    folder = tmp_path / "Dokumente"
    folder.mkdir()
    (tmp_path / "user-dirs.dirs").write_text(f'XDG_DOCUMENTS_DIR="{folder}"\n')
    monkeypatch.setenv("XDG_CONFIG_HOME", str(tmp_path))
    kind = QStandardPaths.StandardLocation.DocumentsLocation
    if Path(QStandardPaths.writableLocation(kind)) != folder:
        pytest.skip("this system keeps the documents folder elsewhere")
    return folder


@pytest.fixture
def window(qtbot: QtBot) -> QWidget:
    window = QWidget()
    qtbot.addWidget(window)
    return window


def test_the_first_question_is_in_the_documents(
    asked: Asked, documents: Path, window: QWidget, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.chdir("/")
    assert ask_file(QWidget(window), "Open", "") is None
    assert ask_new_file(QWidget(window), "Save", "plan.json", "") is None
    assert ask_folder(None, "Folder") is None
    assert asked.began == [str(documents), str(documents / "plan.json"), str(documents)]


def test_the_next_is_where_that_window_last_had_one(
    asked: Asked, documents: Path, window: QWidget, tmp_path: Path, qtbot: QtBot
) -> None:
    mail, stick = tmp_path / "mail", tmp_path / "stick"
    mail.mkdir()
    stick.mkdir()
    asked.answer = [str(mail / "a.zip"), str(mail / "b.zip")]
    assert ask_files(QWidget(window), "Import", "") == [mail / "a.zip", mail / "b.zip"]
    asked.answer = str(stick)
    assert ask_folder(window, "Folder") == stick
    asked.answer = ""
    assert ask_new_file(QWidget(window), "Save", "plan.json", "") is None
    assert asked.began == [str(documents), str(mail), str(stick / "plan.json")]
    other = QWidget()
    qtbot.addWidget(other)
    assert start_folder(other) == documents


def test_a_folder_that_is_gone_is_not_begun_in(
    asked: Asked, documents: Path, window: QWidget, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    stick = tmp_path / "stick"
    stick.mkdir()
    asked.answer = str(stick / "plan.json")
    assert ask_file(QWidget(window), "Open", "") == stick / "plan.json"
    stick.rmdir()
    assert start_folder(window) == documents
    documents.rmdir()
    monkeypatch.setenv("HOME", str(tmp_path))
    assert start_folder(window) == tmp_path

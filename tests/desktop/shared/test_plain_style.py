"""What a stranger's file says is shown as it stands, never as markup."""

from __future__ import annotations

import pytest
from PyQt6.QtCore import QPoint, Qt
from PyQt6.QtWidgets import QApplication, QInputDialog, QLabel, QMessageBox, QToolTip, QWidget

from coach.desktop.shared.application import create_application

MARKUP = "<b>x</b><img src='file:///etc/hostname'><a href='file:///'>y</a>"


@pytest.fixture(scope="module")
def application() -> QApplication:
    return create_application(["test"])


def labels(of: QWidget, qtbot) -> list[QLabel]:
    qtbot.addWidget(of)
    of.show()
    qtbot.waitExposed(of)
    found = of.findChildren(QLabel)
    return [label for label in found if MARKUP in label.text()]


def test_qt_would_take_it_for_markup(application: QApplication) -> None:
    assert Qt.mightBeRichText(MARKUP)
    assert QLabel(MARKUP).textFormat() is Qt.TextFormat.AutoText


def boxes() -> list[QWidget]:
    window = QWidget()
    QLabel(MARKUP, window)
    message = QMessageBox(QMessageBox.Icon.Question, "x", MARKUP)
    message.setInformativeText(MARKUP)
    asked = QInputDialog()
    asked.setLabelText(MARKUP)
    return [window, message, asked]


@pytest.mark.parametrize("which", range(3))
def test_labels_and_boxes_show_it_as_it_stands(
    application: QApplication, which: int, qtbot
) -> None:
    box = boxes()[which]
    found = labels(box, qtbot)
    assert found
    assert {label.textFormat() for label in found} == {Qt.TextFormat.PlainText}


def test_a_tool_tip_shows_it_as_it_stands(application: QApplication, qtbot) -> None:
    window = QWidget()
    qtbot.addWidget(window)
    window.show()
    QToolTip.showText(QPoint(10, 10), MARKUP, window)
    tips = [w for w in QApplication.topLevelWidgets() if w.inherits("QTipLabel") and w.isVisible()]
    assert [tip.textFormat() for tip in tips] == [Qt.TextFormat.PlainText]
    QToolTip.hideText()


def test_a_format_that_was_chosen_stays(application: QApplication, qtbot) -> None:
    label = QLabel("**x**")
    label.setTextFormat(Qt.TextFormat.MarkdownText)
    qtbot.addWidget(label)
    label.show()
    assert label.textFormat() is Qt.TextFormat.MarkdownText

"""The system's wish for calm is asked for on a bus of its own, of a desktop made for the test."""

from __future__ import annotations

import shutil
import subprocess
import sys

import pytest
from PyQt6 import QtDBus

from coach.desktop.shared.motion import setting

DESKTOP = """
import sys
from PyQt6.QtCore import QCoreApplication, QObject, pyqtClassInfo, pyqtSlot
from PyQt6.QtDBus import QDBusConnection, QDBusMessage, QDBusVariant

@pyqtClassInfo("D-Bus Interface", "org.freedesktop.portal.Settings")
class Portal(QObject):
    @pyqtSlot(QDBusMessage)
    def Read(self, asked):
        known = {"enable-animations": sys.argv[1] == "moving"}
        key = asked.arguments()[1]
        if sys.argv[1] == "silent":
            asked.setDelayedReply(True)
        elif key in known:
            answer = asked.createReply([QDBusVariant(QDBusVariant(known[key]))])
            asked.setDelayedReply(True)
            QDBusConnection.sessionBus().send(answer)
        else:
            asked.setDelayedReply(True)
            refused = asked.createErrorReply("org.freedesktop.portal.Error.NotFound", "unknown")
            QDBusConnection.sessionBus().send(refused)

application, portal = QCoreApplication([]), Portal()
bus = QDBusConnection.sessionBus()
bus.registerObject("/org/freedesktop/portal/desktop", portal,
                   QDBusConnection.RegisterOption.ExportAllSlots)
assert bus.registerService("org.freedesktop.portal.Desktop")
print("ready", flush=True)
application.exec()
"""
ASKING = """
import subprocess, sys
from PyQt6.QtWidgets import QApplication
from coach.desktop.shared.motion import system_is_still
desktop = None
if sys.argv[1] != "none":
    command = [sys.executable, "-c", sys.argv[2], sys.argv[1]]
    desktop = subprocess.Popen(command, stdout=subprocess.PIPE)
    assert desktop.stdout.readline() == b"ready\\n"
application = QApplication([])
print(system_is_still())
if desktop:
    desktop.kill()
"""


@pytest.mark.skipif(shutil.which("dbus-run-session") is None, reason="no session bus can be run")
@pytest.mark.parametrize(
    ("desktop", "still"),
    [("still", True), ("moving", False), ("silent", False), ("none", False)],
)
def test_a_desktop_on_linux_is_asked(desktop: str, still: bool) -> None:
    done = subprocess.run(
        ["dbus-run-session", "--", sys.executable, "-c", ASKING, desktop, DESKTOP],
        capture_output=True,
        text=True,
        check=False,
        timeout=120,
    )
    assert done.stdout.split() == [str(still)], done.stderr


def test_where_there_is_no_bus_none_is_started(monkeypatch: pytest.MonkeyPatch) -> None:
    class Bus:
        @staticmethod
        def sessionBus() -> None:  # noqa: N802 - Qt's name
            raise AssertionError("a bus was asked for")

    monkeypatch.setattr(QtDBus, "QDBusConnection", Bus)
    monkeypatch.setenv("DBUS_SESSION_BUS_ADDRESS", "unix:path=/nowhere")
    with pytest.raises(AssertionError, match="a bus was asked for"):
        setting("org.gnome.desktop.interface", "enable-animations")
    monkeypatch.delenv("DBUS_SESSION_BUS_ADDRESS")
    monkeypatch.delenv("XDG_RUNTIME_DIR", raising=False)
    assert setting("org.gnome.desktop.interface", "enable-animations") is None


def test_a_folder_that_cannot_be_looked_into_holds_no_bus(monkeypatch: pytest.MonkeyPatch) -> None:
    """As after a change of user; here the system refuses a name that is too long."""
    monkeypatch.delenv("DBUS_SESSION_BUS_ADDRESS", raising=False)
    monkeypatch.setenv("XDG_RUNTIME_DIR", "/" + "x" * 5000)
    assert setting("org.gnome.desktop.interface", "enable-animations") is None

"""Whether the system asks that nothing move which need not."""

from __future__ import annotations

import os
import sys
from typing import Any

from PyQt6.QtCore import Qt
from PyQt6.QtWidgets import QApplication

ANSWER_MS = 300
"""So long a running desktop may take to each answer; windows ask once, at their start."""
_PORTAL = (
    "org.freedesktop.portal.Desktop",
    "/org/freedesktop/portal/desktop",
    "org.freedesktop.portal.Settings",
    "Read",
)
_CALM = (
    ("org.freedesktop.appearance", "reduced-motion", 1),
    ("org.gnome.desktop.interface", "enable-animations", False),
)
"""Names and values of the XDG desktop portal's settings that ask for calm (from memory)."""


def system_is_still() -> bool:
    """Say whether the system asks for no animation.

    Windows tells it by its menus, a desktop on Linux by its settings portal. macOS tells it only
    through a library that Qt 6.11 does not have; there it is chosen.
    """
    system: str = sys.platform
    if system == "win32":
        return not QApplication.isEffectEnabled(Qt.UIEffect.UI_AnimateMenu)
    if system == "linux":
        return any(setting(space, key) == calm for space, key, calm in _CALM)
    return False


def setting(space: str, key: str) -> Any:
    """Give a setting of the desktop; None where none runs, answers at once, or knows it."""
    if not _has_bus():
        return None
    try:
        from PyQt6.QtDBus import QDBus, QDBusConnection, QDBusMessage, QDBusVariant
    except ImportError:
        return None
    asked = QDBusMessage.createMethodCall(*_PORTAL)
    asked.setArguments([space, key])
    # Not one that would have to be started first.
    asked.setAutoStartService(False)
    told = QDBusConnection.sessionBus().call(asked, QDBus.CallMode.Block, ANSWER_MS)
    if told.type() != QDBusMessage.MessageType.ReplyMessage:
        return None
    value = next(iter(told.arguments()), None)
    while isinstance(value, QDBusVariant):
        value = value.variant()
    return value


def _has_bus() -> bool:
    # Asked for a bus that is not there, Qt may start one.
    if "DBUS_SESSION_BUS_ADDRESS" in os.environ:
        return True
    folder = os.environ.get("XDG_RUNTIME_DIR")
    # Unlike a Path's, it raises nothing where the folder is somebody else's, as after "su".
    return folder is not None and os.path.exists(os.path.join(folder, "bus"))  # noqa: PTH110, PTH118

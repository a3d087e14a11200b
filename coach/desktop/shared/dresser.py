"""Dresses the windows: follows the system, the settings, and what is chosen while they are open."""

from __future__ import annotations

import sys
from collections.abc import Callable

from msgspec.structs import replace
from PyQt6.QtCore import QDir, QObject, Qt, pyqtSignal
from PyQt6.QtGui import QColor, QFontDatabase, QFontInfo, QPalette
from PyQt6.QtWidgets import QApplication

from coach.desktop.shared import theme
from coach.desktop.shared.looks import Looks, looks, wear
from coach.desktop.shared.motion import system_is_still
from coach.desktop.shared.palettes import DARK, LIGHT, Palette
from coach.desktop.shared.theme import style_sheet, type_scale
from coach.desktop.shared.typeface import font
from coach.domain.fault import Fault
from coach.domain.settings import TEXT_SIZES, Appearance, Settings, next_size

Keep = Callable[[Settings], None]
_USUAL_PX = {"win32": 12.0, "darwin": 13.0}
"""Height of a system's type where nobody changed it: Segoe UI of 9 points at 96 dots an inch,
San Francisco of 13 points at 72."""
_USUAL_ELSEWHERE_PX = 15.0
"""Cantarell of 11 points at 96 dots an inch, the largest usual one of the desktops on Linux."""


class Dresser(QObject):
    """Belongs to the application; ``changed`` comes after every window looks anew."""

    changed = pyqtSignal()

    def __init__(
        self, application: QApplication, settings: Settings, keep: Keep | None = None
    ) -> None:
        """Dress the windows as ``settings`` say; ``keep`` stores what is chosen from here on."""
        for other in application.findChildren(Dresser):
            other.setParent(None)
            other.deleteLater()
        super().__init__(application)
        self.settings = settings
        self._application, self._keep = application, keep
        if (hints := application.styleHints()) is not None:
            hints.colorSchemeChanged.connect(self._dress)
        QDir.setSearchPaths("arrows", [str(theme.ARROWS)])
        self._dress()

    def larger(self, step: int) -> None:
        """Enlarge the text by so many steps."""
        percent = next_size(round(100 * looks().text), step)
        self._choose(replace(self.settings, text_percent=percent))

    def usual_size(self) -> None:
        """Have the text as large as the system has it."""
        self._choose(replace(self.settings, text_percent=None))

    def appear(self, appearance: Appearance) -> None:
        """Have a light ground, a dark one, or the system's."""
        self._choose(replace(self.settings, appearance=appearance))

    def turn(self) -> None:
        """Change from light to dark or back."""
        light = looks().palette is LIGHT
        self.appear(Appearance.DARK if light else Appearance.LIGHT)

    def calm(self) -> None:
        """Let what need not move stand still, or move again."""
        self._choose(replace(self.settings, still=not looks().still))

    def _choose(self, settings: Settings) -> None:
        self.settings = settings
        self._dress()
        if self._keep is not None:
            try:
                self._keep(settings)
            except Fault as fault:  # the windows look as wished; only the next start forgets
                print(f"coach: {fault}", file=sys.stderr)

    def _dress(self) -> None:
        settings, dark = self.settings, self.settings.appearance is Appearance.DARK
        if settings.appearance is Appearance.SYSTEM:
            dark = system_is_dark(self._application)
        percent = settings.text_percent
        text = system_text() if percent is None else percent / 100
        still = system_is_still() if settings.still is None else settings.still
        worn = Looks(DARK if dark else LIGHT, text, still)
        wear(worn)
        self._application.setFont(font(type_scale().body_px))
        self._application.setPalette(qt_palette(worn.palette))
        self._application.setStyleSheet(style_sheet(worn.palette, text))
        self.changed.emit()


def dresser() -> Dresser | None:
    """Give the one of the running application."""
    running = QApplication.instance()
    return running.findChild(Dresser) if running is not None else None


def system_is_dark(application: QApplication) -> bool:
    """Say whether the system asks for a dark ground; one that asks for nothing has a light one."""
    hints = application.styleHints()
    return hints is not None and hints.colorScheme() is Qt.ColorScheme.Dark


def system_text() -> float:
    """Give how much larger than usual the system's own type is: 1 to 2, in our steps."""
    own = QFontInfo(QFontDatabase.systemFont(QFontDatabase.SystemFont.GeneralFont)).pixelSize()
    wanted = 100 * own / _USUAL_PX.get(sys.platform, _USUAL_ELSEWHERE_PX)
    return next_size(round(wanted), 0) / 100 if wanted > TEXT_SIZES[0] else 1.0


def qt_palette(palette: Palette) -> QPalette:
    """Give Qt's own palette, for the parts that a style sheet does not reach."""
    roles = QPalette.ColorRole
    chosen = QPalette()
    for role, colour in (
        (roles.Window, palette.paper),
        (roles.WindowText, palette.ink),
        (roles.Base, palette.card),
        (roles.AlternateBase, palette.paper),
        (roles.Text, palette.ink),
        (roles.PlaceholderText, palette.ink_soft),
        (roles.Button, palette.card),
        (roles.ButtonText, palette.accent),
        (roles.Highlight, palette.accent),
        (roles.HighlightedText, palette.on_accent),
        (roles.Link, palette.accent),
        (roles.ToolTipBase, palette.ink),
        (roles.ToolTipText, palette.card),
    ):
        chosen.setColor(role, QColor(colour))
    return chosen

"""How a program with windows begins: one place for names, fonts, colours and last-resort errors."""

from __future__ import annotations

import os
import signal
import sys
import traceback
from importlib.resources import as_file, files
from types import FrameType, TracebackType

from PyQt6.QtCore import QLoggingCategory, QSize, QTimer
from PyQt6.QtGui import QIcon
from PyQt6.QtWidgets import QApplication, QStyle, QWidget

from coach import texts
from coach.desktop.shared.dresser import Dresser, Keep
from coach.desktop.shared.language import choose_language
from coach.desktop.shared.plain_style import PlainStyle
from coach.desktop.shared.typeface import load_fonts
from coach.domain.fault import Fault
from coach.domain.settings import Appearance, Settings

ORGANISATION = "stiff-shoulder-coach"
_HEARTBEAT_MS = 100
AS_ALWAYS = Settings(appearance=Appearance.LIGHT, text_percent=100, still=False)
"""For pictures and tests, which must not follow the machine that they are made on."""


def create_application(
    argv: list[str],
    *,
    name: str = "Shoulder coach",
    icon: str = "patient",
    offscreen_allowed: bool = False,
    language: str = texts.ENGLISH,
    settings: Settings = AS_ALWAYS,
    keep: Keep | None = None,
) -> QApplication:
    """Give the one QApplication, ready for windows in this language that look as ``settings`` say.

    Without a screen it raises a Fault, or draws into memory where ``offscreen_allowed``.
    """
    running = QApplication.instance()
    if isinstance(running, QApplication):
        application = running
    else:
        _choose_platform(offscreen_allowed=offscreen_allowed)
        application = QApplication(argv)
    application.setOrganizationName(ORGANISATION)
    application.setApplicationName(name)
    application.setApplicationDisplayName(name)
    with as_file(files("coach.desktop.shared").joinpath("icons", f"{icon}.svg")) as path:
        application.setWindowIcon(QIcon(str(path)))
    choose_language(application, language)
    load_fonts()
    application.setStyle(PlainStyle())
    Dresser(application, settings, keep)
    # Missing sound is told in the window; Qt's own lines on it say nothing to a person.
    QLoggingCategory.setFilterRules("qt.multimedia.*=false")
    sys.excepthook = _report
    return application


def show_on_screen(window: QWidget) -> None:
    """Show a window no larger than its screen has room for, with its title bar.

    Not every desktop sees to that, and the buttons at its foot would be out of reach.
    """
    screen, style = window.screen(), window.style()
    if screen is not None and style is not None:
        bar_px = style.pixelMetric(QStyle.PixelMetric.PM_TitleBarHeight)
        window.resize(window.size().boundedTo(screen.availableSize() - QSize(0, bar_px)))
    window.show()


def run_windows(application: QApplication) -> int:
    """Run until the last window is closed; after Ctrl-C close them and raise KeyboardInterrupt."""
    interrupts: list[int] = []

    # Python's own handler would raise in the middle of a painting.
    def note(number: int, _frame: FrameType | None) -> None:
        interrupts.append(number)

    def look() -> None:
        if interrupts:
            application.quit()

    before = signal.getsignal(signal.SIGINT)
    if before is signal.default_int_handler:
        signal.signal(signal.SIGINT, note)
    heartbeat = QTimer()  # besides, Python hears of a signal only when it has something to do
    heartbeat.timeout.connect(look)
    heartbeat.start(_HEARTBEAT_MS)
    try:
        code = application.exec()
    finally:
        heartbeat.stop()
        signal.signal(signal.SIGINT, before)
    if interrupts:
        raise KeyboardInterrupt
    return code


def _choose_platform(*, offscreen_allowed: bool) -> None:
    # OpenCV's wheels point Qt at their own Qt 5 plugins when they are imported.
    for variable in ("QT_QPA_PLATFORM_PLUGIN_PATH", "QT_QPA_FONTDIR"):
        if "cv2" in os.environ.get(variable, ""):
            del os.environ[variable]
    if not sys.platform.startswith("linux") or os.environ.get("QT_QPA_PLATFORM"):
        return
    if os.environ.get("DISPLAY") or os.environ.get("WAYLAND_DISPLAY"):
        return
    if not offscreen_allowed:
        raise Fault(
            texts.translate(
                "faults",
                "There is no screen to open a window on: start the program from a desktop, "
                "or use a command that needs none.",
            )
        )
    os.environ["QT_QPA_PLATFORM"] = "offscreen"


def _report(kind: type[BaseException], error: BaseException, trace: TracebackType | None) -> None:
    """Print instead of ending the process, which PyQt6 does with Python's own hook."""
    traceback.print_exception(kind, error, trace, file=sys.stderr)

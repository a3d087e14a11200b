"""The language of the windows: Qt's translation files, chosen once at the start."""

from __future__ import annotations

from collections.abc import Iterable
from importlib.resources import as_file, files

from PyQt6.QtCore import QCoreApplication, QLibraryInfo, QLocale, QTranslator

from coach import texts

FOLDER = "translations"


def choose_language(application: QCoreApplication, language: str) -> None:
    """Show everything in this language (a code of ISO 639-1) from here on.

    Texts that its file lacks stand in English. Dates and numbers follow it too.
    """
    QLocale.setDefault(_locale(language))
    for old in application.findChildren(QTranslator):
        application.removeTranslator(old)
        old.deleteLater()
    if language == texts.ENGLISH:
        _choose(language, None)
        return
    qt_base = QTranslator(application)
    if qt_base.load(
        f"qtbase_{language}", QLibraryInfo.path(QLibraryInfo.LibraryPath.TranslationsPath)
    ):
        application.installTranslator(qt_base)
    if (own := _own(language, application)) is not None:
        application.installTranslator(own)
    _choose(language, QCoreApplication.translate)


def choose_texts(language: str) -> None:
    """Write in this language from here on where no window is shown."""
    own = None if language == texts.ENGLISH else _own(language)

    def looked_up(context: str, sentence: str) -> str:
        # A str is taken for ASCII here; only QCoreApplication's own takes it for UTF-8.
        found = own.translate(context.encode(), sentence.encode()) if own else ""  # type: ignore[arg-type]
        return found or sentence

    _choose(language, None if own is None else looked_up)


def _choose(language: str, table: texts.Translate | None) -> None:
    locale = _locale(language)
    texts.choose(language, locale.decimalPoint(), locale.groupSeparator(), table)


def _locale(language: str) -> QLocale:
    return QLocale("en-GB" if language == texts.ENGLISH else language)


def _own(language: str, parent: QCoreApplication | None = None) -> QTranslator | None:
    with as_file(files("coach.desktop").joinpath(FOLDER)) as folder:
        found = QTranslator(parent)
        return found if found.load(language, str(folder)) else None


def system_language(known: Iterable[str]) -> str:
    """Give the first language that the system asks for and that is known; English without one."""
    codes = set(known)
    for tag in QLocale.system().uiLanguages():
        if (code := tag.split("-")[0].lower()) in codes:
            return code
    return texts.ENGLISH

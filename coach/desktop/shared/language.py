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
    locale = QLocale(language)
    QLocale.setDefault(QLocale("en-GB") if language == texts.ENGLISH else locale)
    for old in application.findChildren(QTranslator):
        application.removeTranslator(old)
        old.deleteLater()
    if language == texts.ENGLISH:
        texts.choose(language, ".", None)
        return
    with as_file(files("coach.desktop").joinpath(FOLDER)) as folder:
        for name, place in (
            (f"qtbase_{language}", QLibraryInfo.path(QLibraryInfo.LibraryPath.TranslationsPath)),
            (language, str(folder)),
        ):
            translator = QTranslator(application)
            if translator.load(name, place):
                application.installTranslator(translator)
    texts.choose(language, locale.decimalPoint(), QCoreApplication.translate)


def without_windows(language: str) -> QCoreApplication:
    """Write in this language where no window is shown, as long as what is given is kept."""
    application = QCoreApplication.instance() or QCoreApplication(["coach"])
    choose_language(application, language)
    return application


def system_language(known: Iterable[str]) -> str:
    """Give the first language that the system asks for and that is known; English without one."""
    codes = set(known)
    for tag in QLocale.system().uiLanguages():
        if (code := tag.split("-")[0].lower()) in codes:
            return code
    return texts.ENGLISH

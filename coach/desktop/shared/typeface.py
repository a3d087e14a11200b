"""The fonts that the program brings along; a machine may have none of its own."""

from __future__ import annotations

from importlib.resources import files

from PyQt6.QtGui import QFont, QFontDatabase

from coach.domain.fault import Fault
from coach.texts import translate

FAMILY = "Atkinson Hyperlegible Next"
SIGNS_FAMILY = "Noto Sans Math"
"""Has the arrows and marks that the first one lacks."""

FILES = (
    "AtkinsonHyperlegibleNext-Regular.ttf",
    "AtkinsonHyperlegibleNext-Bold.ttf",
    "NotoSansMath-Signs.ttf",
)


def load_fonts() -> str:
    """Register the fonts with the running application and give the family's name."""
    folder = files("coach.desktop.shared").joinpath("fonts")
    for name in FILES:
        try:
            data = folder.joinpath(name).read_bytes()
        except OSError as error:
            told = translate(
                "faults", "The font file {name} is missing: install the program again."
            )
            raise Fault(told.format(name=name)) from error
        if QFontDatabase.addApplicationFontFromData(data) < 0:
            told = translate(
                "faults", "The font file {name} is damaged: install the program again."
            )
            raise Fault(told.format(name=name))
    return FAMILY


def font(size_px: float, *, bold: bool = False, tabular: bool = False) -> QFont:
    """Give the program's font; ``tabular`` makes all digits equally wide, so that none jumps."""
    chosen = QFont()
    chosen.setFamilies([FAMILY, SIGNS_FAMILY])
    chosen.setPixelSize(max(1, round(size_px)))
    chosen.setBold(bold)
    if tabular:
        chosen.setFeature(QFont.Tag("tnum"), 1)
    return chosen

"""Contrast by WCAG's own formula, type that covers what is written."""

import os
import re
import shutil
from importlib.resources import files
from itertools import pairwise
from pathlib import Path

import pytest

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")

from PyQt6.QtGui import QColor, QFontDatabase, QFontInfo, QRawFont
from PyQt6.QtWidgets import (
    QApplication,
    QCheckBox,
    QComboBox,
    QDateEdit,
    QDialog,
    QLineEdit,
    QSpinBox,
)

from coach.desktop.shared import theme
from coach.desktop.shared.application import create_application
from coach.desktop.shared.figure_painting import EDGE_DARKER
from coach.desktop.shared.palettes import DARK, LIGHT, Palette
from coach.desktop.shared.theme import ARROWS, style_sheet
from coach.desktop.shared.typeface import FAMILY, FILES, font, load_fonts
from coach.domain.fault import Fault
from coach.domain.settings import Appearance, Settings
from tests.desktop.shared import access

TEXT = [
    (ink, ground)
    for ink in ("ink", "ink_soft", "accent", "caution")
    for ground in ("paper", "card", "accent_wash", "caution_wash")
] + [
    ("on_accent", "accent"),
    ("on_accent", "accent_deep"),
    ("card", "ink"),
    ("card", "caution"),
    ("on_accent", "caution"),
    ("stage_ink", "stage"),
    ("stage_soft", "stage"),
    ("hold", "stage"),
    ("rest", "stage"),
]
GRAPHICS = [
    ("line", "paper"),
    ("caution", "paper"),
    ("caution", "card"),
    ("caution", "caution_wash"),
    ("line", "accent_wash"),
    ("line", "card"),
    ("focus", "paper"),
    ("focus", "card"),
    ("focus", "accent_wash"),
    ("focus", "caution_wash"),
    ("focus", "on_accent"),  # the light line between the ring and the accent
    ("on_accent", "accent"),
    ("hold", "trough"),
    ("rest", "trough"),
    ("accent", "card"),
    ("accent", "paper"),
    ("accent", "hairline"),
    ("focus", "stage"),
]
PALETTES = pytest.mark.parametrize("palette", [LIGHT, DARK], ids=lambda palette: palette.name)


def luminance(colour: str) -> float:
    """Relative luminance, as defined in WCAG 2.2."""
    parts = [int(colour[at : at + 2], 16) / 255 for at in (1, 3, 5)]
    linear = [c / 12.92 if c <= 0.04045 else ((c + 0.055) / 1.055) ** 2.4 for c in parts]
    return 0.2126 * linear[0] + 0.7152 * linear[1] + 0.0722 * linear[2]


def contrast(one: str, other: str) -> float:
    """Contrast ratio, as defined in WCAG 2.2."""
    darker, lighter = sorted((luminance(one), luminance(other)))
    return (lighter + 0.05) / (darker + 0.05)


def test_the_formula_gives_the_known_extremes() -> None:
    assert contrast("#000000", "#ffffff") == pytest.approx(21.0)
    assert contrast("#777777", "#ffffff") == pytest.approx(4.48, abs=0.01)


@PALETTES
@pytest.mark.parametrize(("ink", "ground"), TEXT)
def test_text_can_be_read(palette: Palette, ink: str, ground: str) -> None:
    assert contrast(getattr(palette, ink), getattr(palette, ground)) >= 4.5


@PALETTES
@pytest.mark.parametrize(("ink", "ground"), GRAPHICS)
def test_shapes_can_be_seen(palette: Palette, ink: str, ground: str) -> None:
    assert contrast(getattr(palette, ink), getattr(palette, ground)) >= 3.0


@PALETTES
def test_lines_of_a_chart_can_be_seen(palette: Palette) -> None:
    assert all(contrast(colour, palette.card) >= 3.0 for colour in palette.series)


@PALETTES
def test_lines_of_a_chart_differ_without_colour(palette: Palette) -> None:
    ordered = sorted(luminance(colour) for colour in palette.series)
    assert all((light + 0.05) / (dark + 0.05) > 1.3 for dark, light in pairwise(ordered))


@PALETTES
def test_the_drawn_arm_is_told_from_the_drawn_body_and_room(palette: Palette) -> None:
    scene = palette.scene
    behind = (palette.paper, palette.card, scene.shirt, scene.trousers, scene.furniture, scene.wall)
    for ground in behind:
        edge, arm = contrast(scene.outline, ground), contrast(palette.hold, ground)
        assert max(edge, arm) >= 3.0, ground
    assert contrast(scene.outline, scene.skin) >= 3.0


@PALETTES
def test_drawn_bodies_are_told_from_the_page(palette: Palette) -> None:
    # Where the fill is near the ground its edge, of the same hue and darker, is not.
    for part in (palette.scene.skin, palette.scene.shirt, palette.scene.trousers):
        edge = QColor(part).darker(EDGE_DARKER).name()
        seen = max(contrast(part, palette.card), contrast(edge, palette.card))
        assert seen >= 3.0, part


@PALETTES
def test_every_place_of_the_style_sheet_is_filled(palette: Palette) -> None:
    sheet = style_sheet(palette, 1.5)
    assert "$" not in sheet
    pictures = re.findall(r'url\("([^"]+)"\)', sheet)
    assert len(pictures) == 6
    strokes = {"_off": palette.line, "_on": palette.on_accent, "check": palette.on_accent}
    for picture in (ARROWS / name.removeprefix("arrows:") for name in pictures):
        stroke = next((s for part, s in strokes.items() if part in picture.name), palette.accent)
        assert f'stroke="{stroke}"' in picture.read_text(encoding="utf-8")


@pytest.mark.parametrize("odd", ['qu"ote', "back\\slash", "it's (50%) #1 & ü 漢字"])
def test_the_windows_are_dressed_wherever_the_program_lies(
    odd: str, tmp_path: Path, monkeypatch: pytest.MonkeyPatch, qapp: QApplication
) -> None:
    place = tmp_path / odd
    shutil.copytree(theme.ARROWS, place)
    monkeypatch.setattr(theme, "ARROWS", place)
    create_application(["test"])
    box = QCheckBox("ü")
    box.setChecked(True)
    dressed = box.grab().toImage()
    monkeypatch.undo()
    create_application(["test"])
    usual = box.grab().toImage()
    assert dressed == usual
    colours = {usual.pixel(x, y) for x in range(usual.width()) for y in range(usual.height())}
    assert QColor(LIGHT.accent).rgb() in colours
    assert QColor(LIGHT.on_accent).rgb() in colours


def test_type_grows_with_the_factor() -> None:
    def sizes(factor: float) -> list[int]:
        return [int(px) for px in re.findall(r"font-size: (\d+)px", style_sheet(LIGHT, factor))]

    assert sizes(2.0) == [2 * px for px in sizes(1.0)]


@pytest.fixture
def app(qapp: QApplication) -> QApplication:
    return create_application(["test"])


def test_the_program_writes_in_its_own_type(app: QApplication) -> None:
    assert load_fonts() == FAMILY
    assert FAMILY in QFontDatabase.families()
    assert QFontInfo(app.font()).family() == FAMILY


@pytest.mark.parametrize(
    "text",
    [
        "The quick brown fox jumps over the lazy dog 0123456789 .,;:!?'\"()[]/%&+-=<>@#*",
        "Zwölf Boxkämpfer jagen Eva quer über den großen Sylter Deich ÄÖÜ ẞß „“‚‘",  # noqa: RUF001
        "° ± – — → ← ↑ ↓ × ≤ ≥ … • · − ≈ Δ ² ³ ½ € § ✓ ● ○ ▲ ▼",  # noqa: RUF001
    ],
)
def test_its_type_has_every_sign(app: QApplication, text: str) -> None:
    folder = files("coach.desktop.shared").joinpath("fonts")
    raw = [QRawFont(str(folder.joinpath(name)), 20.0) for name in FILES]
    letters, signs = (raw[0], raw[1]), raw[2]
    for sign in set(text) - {" ", "ẞ"}:
        assert all(r.supportsCharacter(sign) for r in letters) or signs.supportsCharacter(sign), (
            sign
        )


def test_tabular_digits_are_equally_wide(app: QApplication) -> None:
    from PyQt6.QtGui import QFontMetricsF

    metrics = QFontMetricsF(font(100, bold=True, tabular=True))
    widths = {round(metrics.horizontalAdvance(digit), 2) for digit in "0123456789"}
    assert len(widths) == 1


def test_fonts_carry_their_licence_and_stay_small() -> None:
    folder = files("coach.desktop.shared").joinpath("fonts")
    present = {entry.name for entry in folder.iterdir()}
    assert {"OFL-AtkinsonHyperlegibleNext.txt", "OFL-NotoSansMath.txt", *FILES} <= present
    assert sum(len(folder.joinpath(name).read_bytes()) for name in FILES) < 600_000


def test_without_a_screen_it_says_so(monkeypatch: pytest.MonkeyPatch) -> None:
    from coach.desktop.shared import application

    for name in ("QT_QPA_PLATFORM", "DISPLAY", "WAYLAND_DISPLAY"):
        monkeypatch.delenv(name, raising=False)
    monkeypatch.setattr("sys.platform", "linux")
    with pytest.raises(Fault, match="no screen"):
        application._choose_platform(offscreen_allowed=False)
    assert "QT_QPA_PLATFORM" not in os.environ
    monkeypatch.setenv("QT_QPA_PLATFORM_PLUGIN_PATH", "/x/cv2/qt/plugins")
    monkeypatch.setenv("QT_QPA_PLATFORM", "")
    application._choose_platform(offscreen_allowed=True)
    assert os.environ["QT_QPA_PLATFORM"] == "offscreen"
    assert "QT_QPA_PLATFORM_PLUGIN_PATH" not in os.environ


@pytest.mark.parametrize(("on", "colour"), [(True, LIGHT.accent), (False, LIGHT.line)])
def test_a_box_of_numbers_has_two_arrows_that_tell_whether_they_work(
    app: QApplication, on: bool, colour: str
) -> None:
    box = QSpinBox()
    box.setValue(5)
    box.setEnabled(on)
    box.resize(200, 44)
    box.ensurePolished()
    image = box.grab().toImage()
    at = [y for x in range(172, 198) for y in range(4, 40) if near(image.pixelColor(x, y), colour)]
    assert len([y for y in at if y < 20]) >= 5
    assert len([y for y in at if y > 24]) >= 5


def near(pixel: QColor, colour: str) -> bool:
    wanted = QColor(colour)
    pairs = zip(pixel.getRgb()[:3], wanted.getRgb()[:3], strict=True)
    return sum(abs(a - b) for a, b in pairs) < 30


@pytest.mark.parametrize("appearance", [Appearance.LIGHT, Appearance.DARK])
@pytest.mark.parametrize("percent", [100, 200])
def test_a_box_to_tick_is_seen_ticked_and_not(
    qapp: QApplication, appearance: Appearance, percent: int
) -> None:
    """Criterion 1.4.11, and as large as the text beside it."""
    looks = Settings(appearance=appearance, text_percent=percent, still=False)
    create_application(["test"], settings=looks)
    try:
        holder, ground = QDialog(), QDialog()
        box = QCheckBox(holder)
        for dialog in (holder, ground):
            dialog.resize(60, 60)
            dialog.ensurePolished()
        box.resize(60, 60)
        box.ensurePolished()
        empty = access.pixels(holder)
        side = 12 * percent // 100
        assert access.differing_px(empty, access.pixels(ground)) >= 4 * side
        box.setChecked(True)
        assert access.differing_px(access.pixels(holder), empty) >= side * side / 2
    finally:
        create_application(["test"])


def test_what_cannot_be_used_looks_different(app: QApplication) -> None:
    for kind in (QSpinBox, QLineEdit, QComboBox, QDateEdit):
        field = kind()
        field.resize(200, 44)
        grounds = []
        for on in (True, False):
            field.setEnabled(on)
            field.ensurePolished()
            grounds.append(field.grab().toImage().pixelColor(100, 8).name().upper())
        assert grounds == [LIGHT.card, LIGHT.paper]

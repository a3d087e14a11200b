"""Colours of every window, on light and on dark ground.

They are ours: plum ink on warm paper, or warm ink on plum; marigold for a hold, periwinkle for a
rest. Marigold and periwinkle lie on the yellow-blue axis, which red-green colour blindness leaves
alone, and no meaning is carried by colour only. The contrasts asked for by WCAG 2.2 AA (criteria
1.4.3 and 1.4.11: 4.5 for text, 3 for graphics) are kept by a test, in both.
"""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Scene:
    """Colours of drawn people and rooms as ``#rrggbb``; outlines are made of them."""

    skin: str
    shirt: str
    trousers: str
    hair: str
    outline: str
    shoe: str
    floor: str
    furniture: str
    wall: str
    tool: str
    cloth: str
    bone: str


@dataclass(frozen=True, slots=True)
class Palette:
    """Colours as ``#rrggbb``, named by what they are for; ``name`` is the palette's own."""

    name: str
    paper: str
    """Behind everything."""
    card: str
    """Raised parts, fields, tables."""
    ink: str
    """Text."""
    ink_soft: str
    """Text of second rank."""
    line: str
    """Borders and rules that must be seen."""
    hairline: str
    """Rules that need not be seen."""
    accent: str
    """What can be pressed, what is chosen."""
    accent_deep: str
    """The same while pressed."""
    accent_wash: str
    """A faint ground of the accent, under text."""
    on_accent: str
    """Text on the accent."""
    caution: str
    """Stop, refused, wrong; always together with words."""
    caution_wash: str
    """A faint ground of the caution, under text."""
    focus: str
    """The ring around what the keyboard acts on."""
    stage: str
    """The dark ground around the live picture."""
    stage_ink: str
    """Text on the dark ground."""
    stage_soft: str
    """Text of second rank on the dark ground."""
    trough: str
    """The empty part of the band around the picture."""
    hold: str
    """The band of a hold, the measured arm."""
    rest: str
    """The band of a rest, the trunk."""
    series: tuple[str, str, str]
    """Lines of a chart, in this order; they differ in lightness too."""
    scene: Scene
    """What is drawn of people and rooms."""


LIGHT = Palette(
    name="light",
    paper="#F5EFE4",
    card="#FFFCF6",
    ink="#231A35",
    ink_soft="#574B69",
    line="#85789A",
    hairline="#DCD2C6",
    accent="#5A2783",
    accent_deep="#43196A",
    accent_wash="#E9DDF2",
    on_accent="#FFFCF6",
    caution="#97291A",
    caution_wash="#F9DED5",
    focus="#0B5FD0",
    stage="#1A1328",
    stage_ink="#FBF5EA",
    stage_soft="#C9BEDB",
    trough="#3B2F52",
    hold="#FFB938",
    rest="#9FC3FF",
    series=("#4A1F78", "#C8690F", "#2B6C8A"),
    scene=Scene(
        skin="#EBD3BE",
        shirt="#AFC6EC",
        trousers="#6B5C85",
        hair="#4A3A4F",
        outline="#231A35",
        shoe="#574B69",
        floor="#E6DBCB",
        furniture="#D9C3A2",
        wall="#EFE6F4",
        tool="#7A5230",
        cloth="#FBF5EA",
        bone="#EFE3CB",
    ),
)

DARK = Palette(
    name="dark",
    paper="#191424",
    card="#231C31",
    ink="#F4ECDF",
    ink_soft="#C6BAD4",
    line="#9586AB",
    hairline="#40354F",
    accent="#D2B1F4",
    accent_deep="#E9D6FB",
    accent_wash="#372A4B",
    on_accent="#1E1330",
    caution="#FFA08A",
    caution_wash="#46211C",
    focus="#6FB0FF",
    stage="#0F0A18",
    stage_ink="#FBF5EA",
    stage_soft="#C9BEDB",
    trough="#3B2F52",
    hold="#FFB938",
    rest="#9FC3FF",
    series=("#E2CBFA", "#F2994A", "#4F9BC0"),
    scene=Scene(
        skin="#D6B79E",
        shirt="#8AA5D4",
        trousers="#8B7AA8",
        hair="#85708C",
        outline="#1A1128",
        shoe="#A999BC",
        floor="#3A3044",
        furniture="#8C7555",
        wall="#33293F",
        tool="#B98A5E",
        cloth="#E8DFD0",
        bone="#CDBFA4",
    ),
)

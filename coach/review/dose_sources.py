"""Where the usual doses of the catalogue are from, in the words of the chosen language."""

from __future__ import annotations

from coach.texts import in_english, translate


def source_words(source: str) -> str:
    """Say a source of the catalogue; one that is unknown here stands as it is written there."""
    with in_english():
        number = {english: index for index, english in enumerate(_sources())}.get(source)
    return source if number is None else _sources()[number]


def _sources() -> tuple[str, ...]:
    return (
        translate(
            "dose",
            "Common practice: 5 to 10 s, about 5 times, up to three times a day; here its least.",
        ),
        translate(
            "dose",
            "Common practice: 5 to 10 s, about 5 times, up to three times a day.",
        ),
        translate(
            "dose",
            "Hold: Kelley et al. 2013, J Orthop Sports Phys Ther 43:A1-A31 (from "
            "memory), high irritability, 1 to 5 s and free of pain; counts: common "
            "practice.",
        ),
        translate(
            "dose",
            "Hold: Kelley et al. 2013, J Orthop Sports Phys Ther 43:A1-A31 (from "
            "memory), moderate irritability, 5 to 15 s and a mild stretch; counts: "
            "common practice.",
        ),
        translate(
            "dose",
            "Common practice for a stretch at the end of the range: about 30 s, 3 to "
            "5 times, once to three times a day; for low irritability longer holds "
            "also after Kelley et al. 2013 (from memory).",
        ),
        translate(
            "dose",
            "Common practice: small swings free of pain, half a minute at a time.",
        ),
        translate(
            "dose",
            "Common practice: easy swings, up to a minute at a time.",
        ),
        translate(
            "dose",
            "Common practice: short and light, free of pain.",
        ),
        translate(
            "dose",
            "Common practice: about 5 s, up to ten times.",
        ),
        translate(
            "dose",
            "Common practice: 5 to 10 s, about ten times.",
        ),
    )

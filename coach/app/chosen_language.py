"""Which language a command speaks: the one asked for, else the system's, else English."""

from __future__ import annotations

from coach.cues.language import languages
from coach.desktop.shared.language import system_language
from coach.domain.fault import Fault
from coach.texts import translate


def chosen_language(asked: str | None) -> str:
    """Give the language asked for, or the system's where it is whole; a ``Fault`` names all."""
    if asked is None:
        return system_language(code for code, each in languages().items() if not each.begun)
    if asked not in languages():
        known = ", ".join(f"{code} ({each.name})" for code, each in languages().items())
        raise Fault(
            translate(
                "faults", "The program does not speak '{asked}'; choose one of {known}."
            ).format(asked=asked[:20], known=known)
        )
    return asked

"""The languages the program speaks: one file each, with every sentence under its key."""

from __future__ import annotations

import string
from collections.abc import Mapping
from functools import cache
from types import MappingProxyType
from typing import Annotated, Final

from msgspec import Meta, Struct

from coach import texts
from coach.catalogue.reading import ENDING, brought_along, read, refused
from coach.texts import translate

FALLBACK: Final = texts.ENGLISH
"""The language whose table is whole; what another one lacks is said in it."""

Text = Annotated[str, Meta(min_length=1, max_length=400)]


class Language(Struct, frozen=True, forbid_unknown_fields=True):
    """One language: its own name, its voice, how it writes numbers, and its sentences.

    ``sentences`` gives what is spoken and the short form that is shown, by key; a key stands for a
    whole sentence with named places for numbers. ``voice`` is a BCP 47 tag. A language that is only
    ``begun`` says much in the fallback, with a voice that is not made for it: it is spoken where
    somebody asks for it by its code, never because the system speaks it.
    """

    name: Annotated[str, Meta(min_length=1, max_length=40)]
    voice: Annotated[str, Meta(pattern="^[a-z]{2}(-[a-z]{2})?$")]
    decimal_sign: Annotated[str, Meta(pattern="^[.,]$")]
    sentences: dict[str, tuple[Text, Text]]
    begun: bool = False

    def written(self, number: float) -> str:
        """Write a number as people of this language do, at most six figures."""
        return f"{number:g}".replace(".", self.decimal_sign)


def parse(contents: Mapping[str, bytes]) -> Mapping[str, Language]:
    """Read language files, by their names without a folder (``<code>.toml``).

    Raises a ``Fault`` that names the file and the sentence: a key that the fallback does not have,
    or places for numbers that are not the fallback's.
    """
    found = {
        name.removesuffix(ENDING): read(contents[name], Language, _where(name))
        for name in sorted(contents)
    }
    if FALLBACK not in found:
        raise refused(_where(FALLBACK + ENDING), "it is missing")
    whole = found[FALLBACK].sentences
    for code, language in found.items():
        for key, pair in language.sentences.items():
            if key not in whole:
                raise refused(_where(code + ENDING), f"there is no sentence {key!r}")
            for text, model in zip(pair, whole[key], strict=True):
                if _places(text) != _places(model):
                    raise refused(
                        _where(code + ENDING),
                        f"{key} must have the places {sorted(_places(model))} for numbers",
                    )
    return MappingProxyType(found)


@cache
def languages() -> Mapping[str, Language]:
    """Give the languages that the program brings along, by their codes of ISO 639-1."""
    return parse(
        brought_along("coach.cues", "languages", translate("faults", "The language files"))
    )


def spoken_in(language: str | None = None) -> Language:
    """Give the language of this code, by default the chosen one; English for an unknown one."""
    return texts.of(languages(), language)


def _places(text: str) -> set[str]:
    try:
        return {
            name + spec + (conversion or "")
            for _, name, spec, conversion in string.Formatter().parse(text)
            if name is not None and spec is not None
        }
    except ValueError:
        return {"?"}


def _where(name: str) -> str:
    return translate("faults", "The language file {name}").format(name=name[:80])

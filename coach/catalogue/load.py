"""The catalogue: read from its files, asked by name."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from difflib import get_close_matches
from functools import cache
from types import MappingProxyType

from coach.catalogue.checks import wrong_among, wrong_in
from coach.catalogue.reading import ENDING, brought_along, read, refused
from coach.domain.exercise import Exercise
from coach.domain.fault import Fault
from coach.texts import translate


@dataclass(frozen=True, slots=True)
class Catalogue:
    """Exercises by name, in the order of their names."""

    by_name: Mapping[str, Exercise]

    @property
    def all(self) -> tuple[Exercise, ...]:
        """Every exercise, in the order of their names."""
        return tuple(self.by_name.values())

    def get(self, slug: str) -> Exercise:
        """Give the exercise of this name; a ``Fault`` names the nearest where there is none."""
        if slug in self.by_name:
            return self.by_name[slug]
        near = get_close_matches(slug, self.by_name, n=3, cutoff=0.4) or list(self.by_name)[:3]
        raise Fault(
            translate(
                "faults",
                "The catalogue has no exercise {slug!r}; the nearest names are {near}: "
                "correct the name or update the program.",
            ).format(slug=slug[:60], near=", ".join(near))
        )

    def easier(self, slug: str) -> Exercise | None:
        """Give the next easier exercise; None at the end, a ``Fault`` for an unknown name."""
        neighbour = self.get(slug).easier
        return None if neighbour is None else self.get(neighbour)

    def harder(self, slug: str) -> Exercise | None:
        """Give the next harder exercise; None at the end, a ``Fault`` for an unknown name."""
        neighbour = self.get(slug).harder
        return None if neighbour is None else self.get(neighbour)


def parse(contents: Mapping[str, bytes]) -> Catalogue:
    """Read exercise files, by their names without a folder (``<slug>.toml``).

    Raises a ``Fault`` that names the file, the field and what may stand there.
    """
    found: dict[str, Exercise] = {}
    for name in sorted(contents):
        exercise = read(contents[name], Exercise, _where(name))
        if name != exercise.exercise + ENDING:
            raise refused(
                _where(name),
                f"exercise is {exercise.exercise}, whose file is {exercise.exercise}{ENDING}",
            )
        if fault := wrong_in(exercise):
            raise refused(_where(name), fault)
        found[exercise.exercise] = exercise
    if wrong := wrong_among(found):
        slug, fault = wrong
        raise refused(_where(slug + ENDING), fault)
    return Catalogue(MappingProxyType(dict(sorted(found.items()))))


def shipped() -> dict[str, bytes]:
    """Give the exercise files that the program brings along, by name."""
    return brought_along("coach.catalogue", "exercises", translate("faults", "The exercise files"))


@cache
def catalogue() -> Catalogue:
    """Give the program's own exercises, read once."""
    return parse(shipped())


def _where(name: str) -> str:
    return translate("faults", "The exercise file {name}").format(name=name[:80])

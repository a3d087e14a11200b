"""Names of exercises for what is told of a store; the catalogue is read at the first of them."""

from __future__ import annotations

from collections.abc import Iterator, Mapping


class _Titles(Mapping[str, str]):
    """The catalogue's names in the chosen language, by its slugs."""

    def __getitem__(self, slug: str) -> str:
        from coach.catalogue import catalogue, exercise_title

        return exercise_title(catalogue().by_name[slug])

    def __iter__(self) -> Iterator[str]:
        from coach.catalogue import catalogue

        return iter(catalogue().by_name)

    def __len__(self) -> int:
        return sum(1 for _ in self)


TITLES: Mapping[str, str] = _Titles()

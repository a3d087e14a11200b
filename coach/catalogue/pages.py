"""Short pages for the patient on what a frozen shoulder is: words and sources as data."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from enum import StrEnum
from functools import cache
from typing import Annotated

import msgspec
from msgspec import Meta

from coach import texts
from coach.catalogue.reading import ENDING, brought_along, read, refused
from coach.domain.exercise import Sentence, Slug, StiffnessPhase, Words
from coach.texts import translate

MOST_WORDS = 95
"""A page is read standing and heard in under a minute, at some 120 words a minute (our choice)."""

Paragraph = Annotated[str, Meta(min_length=1, max_length=600)]


class Drawing(StrEnum):
    """What is drawn beside the words."""

    JOINT = "joint"
    """The joint from the front, its capsule loose and thick."""
    COURSE = "course"
    """The three phases over time."""
    REACH_PAINFUL = "reach-painful"
    """How far an arm goes, most of the way sore."""
    REACH_STIFF = "reach-stiff"
    """The same, stopped early."""
    REACH_THAWING = "reach-thawing"
    """The same, with more room."""
    PULL = "pull"
    """From nothing over a pull to pain, and where to stay."""
    AFTERWARDS = "afterwards"
    """Pain after a session: soon down again, or not."""


class Fact(msgspec.Struct, frozen=True, kw_only=True, forbid_unknown_fields=True):
    """One thing that a page claims, and where it is from."""

    claim: Sentence
    source: Sentence


class PageWords(msgspec.Struct, frozen=True, kw_only=True, forbid_unknown_fields=True):
    """A page's words in one language."""

    title: Words
    paragraphs: Annotated[tuple[Paragraph, ...], Meta(min_length=1, max_length=4)]

    @property
    def spoken(self) -> str:
        """What is read aloud: the title and the paragraphs as they are written."""
        return " ".join((f"{self.title}.", *self.paragraphs))


class Page(msgspec.Struct, frozen=True, kw_only=True, forbid_unknown_fields=True):
    """One page; ``phases`` says for whom it is, empty for everyone."""

    id: Slug
    order: Annotated[int, Meta(ge=1, le=999)]
    phases: Annotated[tuple[StiffnessPhase, ...], Meta(max_length=3)] = ()
    drawing: Drawing
    facts: Annotated[tuple[Fact, ...], Meta(min_length=1, max_length=12)]
    telling: dict[Annotated[str, Meta(pattern="^[a-z]{2}$")], PageWords]

    @property
    def words(self) -> PageWords:
        """The page in the program's language."""
        return texts.of(self.telling)

    @property
    def sources(self) -> tuple[str, ...]:
        """Where its facts are from, each source once, as the page first needs them."""
        return tuple(dict.fromkeys(fact.source for fact in self.facts))


def parse_pages(contents: Mapping[str, bytes]) -> tuple[Page, ...]:
    """Read page files by their names without a folder (``<id>.toml``), in general order.

    Raises a ``Fault`` that names the file, the field and what may stand there.
    """
    pages: list[Page] = []
    for name in sorted(contents):
        where = translate("faults", "The page file {name}").format(name=name[:80])
        page = read(contents[name], Page, where)
        if name != page.id + ENDING:
            raise refused(where, f"id is {page.id}, whose file is {page.id}{ENDING}")
        if texts.ENGLISH not in page.telling:
            raise refused(where, f"telling.{texts.ENGLISH} is missing")
        for language, told in page.telling.items():
            count = sum(len(paragraph.split()) for paragraph in told.paragraphs)
            if count > MOST_WORDS:
                raise refused(
                    where, f"telling.{language} has {count} words, at most {MOST_WORDS} fit"
                )
        if any(page.order == other.order for other in pages):
            raise refused(where, f"order {page.order} is another page's too")
        pages.append(page)
    return tuple(sorted(pages, key=lambda page: page.order))


def choose_pages(pages: Iterable[Page], phase: StiffnessPhase | None) -> tuple[Page, ...]:
    """Give what is to be read in a phase: its own pages first, then everyone's.

    Without a phase every page, in general order: the therapist has not said which one it is.
    """
    ordered = sorted(pages, key=lambda page: page.order)
    if phase is None:
        return tuple(ordered)
    own = [page for page in ordered if phase in page.phases]
    return (*own, *(page for page in ordered if not page.phases))


@cache
def all_pages() -> tuple[Page, ...]:
    """Give the program's own pages in general order, read once."""
    return parse_pages(
        brought_along("coach.catalogue", "pages", translate("faults", "The pages to read"))
    )


def pages_for(phase: StiffnessPhase | None) -> tuple[Page, ...]:
    """Give the program's pages for a phase, as ``choose_pages`` does."""
    return choose_pages(all_pages(), phase)

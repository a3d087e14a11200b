"""On whom a published figure was found, in the words of the chosen language."""

from __future__ import annotations

from coach.review.norms import MITSUKANE, TVEITA, PublishedChange
from coach.texts import translate


def people_words(published: PublishedChange) -> str:
    """Say whom a change was published of that a result is set beside (``norms.PUBLISHED``)."""
    if published == TVEITA:
        return translate("review", "32 people with capsulitis, goniometer by hand")
    if published == MITSUKANE:
        return translate("review", "60 healthy people, tape by hand")
    return published.people

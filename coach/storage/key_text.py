"""The practice's keys as lines: the secret ones inside the locked file, the public ones beside it.

Both are read by other age programs as well (https://c2sp.org/age): secret keys as ``age-keygen``
writes them, of which each is tried; public keys as a list of recipients, in which the older ones
are comments, so that nobody seals for them any more.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import dataclass
from datetime import date

import pyrage

from coach.storage.sealed import PracticeIdentity

_CREATED = re.compile(r"# created: ([0-9]{4}-[0-9]{2}-[0-9]{2})")
_MADE = re.compile(r"# made ([0-9]{4}-[0-9]{2}-[0-9]{2})")
_OLDER = re.compile(r"# older(?:, made ([0-9]{4}-[0-9]{2}-[0-9]{2}))?: (age1[0-9a-z]+)")


@dataclass(frozen=True, slots=True)
class PublicKey:
    """The public half of one of the practice's keys; ``made_on`` is None where nobody noted it."""

    text: str
    made_on: date | None = None


def secret_text(identity: PracticeIdentity) -> str:
    """Write the secret keys, the newest first."""
    return "".join(line for one in identity.every for line in _secret_lines(one))


def _secret_lines(one: PracticeIdentity) -> Iterator[str]:
    if one.made_on is not None:
        yield f"# created: {one.made_on}T00:00:00Z\n"
    yield f"# public key: {one.public_key}\n{one.key}\n"


def read_secret(text: str) -> PracticeIdentity:
    """Read secret keys, the newest first, each once.

    A line that is neither a key nor a comment raises ValueError, and so does a text without a
    key: leaving it out would lose what was sealed for it.
    """
    found: dict[str, PracticeIdentity] = {}
    made_on: date | None = None
    for line in map(str.strip, text.splitlines()):
        if created := _CREATED.match(line):
            made_on = _day(created[1])
        if line and not line.startswith("#"):
            one = _identity(line, made_on)
            found.setdefault(one.public_key, one)
            made_on = None
    if not found:
        raise ValueError("no key")
    newest, *older = found.values()
    return PracticeIdentity(newest.public_key, newest.key, newest.made_on, tuple(older))


def _identity(line: str, made_on: date | None) -> PracticeIdentity:
    try:
        key = pyrage.x25519.Identity.from_str(line)
    except pyrage.IdentityError as error:
        raise ValueError("no age identity") from error
    return PracticeIdentity(str(key.to_public()), key, made_on)


def public_text(identity: PracticeIdentity) -> str:
    """Write the public keys, the newest first."""
    newest, *older = identity.every
    made = f"# made {newest.made_on}\n" if newest.made_on else ""
    rest = (
        f"# older{f', made {one.made_on}' if one.made_on else ''}: {one.public_key}\n"
        for one in older
    )
    return f"{made}{newest.public_key}\n{''.join(rest)}"


def read_public(text: str) -> tuple[PublicKey, ...]:
    """Read public keys, the newest first. ValueError where they are damaged."""
    newest: list[PublicKey] = []
    older: list[PublicKey] = []
    made_on: date | None = None
    for line in map(str.strip, text.splitlines()):
        if made := _MADE.fullmatch(line):
            made_on = _day(made[1])
        elif one := _OLDER.fullmatch(line):
            older.append(_public(one[2], _day(one[1] or "")))
        elif line:
            newest.append(_public(line, made_on))
    if len(newest) != 1:
        raise ValueError("not one key for new plans")
    return (*newest, *older)


def _public(text: str, made_on: date | None) -> PublicKey:
    try:
        return PublicKey(str(pyrage.x25519.Recipient.from_str(text)), made_on)
    except pyrage.RecipientError as error:
        raise ValueError("no age recipient") from error


def _day(text: str) -> date | None:
    """Read a day out of a comment, which other programs write as they like."""
    try:
        return date.fromisoformat(text)
    except ValueError:
        return None

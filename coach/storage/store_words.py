"""What an error of the database means to a person."""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import contextmanager

import msgspec
from sqlalchemy.exc import DatabaseError, SQLAlchemyError

from coach.domain.fault import Fault
from coach.texts import translate

_NO_RIGHT = ("42501", "25006")
_NO_ROOM = ("53100", "53200")
_COLLISIONS = ("40001", "40P01", "23505", "55P03")
"""SQLSTATE of PostgreSQL, appendix A: what each means is in the sentence below."""

_NO_MEANING = (msgspec.MsgspecError, ValueError, TypeError, OverflowError)
"""What comes of cells that hold anything else than the program wrote there."""


@contextmanager
def sentences(name: str) -> Iterator[None]:
    """Turn what the database says into a ``Fault`` about the store called ``name``."""
    try:
        yield
    except SQLAlchemyError as error:
        raise Fault(_sentence(error, name)) from error
    except _NO_MEANING as error:
        raise Fault(
            translate(
                "faults",
                "The store at {name} holds something that this program did not write, "
                "or is damaged ({error}): put a backup copy in its place.",
            ).format(name=name, error=_first_line(str(error)))
        ) from error


def _sentence(error: SQLAlchemyError, name: str) -> str:
    said = str(error.orig) if isinstance(error, DatabaseError) else str(error)
    if "://" in name:
        state = getattr(getattr(error, "orig", None), "sqlstate", None)
        return _of_server(said, state, name)
    lowered = said.lower()
    if "locked" in lowered or "busy" in lowered:
        return translate(
            "faults",
            "The store at {name} is in use by another program: close that one and try again.",
        ).format(name=name)
    if "full" in lowered:
        return translate(
            "faults",
            "There is no room left for the store at {name}: free some space and try again.",
        ).format(name=name)
    if "readonly" in lowered or "unable to open" in lowered:
        return translate(
            "faults",
            "The store at {name} cannot be written: ask for the right to write there.",
        ).format(name=name)
    if "not a database" in lowered or "malformed" in lowered or "no such" in lowered:
        return translate(
            "faults",
            "The store at {name} is locked, damaged or no store of this program: unlock"
            " it with its passphrase, put a backup copy in its place, or move the file "
            "away to begin anew.",
        ).format(name=name)
    return translate(
        "faults",
        "The store at {name} refused ({said}): try again, and keep a copy.",
    ).format(name=name, said=_first_line(said))


def _of_server(said: str, state: str | None, name: str) -> str:
    if state in _NO_RIGHT:
        return translate(
            "faults",
            "The store at {name} cannot be written: ask for the right to write there.",
        ).format(name=name)
    if state in _NO_ROOM:
        return translate(
            "faults",
            "There is no room left for the store at {name}: free some space on its server.",
        ).format(name=name)
    if state in _COLLISIONS:
        return translate(
            "faults",
            "Another desk keeps writing to the store at {name}: try again.",
        ).format(name=name)
    if state is None or state.startswith(("08", "28", "3D", "57P")):
        return translate(
            "faults",
            "The store at {name} cannot be reached ({said}): see that the server runs, "
            "and that user, password and database are right.",
        ).format(name=name, said=_first_line(said))
    return translate(
        "faults",
        "The store at {name} refused ({said}): try again.",
    ).format(name=name, said=_first_line(said))


def _first_line(said: str) -> str:
    return next(
        (line.strip() for line in said.splitlines() if line.strip()),
        translate("faults", "no reason given"),
    )

"""A disk that fails when asked to, and forgets at a power failure what was not forced onto it.

It stands in for the calls of ``os`` by which the program writes, for one folder, and for real below
it. Nothing is forced in earnest: what a power failure would leave is worked out from what was done.
"""

from __future__ import annotations

import errno
import os
import random
import threading
from collections.abc import Callable
from dataclasses import dataclass, field
from pathlib import Path
from types import TracebackType
from typing import Any

CALLS = ("open", "write", "fsync", "replace", "rename", "link", "unlink", "mkdir")
ERRORS = (errno.ENOSPC, errno.EIO, errno.EROFS)
SHORT = -1
"""Instead of an error: the call takes half of what it is given, as POSIX allows."""

Fails = Callable[[int, str], int | None]
"""By its number from 1 on and its name: the error a call ends with, None where it works."""


@dataclass(frozen=True, slots=True)
class Event:
    """Something done to a file or folder; ``number`` tells files apart whatever they are called."""

    what: str
    path: str = ""
    to: str = ""
    number: int = 0
    data: bytes = b""
    at: int = 0


class Disk:
    """Watches one folder while it is entered; one at a time."""

    def __init__(self, folder: Path, fails: Fails = lambda number, name: None) -> None:
        self.folder = str(folder)
        self.fails = fails
        self.calls = 0
        self.events: list[Event] = []
        self._names: dict[int, tuple[int, str]] = {}
        self._files = 0
        self._lock = threading.RLock()
        self._real: dict[str, Any] = {}

    def __enter__(self) -> Disk:
        for name in (*CALLS, "close"):
            self._real[name] = getattr(os, name)
            setattr(os, name, getattr(self, f"_{name}"))
        return self

    def __exit__(
        self,
        kind: type[BaseException] | None,
        error: BaseException | None,
        trace: TracebackType | None,
    ) -> None:
        for name, real in self._real.items():
            setattr(os, name, real)

    def mark(self, what: str, number: int = 0) -> None:
        """Note among the events how far the program believes to be."""
        self.events.append(Event(what, number=number))

    def _at(self, name: str) -> int | None:
        self.calls += 1
        found = self.fails(self.calls, name)
        if found is not None and found != SHORT:
            raise OSError(found, os.strerror(found))
        return found

    def _mine(self, path: Any) -> bool:
        return str(path).startswith(self.folder)

    def _open(self, path: Any, flags: int, mode: int = 0o777, **more: Any) -> int:
        with self._lock:
            made = flags & os.O_CREAT and not Path(path).exists()
            if self._mine(path) and flags & (os.O_CREAT | os.O_RDWR | os.O_WRONLY):
                self._at("open")
            descriptor: int = self._real["open"](path, flags, mode, **more)
            if self._mine(path):
                self._files += 1
                number = self._files if made else self._number_of(str(path))
                self._names[descriptor] = (number, str(path))
                if made:
                    self.events.append(Event("create", str(path), number=number))
            return descriptor

    def _number_of(self, path: str) -> int:
        """Give the number of the file that has this name now."""
        names: dict[str, int] = {}
        for event in self.events:
            _rename(names, event)
        return names.get(path, 0)

    def _close(self, descriptor: int) -> None:
        with self._lock:
            self._names.pop(descriptor, None)
            self._real["close"](descriptor)

    def _write(self, descriptor: int, data: Any) -> int:
        with self._lock:
            known = self._names.get(descriptor)
            if known is None:
                return int(self._real["write"](descriptor, data))
            if self._at("write") == SHORT:
                data = data[: max(1, len(data) // 2)]
            at = os.lseek(descriptor, 0, os.SEEK_CUR)
            taken = int(self._real["write"](descriptor, data))
            done = bytes(data[:taken])
            self.events.append(Event("write", number=known[0], data=done, at=at))
            return taken

    def _fsync(self, descriptor: int) -> None:
        with self._lock:
            known = self._names.get(descriptor)
            if known is not None:
                try:
                    self._at("fsync")
                except OSError:
                    self.events.append(Event("sync-failed", known[1], number=known[0]))
                    raise
                what = "sync-folder" if Path(known[1]).is_dir() else "sync"
                self.events.append(Event(what, known[1], number=known[0]))

    def _named(self, name: str, path: Any, *to: Any, **more: Any) -> None:
        with self._lock:
            if self._mine(path):
                self._at(name)
            self._real[name](path, *to, **more)
            if self._mine(path):
                what = "rename" if name == "replace" else name
                after = str(to[0]) if to and isinstance(to[0], str | Path) else ""
                self.events.append(Event(what, str(path), after))

    def _replace(self, path: Any, to: Any, **more: Any) -> None:
        self._named("replace", path, to, **more)

    def _rename(self, path: Any, to: Any, **more: Any) -> None:
        self._named("rename", path, to, **more)

    def _link(self, path: Any, to: Any, **more: Any) -> None:
        self._named("link", path, to, **more)

    def _unlink(self, path: Any, **more: Any) -> None:
        self._named("unlink", path, **more)

    def _mkdir(self, path: Any, mode: int = 0o777, **more: Any) -> None:
        self._named("mkdir", path, mode, **more)


def _rename(names: dict[str, int], event: Event) -> None:
    match event.what:
        case "create":
            names[event.path] = event.number
        case "mkdir":
            names[event.path] = 0
        case "link":
            names[event.to] = names[event.path]
        case "rename":
            names[event.to] = names.pop(event.path)
        case "unlink":
            names.pop(event.path, None)


@dataclass
class _File:
    """What is on the disk for certain, and what was written since, by place.

    What forcing failed for is not tried again by the system: it calls it written.
    """

    forced: bytearray = field(default_factory=bytearray)
    unforced: list[tuple[int, bytes]] = field(default_factory=list)

    def force(self) -> None:
        for at, data in self.unforced:
            _put(self.forced, at, data)
        self.unforced.clear()

    def left(self, chance: random.Random) -> bytes:
        found = bytearray(self.forced)
        for at, data in self.unforced[: chance.randint(0, len(self.unforced))]:
            reached = chance.choice((len(data), chance.randint(0, len(data))))
            _put(found, at, chance.choice((data[:reached], bytes(reached))))
        return bytes(found)


def _put(file: bytearray, at: int, data: bytes) -> None:
    file.extend(bytes(max(0, at - len(file))))
    file[at : at + len(data)] = data


def after_power_failure(events: list[Event], folder: Path, to: Path, chance: random.Random) -> None:
    """Make in ``to`` what the folder may hold when the power fails behind these events.

    Of each file, what was forced is there; of what was not, any beginning, or zeros in its place.
    Of changed names those of a forced folder are there, and of later ones any first few. A folder
    whose name was not forced takes with it what is in it.
    """
    files: dict[int, _File] = {}
    names: dict[str, int] = {}
    waiting: dict[str, list[Event]] = {}
    for event in events:
        file = files.setdefault(event.number, _File())
        match event.what:
            case "write":
                file.unforced.append((event.at, event.data))
            case "sync":
                file.force()
            case "sync-failed":
                file.unforced.clear()
            case "sync-folder":
                for each in waiting.pop(event.path, []):
                    _rename(names, each)
            case "create" | "mkdir" | "link" | "rename" | "unlink":
                waiting.setdefault(str(Path(event.path).parent), []).append(event)
    for several in waiting.values():
        for each in several[: chance.randint(0, len(several))]:
            _rename(names, each)
    for path, number in sorted(names.items()):
        place = to / Path(path).relative_to(folder)
        if not place.parent.is_dir():
            continue
        if number == 0:
            place.mkdir(exist_ok=True)
            continue
        place.write_bytes(files[number].left(chance))

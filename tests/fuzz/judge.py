"""One changed document: taken and used, or refused in a sentence; anything else is a find."""

from __future__ import annotations

import re
import time
import traceback
from collections.abc import Callable
from dataclasses import dataclass, field
from random import Random

from coach.domain.fault import Fault
from tests.fuzz.readers import Reader

MOST_S = 2.0
_QUOTED = re.compile(r'"(?:[^"\\]|\\.)*(?:"|\.\.\.)|\'(?:[^\'\\]|\\.)*\'|\([^()]*\)')
_LONGEST = 900


@dataclass
class Figures:
    """What became of many cases."""

    cases: int = 0
    taken: int = 0
    used: int = 0
    refused: int = 0
    longest_s: float = 0.0
    finds: list[tuple[str, bytes]] = field(default_factory=list)

    @property
    def line(self) -> str:
        return (
            f"{self.cases:>9,} cases, {self.taken:,} taken ({self.used:,} used), "
            f"{self.refused:,} refused, "
            f"longest {self.longest_s:.2f} s, {len(self.finds)} finds"
        )


def judge(reader: Reader, data: bytes, figures: Figures) -> bool:
    """Read one case and note what became of it; whether it was taken."""
    begun = time.process_time()
    taken, find = False, None
    try:
        held = reader.read(data)
        taken = True
        figures.taken += 1
        if figures.taken % reader.every == 0:
            reader.use(held)
            figures.used += 1
    except Fault as fault:
        figures.refused += 1
        find = wrong_with(str(fault))
    except Exception:  # whatever a stranger's file brings about is what is looked for
        find = traceback.format_exc(limit=-6)
    lasted_s = time.process_time() - begun
    figures.cases += 1
    figures.longest_s = max(figures.longest_s, lasted_s)
    if find is None and lasted_s > MOST_S:
        find = f"took {lasted_s:.1f} s"
    if find is not None:
        figures.finds.append((find, data))
    return taken


def wrong_with(sentence: str) -> str | None:
    """Say what keeps a refusal from being one printable sentence with something to do."""
    bare = _QUOTED.sub("", sentence)
    if not sentence.isprintable():
        return f"not printable: {sentence!r}"
    if len(sentence) > _LONGEST:
        return f"too long: {sentence}"
    if not sentence.endswith("."):
        return f"no full stop: {sentence}"
    if re.search(r"[.!?] +[A-Z]", bare):
        return f"more than one sentence: {sentence}"
    if not re.search(r"[;:,] ", bare):
        return f"nothing to do: {sentence}"
    return None


def run(
    reader: Reader,
    figures: Figures,
    seed: int,
    go_on: Callable[[Figures], bool],
    before: Callable[[bytes], None] = lambda data: None,
) -> None:
    """Change the seeds, and what was taken of that again, for as long as ``go_on`` says."""
    chance = Random(seed)
    seeds = reader.seeds()
    for data in seeds:
        assert judge(reader, data, figures), f"{reader.name}: a seed is refused: {figures.finds}"
    pool: list[bytes] = []
    while go_on(figures):
        parent = chance.choice(pool if pool and chance.randrange(2) else seeds)
        data = reader.change(parent, chance)
        before(data)
        if judge(reader, data, figures) and len(data) < 4 * len(seeds[0]):
            if len(pool) < 200:
                pool.append(data)
            else:
                pool[chance.randrange(len(pool))] = data

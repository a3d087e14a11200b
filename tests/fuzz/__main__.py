"""``python -m tests.fuzz READER ...``: changed documents until the time or the number is up."""

from __future__ import annotations

import argparse
import faulthandler
import hashlib
import os
import signal
import sys
import time
from pathlib import Path

from tests.fuzz.judge import Figures, run
from tests.fuzz.readers import readers

_MOST_MEMORY_BYTES = 6 * 2**30
_STUCK_S = 60


def main() -> int:
    """Print a line of figures for each reader; 1 where there was a find."""
    parser = argparse.ArgumentParser(prog="python -m tests.fuzz", description=__doc__)
    parser.add_argument("reader", nargs="+", choices=(*readers(), "all"))
    parser.add_argument("--runs", type=int, help="cases of each reader, by default 10,000")
    parser.add_argument("--seconds", type=float, help="time for each reader, in place of --runs")
    parser.add_argument("--seed", type=int, default=0)
    parser.add_argument("--keep", type=Path, help="folder for each find, and for a case that kills")
    options = parser.parse_args()
    names = list(readers()) if "all" in options.reader else options.reader
    _bound_memory()
    faulthandler.register(signal.SIGALRM, chain=True)  # where it was stuck, before it is ended
    found = 0
    for name in names:
        figures = Figures()
        until_s = time.monotonic() + (options.seconds or 0)
        runs = options.runs or 10_000

        def go_on(so_far: Figures, until_s: float = until_s, runs: int = runs) -> bool:
            if options.seconds is not None:
                return time.monotonic() < until_s and len(so_far.finds) < 50
            return so_far.cases < runs and len(so_far.finds) < 50

        def before(data: bytes, name: str = name) -> None:
            signal.alarm(_STUCK_S)
            if options.keep is not None and name in ("video", "store", "key", "sealed"):
                (options.keep / f"{name}-last").write_bytes(data)

        if options.keep is not None:
            options.keep.mkdir(parents=True, exist_ok=True)
        run(readers()[name], figures, options.seed, go_on, before)
        signal.alarm(0)
        print(f"{name:<10}{figures.line}", flush=True)
        _tell(name, figures, options.keep)
        found += len(figures.finds)
    return 1 if found else 0


def _tell(name: str, figures: Figures, keep: Path | None) -> None:
    seen: set[str] = set()
    for what, data in figures.finds:
        kind = what.strip().splitlines()[-1][:60]
        if kind in seen:
            continue
        seen.add(kind)
        print(f"--- {name}: {what}", file=sys.stderr)
        if keep is not None:
            (keep / f"{name}-{hashlib.sha256(data).hexdigest()[:10]}").write_bytes(data)


def _bound_memory() -> None:
    if os.name == "posix":
        import resource

        resource.setrlimit(resource.RLIMIT_AS, (_MOST_MEMORY_BYTES, _MOST_MEMORY_BYTES))


if __name__ == "__main__":
    sys.exit(main())

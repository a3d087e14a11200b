"""``python -m tests.bench.speed [PART ...]``: print the table of docs/performance.md.

Everything is measured as ratios within one run, since the machine may have other work: parts that
are compared alternate, and medians are taken. Times of our own threads are their processor time.
"""

from __future__ import annotations

import argparse
import os
from collections.abc import Callable

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")

from coach.desktop.shared.application import create_application
from tests.bench.speed import clips, live, patient, practice
from tests.bench.speed.table import Row

PARTS: dict[str, Callable[[], list[Row]]] = {
    "live": live.fastest,
    "rate": live.at_rate,
    "start": patient.starting,
    "waiting": patient.waiting,
    "measure": clips.against_bare,
    "folder": clips.at_once,
    "import": practice.importing,
    "review": practice.opening,
    "network": practice.network,
}


def main() -> None:
    parser = argparse.ArgumentParser(prog="python -m tests.bench.speed")
    parser.add_argument("parts", nargs="*", metavar="PART", help=f"of {', '.join(PARTS)}")
    chosen = parser.parse_args().parts or list(PARTS)
    application = create_application(["speed"])
    print("| what | target | seen | |\n|---|---|---|---|")
    for name in chosen:
        for row in PARTS[name]():
            print(row, flush=True)
    application.quit()


if __name__ == "__main__":
    main()

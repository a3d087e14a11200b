"""``python -m tests.bench.speed [PART ...]``: print the table of docs/performance.md.

Everything is measured as ratios within one run, since the machine may have other work: parts that
are compared alternate, and medians are taken. Times of our own threads are their processor time.
"""

from __future__ import annotations

import argparse
import os
import subprocess
import sys
from collections.abc import Callable

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")

from coach.desktop.shared.application import create_application
from tests.bench.speed import clips, importing, live, network, patient, practice, slow
from tests.bench.speed.table import Row

PARTS: dict[str, Callable[[], list[Row]]] = {
    "live": live.fastest,
    "rate": live.at_rate,
    "slow": slow.rows,
    "start": patient.starting,
    "waiting": patient.waiting,
    "measure": clips.against_bare,
    "folder": clips.at_once,
    "import": importing.importing,
    "review": practice.opening,
    "network": network.network,
}


def main() -> None:
    parser = argparse.ArgumentParser(prog="python -m tests.bench.speed")
    parser.add_argument("parts", nargs="*", metavar="PART", help=f"of {', '.join(PARTS)}")
    chosen = parser.parse_args().parts or list(PARTS)
    print("| what | target | seen | |\n|---|---|---|---|", flush=True)
    for name in chosen:
        if len(chosen) > 1:
            _in_a_process_of_its_own(name)
            continue
        application = create_application(["speed"])
        for row in PARTS[name]():
            print(row, flush=True)
        application.quit()


def _in_a_process_of_its_own(name: str) -> None:
    command = [sys.executable, "-m", "tests.bench.speed", name]
    with subprocess.Popen(command, stdout=subprocess.PIPE, text=True) as running:
        assert running.stdout is not None
        for line in list(running.stdout)[2:]:
            print(line, end="", flush=True)


if __name__ == "__main__":
    main()

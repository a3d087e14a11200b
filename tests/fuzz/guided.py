"""The same cases, chosen by which of the program's lines they reach: Atheris (libFuzzer).

``python -m tests.fuzz.guided READER [--runs N | --seconds S] [--keep FOLDER]``; it needs the extra
``fuzz`` and ends at the first find, which libFuzzer writes into the folder.
"""

from __future__ import annotations

import argparse
import sys
import tempfile
from pathlib import Path
from random import Random

import atheris

with atheris.instrument_imports(include=["coach"]):
    from tests.fuzz.judge import Figures, judge
    from tests.fuzz.readers import readers


def main() -> None:
    """Run one reader until a find, the time or the number is up; libFuzzer ends the process."""
    parser = argparse.ArgumentParser(prog="python -m tests.fuzz.guided", description=__doc__)
    parser.add_argument("reader", choices=tuple(readers()))
    parser.add_argument("--runs", type=int, default=10_000)
    parser.add_argument("--seconds", type=int)
    parser.add_argument("--keep", type=Path, default=Path())
    options = parser.parse_args()
    reader, figures = readers()[options.reader], Figures()

    def one(data: bytes) -> None:
        judge(reader, data, figures)
        if figures.finds:
            raise AssertionError(figures.finds[0][0])

    def change(data: bytes, most: int, seed: int) -> bytes:
        chance = Random(seed)
        if not chance.randrange(4):
            return bytes(atheris.Mutate(data, most))
        return reader.change(data, chance)[:most]

    corpus = tempfile.mkdtemp(prefix="corpus")
    for number, data in enumerate(reader.seeds()):
        (Path(corpus) / str(number)).write_bytes(data)
    bounds = (
        [f"-max_total_time={options.seconds}"] if options.seconds else [f"-runs={options.runs}"]
    )
    bounds += ["-max_len=200000", "-timeout=60", f"-artifact_prefix={options.keep}/"]
    atheris.Setup([sys.argv[0], *bounds, corpus], one, custom_mutator=change)
    atheris.Fuzz()


if __name__ == "__main__":
    main()

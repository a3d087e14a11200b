"""Score the raised hand on clips of ``--gesture``: ``python -m tests.bench.gestures FOLDER``.

A raise is found when UP comes while the hand is truly up, and KEPT too where it stays up for
``KEPT_S`` and more; every other UP is false. Late is from the moment the hand was up at the end of
its way, to UP, ``UP_S`` of it asked for.
"""

from __future__ import annotations

import argparse
import json
from collections import Counter
from pathlib import Path

import numpy as np

from coach import gestures
from coach.domain.movement import Position, Side
from coach.gestures import KEPT_S, Gesture, GestureEvent
from tests.bench.score import load, poses_of


def events_of(path: Path) -> tuple[list[GestureEvent], list[dict[str, float | str]]]:
    """Give the events told of a file and the acts of the other hand in it."""
    data = load(path)
    watch = gestures.begin(Side(str(data["side"])), Position(str(data["position"])))
    told: list[GestureEvent] = []
    for time_s, pose in poses_of(data):
        watch, events = gestures.advance(watch, time_s, pose)
        told += events
    return told, json.loads(str(data["spec_json"]))["gestures"]


def score(path: Path) -> tuple[Counter[str], list[float], list[float], list[str]]:
    """Count what was found of one file; seconds late of UP and of DOWN; what went wrong."""
    told, acts = events_of(path)
    tally: Counter[str] = Counter()
    late_s: list[float] = []
    down_s: list[float] = []
    wrong: list[str] = []
    free = list(told)
    for act in acts:
        from_s, to_s = act["start_s"] - act["there_s"], act["end_s"] + act["back_s"]
        here = [event for event in free if from_s <= event.time_s <= to_s + 1.0]
        kinds = Counter(event.gesture for event in here)
        if act["kind"] != "raise":
            tally[act["kind"]] += 1
            if kinds[Gesture.UP]:
                tally["false"] += kinds[Gesture.UP]
                tally[f"false {act['kind']}"] += 1
                wrong.append(f"UP at {here[0].time_s:.1f} s: {act['kind']}")
        else:
            tally["raises"] += 1
            long = act["end_s"] - act["start_s"] >= KEPT_S
            tally["long"] += long
            if not kinds[Gesture.UP]:
                wrong.append(f"missed at {act['start_s']:.1f} s")
            else:
                tally["found"] += 1
                first = next(event for event in here if event.gesture is Gesture.UP)
                late_s.append(first.time_s - act["start_s"])
                tally["false"] += kinds[Gesture.UP] - 1
                tally["kept"] += bool(long and kinds[Gesture.KEPT])
                tally["false"] += bool(not long and kinds[Gesture.KEPT])
                if kinds[Gesture.UP] > 1 or (long and not kinds[Gesture.KEPT]):
                    wrong.append(f"broken at {act['start_s']:.1f} s")
                ends = [event.time_s for event in here if event.gesture is Gesture.DOWN]
                down_s += [ends[-1] - act["end_s"]] if ends else []
        free = [event for event in free if event not in here]
    stray = [event for event in free if event.gesture is Gesture.UP]
    tally["false"] += len(stray)
    wrong += [f"UP at {event.time_s:.1f} s: nothing" for event in stray]
    return tally, late_s, down_s, wrong


def main() -> None:
    """Print a row for each movement, position and view, and what went wrong."""
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("folder", type=Path, help="a folder of npz files, as of one set")
    folder = parser.parse_args().folder
    groups: dict[str, list[Path]] = {}
    for path in sorted(folder.glob("*_gesture*.npz")):
        data = load(path)
        key = f"{data['movement']}, {data['position']}, {data['view']}"
        groups.setdefault(key, []).append(path)
    total: Counter[str] = Counter()
    all_late_s: list[float] = []
    all_down_s: list[float] = []
    wrongs: list[str] = []
    print("| movement, position, view | clips | found | kept | false | late s | worst | down s |")
    print("|---|---|---|---|---|---|---|---|")
    for key, paths in groups.items():
        group: Counter[str] = Counter()
        late_s, down_s = [], []
        for path in paths:
            tally, late, down, wrong = score(path)
            group += tally
            late_s += late
            down_s += down
            wrongs += [f"{path.stem}: {each}" for each in wrong]
        print(_row(key, len(paths), group, late_s, down_s))
        total += group
        all_late_s += late_s
        all_down_s += down_s
    print(_row("all", sum(map(len, groups.values())), total, all_late_s, all_down_s))
    print(f"faces {total['face']}, hands together {total['together']}")
    print("\n".join(wrongs))


def _row(
    key: str, clips: int, tally: Counter[str], late_s: list[float], down_s: list[float]
) -> str:
    late = f"{np.median(late_s):.1f} | {max(late_s):.1f}" if late_s else "- | -"
    down = f"{np.median(down_s):.1f}" if down_s else "-"
    found, kept = f"{tally['found']}/{tally['raises']}", f"{tally['kept']}/{tally['long']}"
    return f"| {key} | {clips} | {found} | {kept} | {tally['false']} | {late} | {down} |"


if __name__ == "__main__":
    main()

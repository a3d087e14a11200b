"""From fitted frames to readings: the movement's value with its error, or a doubt."""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np

from coach.domain.movement import Movement
from coach.domain.reading import Doubt, Reading
from coach.goniometry.angles import Vector, movement_angle_deg
from coach.goniometry.contradiction import contradiction
from coach.goniometry.doorway import Doorway
from coach.goniometry.evidence import Evidence
from coach.goniometry.expectation import Expectation
from coach.goniometry.fitting import Fit
from coach.goniometry.form import Start, forms
from coach.goniometry.interval import corrected, error_of
from coach.goniometry.planar import IN_PICTURE, elevation_in_picture_deg
from coach.goniometry.reach import HiddenHand, reach_ratio
from coach.goniometry.sight import WRIST_VISIBILITY, Sight
from coach.goniometry.skeleton import WRIST
from coach.goniometry.task import Task


def readings_of(
    task: Task,
    expectation: Expectation,
    times_s: Sequence[float] | Vector,
    sights: Sequence[Sight],
    evidence: Evidence,
    fit: Fit,
    start: Start,
    doorway: Doorway | None,
) -> list[Reading]:
    """Turn a fit of frames into readings."""
    stance = fit.stance
    if task.movement is Movement.HAND_BEHIND_BACK:
        values = reach_ratio(stance, evidence.slopes[:, WRIST])
    elif doorway is not None:
        values = np.array([doorway.rotation_deg(sight) for sight in sights])
    else:
        axes = np.eye(3)
        values = movement_angle_deg(
            task.movement, task.side, (axes[0], axes[1], axes[2]), stance.upper_arm, stance.forearm
        )
    if task.movement in IN_PICTURE:
        flat = [elevation_in_picture_deg(sight, task.movement, task.view) for sight in sights]
        # Two readings of one picture, whose errors are not quite the same: their mean errs less.
        values = (values + np.array(flat)) / 2
    known = task.movement, task.position, task.view
    out = []
    seen = forms(stance, sights, start, expectation, task)
    for i, form in enumerate(seen):
        model = sights[i].pose.model
        assert model is not None  # Task.doubt_of refuses points of no known model
        card = sights[i].pose.card is not None
        value = corrected(*known, task.side, float(values[i]), card=card, model=model)
        doubt = contradiction(fit, evidence, i, expectation) if doorway is None else None
        if doubt is not None:
            out.append(Reading(float(times_s[i]), None, None, doubt))
            continue
        turned_deg = sights[i].turned_from_deg(task.view)
        error = error_of(*known, value, turned_deg, card=card, model=model)
        out.append(Reading(float(times_s[i]), value, error, None, form))
    return out


def followed(
    readings: list[Reading], sights: Sequence[Sight], hand: HiddenHand | None
) -> tuple[list[Reading], HiddenHand | None]:
    """Doubt readings of a hand behind the back that jump; ``hand`` is None for other movements."""
    if hand is None:
        return readings, None
    out = []
    for reading, sight in zip(readings, sights, strict=True):
        believed = True
        if reading.value is not None:
            visibility = float(sight.near.visibility[WRIST_VISIBILITY])
            hand, believed = hand.seen(reading.time_s, reading.value, visibility)
        unsure = Reading(reading.time_s, None, None, Doubt.UNSURE)
        out.append(reading if believed else unsure)
    return out, hand

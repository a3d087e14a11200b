"""How the body behaved beside the measured value, over the time of a trace."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field

import numpy as np

from coach.domain.form import FormFault
from coach.domain.movement import Unit
from coach.domain.reading import Form
from coach.review.recording import Floats

_FORM_NAMES = Form.__struct_fields__
_FORM_FAULTS: dict[str, tuple[FormFault, ...]] = {
    "trunk_lean": (FormFault.LEAN,),
    "trunk_turn": (FormFault.TURN,),
    "elbow_flexion": (FormFault.BENT, FormFault.STRAIGHT),
    "shoulder_hike": (FormFault.HIKE,),
    "elbow_drift": (FormFault.DRIFT,),
}


@dataclass(frozen=True, slots=True, eq=False)
class FormSeries:
    """One measure of ``Form`` over the stamps of the trace, (n,) each, NaN where not known."""

    name: str
    unit: Unit
    value: Floats = field(repr=False)
    error: Floats = field(repr=False)
    faults: tuple[FormFault, ...]
    """Those of the repetition that this measure shows."""


def form_series(table: Floats, faults: Sequence[FormFault]) -> tuple[FormSeries, ...]:
    """Split a table (m, 10) of form by measure; one neither seen nor at fault is left out."""
    series = []
    for name, shown in _FORM_FAULTS.items():
        unit = Unit.RATIO if f"{name}_ratio" in _FORM_NAMES else Unit.DEGREES
        ending = "ratio" if unit is Unit.RATIO else "deg"
        value = table[:, _FORM_NAMES.index(f"{name}_{ending}")]
        error = table[:, _FORM_NAMES.index(f"{name}_error_{ending}")]
        found = tuple(fault for fault in shown if fault in faults)
        if found or np.isfinite(value).any():
            series.append(FormSeries(name, unit, value, error, found))
    return tuple(series)

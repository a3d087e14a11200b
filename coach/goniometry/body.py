"""The body as a recording shares it: lengths, the trunk at rest, habits of this sitting."""

from __future__ import annotations

from dataclasses import dataclass, field, replace

import numpy as np

from coach.goniometry.angles import Vector
from coach.goniometry.expectation import LOG_LENGTHS, LOG_LENGTHS_SD, Expectation
from coach.goniometry.turning import turn_by

LENGTHS, REST, PLANES, ELBOW_BEND, PROP = slice(0, 4), slice(4, 7), slice(7, 9), 9, slice(10, 12)
SHARED = 12
"""Places in a vector of changes, and its length."""


@dataclass(frozen=True, slots=True, eq=False)
class Body:
    """What a recording shares, and its covariance (SHARED, SHARED).

    ``rest`` (3, 3): the trunk's axes at rest. ``planes_deg`` (2,), ``elbow_deg``: how far this
    sitting differs from what was expected. ``prop`` (2,): radians by which a propped forearm is
    turned from the expected trunk's forward axis, toward its Y and Z.
    """

    log_lengths: Vector = field(repr=False)
    rest: Vector = field(repr=False)
    planes_deg: Vector = field(repr=False)
    elbow_deg: float
    prop: Vector = field(repr=False)
    covariance: Vector = field(repr=False)

    @classmethod
    def expected(cls, expectation: Expectation) -> Body:
        """Before anything is seen."""
        spread = np.zeros(SHARED)
        spread[LENGTHS] = LOG_LENGTHS_SD
        spread[REST] = np.radians(expectation.trunk_between_deg)
        for k, plane in enumerate(expectation.planes):
            spread[7 + k] = plane.between_deg
        spread[ELBOW_BEND] = expectation.elbow.between_deg
        if expectation.propped is not None:
            spread[PROP] = np.radians(expectation.propped.between_deg)
        none = np.zeros(2)
        return cls(LOG_LENGTHS, expectation.trunk, none, 0.0, none, np.diag(spread**2))

    def changed(self, change: Vector, covariance: Vector) -> Body:
        """Add a change (SHARED,), after which the covariance is as given."""
        return replace(
            self,
            log_lengths=self.log_lengths + change[LENGTHS],
            rest=self.rest @ turn_by(change[REST]),
            planes_deg=self.planes_deg + change[PLANES],
            elbow_deg=self.elbow_deg + float(change[ELBOW_BEND]),
            prop=self.prop + change[PROP],
            covariance=covariance,
        )

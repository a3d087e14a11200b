"""Plans in the store: what a new one starts from, and how one is given out."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from datetime import date
from pathlib import Path

import msgspec

from coach.documents.plan import write_plan
from coach.domain.exercise import Irritability, StiffnessPhase
from coach.domain.fault import Fault
from coach.domain.movement import Side
from coach.domain.plan import OtherSide, Plan
from coach.domain.practice import IssuedPlan, PatientRecords, Person
from coach.storage.atomic import write_bytes
from coach.storage.store import Store


@dataclass(frozen=True, slots=True)
class PlanStart:
    """What a person's next plan starts from.

    ``last`` is the plan given last; side, phase and irritability are those of the last episode,
    else of that plan; ``other_side`` are the newest measures of the practice.
    """

    code: str
    last: Plan | None = None
    side: Side | None = None
    phase: StiffnessPhase | None = None
    irritability: Irritability | None = None
    other_side: tuple[OtherSide, ...] = ()


class PlanIssue:
    """Enters plans in the store as they are given out."""

    def __init__(self, store: Store, today: Callable[[], date]) -> None:
        """Take the store that keeps the plans."""
        self._store, self._today = store, today

    def start(self, code: str) -> PlanStart:
        """Give what the next plan of a known person starts from. Raises ``Fault``."""
        records = self._store.records_of(code)
        episode, last = records.episode, _plan(records.last_plan)
        judged = episode or last
        return PlanStart(
            code=code,
            last=last,
            side=judged.side if judged else None,
            phase=(episode.phase if episode else None) or (last.phase if last else None),
            irritability=(episode.irritability if episode else None)
            or (last.irritability if last else None),
            other_side=tuple(
                OtherSide(movement=m.movement, value_deg=m.value_deg)
                for m in records.newest_other_side.values()
            ),
        )

    def last(self, code: str) -> Plan | None:
        """Give the plan that a person was given last, None also where the person is not known."""
        known = self._store.issued_plans(code)
        return _plan(known[-1]) if known else None

    def numbered(self, made: Plan) -> Plan:
        """Give a plan the revision after the last; one that asks nothing else is that last one."""
        last = self.last(made.patient_code)
        if last is None:
            return made
        if _asks_the_same(made, last):
            return last
        return msgspec.structs.replace(made, revision=max(made.revision, last.revision + 1))

    def give_out(self, made: Plan, path: Path) -> Plan:
        """Enter a plan and write its file, both or neither; gives it as ``numbered``.

        What is in the store already is only written again.
        """
        made = self.numbered(made)
        content = write_plan(made)
        if made == self.last(made.patient_code):
            write_bytes(path, content)
            return made
        record = self._store.add(self._record(made, content.decode()))
        try:
            write_bytes(path, content)
        except Fault:
            self._store.remove(record)
            raise
        return made

    def _record(self, made: Plan, text: str) -> IssuedPlan:
        records = self._records(made.patient_code)
        episodes = [e for e in records.episodes if made.side in (None, e.side)]
        return IssuedPlan(
            code=made.patient_code,
            episode_id=episodes[-1].id if episodes else None,
            revision=made.revision,
            issued_on=made.issued_on or self._today(),
            side=made.side,
            plan=text,
        )

    def _records(self, code: str) -> PatientRecords:
        """Give a person's records; a plan may be the first that is known of them."""
        if all(person.code != code for person in self._store.people()):
            self._store.add(Person(code=code, created_on=self._today()))
        return self._store.records_of(code)


def _plan(issued: IssuedPlan | None) -> Plan | None:
    return None if issued is None else msgspec.json.decode(issued.plan, type=Plan)


def _asks_the_same(one: Plan, other: Plan) -> bool:
    same = msgspec.structs.replace(one, revision=other.revision, issued_on=other.issued_on)
    return same == other

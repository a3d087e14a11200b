"""What the practice measured itself as a table: CSV, one row a value."""

from __future__ import annotations

from collections.abc import Iterator

from coach.domain.movement import Side, Unit
from coach.domain.practice import HandMeasure, OtherSideMeasure, PatientRecords, TotalScore
from coach.exchange.table import Cell, csv_bytes
from coach.exchange.wording import BY_HAND, OTHER_SIDE, QUESTIONNAIRE

MEASURE_COLUMNS = (
    "patient", "on", "kind", "movement", "side", "effort", "questionnaire", "value", "unit",
    "highest_possible", "method",
)  # fmt: skip
Measure = HandMeasure | OtherSideMeasure | TotalScore


def measures_table(records: PatientRecords) -> bytes:
    """Write goniometer readings, the other side and questionnaire totals, oldest day first.

    As ``holds_table``. The two are files of their own: a row here has no sitting and no hold.
    """
    sides = {episode.id: episode.side.other for episode in records.episodes}
    measures: list[Measure] = [*records.by_hand, *records.other_side, *records.scores]
    measures.sort(key=lambda measure: measure.on)
    return csv_bytes(MEASURE_COLUMNS, (tuple(_row(m, sides)) for m in measures))


def _row(measure: Measure, others: dict[int | None, Side]) -> Iterator[Cell]:
    yield from (measure.code, measure.on.isoformat())
    match measure:
        case HandMeasure():
            yield from ("goniometer", measure.movement, measure.side)
            yield from ("passive" if measure.passive else "active", None)
            yield from (measure.value_deg, Unit.DEGREES, None, BY_HAND)
        case OtherSideMeasure():
            yield from ("other-side", measure.movement, others.get(measure.episode_id))
            yield from (None, None, measure.value_deg, Unit.DEGREES, None, OTHER_SIDE)
        case TotalScore():
            yield from ("questionnaire", None, None, None, measure.name)
            yield from (measure.total, "1", measure.maximum, QUESTIONNAIRE)

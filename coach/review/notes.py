"""What a reader must know to judge the figures: where they come from and where they end."""

from __future__ import annotations

from collections.abc import Sequence

from coach.domain.movement import Movement, Unit
from coach.review.change import Basis, Summary, Verdict
from coach.review.history import Series
from coach.review.norm_words import people_words
from coach.review.norms import PLACEMENT_SEM, PUBLISHED, WORTH_KNOWING
from coach.review.set_up import SetUpChange
from coach.review.sittings import POORLY_SEEN
from coach.review.wording import amount, least, listed, movement_name, movement_of
from coach.texts import translate


def notes_on(charted: Sequence[tuple[Series, Summary | None]], definitions: int) -> tuple[str, ...]:
    """Give the notes; ``definitions`` is how many definitions of the angles are among them."""
    notes: list[str] = []
    results = [result for _, result in charted if result]
    for unit in dict.fromkeys(r.unit for r in results):
        notes += _on_change([r for r in results if r.unit is unit], unit)
    notes.extend(
        _moved(r.set_up_change).format(movement=movement_of(r.movement, r.side, r.position))
        for r in results
        if r.set_up_change.happened
    )
    notes.extend(_undecided(r) for r in results if r.verdict is Verdict.UNDECIDED)
    feigned = sum(p.feigned for series, _ in charted for p in series.points)
    if feigned:
        notes.append(
            translate(
                "review",
                "1 value only from holds in which the trunk leaned or turned: not compared.",
            )
            if feigned == 1
            else translate(
                "review",
                "{count} values only from holds in which the trunk leaned or turned: not compared.",
            ).format(count=feigned)
        )
    if definitions > 1:
        notes.append(
            translate(
                "review", "The definition of an angle changed: rows of the two are not compared."
            )
        )
    open_holds = sum(not p.complete for series, _ in charted for p in series.points)
    if open_holds:
        notes.append(
            translate("review", "1 value from holds let go before their time (hollow dots).")
            if open_holds == 1
            else translate(
                "review", "{count} values from holds let go before their time (hollow dots)."
            ).format(count=open_holds)
        )
    poorly = sum(p.seen_fraction < POORLY_SEEN for series, _ in charted for p in series.points)
    if poorly:
        notes.append(
            translate("review", "1 value with the arm out of sight for over a fifth.")
            if poorly == 1
            else translate(
                "review", "{count} values with the arm out of sight for over a fifth."
            ).format(count=poorly)
        )
    notes.append(
        translate(
            "review",
            "The camera does not see why a range is limited. A systematic "
            "error that stays the same cancels in the change, not in the "
            "single values.",
        )
    )
    return tuple(notes)


def _moved(change: SetUpChange) -> str:
    match change:
        case SetUpChange.CAMERA:
            return translate(
                "review",
                "{movement}: the last sessions were measured with another camera set-up than the "
                "first; all of the readings' error therefore counts.",
            )
        case SetUpChange.MODEL:
            return translate(
                "review",
                "{movement}: the last sessions were measured with another pose model than the "
                "first, by the same camera set-up; all of the readings' error therefore counts.",
            )
        case SetUpChange.BOTH:
            return translate(
                "review",
                "{movement}: the last sessions were measured with another camera set-up and "
                "another pose model than the first; all of the readings' error therefore counts.",
            )
        case SetUpChange.NONE:
            raise ValueError(change)


def _undecided(result: Summary) -> str:
    difference, unit = result.difference, result.unit
    name = movement_of(result.movement, result.side, result.position)
    matters = amount(WORTH_KNOWING[unit], unit)
    enough = difference.enough_sessions if difference else None
    if enough is None:
        told = translate(
            "review",
            "{movement}: too few sessions, or days too alike, to tell a change of {matters} over "
            "the whole time from none; more sessions alone would not tell, should the change stay "
            "as it is.",
        )
    else:
        told = translate(
            "review",
            "{movement}: too few sessions, or days too alike, to tell a change of {matters} over "
            "the whole time from none; about {enough} sessions in all might tell.",
        )
    return told.format(movement=name, matters=matters, enough=enough)


def _on_change(results: Sequence[Summary], unit: Unit) -> list[str]:
    notes: list[str] = []
    published = PUBLISHED[unit]
    figure = amount(published.detectable, unit)
    what = translate("review", "Angles")
    if unit is Unit.RATIO:
        what = movement_name(Movement.HAND_BEHIND_BACK)
    differences = [r.difference for r in results if r.difference]
    bases = {d.basis for d in differences}
    if unit is Unit.RATIO:
        notes.append(
            translate(
                "review",
                "Hand behind back: the levels are those of the thumb's tip, "
                "wide enough for what the wrist does not show; percent is of "
                "the way from C7 (0 %) to the PSIS (100 %), of the wrist.",
            )
        )
    if Basis.PUBLISHED in bases:
        notes.append(
            translate(
                "review",
                "{what}: with few sessions a change is told only where it is large: "
                "{figure} by hand ({source}: {people}), and more because "
                "patients differ; from six sessions on the patient's own "
                "scatter decides.",
            ).format(
                what=what, figure=figure, source=published.source, people=people_words(published)
            )
        )
    unplaced = [
        movement_of(r.movement, r.side, r.position)
        for r in results
        if r.difference and (r.movement, r.position) not in PLACEMENT_SEM
    ]
    if unplaced and (Basis.OWN in bases or Basis.READINGS in bases):
        notes.append(
            translate(
                "review",
                "{listed}: what placing the camera anew does was never "
                "measured, so all of the readings' error counts, and no "
                "change up to {figure} is real ({source}).",
            ).format(listed=listed(unplaced), figure=figure, source=published.source)
        )
    if Basis.OWN in bases or Basis.READINGS in bases:
        single = least(max(d.single_mdc for d in differences), unit)
        notes.append(
            translate(
                "review",
                "{what}: the detectable change is made of the patient's own scatter, "
                "averaged over these sessions as far as their days differ, "
                "and of the camera's place, not averaged; for two single "
                "sessions it would be up to {single} (published, by hand: "
                "{figure}, {source}).",
            ).format(what=what, single=single, figure=figure, source=published.source)
        )
    return notes

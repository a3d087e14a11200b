"""What a reader must know to judge the figures: where they come from and where they end."""

from __future__ import annotations

from collections.abc import Sequence

from coach.domain.movement import Unit
from coach.review.change import Basis, Summary, Verdict
from coach.review.history import Series
from coach.review.norms import PLACEMENT_SEM, PUBLISHED, WORTH_KNOWING
from coach.review.sittings import POORLY_SEEN
from coach.review.wording import amount, counted, listed, movement_of

_WHAT = {Unit.DEGREES: "an angle", Unit.RATIO: "the hand behind the back"}


def notes_on(charted: Sequence[tuple[Series, Summary | None]], definitions: int) -> tuple[str, ...]:
    """Give the notes; ``definitions`` is how many definitions of the angles are among them."""
    notes: list[str] = []
    results = [result for _, result in charted if result]
    for unit in dict.fromkeys(r.unit for r in results):
        notes += _on_change([r for r in results if r.unit is unit], unit)
    notes.extend(
        f"{movement_of(r.movement, r.side, r.position)}: the last sessions were measured with "
        "another camera set-up than the first; all of the readings' error therefore counts."
        for r in results
        if r.set_up_changed
    )
    notes.extend(_undecided(r) for r in results if r.verdict is Verdict.UNDECIDED)
    feigned = sum(p.feigned for series, _ in charted for p in series.points)
    if feigned:
        notes.append(
            f"{counted(feigned, 'value')} only from holds in which the trunk leaned or turned: not "
            "compared."
        )
    if definitions > 1:
        notes.append("The definition of an angle changed: rows of the two are not compared.")
    open_holds = sum(not p.complete for series, _ in charted for p in series.points)
    if open_holds:
        notes.append(
            f"{counted(open_holds, 'value')} from holds let go before their time (hollow dots)."
        )
    poorly = sum(p.seen_fraction < POORLY_SEEN for series, _ in charted for p in series.points)
    if poorly:
        notes.append(f"{counted(poorly, 'value')} with the arm out of sight for over a fifth.")
    notes.append(
        "The camera does not see why a range is limited. A systematic error that stays the same "
        "cancels in the change, not in the single values."
    )
    return tuple(notes)


def _undecided(result: Summary) -> str:
    difference, unit = result.difference, result.unit
    name = movement_of(result.movement, result.side, result.position)
    matters = amount(WORTH_KNOWING[unit], unit)
    enough = difference.enough_sessions if difference else None
    if enough is None:
        more = "more sessions alone would not tell, should the change stay as it is."
    else:
        more = f"about {enough} sessions in all might tell."
    return (
        f"{name}: too few sessions, or days too alike, to tell a change of {matters} over the "
        f"whole time from none; {more}"
    )


def _on_change(results: Sequence[Summary], unit: Unit) -> list[str]:
    notes: list[str] = []
    published = PUBLISHED[unit]
    figure, what = amount(published.detectable, unit), _WHAT[unit]
    differences = [r.difference for r in results if r.difference]
    bases = {d.basis for d in differences}
    if unit is Unit.RATIO:
        notes.append(
            "Hand behind back: the levels are those of the thumb's tip, wide enough for what the "
            "wrist does not show; percent is of the way from C7 (0 %) to the PSIS (100 %), of the "
            "wrist."
        )
    if Basis.PUBLISHED in bases:
        notes.append(
            f"With few sessions a change of {what} is told only where it is large: {figure} by "
            f"hand ({published.source}: {published.people}), and more because patients differ; "
            "from six sessions on the patient's own scatter decides."
        )
    unplaced = [
        movement_of(r.movement, r.side, r.position)
        for r in results
        if r.difference and (r.movement, r.position) not in PLACEMENT_SEM
    ]
    if unplaced and (Basis.OWN in bases or Basis.READINGS in bases):
        notes.append(
            f"{listed(unplaced)}: what placing the camera anew does was never measured, so all of "
            f"the readings' error counts, and no change up to {figure} is real "
            f"({published.source})."
        )
    if Basis.OWN in bases or Basis.READINGS in bases:
        single = max(d.single_mdc for d in differences)
        by_hand = f"published, by hand: {figure}, {published.source}"
        notes.append(
            f"Detectable change of {what} is made of the patient's own scatter, averaged over "
            "these sessions as far as their days differ, and of the camera's place, not averaged; "
            f"for two single sessions it would be up to {amount(single, unit)} ({by_hand})."
        )
    return notes

"""What a reader must know to judge the figures: where they come from and where they end."""

from __future__ import annotations

from collections.abc import Sequence

from coach.review.change import Basis, Summary
from coach.review.history import Series
from coach.review.norms import TVEITA
from coach.review.wording import counted, degrees, movement_of

_POORLY_SEEN = 0.8


def notes_on(charted: Sequence[tuple[Series, Summary | None]], definitions: int) -> tuple[str, ...]:
    """Give the notes; ``definitions`` is how many definitions of the angles are among them."""
    notes: list[str] = []
    results = [result for _, result in charted if result]
    bases = {r.difference.basis for r in results if r.difference}
    if Basis.PUBLISHED in bases:
        notes.append(
            f"With few sessions a change counts as real from {degrees(TVEITA.detectable_deg)} on "
            f"({TVEITA.source}: {TVEITA.people}); from six sessions on the patient's own scatter "
            "decides."
        )
    if Basis.OWN in bases or Basis.READINGS in bases:
        single = max(r.difference.single_mdc_deg for r in results if r.difference)
        notes.append(
            "Detectable change is the larger of what the readings and the patient's own scatter "
            f"give for these means; for two single sessions it would be up to {degrees(single)} "
            f"(published, by hand: {degrees(TVEITA.detectable_deg)}, {TVEITA.source})."
        )
    notes.extend(
        f"{movement_of(r.movement, r.side)}: the last sessions were measured with another "
        "camera set-up than the first; the readings' error is therefore not reduced by averaging."
        for r in results
        if r.set_up_changed
    )
    if definitions > 1:
        notes.append("The definition of an angle changed: rows of the two are not compared.")
    open_holds = sum(not p.complete for series, _ in charted for p in series.points)
    if open_holds:
        notes.append(
            f"{counted(open_holds, 'value')} from holds let go before their time (hollow dots)."
        )
    poorly = sum(p.seen_fraction < _POORLY_SEEN for series, _ in charted for p in series.points)
    if poorly:
        notes.append(f"{counted(poorly, 'value')} with the arm out of sight for over a fifth.")
    notes.append(
        "The camera does not see why a range is limited. A systematic error that stays the same "
        "cancels in the change, not in the single values."
    )
    return tuple(notes)

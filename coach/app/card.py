"""``coach card``: the printed card as a PDF."""

from __future__ import annotations

from pathlib import Path

from coach.capture.card_marks import marker_cells
from coach.desktop.shared.application import create_application
from coach.desktop.shared.card_page import card_pdf
from coach.domain.card_sheet import Paper
from coach.storage.atomic import write_bytes
from coach.texts import language, translate


def run_card(paper: Paper, out: Path) -> int:
    """Write the card's two pages."""
    # Kept until the page is drawn: Qt ends with its application.
    application = create_application(["coach"], offscreen_allowed=True, language=language())
    write_bytes(out, card_pdf(marker_cells(), paper))
    print(translate("card", "Written: {out}").format(out=out))
    told = translate(
        "card",
        "Print it at 100 % and check its size with a bank card; page 2 says how it is worn.",
    )
    print(told)
    del application
    return 0

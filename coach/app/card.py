"""``coach card``: the printed card as a PDF."""

from __future__ import annotations

from pathlib import Path

from coach.capture.card_marks import marker_cells
from coach.desktop.shared.application import create_application
from coach.desktop.shared.card_page import card_pdf
from coach.domain.card_sheet import Paper
from coach.storage.atomic import write_bytes


def run_card(paper: Paper, out: Path) -> int:
    """Write the card's two pages."""
    # Kept until the page is drawn: Qt ends with its application.
    application = create_application(["coach"], offscreen_allowed=True)
    write_bytes(out, card_pdf(marker_cells(), paper))
    del application
    print(f"Written: {out}")
    print("Print it at 100 % and check its size with a bank card; page 2 says how it is worn.")
    return 0

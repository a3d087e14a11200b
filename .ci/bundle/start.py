"""What a bundle starts: the patient's window, or by its second name the therapist's.

A file opened by a double click comes alone: a plan for the one, session files for the other. What
cannot be done is told in a box as well, for there is no terminal to read it in.
"""

import io
import multiprocessing
import sys
from pathlib import Path

from coach.__main__ import main

REVIEW = "review"


class Kept(io.TextIOBase):
    """Passes on what is written to it, and keeps it."""

    def __init__(self, before: io.TextIOBase | None) -> None:
        """Pass on to ``before``, where there is one."""
        self.before, self.text = before, ""

    def write(self, text: str) -> int:
        """Take text."""
        self.text += text
        return len(text) if self.before is None else self.before.write(text)

    def flush(self) -> None:
        """Flush what it is passed on to."""
        if self.before is not None:
            self.before.flush()


def arguments(name: str, given: list[str]) -> list[str]:
    """Give the command for a name and what stood behind it."""
    if name.endswith(REVIEW):
        return ["review", *given]
    if len(given) == 1 and not given[0].startswith("-") and Path(given[0]).is_file():
        return ["--plan", *given]
    return given


def tell(text: str) -> None:
    """Show a sentence in a box."""
    from PyQt6.QtWidgets import QApplication, QMessageBox

    application = QApplication.instance() or QApplication(["coach"])
    QMessageBox.warning(None, application.applicationDisplayName() or "Shoulder coach", text)


def start() -> int:
    """Run the command; give its exit code."""
    by_icon = sys.stderr is None or not sys.stderr.isatty()
    sys.stderr = kept = Kept(sys.stderr)
    wanted = arguments(Path(sys.argv[0]).stem, sys.argv[1:])
    code = main(wanted)
    windows = not wanted or wanted[0] in ("review", "--plan")
    if code == 1 and by_icon and windows:
        tell(kept.text.strip().removeprefix("coach: "))
    return code


if __name__ == "__main__":
    # Processes that measure clips or read files to import start as this program again.
    multiprocessing.freeze_support()
    sys.exit(start())

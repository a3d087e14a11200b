"""One line on a terminal that shows how far a long job is."""

from __future__ import annotations

import sys
from types import TracebackType

_WIDTH = 30


class ProgressBar:
    """Draws on standard error, on a terminal only; ``total`` is None where it is not known."""

    def __init__(self, label: str, total: int | None) -> None:
        """Begin at nothing done."""
        self._label = label
        self._total = total
        self._done = 0
        self._shown = ""
        self._visible = sys.stderr.isatty()

    def __enter__(self) -> ProgressBar:
        """Show it."""
        self._draw()
        return self

    def advance(self) -> None:
        """Count one more."""
        self._done += 1
        self._draw()

    def __exit__(
        self,
        kind: type[BaseException] | None,
        error: BaseException | None,
        trace: TracebackType | None,
    ) -> None:
        """Leave the line as it stands."""
        if self._visible:
            print(file=sys.stderr)

    def _draw(self) -> None:
        if not self._visible:
            return
        if self._total:
            share = min(1.0, self._done / self._total)
            bar = "█" * round(share * _WIDTH)
            line = f"\r{self._label} {bar:·<{_WIDTH}} {share:4.0%}"
        else:
            line = f"\r{self._label} {self._done}"
        if line != self._shown:
            self._shown = line
            print(line, end="", file=sys.stderr, flush=True)

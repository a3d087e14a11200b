"""How a window's program is imported."""

from __future__ import annotations

import gc
from collections.abc import Iterator
from contextlib import contextmanager


@contextmanager
def importing() -> Iterator[None]:
    """Import without looking for garbage, now and later in what was imported.

    Of imports hardly anything is garbage; to look through them takes a tenth of a start, and later
    every full look would again.
    """
    gc.disable()
    try:
        yield
    finally:
        gc.freeze()
        gc.enable()

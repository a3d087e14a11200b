from collections.abc import Iterator

import pytest
from PyQt6.QtCore import QCoreApplication, QEvent


@pytest.fixture(autouse=True)
def no_window_is_left() -> Iterator[None]:
    """Deletes closed windows: they wait for an event loop, and each test would style them anew."""
    yield
    if QCoreApplication.instance() is not None:
        QCoreApplication.sendPostedEvents(None, QEvent.Type.DeferredDelete.value)

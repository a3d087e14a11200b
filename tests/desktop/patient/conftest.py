import os
import threading
from collections.abc import Iterator

import pytest
from PyQt6.QtWidgets import QApplication

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")


@pytest.fixture
def app(qapp: QApplication) -> QApplication:
    from coach.desktop.shared.application import create_application

    return create_application(["test"])


@pytest.fixture(autouse=True)
def no_thread_is_left() -> Iterator[None]:
    """Fails a test that leaves one of our threads running."""
    yield
    left = [thread.name for thread in threading.enumerate() if thread.name == "capture"]
    assert not left

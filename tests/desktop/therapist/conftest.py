from __future__ import annotations

import importlib.util
from collections.abc import Iterator
from pathlib import Path
from types import ModuleType

import pytest
from PyQt6.QtCore import QCoreApplication, QEvent
from PyQt6.QtWidgets import QApplication

from coach.storage.store import Store

_INVENTED = Path(__file__).parents[2] / "review" / "conftest.py"


@pytest.fixture(scope="session")
def invented() -> ModuleType:
    """make_session and session_file, shared with the tests of the review."""
    spec = importlib.util.spec_from_file_location("invented_sessions", _INVENTED)
    assert spec
    assert spec.loader
    module = importlib.util.module_from_spec(spec)
    spec.loader.exec_module(module)
    return module


@pytest.fixture
def app(qapp: QApplication) -> QApplication:
    from coach.desktop.shared.application import create_application

    # Windows of earlier tests wait for an event loop to be deleted, and would be styled anew here.
    QCoreApplication.sendPostedEvents(None, QEvent.Type.DeferredDelete.value)
    return create_application(["test"])


@pytest.fixture
def store(tmp_path: Path) -> Iterator[Store]:
    opened = Store(tmp_path / "store.sqlite")
    yield opened
    opened.close()

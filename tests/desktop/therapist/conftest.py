from __future__ import annotations

import importlib.util
from collections.abc import Iterator
from pathlib import Path
from types import ModuleType

import numpy as np
import pytest
from PyQt6.QtWidgets import QApplication

from coach.documents.archive import StoredSession
from coach.documents.tables import FORM_COLUMNS, STORED_LANDMARKS, LandmarkTable, ReadingTable
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

    return create_application(["test"])


@pytest.fixture
def store(tmp_path: Path) -> Iterator[Store]:
    opened = Store(tmp_path / "store.sqlite")
    yield opened
    opened.close()


@pytest.fixture
def stored(invented):
    """Sessions with landmarks ten times a second; the values rise by a degree a second."""

    def make(number=0, **parts):
        time_s = np.arange(0, 1000) / 10
        n, k = len(time_s), len(STORED_LANDMARKS)
        return StoredSession(
            document=invented.make_session(number, **parts),
            readings=ReadingTable(
                time_s=time_s,
                planned_index=np.zeros(n, np.int16),
                phase=np.zeros(n, np.int16),
                value=50 + time_s,
                error=np.full(n, 6.0),
                doubt=np.full(n, -1, np.int16),
                form=np.full((n, len(FORM_COLUMNS)), 1.0),
            ),
            landmarks=LandmarkTable(
                landmarks=STORED_LANDMARKS,
                time_s=time_s,
                size_px=np.tile([640, 480], (n, 1)),
                people=np.ones(n, np.int64),
                brightness=np.full(n, 0.5),
                image_px=np.random.default_rng(1).uniform(100, 400, (n, k, 2)),
                world_m=np.zeros((n, k, 3)),
                visibility=np.ones((n, k)),
            ),
        )

    return make

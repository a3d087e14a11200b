"""What opening the therapist's window must not wait for."""

from __future__ import annotations

import os
import subprocess
import sys
from pathlib import Path
from types import ModuleType

from coach.storage.folders import OVERRIDE
from coach.storage.store import Store

_OPENED = """
import sys
from coach import __main__ as command
from coach.app import review
review.run_windows = lambda application: application.processEvents()
command.main(["review"])
print(*sys.modules)
"""
_SLOW = {"alembic", "cv2", "matplotlib", "mediapipe", "psycopg", "pyarrow", "scipy"}
_ONLY_TO_WRITE = {"coach.exchange.export", "coach.desktop.shared.report_page"}


def test_the_first_chart_waits_for_no_library_that_it_does_not_need(
    tmp_path: Path, invented: ModuleType
) -> None:
    store = Store(tmp_path / "review.sqlite")
    for number in range(12):
        store.import_session(invented.make_session(number), b"", f"{number}.zip")
    store.close()
    environment = os.environ | {OVERRIDE: str(tmp_path), "QT_QPA_PLATFORM": "offscreen"}
    done = subprocess.run(
        [sys.executable, "-c", _OPENED], env=environment, capture_output=True, text=True, check=True
    )
    loaded = set(done.stdout.split())
    assert "sqlalchemy" in loaded
    assert "coach.desktop.shared.chart" in loaded
    assert not (_SLOW | _ONLY_TO_WRITE) & loaded

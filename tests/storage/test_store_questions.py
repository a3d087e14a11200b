"""What each start asks of the store must not read through all documents."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path
from types import ModuleType
from typing import Any

import pytest
from sqlalchemy import event

from coach.storage.store import Store

QUESTIONS: tuple[Callable[[Store], object], ...] = (
    Store.patients,
    Store.people,
    Store.refusals,
    Store.doubts,
    Store.open_doubts,
    Store.last_import,
    Store.looks,
)


@pytest.mark.parametrize("ask", QUESTIONS, ids=lambda ask: ask.__name__)
def test_a_start_finds_its_answers_by_indexes(
    tmp_path: Path, invented: ModuleType, ask: Callable[[Store], object]
) -> None:
    """By SQLite's own plan, https://www.sqlite.org/eqp.html (from memory): SCAN reads all of a
    table, SEARCH some of it, and a COVERING INDEX spares the table."""
    store = Store(tmp_path / "store.sqlite")
    for number in range(3):
        store.import_session(invented.make_session(number), b"", f"{number}.zip")
    store.looks()
    asked: list[tuple[str, Any]] = []

    def note(_connection: Any, _cursor: Any, statement: str, values: Any, *_: Any) -> None:
        asked.append((statement, values))

    event.listen(store._engine, "before_cursor_execute", note)
    ask(store)
    event.remove(store._engine, "before_cursor_execute", note)
    plans: list[str] = []
    with store._engine.connect() as connection:
        for statement, values in asked:
            if statement.startswith("SELECT"):
                rows = connection.exec_driver_sql(f"EXPLAIN QUERY PLAN {statement}", values)
                plans += [row[-1] for row in rows]
    assert plans
    read_through = [plan for plan in plans if plan.startswith("SCAN sessions")]
    assert [plan for plan in read_through if "COVERING INDEX" not in plan] == []
    store.close()

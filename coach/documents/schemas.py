"""JSON Schemas of the documents, made from the types that read them.

``python -m coach.documents.schemas`` prints one by its name; ``docs/schemas/`` holds the same.
"""

from __future__ import annotations

import sys
from typing import Any

import msgspec

from coach.domain.exercise import Exercise
from coach.domain.plan import Plan
from coach.domain.session import SessionDocument

DRAFT = "https://json-schema.org/draft/2020-12/schema"


def plan_schema() -> dict[str, Any]:
    """Give the JSON Schema (2020-12) of a plan file, version 2."""
    return _schema(Plan, "plan:2", "Plan of shoulder exercises")


def session_schema() -> dict[str, Any]:
    """Give the JSON Schema (2020-12) of ``session.json`` in a session file, version 4."""
    return _schema(SessionDocument, "session:4", "One sitting of shoulder exercises")


def exercise_schema() -> dict[str, Any]:
    """Give the JSON Schema (2020-12) of an exercise file of the catalogue, which is TOML."""
    return _schema(Exercise, "exercise:1", "Exercise of the catalogue")


SCHEMAS = {
    "exercise-1.schema.json": exercise_schema,
    "plan-2.schema.json": plan_schema,
    "session-4.schema.json": session_schema,
}
"""File names in ``docs/schemas`` and what makes them; those of older versions stay as they were."""


def schema_text(name: str) -> str:
    """Give the text of ``docs/schemas/<name>``."""
    return msgspec.json.format(msgspec.json.encode(SCHEMAS[name]()), indent=2).decode() + "\n"


def _schema(kind: type[msgspec.Struct], urn: str, title: str) -> dict[str, Any]:
    (_, components) = msgspec.json.schema_components([kind], ref_template="#/$defs/{name}")
    top = components.pop(kind.__name__)
    _tidy(top)
    for component in components.values():
        _tidy(component)
    description = top.pop("description")
    # The types give these two a default; a file that has them is refused without.
    marks = [name for name in ("format", "version") if name in top["properties"]]
    required = [*marks, *top.pop("required")]
    for name in marks:
        del top["properties"][name]["default"]
    return {
        "$schema": DRAFT,
        "$id": f"urn:stiff-shoulder-coach:{urn}",
        **top,
        "title": title,
        "description": description,
        "required": required,
        "$defs": dict(sorted(components.items())),
    }


def _tidy(component: dict[str, Any]) -> None:
    if text := component.get("description"):
        component["description"] = " ".join(text.replace("``", "").split())


def main(arguments: list[str]) -> int:
    """Print the schema of the given name."""
    if len(arguments) != 1 or arguments[0] not in SCHEMAS:
        print("Name one of: " + ", ".join(SCHEMAS), file=sys.stderr)
        return 2
    sys.stdout.write(schema_text(arguments[0]))
    return 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))

"""Every sentence in the code goes through a language's table, or is one of these exceptions."""

from __future__ import annotations

import ast
import re
from collections.abc import Iterator
from pathlib import Path

import pytest

ROOT = Path(__file__).parents[1]

GIVEN = {"translate", "tr"}
NOT_SHOWN = {
    # Errors of the program itself, which no person causes; a test expects each that may happen.
    "ValueError", "AssertionError", "TypeError", "RuntimeError", "DatabaseError", "RecipientError",
    # Statements for a database, patterns, and style sheets.
    "execute", "exec_driver_sql", "text", "compile", "setStyleSheet", "Template", "server_default",
}  # fmt: skip
WHOLE_FILES = {
    "exchange/fhir.py": "what other programs read",
    "exchange/fhir_device.py": "what other programs read",
    "exchange/fhir_elements.py": "what other programs read",
    "exchange/fhir_observations.py": "what other programs read",
    "exchange/fhir_plan.py": "what other programs read",
    "exchange/fhir_records.py": "what other programs read",
    "exchange/wording.py": "methods that tables and FHIR name",
    "documents/schemas.py": "titles of the published schemas",
    "documents/versions.py": "names of fields that a check refuses",
    "catalogue/table.py": "a page of the documentation",
    "catalogue/checks.py": "what is wrong in a file of the catalogue, for who writes it",
    "catalogue/load.py": "the same",
    "catalogue/pages.py": "the same",
    "catalogue/reading.py": "the same",
    "catalogue/safety.py": "the same",
    "cues/language.py": "the same, of a language's file",
    "goniometry/offsets.py": "names of rows in a table of the benchmark",
    "review/norms.py": "citations; whom they were found on is said by norm_words",
    "storage/key_text.py": "comments of a key's file, read by age",
    "storage/store_tables.py": "the database's own words",
    "desktop/shared/typeface.py": "names of fonts",
}
"""Files with further sentences, by their path in ``coach``, and why those are not translated."""
SINGLE = {
    "REPEATABLE READ": "SQL", "READ COMMITTED": "SQL",
    "file is not a database": "what SQLCipher says", "unable to open": "what SQLite says",
    "no such": "what SQLite says",
    "No matching keys found": "what age says", "Excessive work parameter": "what age says",
    "Application Support": "a folder of macOS", "Shoulder sessions": "a folder's name",
    "Shoulder coach": "the program's name", "Shoulder review": "the program's name, said again",
    "read back": "a key of disk_fault", "Common practice.": "compared with what a page holds",
    "coach: {}": "the command's name before a sentence",
    "session file": "said by session_file", "plan file": "said by session_file",
    "landmark table": "said by session_file", "public key": "said by session_file",
    "practice key": "said by session_file", "list of lenses": "said by session_file",
    "table of joint centres": "said by session_file", "coach {}": "the command's version",
    "Of other side": "a key of report_columns",
    "Detectable from": "a key of report_columns",
    "session {}": "names a row in a Fault that nobody is shown",
    "{} min {} s": "signs of units", "{} h {} min": "signs of units",
}  # fmt: skip
"""Texts that stand alone, with {} for their places, and why."""

WORDS = re.compile(r"[A-Za-z]{2,}[,;:.]? (\{\}|[A-Za-z]{2,})|\{\} [A-Za-z]{2,}")
STYLE = re.compile(r"\bQ[A-Z]\w+(View|Area|Widget|Box)\b")
"""Begins a rule of a style sheet."""


def name_of(function: ast.expr) -> str:
    return getattr(function, "attr", getattr(function, "id", ""))


def untranslated(tree: ast.AST) -> Iterator[tuple[int, str]]:
    """Texts of two words or more that no table is asked for, with {} for their places.

    Names of members of an enumeration, which files hold, and keys of a dictionary or a comparison
    are none.
    """
    if isinstance(tree, ast.Call) and name_of(tree.func) in GIVEN | NOT_SHOWN:
        return
    if isinstance(tree, ast.Expr) and isinstance(tree.value, ast.Constant):
        return
    if isinstance(tree, ast.ClassDef) and any(name_of(b) == "StrEnum" for b in tree.bases):
        return
    if isinstance(tree, ast.JoinedStr):
        said = "".join(v.value if isinstance(v, ast.Constant) else "{}" for v in tree.values)
        if WORDS.search(said) and not STYLE.search(said):
            yield tree.lineno, said
        for value in tree.values:
            if isinstance(value, ast.FormattedValue):
                yield from untranslated(value.value)
        return
    if isinstance(tree, ast.Constant):
        said = tree.value if isinstance(tree.value, str) else ""
        if WORDS.search(said) and not STYLE.search(said):
            yield tree.lineno, said
        return
    inner: list[ast.AST] = list(ast.iter_child_nodes(tree))
    if isinstance(tree, ast.Dict):
        inner = list(tree.values)
    if isinstance(tree, ast.Subscript):
        inner = [tree.value]
    for each in inner:
        yield from untranslated(each)


def test_every_sentence_of_the_program_can_be_said_in_another_language() -> None:
    found = []
    for path in sorted((ROOT / "coach").rglob("*.py")):
        name = str(path.relative_to(ROOT / "coach"))
        if name in WHOLE_FILES or name.startswith("storage/migrations"):
            continue
        tree = ast.parse(path.read_text(encoding="utf-8"))
        found += [f"{name}:{line}: {said!r}" for line, said in untranslated(tree)
                  if said.strip() not in SINGLE]  # fmt: skip
    assert found == [], "give them to translate(), or say in tests/test_sentences.py why not"


def test_no_exception_is_left_over() -> None:
    everywhere = set()
    for name in WHOLE_FILES:
        path = ROOT / "coach" / name
        assert list(untranslated(ast.parse(path.read_text(encoding="utf-8")))), name
    for path in (ROOT / "coach").rglob("*.py"):
        everywhere |= {s.strip() for _, s in untranslated(ast.parse(path.read_text("utf-8")))}
    assert set(SINGLE) <= everywhere


@pytest.mark.parametrize(
    ("code", "count"),
    [
        ('raise Fault(f"{name} has no rows; look again.")', 1),
        ('print("Written: it")', 1),
        ('label.setText(f"{count} sessions" + "x")', 1),
        ('label.setText(translate("a", "It is there").format(n="no such thing"))', 1),
        ('class A(StrEnum):\n    B = "left out"', 0),
        ('{"session file": translate("a", "session file")}', 0),
        ('def f():\n    "Say it so."', 0),
        ('raise ValueError("no such day")', 0),
    ],
)
def test_the_search_finds_sentences_and_only_those(code: str, count: int) -> None:
    assert len(list(untranslated(ast.parse(code)))) == count

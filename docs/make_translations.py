"""Keeps the windows' translation files in step with the code, and tells what they lack.

    python -m docs.make_translations            every language in coach/desktop/translations
    python -m docs.make_translations fr         begin a new one

Needs ``pylupdate6`` (of PyQt6) and ``lrelease`` (of Qt's tools; Debian: qt6-l10n-tools).
"""

from __future__ import annotations

import shutil
import subprocess
import sys
import xml.etree.ElementTree as ElementTree
from collections.abc import Sequence
from pathlib import Path

ROOT = Path(__file__).resolve().parent.parent
FOLDER = ROOT / "coach" / "desktop" / "translations"


def missing(table: Path) -> list[str]:
    """Give the texts that a translation file (.ts) leaves in English, with their contexts."""
    lacking = []
    for context in ElementTree.parse(table).getroot().iter("context"):
        for message in context.iter("message"):
            translation = message.find("translation")
            if translation is None or translation.get("type") in ("vanished", "obsolete"):
                continue
            if not translation.text or translation.get("type") == "unfinished":
                lacking.append(f"{context.findtext('name')}: {message.findtext('source')}")
    return lacking


def main(languages: Sequence[str]) -> None:
    """Collect the texts, compile the tables and print what is missing."""
    tables = [FOLDER / f"{code}.ts" for code in languages] or sorted(FOLDER.glob("*.ts"))
    sources = [str(path.relative_to(ROOT)) for path in sorted((ROOT / "coach").rglob("*.py"))]
    release = shutil.which("lrelease") or "/usr/lib/qt6/bin/lrelease"
    for table in tables:
        subprocess.run(
            [
                str(Path(sys.executable).with_name("pylupdate6")),
                "--no-obsolete",
                "--ts",
                str(table),
                *sources,
            ],
            cwd=ROOT,
            check=True,
        )
        subprocess.run([release, "-silent", str(table)], cwd=ROOT, check=True)
        lacking = missing(table)
        print(f"{table.stem}: {len(lacking)} texts are missing", *lacking, sep="\n    ")


if __name__ == "__main__":
    main(sys.argv[1:])

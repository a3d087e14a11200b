"""Keeps the windows' translation files in step with the code, and tells what a language lacks.

    python -m docs.make_translations            every language in coach/desktop/translations
    python -m docs.make_translations fr         begin a new one
    python -m docs.make_translations --missing  what each language lacks: of what keeps people from
                                                harm, then cues, catalogue, windows

All but the last need ``pylupdate6`` (PyQt6) and ``lrelease`` (Qt's tools; Debian: qt6-l10n-tools).
"""

from __future__ import annotations

import shutil
import subprocess
import sys
import xml.etree.ElementTree as ElementTree
from collections.abc import Sequence
from pathlib import Path

from coach.catalogue import catalogue, safety
from coach.catalogue.pages import all_pages
from coach.cues.language import FALLBACK, languages

ROOT = Path(__file__).resolve().parent.parent
FOLDER = ROOT / "coach" / "desktop" / "translations"


SAFETY_CUES = (
    "caution", "emergency", "pain-before", "pain-after", "pain-limit", "pain-by-hand",
    *(f"pain.{score}" for score in range(11)), "pain-chosen", "pain-unanswered", "pain-stop",
    "offer", "ease-off", "finished-caution",
)  # fmt: skip
SAFETY_PAGES = ("cautions_page.py", "pain_page.py", "offer_page.py")


def missing(table: Path, pages: Sequence[str] = ()) -> list[str]:
    """Give the texts that a translation file (.ts) leaves in English, with their contexts.

    With ``pages`` only those that stand in source files of these names.
    """
    lacking = []
    for context in ElementTree.parse(table).getroot().iter("context"):
        for message in context.iter("message"):
            files = {Path(at.get("filename", "")).name for at in message.iter("location")}
            if pages and not files & {*pages}:
                continue
            translation = message.find("translation")
            if translation is None or translation.get("type") in ("vanished", "obsolete"):
                continue
            if not translation.text or translation.get("type") == "unfinished":
                lacking.append(f"{context.findtext('name')}: {message.findtext('source')}")
    return lacking


def missing_of(code: str) -> dict[str, list[str]]:
    """Give what a language leaves in English in each of the three places where texts stand.

    What keeps people from harm comes first, over all three: a page of cautions that is half in a
    language reads as if it were whole.
    """
    spoken = languages()[code].sentences if code in languages() else {}
    table = FOLDER / f"{code}.ts"
    return {
        "safety": [
            *(f"rule {rule.id}" for rule in safety().rules if code not in rule.text),
            *(f"cue {key}" for key in SAFETY_CUES if key not in spoken),
            *(missing(table, SAFETY_PAGES) if table.exists() else ["no table yet"]),
        ],
        "cues": [key for key in languages()[FALLBACK].sentences if key not in spoken],
        "catalogue": [
            *(f"exercise {e.exercise}" for e in catalogue().all if code not in e.telling),
            *(f"page {page.id}" for page in all_pages() if code not in page.telling),
            *(f"rule {rule.id}" for rule in safety().rules if code not in rule.text),
        ],
        "windows": missing(table) if table.exists() else ["no table yet"],
    }


def tell_missing(codes: Sequence[str]) -> None:
    """Print what languages lack, by default every one that stands in any of the three places."""
    known = {*languages(), *(table.stem for table in FOLDER.glob("*.ts"))} - {FALLBACK}
    for code in codes or sorted(known):
        for place, lacking in missing_of(code).items():
            print(f"{code}, {place}: {len(lacking)} missing", *lacking, sep="\n    ")


def main(codes: Sequence[str]) -> None:
    """Collect the texts, compile the tables and print what is missing."""
    tables = [FOLDER / f"{code}.ts" for code in codes] or sorted(FOLDER.glob("*.ts"))
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
    if "--missing" in sys.argv:
        tell_missing([code for code in sys.argv[1:] if code != "--missing"])
    else:
        main(sys.argv[1:])

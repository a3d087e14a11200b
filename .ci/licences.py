"""The table of ``docs/licences.md``: what each locked package says its licence is, and where.

``python .ci/licences.py`` writes it from the installed packages: from the SPDX expression of their
metadata; where there is none from the field or the classifier of the licence, and last from the
words of the licence file itself.
"""

from __future__ import annotations

import re
import sys
from importlib import metadata
from pathlib import Path

ROOT = Path(__file__).resolve().parents[1]
LOCK, PAGE = ROOT / ".ci" / "release.txt", ROOT / "docs" / "licences.md"

_FIELDS = {
    "Apache 2.0": "Apache-2.0",
    "Apache-2.0": "Apache-2.0",
    "BSD-2-Clause": "BSD-2-Clause",
    "LGPL v3": "LGPL-3.0-only",
    "MIT": "MIT",
}
_CLASSIFIERS = {
    "Apache Software License": "Apache-2.0",
    "MIT License": "MIT",
    "Python Software Foundation License": "PSF-2.0",
}
"""Only those that name one licence: "BSD License" names several."""
_WORDS = {
    "BSD-3-Clause": ("Redistribution and use in source and binary forms", "may be used to endorse"),
    "MIT": ("Permission is hereby granted, free of charge", "substantial portions"),
    "Zlib": ("This software is provided 'as-is'", "must be plainly marked"),
}
"""Words of their texts that tell them apart from their neighbours."""
_INSIDE = {
    "espeakng-loader": (
        "GPL-3.0-or-later",
        "none; of the library inside, espeak-ng: Debian's copyright file of `libespeak-ng1`",
    )
}


def table() -> list[str]:
    """Give the table's rows; a package that is not installed, or says nothing, raises."""
    names = dict.fromkeys(re.findall(r"^([a-z0-9-]+)==", LOCK.read_text("utf-8"), re.MULTILINE))
    rows = (f"| `{name}` | {' | '.join(licence_of(name))} |" for name in names)
    return ["| package | licence | said by |", "|---|---|---|", *rows]


def licence_of(name: str) -> tuple[str, str]:
    """Give a package's licence as an SPDX expression, and where that stands."""
    found = metadata.distribution(name)
    about = found.metadata
    if expression := about.get("License-Expression"):
        return expression, "its metadata"
    field = _FIELDS.get((about.get("License") or "").strip())
    if field is not None:
        return field, "its metadata, in words"
    for line in about.get_all("Classifier") or ():
        if named := _CLASSIFIERS.get(line.removeprefix("License :: OSI Approved :: ")):
            return named, "its metadata, in words"
    for file in found.files or ():
        if ".dist-info/" in str(file) and file.stem.upper() in ("LICENSE", "LICENCE", "COPYING"):
            text = " ".join(file.read_text("utf-8").split())
            for licence, words in _WORDS.items():
                if all(each in text for each in words):
                    return licence, "its licence file"
    return _INSIDE[name]


def main() -> int:
    """Put the table in the page's last one's place."""
    text = PAGE.read_text("utf-8")
    head, _, _ = text.partition("| package |")
    PAGE.write_text(head + "\n".join(table()) + "\n", "utf-8")
    return 0


if __name__ == "__main__":
    sys.exit(main())

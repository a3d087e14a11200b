"""What a release rests on: known advisories, and the list of its parts.

``python .ci/dependencies.py advisories`` fails where an advisory is known and says so where none
could be asked for; ``python .ci/dependencies.py parts FILE`` writes a CycloneDX list of the locked
packages and has the format's own library check it.
"""

from __future__ import annotations

import json
import subprocess
import sys
from pathlib import Path

ROOT = Path(__file__).resolve().parents[1]
LOCK = ROOT / ".ci" / "release.txt"


def advisories() -> int:
    """Ask the package index about each locked package."""
    command = [sys.executable, "-m", "pip_audit", "-r", str(LOCK), "--disable-pip"]
    command += ["--require-hashes", "--progress-spinner", "off", "-f", "json", "--timeout", "10"]
    try:
        done = subprocess.run(command, capture_output=True, text=True, check=False, timeout=300)
        answers = json.loads(done.stdout)["dependencies"]
    except (ValueError, KeyError, subprocess.TimeoutExpired):
        print("advisories: not checked, the service did not answer")
        return 0
    asked = [answer for answer in answers if "vulns" in answer]
    found = [(answer, known) for answer in asked for known in answer["vulns"]]
    for answer, known in found:
        fixed = ", ".join(known["fix_versions"]) or "no release yet"
        print(f"advisories: {answer['name']} {answer['version']}: {known['id']}, mended in {fixed}")
    silent = len(answers) - len(asked)
    if silent:
        print(f"advisories: not checked for {silent} of {len(answers)} packages, no answer")
    if asked and not found:
        print(f"advisories: none known for {len(asked)} packages")
    return 1 if found else 0


def parts(file: Path) -> int:
    """Write the list and check it; the same lock gives the same bytes."""
    from cyclonedx.schema import SchemaVersion
    from cyclonedx.validation.json import JsonStrictValidator

    command = [sys.executable, "-m", "cyclonedx_py", "requirements", str(LOCK)]
    command += ["--pyproject", str(ROOT / "pyproject.toml"), "--output-reproducible"]
    subprocess.run([*command, "--sv", "1.6", "-o", str(file)], check=True)
    text = file.read_text("utf-8")
    if wrong := JsonStrictValidator(SchemaVersion.V1_6).validate_str(text):
        print(f"{file}: {wrong}", file=sys.stderr)
        return 1
    print(f"{file}: {len(json.loads(text)['components'])} parts, valid CycloneDX 1.6")
    return 0


if __name__ == "__main__":
    match sys.argv[1:]:
        case ["advisories"]:
            sys.exit(advisories())
        case ["parts", name]:
            sys.exit(parts(Path(name)))
        case _:
            sys.exit(__doc__)

"""Where readable content of a sealed sitting ever lies, by every file that a process opens."""

from __future__ import annotations

import os
import re
import shutil
import stat
import subprocess
import sys
from pathlib import Path

import pyrage
import pytest

ROOT = Path(__file__).parents[2]
PASSPHRASE = "seven herons eat toast"
LEAKS = (b"INVENTED", b"session.json", b"pendulum", b"PK\x03\x04", b"SQLite format 3")

AT_HOME = """
import os, sys
from pathlib import Path
from coach.app.sitting import Folders
from coach.domain.session import SessionEnd
from tests.bench.sittings import Tape, plan, play
from tests.test_programme import named
os.umask(0)
home, key = Path(sys.argv[1]), sys.argv[2]
folders = Folders(home / "data" / "journals", home / "sent", home / "data" / "own")
print("BEGIN", flush=True)
sitting = play(Tape(), plan((named("pendulum"),), key), folders, lambda entry: None)
sitting.finish(SessionEnd.COMPLETED)
sitting.close()
"""
IN_THE_PRACTICE = """
import os, sys
from pathlib import Path
from coach.storage.atomic import make_folder
from coach.storage.keys import make_practice_key, unlock
from coach.storage.sealed import PracticeIdentity
from coach.storage.store import Store
from coach.storage.store_import import import_paths
import pyrage
os.umask(0)
practice, sent, secret = Path(sys.argv[1]), Path(sys.argv[2]), sys.stdin.read()
key = pyrage.x25519.Identity.from_str(secret)
make_practice_key(practice / "practice.key.age", "seven herons eat toast")
store = Store(practice / "store.sqlite", "seven herons eat toast")
print("BEGIN", flush=True)
(outcome,) = import_paths(store, [sent], PracticeIdentity(str(key.to_public()), key))
assert outcome.outcome.value == "accepted", outcome
store.close()
"""


def _traces() -> bool:
    if shutil.which("strace") is None:
        return False
    return (
        subprocess.run(
            ["strace", "-f", "--seccomp-bpf", "-qq", "true"], capture_output=True, check=False
        ).returncode
        == 0
    )


def written_by(trace: Path, script: str, *arguments: str, fed: str = "") -> set[Path]:
    """Run a script and give the files that it and its children opened to write to."""
    calls = "trace=open,openat,openat2,creat,rename,renameat,renameat2,link,linkat,memfd_create"
    tracing = ["strace", "-f", "-qq", "--seccomp-bpf", "-e", calls, "-o", str(trace)]
    done = subprocess.run(
        [*tracing, sys.executable, "-c", script, *arguments],
        cwd=ROOT,
        env=os.environ | {"PYTHONDONTWRITEBYTECODE": "1", "PYTHONPATH": str(ROOT)},
        input=fed,
        capture_output=True,
        text=True,
        check=False,
        timeout=300,
    )
    assert done.returncode == 0, done.stderr
    lines = [line for line in trace.read_text().splitlines() if " = -1 " not in line]
    assert len(lines) > 100
    opened = [
        line for line in lines if re.search(r"O_WRONLY|O_RDWR|O_CREAT|creat\(|link|rename", line)
    ]
    named = {name for line in opened for name in re.findall(r'"([^"]+)"', line)}
    return {Path(name) for name in named if not name.startswith(("/dev/", "/proc/"))}


def private(folder: Path) -> bool:
    """Whether only their owner may look into anything here, though the process masked nothing."""
    modes = {path: stat.S_IMODE(path.stat().st_mode) for path in (folder, *folder.rglob("*"))}
    return all(mode == (0o700 if path.is_dir() else 0o600) for path, mode in modes.items())


@pytest.mark.skipif(not _traces(), reason="no strace here")
def test_readable_content_is_in_the_owners_folder_alone_and_the_practice_writes_none(
    tmp_path: Path,
) -> None:
    key = pyrage.x25519.Identity.generate()
    home, practice = tmp_path / "home", tmp_path / "practice"
    home.mkdir(0o700)
    written = written_by(tmp_path / "trace", AT_HOME, str(home), str(key.to_public()))
    # The journal, the own copy and the sealed file; nothing in a folder for temporary files.
    assert {path.parent for path in written} <= {
        home / "data" / "journals",
        home / "data" / "own",
        home / "sent",
    }
    assert all(".age" in path.name for path in written if path.parent == home / "sent")
    assert list((home / "data" / "journals").iterdir()) == []
    (sent,) = (home / "sent").iterdir()
    (own,) = (home / "data" / "own").iterdir()
    assert not any(leak in sent.read_bytes() for leak in LEAKS)
    assert b"INVENTED" not in sent.read_bytes()
    assert b"session.json" in own.read_bytes()  # so that the look above could find it
    assert private(home)
    written = written_by(
        tmp_path / "trace2", IN_THE_PRACTICE, str(practice), str(sent), fed=str(key)
    )
    assert {path.parent for path in written} == {practice}
    for path in written:
        if path.exists():
            assert not any(leak in path.read_bytes() for leak in LEAKS), path
    assert private(practice)

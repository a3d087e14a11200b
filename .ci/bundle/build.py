"""Builds what people install: a folder that runs without Python, and this system's package of it.

``python3.11 .ci/bundle/build.py [FOLDER] [--unpacked]``: into ``dist`` by default, ``--unpacked``
without the packages. Linux gets ``.tar.xz`` and ``.deb``, macOS a ``.dmg``, Windows a ``.zip``.
"""

from __future__ import annotations

import argparse
import hashlib
import os
import platform
import re
import shutil
import subprocess
import sys
import venv
from pathlib import Path

from lean import LeanError, make_lean

HERE = Path(__file__).resolve().parent
ROOT = HERE.parents[1]
NAME = "shoulder-coach"
SPOKEN = sorted(table.stem for table in (ROOT / "coach" / "cues" / "languages").glob("*.toml"))
REWRITTEN = ("numpy", "cv2", "psycopg_binary")
"""Wheels whose libraries were rewritten when they were packed: they do not load once stripped."""


def run(*command: object, within: Path = ROOT) -> str:
    """Run a command, end the build where it fails, and give what it printed."""
    done = subprocess.run(
        [str(part) for part in command], cwd=within, check=True, stdout=subprocess.PIPE, text=True
    )
    return done.stdout.strip()


def environment(folder: Path) -> Path:
    """Give the Python of an environment with what was locked and the program."""
    inside = Path("Scripts/python.exe") if sys.platform == "win32" else Path("bin/python")
    python = folder / inside
    # Anew each time: what was swapped below does not stand a second installation over it.
    venv.create(folder, with_pip=True, clear=True)
    pip = (python, "-m", "pip", "--quiet", "--disable-pip-version-check")
    run(*pip, "install", "--require-hashes", "-r", ROOT / ".ci" / "release.txt")
    run(*pip, "install", "--no-deps", ROOT)
    # The same OpenCV without its windows, which bring a second Qt.
    run(*pip, "uninstall", "--yes", "opencv-contrib-python")
    run(*pip, "install", "--require-hashes", "-r", HERE / "tools.txt")
    return python


def strip(folder: Path) -> None:
    """Take the symbols for debuggers out of the libraries that stand it."""
    for library in sorted(folder.rglob("*.so*")):
        top = library.relative_to(folder).parts[0]
        if library.is_symlink() or top in REWRITTEN or top.endswith(".libs"):
            continue
        run("strip", "--strip-unneeded", library)


def unpacked(out: Path, python: Path) -> Path:
    """Make the folder (on macOS the app) and give its path."""
    where = ("--distpath", out, "--workpath", out / "work" / "build")
    build = (python, "-m", "PyInstaller", "--noconfirm", "--log-level", "ERROR", *where)
    # From where the installed program is found, and not the checkout beside it.
    run(*build, HERE / "coach.spec", within=out / "work")
    if sys.platform == "darwin":
        return out / "Shoulder coach.app"
    folder = out / NAME
    if sys.platform == "linux":
        strip(folder / "_internal")
        make_lean(folder / "_internal", SPOKEN)
        second = folder / "coach-review"
        second.unlink(missing_ok=True)
        second.symlink_to("coach")
    shutil.copy(ROOT / "LICENSE", folder / "LICENSE")
    return folder


def newest_glibc(folder: Path) -> str:
    """Give the version of the C library that the folder's own libraries ask for."""
    asked = {(2, 28)}
    for library in (folder / "coach", *(folder / "_internal").rglob("*.so*")):
        told = run("readelf", "--version-info", "--wide", library)
        asked |= {(int(a), int(b)) for a, b in re.findall(r"GLIBC_(\d+)\.(\d+)", told)}
    return ".".join(map(str, max(asked)))


def debian(folder: Path, tree: Path, version: str, file: Path) -> None:
    """Make the Debian package."""
    shutil.rmtree(tree, ignore_errors=True)
    share = tree / "usr" / "share"
    icons = share / "icons" / "hicolor" / "scalable" / "apps"
    for place in (
        tree / "DEBIAN",
        tree / "usr/bin",
        share / "applications",
        share / "mime/packages",
        icons,
    ):
        place.mkdir(parents=True)
    shutil.copytree(folder, tree / "opt" / NAME, symlinks=True)
    for command, program in (("shoulder-coach", "coach"), ("shoulder-review", "coach-review")):
        (tree / "usr/bin" / command).symlink_to(f"/opt/{NAME}/{program}")
        drawn = "patient" if program == "coach" else "review"
        shutil.copy(ROOT / f"coach/desktop/shared/icons/{drawn}.svg", icons / f"{command}.svg")
        shutil.copy(HERE / f"{command}.desktop", share / "applications")
    shutil.copy(HERE / f"{NAME}.xml", share / "mime" / "packages")
    size_kb = sum(path.lstat().st_size for path in folder.rglob("*")) // 1024
    control = (HERE / "control").read_text("utf-8")
    for place, value in (
        ("@VERSION@", version),
        ("@ARCH@", run("dpkg", "--print-architecture")),
        ("@SIZE@", str(size_kb)),
        ("@GLIBC@", newest_glibc(folder)),
    ):
        control = control.replace(place, value)
    (tree / "DEBIAN" / "control").write_text(control, "utf-8")
    run("dpkg-deb", "--build", "--root-owner-group", "-Zxz", tree, file)


def packages(folder: Path, out: Path, version: str) -> list[Path]:
    """Make this system's packages and give their paths."""
    stem = f"stiff-shoulder-coach_{version}_{platform.machine()}"
    if sys.platform == "win32":
        return [Path(shutil.make_archive(str(out / stem), "zip", out, folder.name))]
    if sys.platform == "darwin":
        image = out / f"{stem}.dmg"
        run("hdiutil", "create", "-ov", "-volname", "Shoulder coach", "-srcfolder", folder, image)
        return [image]
    made = [out / f"{stem}.tar.xz"]
    run("tar", "-C", out, "-cJf", made[0], folder.name)
    if shutil.which("dpkg-deb"):
        made.append(out / f"{stem}.deb")
        debian(folder, out / "work" / "deb", version, made[-1])
    return made


def main() -> None:
    """Build."""
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("out", nargs="?", type=Path, default=ROOT / "dist")
    parser.add_argument("--unpacked", action="store_true", help="the folder alone")
    given = parser.parse_args()
    out = given.out.resolve()
    (out / "work").mkdir(parents=True, exist_ok=True)
    python = environment(out / "work" / "venv")
    folder = unpacked(out, python)
    size = sum(path.lstat().st_size for path in folder.rglob("*"))
    print(f"{size / 1e6:.0f} MB {folder.name}")
    if given.unpacked:
        return
    version = run(python, "-c", "import coach; print(coach.__version__)")
    made = packages(folder, out, version)
    made.append(out / f"stiff-shoulder-coach_{version}.parts.json")
    run(python, "-W", "ignore", ROOT / ".ci" / "dependencies.py", "parts", made[-1])
    sums = out / "SHA256SUMS"
    sums.write_text(
        "".join(f"{hashlib.sha256(file.read_bytes()).hexdigest()}  {file.name}\n" for file in made)
    )
    # Whoever publishes signs with an SSH key of theirs; ssh-keygen -Y verify checks it.
    if key := os.environ.get("SIGNING_KEY"):
        run("ssh-keygen", "-Y", "sign", "-f", key, "-n", "file", sums)
    for file in made:
        print(f"{file.stat().st_size / 1e6:.0f} MB {file.name}")


if __name__ == "__main__":
    try:
        main()
    except LeanError as refused:
        sys.exit(f"build: {refused}")

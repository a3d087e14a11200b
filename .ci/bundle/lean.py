"""Makes the folder for Linux smaller where a library brings more than the program can call.

Qt's ICU carries tables for everything that ICU does; Qt calls three of its services. OpenCV carries
an OpenBLAS with its kernels for fifty processors and calls 19 functions of it, on matrices of some
hundred rows; the reference LAPACK has the same functions.
"""

from __future__ import annotations

import re
import shutil
import struct
import subprocess
from collections.abc import Collection
from pathlib import Path

HERE = Path(__file__).resolve().parent
REFERENCE = ("lapack_pic", "blas")
"""Archives of Debian's liblapack-dev and libblas-dev, BSD-3-Clause."""
_OTHER_SERVICES = ("brkitr", "curr", "lang", "rbnf", "region", "translit", "unit")
"""Text boundaries, currencies, names of languages and regions, numbers in words, scripts, units:
nothing of Qt calls them (``nm -D --undefined-only libQt6Core.so.6``: ucnv, ucol, ucal)."""
_LOCALE = re.compile(r"[a-z]{2,3}(_[A-Z][a-z]{3})?(_([A-Z]{2}|\d{3}))?(_[A-Z]+)?")
_MAGIC = b"\xda\x27"


class LeanError(Exception):
    """Why a library cannot be made smaller, and what to do, in a sentence."""


def make_lean(internal: Path, spoken: Collection[str]) -> None:
    """Make the libraries of a folder smaller, let one file stand for equal ones, end loose links.

    ``spoken``: the program's languages, ISO 639-1.
    """
    for library in (internal / "PyQt6" / "Qt6" / "lib").glob("libicudata.so.*"):
        _without_other_services(library, spoken)
    for library in internal.glob("opencv_python_headless.libs/libopenblas*"):
        _reference_for(library, internal / "cv2" / "cv2.abi3.so")
        for runtime in ("libgfortran", "libquadmath"):
            for file in library.parent.glob(f"{runtime}-*"):
                file.unlink()
    _link_equal(internal)
    for link in list(internal.rglob("*")):
        if link.is_symlink() and not link.exists():  # what it named was left out
            link.unlink()


def kept_items(names: Collection[str], spoken: Collection[str]) -> list[str]:
    """Give the items of an ICU package, as ``icudt73l/coll/de.res``, that the program can reach.

    Whatever Qt asks ICU for stays: collation of every language, time zones' names of those spoken,
    and conversions that are not tables; Qt itself runs in UTF-8 alone on Linux.
    """
    return [name for name in names if _reached(name.split("/")[1:], spoken)]


def _reached(path: list[str], spoken: Collection[str]) -> bool:
    tree, stem, kind = path[0], *path[-1].rsplit(".", 1)
    if kind == "cnv" or (len(path) > 1 and tree in _OTHER_SERVICES):
        return False
    if tree == "coll" or not _LOCALE.fullmatch(stem):
        return True
    return stem.split("_")[0] in spoken


def items_of(package: bytes) -> dict[str, bytes]:
    """Give the items of an ICU package (``.dat``, little-endian) by their names."""
    start = struct.unpack_from("<H", package)[0]
    (number,) = struct.unpack_from("<I", package, start)
    table = [struct.unpack_from("<II", package, start + 4 + 8 * row) for row in range(number)]
    ends = [offset for _, offset in table[1:]] + [len(package) - start]
    found = {}
    for (name, offset), end in zip(table, ends, strict=True):
        text = package[start + name : package.index(b"\0", start + name)].decode("ascii")
        found[text] = package[start + offset : start + end]
    return found


def package_of(header: bytes, items: dict[str, bytes]) -> bytes:
    """Give the ICU package of items behind a package's header; ICU searches them by name."""
    names = sorted(items)
    texts = [name.encode("ascii") + b"\0" for name in names]
    name_at = 4 + 8 * len(names)
    data_at = _padded(name_at + sum(map(len, texts)))
    table, pieces = struct.pack("<I", len(names)), []
    for name, text in zip(names, texts, strict=True):
        table += struct.pack("<II", name_at, data_at)
        pieces.append(items[name] + bytes(_padded(len(items[name])) - len(items[name])))
        name_at, data_at = name_at + len(text), data_at + len(pieces[-1])
    table += b"".join(texts)
    return header + table + bytes(_padded(len(table)) - len(table)) + b"".join(pieces)


def _padded(length: int) -> int:
    return (length + 15) // 16 * 16


def _without_other_services(library: Path, spoken: Collection[str]) -> None:
    (symbol,) = (line.split() for line in _symbols(library, "--defined-only"))
    name = symbol[2]
    whole = library.read_bytes()
    # One segment holds it, so its address is its place in the file.
    start = int(symbol[0], 16)
    if whole[start + 2 : start + 4] != _MAGIC:
        raise LeanError(f"{library.name}: no ICU package where its symbol says; look again.")
    package = whole[start:]
    items = items_of(package)
    kept = {item: items[item] for item in kept_items(items, spoken)}
    smaller_package = library.with_suffix(".dat")
    smaller_package.write_bytes(package_of(package[: struct.unpack_from("<H", package)[0]], kept))
    source = (
        f'.section .rodata\n.globl {name}\n.type {name}, @object\n.balign 16\n{name}:\n.incbin "'
        f'{smaller_package}"\n.size {name}, . - {name}\n.section .note.GNU-stack,"",@progbits\n'
    )
    _compiled(source, "assembler", library, "-nostdlib")
    smaller_package.unlink()


def _reference_for(library: Path, caller: Path) -> None:
    offered = {line.split()[-1] for line in _symbols(library, "--defined-only")}
    asked = {line.split()[-1] for line in _symbols(caller, "--undefined-only")}
    called = sorted(offered & asked)
    exported = library.with_suffix(".map")
    exported.write_text(f"{{ global: {' '.join(f'{each};' for each in called)} local: *; }};\n")
    wanted = [f"-Wl,-u,{each}" for each in called]
    archives = [_archive(name) for name in REFERENCE]
    rules = [f"-Wl,--version-script,{exported}", "-Wl,-Bsymbolic,-z,defs,-z,text,--gc-sections"]
    source = (HERE / "lapack_runtime.c").read_text("utf-8")
    _compiled(source, "c", library, "-O2", *rules, *wanted, *archives, "-lm")
    exported.unlink()
    shutil.copy("/usr/share/doc/liblapack-dev/copyright", library.with_name("lapack_copyright"))


def _archive(name: str) -> str:
    for folder in (Path("/usr/lib"), *Path("/usr/lib").glob("*-linux-gnu*")):
        for file in (folder / f"lib{name}.a", folder / name / f"lib{name}.a"):
            if file.is_file():
                return str(file)
    raise LeanError(f"lib{name}.a is not installed; apt-get install liblapack-dev libblas-dev gcc.")


def _compiled(source: str, language: str, library: Path, *more: str) -> None:
    """Put what a source gives in a library's place, under the same name for who loads it."""
    made = library.with_suffix(".new")
    rules = ("-shared", "-fPIC", "-s", f"-Wl,-soname,{library.name}")
    command = ("gcc", "-x", language, "-", "-x", "none", *rules, *more, "-o", str(made))
    subprocess.run(command, input=source, text=True, check=True)
    made.replace(library)


def _symbols(library: Path, which: str) -> list[str]:
    command = ("nm", "--dynamic", which, str(library))
    done = subprocess.run(command, check=True, capture_output=True, text=True)
    return done.stdout.splitlines()


def _link_equal(folder: Path) -> None:
    """Let links stand for files that are the same as another beside them."""
    seen: dict[tuple[Path, bytes], Path] = {}
    for file in sorted(folder.rglob("*.so*")):
        if file.is_symlink() or not file.is_file():
            continue
        first = seen.setdefault((file.parent, file.read_bytes()), file)
        if first is not file:
            file.unlink()
            file.symlink_to(first.name)

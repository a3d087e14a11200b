"""What the build takes out of libraries, against ICU's own list of a package."""

from __future__ import annotations

import importlib.util
import shutil
import struct
import subprocess
import sys
from pathlib import Path
from types import ModuleType

import PyQt6
import pytest

LEAN = Path(__file__).parents[1] / ".ci" / "bundle" / "lean.py"
HEADER = struct.pack("<HBB", 32, 0xDA, 0x27) + bytes(28)
ITEMS = {
    "icudt73l/brkitr/thaidict.dict": b"t" * 40,
    "icudt73l/cnvalias.icu": b"a" * 5,
    "icudt73l/coll/sv.res": b"s" * 16,
    "icudt73l/coll/ucadata.icu": b"u" * 17,
    "icudt73l/de_AT.res": b"d",
    "icudt73l/ibm-37_P100-1995.cnv": b"c" * 9,
    "icudt73l/root.res": b"r" * 3,
    "icudt73l/sr_Latn_RS.res": b"l",
    "icudt73l/zone/de.res": b"z" * 31,
    "icudt73l/zone/fil.res": b"f",
    "icudt73l/zone/tzdbNames.res": b"n",
    "icudt73l/zoneinfo64.res": b"i",
}


@pytest.fixture(scope="module")
def lean() -> ModuleType:
    spec = importlib.util.spec_from_file_location("bundle_lean", LEAN)
    assert spec
    assert spec.loader
    module = importlib.util.module_from_spec(spec)
    spec.loader.exec_module(module)
    return module


def test_collations_stay_and_other_services_go(lean: ModuleType) -> None:
    kept = lean.kept_items(list(ITEMS), ["en", "de"])
    assert [name.partition("/")[2] for name in kept] == [
        "cnvalias.icu",
        "coll/sv.res",
        "coll/ucadata.icu",
        "de_AT.res",
        "root.res",
        "zone/de.res",
        "zone/tzdbNames.res",
        "zoneinfo64.res",
    ]


@pytest.mark.skipif(shutil.which("icupkg", path="/usr/sbin:/usr/bin") is None, reason="no icupkg")
def test_icus_own_tool_reads_a_package(lean: ModuleType, tmp_path: Path) -> None:
    real = sorted(Path(PyQt6.__path__[0]).glob("Qt6/lib/libicudata.so.*"))
    if not real:
        pytest.skip("this Qt has no ICU")
    whole = real[0].read_bytes()
    package = whole[whole.index(b"CmnD") - 12 :]
    header = package[: struct.unpack_from("<H", package)[0]]
    items = lean.items_of(package)
    kept = {name: items[name] for name in lean.kept_items(items, ["en", "de"])}
    file = tmp_path / f"{next(iter(items)).partition('/')[0]}.dat"
    file.write_bytes(lean.package_of(header, kept))
    tool = shutil.which("icupkg", path="/usr/sbin:/usr/bin")
    told = subprocess.run([tool, "-l", file], capture_output=True, text=True, check=True).stdout
    assert told.split() == sorted(name.partition("/")[2] for name in kept)
    command = [tool, "-x", "coll/root.res", "-d", tmp_path, file]
    subprocess.run(command, capture_output=True, check=True)
    root = (tmp_path / "coll" / "root.res").read_bytes()
    assert root == items[f"{file.stem}/coll/root.res"]


def test_a_package_is_read_as_it_was_written(lean: ModuleType) -> None:
    back = lean.items_of(lean.package_of(HEADER, ITEMS))
    assert {name: data[: len(ITEMS[name])] for name, data in back.items()} == ITEMS


@pytest.mark.skipif(sys.platform == "win32", reason="links need rights there")
def test_a_link_stands_for_an_equal_file_beside_it(lean: ModuleType, tmp_path: Path) -> None:
    for name, content in (("liba.so", b"a"), ("liba.so.1", b"a"), ("libb.so", b"b")):
        (tmp_path / name).write_bytes(content)
    (tmp_path / "liblost.so").symlink_to("left_out.so")
    (tmp_path / "other").mkdir()
    (tmp_path / "other" / "liba.so").write_bytes(b"a")
    lean.make_lean(tmp_path, ["en"])
    assert (tmp_path / "liba.so.1").readlink() == Path("liba.so")
    assert not (tmp_path / "other" / "liba.so").is_symlink()
    assert not (tmp_path / "liblost.so").is_symlink()

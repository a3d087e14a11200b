"""The bundle's description, run as on each system; PyInstaller's classes only note it."""

from __future__ import annotations

import plistlib
import sys
from pathlib import Path
from types import ModuleType
from typing import Any

import pytest
from PyQt6.QtGui import QImage

BUNDLE = Path(__file__).parents[1] / ".ci" / "bundle"


@pytest.fixture
def described(
    request: pytest.FixtureRequest, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> dict[str, list[dict[str, Any]]]:
    """What the description asks PyInstaller for on a system, by the class that is asked."""
    monkeypatch.setattr(sys, "platform", request.param)
    monkeypatch.setattr(sys, "path", [*sys.path])
    hooks = ModuleType("PyInstaller.utils.hooks")
    for name in ("collect_data_files", "collect_dynamic_libs", "collect_submodules"):
        setattr(hooks, name, lambda *_, **__: [])
    monkeypatch.setitem(sys.modules, "PyInstaller", ModuleType("PyInstaller"))
    monkeypatch.setitem(sys.modules, "PyInstaller.utils", ModuleType("PyInstaller.utils"))
    monkeypatch.setitem(sys.modules, "PyInstaller.utils.hooks", hooks)
    monkeypatch.delitem(sys.modules, "appearance", raising=False)
    asked: dict[str, list[dict[str, Any]]] = {}

    class Noted:
        pure, scripts = (), ()

        def __init__(self, kind: str, *given: object, **named: Any) -> None:
            self.binaries = [
                ("PyQt6/Qt6/lib/libavcodec.so", ""),
                ("PyQt6/Qt6/lib/libQt6Gui.so", ""),
            ]
            self.datas = [("espeak/xx_dict", ""), ("espeak/de_dict", "")]
            asked.setdefault(kind, []).append({"given": given, **named})

    scope: dict[str, Any] = {"SPECPATH": str(BUNDLE), "workpath": str(tmp_path)}
    for kind in ("Analysis", "PYZ", "EXE", "COLLECT", "BUNDLE"):
        scope[kind] = lambda *given, _kind=kind, **named: Noted(_kind, *given, **named)
    exec(compile((BUNDLE / "coach.spec").read_text("utf-8"), "coach.spec", "exec"), scope)
    return asked


@pytest.mark.parametrize("described", ["linux", "win32", "darwin"], indirect=True)
def test_each_system_gets_the_start_script_and_no_film_library(
    described: dict[str, list[dict[str, Any]]],
) -> None:
    (start,) = described["Analysis"][0]["given"][0]
    assert Path(start).is_file()
    *_, binaries, datas = described["COLLECT"][0]["given"]
    assert [Path(name).name for name, _ in binaries] == ["libQt6Gui.so"]
    assert [Path(name).name for name, _ in datas] == ["de_dict"]


@pytest.mark.parametrize("described", ["win32"], indirect=True)
def test_windows_gets_two_programs_without_a_terminal_each_with_its_icon(
    described: dict[str, list[dict[str, Any]]],
) -> None:
    assert [program["name"] for program in described["EXE"]] == ["coach", "coach-review"]
    for program in described["EXE"]:
        assert program["console"] is False
        assert QImage(program["icon"]).width() == 256


@pytest.mark.parametrize("described", ["darwin"], indirect=True)
def test_macos_is_told_what_the_camera_is_for(
    described: dict[str, list[dict[str, Any]]],
) -> None:
    told = described["BUNDLE"][0]["info_plist"]
    assert "camera" in plistlib.loads(plistlib.dumps(told))["NSCameraUsageDescription"].lower()
    assert Path(described["BUNDLE"][0]["icon"]).read_bytes()[:4] == b"icns"


@pytest.mark.parametrize("described", ["linux"], indirect=True)
def test_linux_gets_one_program_and_a_link_stands_for_the_other(
    described: dict[str, list[dict[str, Any]]],
) -> None:
    assert [program["name"] for program in described["EXE"]] == ["coach"]
    assert "BUNDLE" not in described

import importlib.util
from pathlib import Path
from types import ModuleType

import pytest

START = Path(__file__).parents[1] / ".ci" / "bundle" / "start.py"


@pytest.fixture(scope="module")
def start() -> ModuleType:
    spec = importlib.util.spec_from_file_location("bundle_start", START)
    assert spec
    assert spec.loader
    module = importlib.util.module_from_spec(spec)
    spec.loader.exec_module(module)
    return module


@pytest.mark.parametrize("name", ["coach-review", "shoulder-review"])
def test_by_its_second_name_it_is_the_therapists(start: ModuleType, name: str) -> None:
    assert start.arguments(name, ["a.shoulder.zip"]) == ["review", "a.shoulder.zip"]


def test_a_file_alone_is_the_plan_to_follow(start: ModuleType, tmp_path: Path) -> None:
    plan = tmp_path / "SH-1_plan_1.shoulder.json"
    plan.write_text("{}")
    assert start.arguments("coach", [str(plan)]) == ["--plan", str(plan)]


@pytest.mark.parametrize("given", [[], ["demo"], ["--version"], ["measure", "clip.mp4"]])
def test_commands_are_passed_on_as_they_are(start: ModuleType, given: list[str]) -> None:
    assert start.arguments("shoulder-coach", given) == given

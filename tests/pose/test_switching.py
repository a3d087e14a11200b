"""Changing the pose model between two frames."""

from __future__ import annotations

import numpy as np
import pytest

from coach.domain.fault import Fault
from coach.domain.frame import Frame
from coach.domain.pose import PoseModel
from coach.ports import Adaptable
from coach.pose.body import Body
from coach.pose.estimator import Following
from coach.pose.switching import Switching

FULL, LITE = PoseModel
FRAME = Frame(0, 1.0, np.zeros((48, 64, 3), np.uint8))
POINTS = np.full((33, 2), 20.0)


class Landmarks:
    """A landmarker that sees the same body in every picture."""

    def __init__(self) -> None:
        self.closed = False

    def find(self, image_rgb: object, stamp_ms: int) -> list[Body]:
        assert not self.closed
        return [Body(POINTS, np.zeros((33, 3)), np.ones(33))]

    def close(self) -> None:
        self.closed = True


class Shelf:
    """Opens models, of which some may be missing."""

    def __init__(self, *missing: PoseModel) -> None:
        self.missing = missing
        self.opened: list[tuple[PoseModel, Landmarks]] = []

    def open(self, model: PoseModel) -> Following:
        if model in self.missing:
            raise Fault(f"{model} is missing.")
        film = Landmarks()
        self.opened.append((model, film))
        return Following(film, Landmarks(), {FULL: "f", LITE: "1"}[model] * 64, model)


def test_it_begins_with_the_full_model_and_changes_when_asked() -> None:
    shelf = Shelf()
    switching = Switching(shelf.open)
    assert isinstance(switching, Adaptable)
    for model, digit in ((FULL, "f"), (LITE, "1"), (FULL, "f")):
        switching.use(model)
        assert (switching.model, switching.model_sha256) == (model, digit * 64)
        pose = switching.estimate(FRAME)
        assert pose is not None
        assert pose.model is model
    assert [model for model, _ in shelf.opened] == [FULL, LITE, FULL]
    assert [film.closed for _, film in shelf.opened] == [True, True, False]
    switching.close()
    assert shelf.opened[-1][1].closed


def test_the_same_model_again_is_not_loaded_again() -> None:
    shelf = Shelf()
    Switching(shelf.open).use(FULL)
    assert len(shelf.opened) == 1


def test_where_the_small_model_is_missing_the_full_one_goes_on() -> None:
    switching = Switching(Shelf(LITE).open)
    switching.use(LITE)
    assert switching.model is FULL
    assert switching.estimate(FRAME) is not None


def test_without_the_full_model_there_is_nothing_to_begin_with() -> None:
    with pytest.raises(Fault, match="full is missing"):
        Switching(Shelf(FULL).open)


def test_both_installed_models_are_there_and_are_not_the_same() -> None:
    switching = Switching()
    hashes = [switching.model_sha256]
    switching.use(LITE)
    hashes.append(switching.model_sha256)
    switching.close()
    assert len(set(hashes)) == 2

"""Who is followed, with a landmarker that knows where everybody is."""

from __future__ import annotations

import numpy as np
import pytest

from coach.domain.frame import Frame
from coach.domain.pose import Landmark, Pose
from coach.pose.body import Body, brightness, is_somebody_else, leapt
from coach.pose.estimator import Following

SIZE_PX = (640, 480)


def body(x: float, trunk: float = 100.0, y: float = 150.0, hips_seen: bool = True) -> Body:
    """A standing body with its shoulders' midpoint at x, y, in pixels."""
    image = np.full((33, 2), (x, y + trunk / 2))
    width = trunk / 5
    image[Landmark.LEFT_SHOULDER] = x + width, y
    image[Landmark.RIGHT_SHOULDER] = x - width, y
    image[Landmark.LEFT_HIP] = x + width, y + trunk
    image[Landmark.RIGHT_HIP] = x - width, y + trunk
    visibility = np.ones(33)
    if not hips_seen:
        visibility[[Landmark.LEFT_HIP, Landmark.RIGHT_HIP]] = 0.1
    return Body(image, np.zeros((33, 3)), visibility)


class Scene:
    """Stands in for both landmarkers: sees the people whose spot in the picture is not grey."""

    def __init__(self) -> None:
        self.people: list[Body] = []
        self.tracked: Body | None = None
        self.stamps_ms: list[int] = []

    def picture(self) -> np.ndarray:
        return np.zeros((SIZE_PX[1], SIZE_PX[0], 3), np.uint8)

    def visible(self, image_rgb: np.ndarray) -> list[Body]:
        spots = [(each, each.shoulders_px.astype(int)) for each in self.people]
        return [each for each, (x, y) in spots if image_rgb[y, x, 0] == 0]


class Film(Scene):
    """Follows as the model does: the nearest to the last one, else the first it finds."""

    def find(self, image_rgb: np.ndarray, stamp_ms: int) -> list[Body]:
        self.stamps_ms.append(stamp_ms)
        seen = self.visible(image_rgb)
        if self.tracked is not None:
            last = self.tracked.shoulders_px
            seen.sort(key=lambda each: float(np.linalg.norm(each.shoulders_px - last)))
        self.tracked = seen[0] if seen else None
        return seen[:1]

    def close(self) -> None:
        pass


class Still:
    def __init__(self, scene: Scene) -> None:
        self.scene = scene
        self.looks = 0

    def find(self, image_rgb: np.ndarray, stamp_ms: int) -> list[Body]:
        self.looks += 1
        return self.scene.visible(image_rgb)

    def close(self) -> None:
        pass


class Play:
    """Runs an estimator over scenes, each a list of people."""

    def __init__(self) -> None:
        self.film = Film()
        self.still = Still(self.film)
        self.estimator = Following(self.film, self.still, "0" * 64)
        self._index = 0

    def show(self, time_s: float, *people: Body) -> Pose | None:
        self.film.people = list(people)
        self._index += 1
        return self.estimator.estimate(Frame(self._index, time_s, self.film.picture()))


def at(pose: Pose | None) -> float:
    assert pose is not None
    return float(pose.image_px[[Landmark.LEFT_SHOULDER, Landmark.RIGHT_SHOULDER], 0].mean())


@pytest.mark.parametrize("order", [(0, 1), (1, 0)])
def test_the_largest_is_taken_up_whatever_the_model_finds_first(order: tuple[int, int]) -> None:
    people = body(100, trunk=80), body(500, trunk=120)
    play = Play()
    pose = play.show(0.0, *(people[n] for n in order))
    assert at(pose) == 500
    assert pose is not None
    assert pose.people == 2
    assert at(play.show(0.1, *people)) == 500


def test_of_three_the_largest_is_taken_up() -> None:
    pose = Play().show(0.0, body(100, 80), body(320, 90), body(540, 140))
    assert at(pose) == 540
    assert pose is not None
    assert pose.people == 3


def test_a_visitor_who_is_taken_for_the_person_is_refused_until_the_person_is_back() -> None:
    play = Play()
    play.show(0.0, body(100))
    play.show(0.1, body(105))
    # The person is hidden and the model jumps to somebody else.
    hidden = [play.show(t, body(400)) for t in (0.2, 0.3, 0.4)]
    assert all(pose is not None and pose.another_person for pose in hidden)
    # Both are in view again: the next look around finds the person.
    both = [play.show(t, body(400), body(110)) for t in (0.5, 0.9, 1.3, 1.4)]
    assert at(both[0]) == 400
    assert both[0] is not None
    assert both[0].another_person
    assert at(both[-1]) == 110
    assert both[-1] is not None
    assert not both[-1].another_person


def test_a_leap_is_undone_at_once_while_the_person_is_in_view() -> None:
    play = Play()
    play.show(0.0, body(100))
    play.film.tracked = body(400)  # as if the model had slipped
    pose = play.show(0.1, body(100), body(400))
    assert at(pose) == 100
    assert pose is not None
    assert not pose.another_person


def test_somebody_who_stays_is_the_person_after_three_seconds() -> None:
    play = Play()
    play.show(0.0, body(100))
    poses = {t: play.show(t, body(400)) for t in (0.1, 0.5, 1.0, 2.0, 3.0, 3.2, 3.3)}
    flags = {t: pose.another_person for t, pose in poses.items() if pose is not None}
    assert flags == {0.1: True, 0.5: True, 1.0: True, 2.0: True, 3.0: True, 3.2: False, 3.3: False}


def test_after_nobody_anybody_is_the_person() -> None:
    play = Play()
    play.show(0.0, body(100))
    assert play.show(0.1) is None
    pose = play.show(0.2, body(400))
    assert at(pose) == 400
    assert pose is not None
    assert not pose.another_person


def test_slow_cameras_say_nothing_about_leaps() -> None:
    play = Play()
    play.show(0.0, body(100))
    pose = play.show(0.4, body(250))
    assert pose is not None
    assert not pose.another_person


@pytest.mark.parametrize("frames_per_s", [10, 15, 30, 60])
def test_looks_around_go_by_the_stamps_not_by_the_frames(frames_per_s: int) -> None:
    play = Play()
    for n in range(5 * frames_per_s + 1):
        play.show(1000 + n / frames_per_s, body(300))
    assert play.still.looks in (5, 6)


def test_stamps_given_to_the_model_grow_even_where_those_of_the_frames_stand() -> None:
    play = Play()
    for time_s in (0.0, 0.0, 0.0001, 0.0333, 0.0333, 0.05, 0.04, 2.0):
        play.show(time_s, body(100, 80), body(500, 120))
    stamps = play.film.stamps_ms
    assert all(np.diff(stamps) > 0)
    assert stamps[-1] - stamps[0] == 2000


@pytest.mark.parametrize(
    ("now", "expected"),
    [
        (body(165), False),
        (body(175), True),
        (body(100, trunk=135), False),
        (body(100, trunk=145), True),
        (body(100, trunk=145, hips_seen=False), False),
        (body(100, trunk=55), True),
        (body(100, y=225), True),
    ],
)
def test_leaps(now: Body, expected: bool) -> None:
    assert leapt(body(100), now) is expected


@pytest.mark.parametrize(
    ("find", "expected"),
    [
        (body(300), True),
        (body(300, trunk=20), False),
        (body(130), False),
        (body(300, trunk=-100), False),
    ],
    ids=["beside", "far behind", "the same", "upside down"],
)
def test_finds_that_count_as_people(find: Body, expected: bool) -> None:
    assert is_somebody_else(find, body(100)) is expected


def test_brightness_is_grey_around_the_body_only() -> None:
    picture = np.full((480, 640, 3), 255, np.uint8)
    person = body(300)
    picture[100:300, 250:350] = 51
    assert brightness(picture, person) == pytest.approx(0.2)
    picture[100:300, 250:350] = 0, 255, 0
    assert brightness(picture, person) == pytest.approx(0.587, abs=0.001)
    assert brightness(picture, body(5000)) is None

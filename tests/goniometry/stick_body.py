"""A body of straight sticks seen by a pinhole camera: poses whose true angles are known."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray
from scipy.spatial.transform import Rotation

from coach.domain.movement import Movement, Side, View
from coach.domain.pose import Landmark, Pose

Array = NDArray[np.float64]

# Half widths and lengths in metres of a man of 1.75 m: Winter's segment lengths over body height
# (0.129 shoulder, 0.186 upper arm, 0.146 forearm, 0.288 trunk, 0.0955 hip), from memory.
SHOULDER, HIP, TRUNK, UPPER_ARM, FOREARM = 0.20, 0.10, 0.50, 0.30, 0.25
FACING_DEG = {View.FRONT: 0.0, View.SIDE: 90.0, View.BACK: 180.0}


@dataclass(frozen=True, slots=True)
class Seen:
    """From where the body is seen; ``turned_deg`` is how far it is off its view."""

    view: View
    distance_m: float = 2.4
    turned_deg: float = 0.0
    aside_m: float = 0.0
    size_px: tuple[int, int] = (640, 480)
    field_of_view_deg: float = 63.0


def arm(movement: Movement, angle_deg: float, side: Side) -> tuple[Array, Array]:
    """Upper arm and forearm directions in body axes X forward, Y up, Z right."""
    down, s = np.array([0.0, -1.0, 0.0]), side.sign
    match movement:
        case Movement.FLEXION:
            upper = Rotation.from_euler("Z", angle_deg, degrees=True).apply(down)
        case Movement.EXTENSION:
            upper = Rotation.from_euler("Z", -angle_deg, degrees=True).apply(down)
        case Movement.ABDUCTION:
            upper = Rotation.from_euler("X", -s * angle_deg, degrees=True).apply(down)
        case Movement.EXTERNAL_ROTATION_0:
            forward = np.array([1.0, 0.0, 0.0])
            return down, Rotation.from_euler("Y", -s * angle_deg, degrees=True).apply(forward)
    return upper, upper


def pose(movement: Movement, angle_deg: float, side: Side, seen: Seen, time_s: float = 0.0) -> Pose:
    """What a camera sees of the body with its arm at an angle."""
    points = np.zeros((33, 3))
    for each in Side:
        s = each.sign
        rows = {
            name: Landmark[f"{each.name}_{name}"]
            for name in ("SHOULDER", "ELBOW", "WRIST", "HIP", "INDEX", "KNEE", "EAR")
        }
        upper, fore = arm(movement, angle_deg, side) if each is side else (
            np.array([0.0, -1.0, 0.0]), np.array([0.0, -1.0, 0.0]),
        )  # fmt: skip
        shoulder = np.array([0.0, TRUNK, s * SHOULDER])
        elbow = shoulder + UPPER_ARM * upper
        points[rows["SHOULDER"]] = shoulder
        points[rows["ELBOW"]] = elbow
        points[rows["WRIST"]] = elbow + FOREARM * fore
        points[rows["INDEX"]] = elbow + (FOREARM + 0.1) * fore
        points[rows["HIP"]] = [0.0, 0.0, s * HIP]
        points[rows["KNEE"]] = [0.0, -0.42, s * HIP]
        points[rows["EAR"]] = [0.0, TRUNK + 0.22, s * 0.07]
    points[Landmark.NOSE] = [0.1, TRUNK + 0.2, 0.0]
    facing_deg = FACING_DEG[seen.view] * (side.sign if seen.view is View.SIDE else 1)
    return project(points, facing_deg + seen.turned_deg, seen, time_s)


def project(points: Array, facing_deg: float, seen: Seen, time_s: float = 0.0) -> Pose:
    """Body axes to a picture; 0 faces the camera, +90 picture right."""
    yaw = np.radians(facing_deg)
    forward = np.array([np.sin(yaw), 0.0, -np.cos(yaw)])  # camera axes x right, y down, z away
    right = np.array([-np.cos(yaw), 0.0, -np.sin(yaw)])
    axes = np.stack([forward, [0.0, -1.0, 0.0], right])
    world = points @ axes
    placed = world + np.array([seen.aside_m, 0.25, seen.distance_m])
    focal_px = max(seen.size_px) / 2 / np.tan(np.radians(seen.field_of_view_deg) / 2)
    image = focal_px * placed[:, :2] / placed[:, 2:] + np.array(seen.size_px) / 2
    return Pose(time_s, seen.size_px, image, world, np.full(33, 0.99))


def mirrored(pose: Pose) -> Pose:
    """The picture flipped left to right, as a model that knows left from right would see it."""
    swap = [
        Landmark[each.name.replace("LEFT", "#").replace("RIGHT", "LEFT").replace("#", "RIGHT")]
        for each in Landmark
    ]
    image = pose.image_px[swap] * [-1, 1] + [pose.size_px[0], 0]
    world = pose.world_m[swap] * [-1, 1, 1]
    return Pose(pose.time_s, pose.size_px, image, world, pose.visibility[swap])

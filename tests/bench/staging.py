"""What stands where in a clip: the camera, the things about the person, somebody else."""

from __future__ import annotations

from dataclasses import replace

import numpy as np

from tests.bench import body as bodies
from tests.bench import people, posing
from tests.bench import room as rooms
from tests.bench.body import Body
from tests.bench.scene import LYING, Camera, Placed, place, place_lying
from tests.bench.skeleton import Array, Posed, turn
from tests.bench.spec import ClipSpec

SEAT_RADIUS_M, SEAT_GIVES_M = 0.2, 0.012
"""Skin this near the root sits on the seat, and sinks in by so much."""
SPARE_DEG = 4.0
"""A camera that cuts the hand off keeps shoulder, neck and head so far inside its picture."""


def near(spec: ClipSpec, body: Body, first: Posed, placed: Placed) -> Array | None:
    """Give the triangles (N, 3, 10), as of ``room``, of what may hide the person."""
    parts = [rooms.block(block, spec.room, placed) for block in spec.blocks]
    held = _holding(spec, body, first)
    parts += [] if held is None else [held]
    return np.concatenate(parts) if parts else None


def bystander(spec: ClipSpec, placed: Placed) -> tuple[Body, Posed] | None:
    """Give somebody who stands still in the background."""
    who = spec.bystander
    if who is None:
        return None
    body = bodies.load(people.ALL[who.person])
    arms = [posing.Arm("flexion", a, elbow_deg=b) for a, b in ((4.0, 16.0), (9.0, 28.0))]
    posed = posing.stand(body, "right", arms[0], arms[1], posing.Stance())
    ahead, across = placed.level_axes()
    place_m = who.behind_m * ahead + who.aside_m * across
    # Facing the camera without any yaw.
    facing_deg = float(np.degrees(np.arctan2(-ahead[0], ahead[1])))
    whole = turn(np.array([0.0, 0.0, 1.0]), facing_deg + who.yaw_deg)
    moved = Posed(posed.rig, whole @ posed.turns, posed.heads_m @ whole.T + place_m)
    return body, moved


def _holding(spec: ClipSpec, body: Body, first: Posed) -> Array | None:
    """What the person leans against or sits on."""
    if spec.door is not None:
        tag = spec.side[0].upper()
        elbow_m, wrist_m = first.head(f"lowerarm01.{tag}"), first.head(f"wrist.{tag}")
        return rooms.door_frame(spec.door, spec.side, wrist_m, wrist_m - elbow_m)
    if spec.position == "sitting":
        root_m = first.head("root")
        skin_m = body.skinned(first)
        under = np.linalg.norm((skin_m - root_m)[:, :2], axis=1) < SEAT_RADIUS_M
        seat_m = float(skin_m[under, 2].min()) + SEAT_GIVES_M
        return rooms.seat(spec.room, seat_m, spec.manner.yaw_deg, root_m)
    return None


def put_camera(spec: ClipSpec, body: Body, posed: tuple[Posed, ...]) -> Placed:
    """Place the camera, and turn it until it cuts off as much of the forearm as asked for."""
    placed = _placed(spec, body, posed)
    if spec.camera.crop > 0.0:
        camera = _turned_away(spec, placed, posed)
        return _placed(replace(spec, camera=camera), body, posed)
    return placed


def _turned_away(spec: ClipSpec, placed: Placed, posed: tuple[Posed, ...]) -> Camera:
    camera, tag = spec.camera, spec.side[0].upper()
    wrists_m, elbows_m, shoulders_m = (
        np.array([p.head(f"{bone}.{tag}") for p in posed])
        for bone in ("wrist", "lowerarm01", "upperarm01")
    )
    hand_m = wrists_m + camera.crop * (elbows_m - wrists_m)
    root_m = elbows_m if spec.movement.startswith("external-rotation") else shoulders_m
    out_px = placed.project(hand_m) - placed.project(root_m)
    # The moment at which the arm stretches farthest to a side, or up.
    moment = int(np.maximum(np.abs(out_px[:, 0]), -out_px[:, 1]).argmax())
    upward = -out_px[moment, 1] > abs(out_px[moment, 0])
    axis, way = (1, -1.0) if upward else (0, float(np.sign(out_px[moment, 0])))
    now = posed[moment]
    kept_m = np.stack([now.head("head"), now.head("neck01"), now.head(f"upperarm01.{tag}")])
    half_px = (camera.height_px if upward else camera.width_px) / 2

    def outward_deg(points_m: Array) -> Array:
        off_px = placed.project(points_m)[..., axis] - half_px
        return np.degrees(np.arctan(way * off_px / camera.focal_px))

    border_deg = float(np.degrees(np.arctan(half_px / camera.focal_px)))
    room_deg = border_deg - SPARE_DEG - float(outward_deg(kept_m).max())
    wanted_deg = border_deg - float(outward_deg(hand_m[moment]))
    turned_deg = float(np.clip(wanted_deg, 0.0, max(room_deg, 0.0)))
    if upward:
        return replace(camera, pitch_deg=camera.pitch_deg - turned_deg)
    return replace(camera, yaw_deg=camera.yaw_deg - way * turned_deg)


def _placed(spec: ClipSpec, body: Body, posed: tuple[Posed, ...]) -> Placed:
    tags = "LR" if spec.gestures else spec.side[0].upper()
    hands_m = np.array([p.head(f"finger3-1.{tag}") for tag in tags for p in posed])
    if spec.position in LYING:
        first = posed[0]
        top_m = first.carried("head", np.array([0.0, 0.0, body.vertices_m[:, 2].max()]))
        low = "lowerleg01" if spec.view == "side" else "upperleg01"
        points_m = [top_m, *hands_m, *(first.head(f"{low}.{tag}") for tag in "LR")]
        on_the_left = (spec.side == "left") == (spec.position == "supine")
        return place_lying(spec.camera, spec.view, on_the_left, np.array(points_m))
    crown_m, knees_m = body.height_m, 0.45 * body.height_m
    if spec.position == "sitting":
        crown_m += posed[0].head("head")[2] - (body.rig.head("head")[2] - body.sole_m)
        knees_m = 0.35
    highest_m = max(crown_m + 0.06, hands_m[:, 2].max() + 0.12)
    lowest_m = knees_m if spec.camera.distance_m < 2.1 else 0.02
    return place(spec.camera, spec.view, spec.side, lowest_m, highest_m)

"""Draw a posed, dressed person in a room, off screen.

Works on a machine without a graphics card through the EGL software renderer
(on Debian: libegl1 and libgl1-mesa-dri).
"""

from __future__ import annotations

import os
from dataclasses import dataclass
from importlib import import_module
from typing import Any

import numpy as np
from numpy.typing import NDArray

from tests.bench import room as rooms
from tests.bench import shaders
from tests.bench.body import Body
from tests.bench.scene import Placed, Room
from tests.bench.skeleton import Array, Posed, unit
from tests.bench.surface import HAIR, SHIRT, SHOES, SKIN, TROUSERS, Surface

SHADOW_PX = 1024
NEAR_M, FAR_M = 0.2, 15.0


@dataclass(frozen=True, slots=True, eq=False)
class Figure:
    """A dressed person; ``still`` is the pose of one who does not move."""

    body: Body
    surfaces: list[Surface]
    still: Posed | None = None


class Renderer:
    """People in one room before one camera; ``draw`` gives a picture for each pose of the first.

    ``near`` are triangles (N, 3, 10) as of ``room`` that may hide the person.
    """

    def __init__(
        self,
        figures: list[Figure],
        room: Room,
        placed: Placed,
        near: Array | None = None,
    ) -> None:
        os.environ.setdefault("LP_NUM_THREADS", "1")
        self._gl: Any = import_module("moderngl")
        self._context: Any = self._gl.create_standalone_context(backend="egl")
        self._figures, self._room, self._placed = figures, room, placed
        size = (placed.camera.width_px, placed.camera.height_px)
        ctx = self._context
        self._bones = [ctx.buffer(reserve=128 * 64) for _ in figures]
        self._person = ctx.program(shaders.PERSON_VERTEX, shaders.PERSON_FRAGMENT)
        self._shadow_person = ctx.program(shaders.SHADOW_VERTEX, shaders.SHADOW_FRAGMENT)
        self._room_program = ctx.program(shaders.ROOM_VERTEX, shaders.ROOM_FRAGMENT)
        self._layers = [[self._layer(surface) for surface in f.surfaces] for f in figures]
        depth = ctx.depth_texture((SHADOW_PX, SHADOW_PX))
        depth.compare_func = "<="
        depth.repeat_x = depth.repeat_y = False
        self._shadow_target = ctx.framebuffer(depth_attachment=depth)
        depth.use(0)
        self._target = ctx.framebuffer(
            ctx.renderbuffer(size, 4, samples=4), ctx.depth_renderbuffer(size, samples=4)
        )
        self._resolved = ctx.framebuffer(ctx.renderbuffer(size, 4))
        shadow_room = ctx.program(shaders.ROOM_SHADOW_VERTEX, shaders.SHADOW_FRAGMENT)
        self._near, self._near_shadow = [], []
        if near is not None:
            self._near = [self._things(near.reshape(-1, 10))]
            corners = ctx.buffer(near.reshape(-1, 10)[:, :3].astype("f4").tobytes())
            self._near_shadow = [ctx.vertex_array(shadow_room, corners, "in_place")]
        self._light_scene(shadow_room)
        self._backdrop = self._paint_room(size)
        # Things near the person are in the light, and in the person's shadow.
        _set(self._room_program, "lightness", 2.0)
        for figure, bones in zip(figures, self._bones, strict=True):
            if figure.still is not None:
                _write_bones(bones, figure.still)

    def draw(self, posed: Posed) -> NDArray[np.uint8]:
        """Give the picture (height, width, 3), RGB."""
        _write_bones(self._bones[0], posed)
        ctx, gl = self._context, self._gl
        ctx.enable(gl.DEPTH_TEST)
        self._shadow_target.use()
        self._shadow_target.clear(depth=1.0)
        for bones, layers in zip(self._bones, self._layers, strict=True):
            bones.bind_to_uniform_block(0)
            for _, _, shadow in layers:
                shadow.render(gl.TRIANGLES)
        for array in self._near_shadow:
            array.render(gl.TRIANGLES)
        self._target.use()
        self._target.clear(depth=1.0)
        ctx.disable(gl.DEPTH_TEST)
        self._backdrop.render(gl.TRIANGLES)
        ctx.enable(gl.DEPTH_TEST)
        ctx.disable(gl.CULL_FACE)
        for array in self._near:
            array.render(gl.TRIANGLES)
        for figure, bones, layers in zip(self._figures, self._bones, self._layers, strict=True):
            bones.bind_to_uniform_block(0)
            self._portray(figure.body)
            for material, array, _ in layers:
                # The body is closed; clothes show their inside at the neck and the sleeves.
                (ctx.enable if material == SKIN else ctx.disable)(gl.CULL_FACE)
                self._paint(figure.body, material)
                array.render(gl.TRIANGLES)
        ctx.copy_framebuffer(self._resolved, self._target)
        width, height = self._target.size
        raw = self._resolved.read(components=3, alignment=1)
        picture = np.frombuffer(raw, np.uint8).reshape(height, width, 3)
        return np.ascontiguousarray(picture[::-1])

    def close(self) -> None:
        """Give the graphics context back."""
        self._context.release()

    def _paint_room(self, size: tuple[int, int]) -> Any:
        """Draw the room once in light and once in shadow; a frame mixes the two by its shadow."""
        ctx, gl = self._context, self._gl
        array = self._things(rooms.build(self._room, self._placed).reshape(-1, 10))
        ctx.enable(gl.DEPTH_TEST)
        textures = []
        for lightness in (1.0, 0.15):
            drawn = ctx.framebuffer(
                [ctx.renderbuffer(size, 4, samples=4, dtype=kind) for kind in ("f1", "f4")],
                ctx.depth_renderbuffer(size, samples=4),
            )
            picture, places = ctx.texture(size, 4), ctx.texture(size, 4, dtype="f4")
            _set(self._room_program, "lightness", lightness)
            drawn.use()
            drawn.clear(depth=1.0)
            array.render(gl.TRIANGLES)
            ctx.copy_framebuffer(ctx.framebuffer([picture, places]), drawn)
            textures.append(picture)
        program = ctx.program(shaders.BACKDROP_VERTEX, shaders.BACKDROP_FRAGMENT)
        for slot, (name, texture) in enumerate(
            zip(("bright", "dim", "light_place"), [*textures, places], strict=True), start=1
        ):
            texture.use(slot)
            _set(program, name, slot)
        corners = np.array([-1, -1, 3, -1, -1, 3], "f4")
        return ctx.vertex_array(program, ctx.buffer(corners.tobytes()), "in_place")

    def _things(self, corners: Array) -> Any:
        """Coloured triangles, their corners (N, 10) as of ``rooms``."""
        return self._context.vertex_array(
            self._room_program,
            self._context.buffer(corners.astype("f4").tobytes()),
            "in_place", "in_normal", "in_colour", "in_kind",
        )  # fmt: skip

    def _layer(self, surface: Surface) -> tuple[int, Any, Any]:
        order = np.argsort(-surface.weights, axis=1)[:, :4]
        weight = np.take_along_axis(surface.weights, order, axis=1)
        weight /= weight.sum(axis=1, keepdims=True)
        rows = np.concatenate(
            [
                surface.vertices_m, surface.normals, surface.cut_m[:, None],
                surface.part[:, None], order, weight,
            ],
            axis=1,
        )  # fmt: skip
        ctx = self._context
        vertices = ctx.buffer(rows.astype("f4").tobytes())
        index = ctx.buffer(surface.faces.astype("i4").tobytes())
        names = ("in_place", "in_normal", "in_cut", "in_part", "in_bone", "in_weight")
        drawn = [(vertices, "3f 3f 1f 1f 4f 4f", *names)]
        cast = [(vertices, "3f 12x 1f 4x 4f 4f", "in_place", "in_cut", "in_bone", "in_weight")]
        return (
            surface.material,
            ctx.vertex_array(self._person, drawn, index),
            ctx.vertex_array(self._shadow_person, cast, index),
        )

    def _paint(self, body: Body, material: int) -> None:
        look = body.person.outfit
        colours = {
            SKIN: look.skin, SHIRT: look.shirt, TROUSERS: look.trousers,
            SHOES: look.shoes, HAIR: look.hair,
        }  # fmt: skip
        self._person["material"].value = material
        # Colours are given as seen; light adds up in linear values.
        self._person["colour"].value = tuple(c**1.5 for c in colours[material])

    def _light_scene(self, shadow_room: Any) -> None:
        placed, room = self._placed, self._room
        back = -placed.turn[2] * (1, 1, 0)
        angle_rad, up_rad = np.radians(room.key_deg)
        level = unit(np.asarray(back, dtype=np.float64))
        across = np.array([-level[1], level[0], 0.0])
        flat = np.cos(angle_rad) * level + np.sin(angle_rad) * across
        way = np.cos(up_rad) * flat + np.sin(up_rad) * np.array([0, 0, 1.0])
        middle = np.array([0.0, 0.0, 0.9])
        light = _box_view(middle + 3.0 * way, -way, 1.9, 6.5)
        view = _perspective(placed) @ _view(placed)
        for program in (self._person, self._room_program):
            _set(program, "view_projection", tuple(view.T.ravel()))
            _set(program, "light", tuple(light.T.ravel()))
            _set(program, "eye", tuple(placed.eye_m))
            _set(program, "key_way", tuple(way))
            _set(program, "key", room.key)
            _set(program, "ambient", room.ambient)
        for program in (self._shadow_person, shadow_room):
            _set(program, "light", tuple(light.T.ravel()))
        _set(self._room_program, "along", tuple(across))

    def _portray(self, body: Body) -> None:
        eye_rest = body.rig.head("eye.L")
        face = (body.vertices_m[:, 2].max() - eye_rest[2]) / 0.109
        _set(self._person, "eye_rest", tuple(eye_rest))
        _set(self._person, "face_scale", float(face))
        _set(self._person, "brow", tuple(0.6 * c for c in body.person.outfit.hair))
        _set(self._person, "stripes", float(body.person.outfit.stripes))


def _write_bones(bones: Any, posed: Posed) -> None:
    matrices = np.zeros((128, 4, 4), np.float32)
    matrices[: len(posed.turns)] = posed.skin_matrices()
    bones.write(np.ascontiguousarray(matrices.transpose(0, 2, 1)).tobytes())


def _set(program: Any, name: str, value: Any) -> None:
    if name in program:
        program[name].value = value


def _view(placed: Placed) -> Array:
    """World to OpenGL camera axes (x right, y up, z backward)."""
    out = np.eye(4)
    out[:3, :3] = np.diag([1.0, -1.0, -1.0]) @ placed.turn
    out[:3, 3] = -out[:3, :3] @ placed.eye_m
    return out


def _perspective(placed: Placed) -> Array:
    k = placed.camera
    out = np.zeros((4, 4))
    out[0, 0], out[1, 1] = 2 * k.focal_px / k.width_px, 2 * k.focal_px / k.height_px
    out[2, 2] = -(FAR_M + NEAR_M) / (FAR_M - NEAR_M)
    out[2, 3] = -2 * FAR_M * NEAR_M / (FAR_M - NEAR_M)
    out[3, 2] = -1.0
    return out


def _box_view(eye_m: Array, way: Array, half_m: float, deep_m: float) -> Array:
    """Orthographic light: world to clip space."""
    right = unit(np.cross(way, np.array([0, 0, 1.0])))
    up = np.cross(right, way)
    turn = np.stack([right, up, -way])
    out = np.eye(4)
    out[:3, :3] = np.diag([1 / half_m, 1 / half_m, -2 / deep_m]) @ turn
    out[:3, 3] = -out[:3, :3] @ eye_m
    out[2, 3] -= 1.0
    return out

"""Skin, clothes, shoes and hair of a body as surfaces that move with its bones.

A piece of clothing is the skin pushed out and smoothed, cut where a field ``cut_m`` (metres,
positive inside the garment) crosses zero; the shader does the cutting, so that a hem is a clean
line whatever the triangles.
"""

from __future__ import annotations

from dataclasses import dataclass, field

import numpy as np
from numpy.typing import NDArray
from scipy.sparse import coo_matrix, csr_matrix, diags

from tests.bench.body import Body, normals_of
from tests.bench.people import BALDING, BOB, BUN, LONG
from tests.bench.skeleton import Array, unit

SKIN, SHIRT, TROUSERS, SHOES, HAIR = range(5)
ARM_STEMS = ("upperarm", "lowerarm", "wrist", "finger", "metacarpal")


@dataclass(frozen=True, slots=True, eq=False)
class Surface:
    """One layer at rest: ``vertices_m`` (V, 3), ``normals`` (V, 3), ``faces`` (T, 3).

    ``cut_m`` (V,): drawn where positive. ``part`` (V,): 1 on the eyeballs of the skin, and 0-1
    the height of the folds of cloth.
    """

    material: int
    vertices_m: Array = field(repr=False)
    normals: Array = field(repr=False)
    faces: NDArray[np.int32] = field(repr=False)
    cut_m: Array = field(repr=False)
    part: Array = field(repr=False)
    weights: Array = field(repr=False)


def dress(body: Body) -> list[Surface]:
    """Give all layers of a person, the skin first."""
    smooth = _smoother(body)
    look = body.person.outfit
    arm_m, arm_share = _along_arm(body)
    shirt_m, trousers_m = _shirt_cut(body, arm_m, arm_share), _trousers_cut(body, arm_share)
    shoes_m, hair_m = _shoes_cut(body), _hair_cut(body)
    loose_m = look.loose_mm / 1000.0
    layers = [
        _shell(body, SHIRT, shirt_m, loose_m, smooth, 22),
        _shell(body, TROUSERS, trousers_m, 0.7 * loose_m, smooth, 14),
        _shell(body, SHOES, shoes_m, 0.007, smooth, 20),
    ]
    if look.hair_style == BUN:
        layers.append(_bun(body))
    if look.hair_style == LONG:
        layers.append(_long_hair(body, loose_m))
    thick_m = {BOB: 0.024, LONG: 0.024, BUN: 0.012}.get(look.hair_style, 0.013)
    layers.append(_shell(body, HAIR, hair_m, thick_m, smooth, 10))
    # Skin well under a garment is left out: it cannot poke through when the cloth is bent.
    covered_m = np.max([shirt_m, trousers_m, shoes_m], axis=0)
    part = (body.share("eye") > 0.5).astype(np.float64)
    bare_m = 0.025 - covered_m
    faces = body.faces[(bare_m[body.faces] > 0).any(axis=1)]
    skin = Surface(SKIN, body.vertices_m, body.normals, faces, bare_m, part, body.weights)
    return [skin, *layers]


def _shell(
    body: Body, material: int, cut_m: Array, offset_m: float, smooth: csr_matrix, rounds: int
) -> Surface:
    faces = body.faces[(cut_m[body.faces] > -0.01).any(axis=1)]
    smoothed = body.vertices_m
    for _ in range(rounds):
        smoothed = smooth @ smoothed
    out_m = np.einsum("vi,vi->v", smoothed - body.vertices_m, body.normals)
    if material == HAIR:
        # Hair lies close at its edges, or one looks under it, and flattens the ears it covers.
        edge = np.clip(cut_m / 0.022, 0.0, 1.0)
        low_m = np.where(_at_ear(body) < 1.3, -0.03, 0.0)
        push_m = np.clip(out_m, low_m, 0.01) + 0.0015 + offset_m * edge * (2.0 - edge)
    else:
        # A garment bridges hollows and never sinks into the skin.
        push_m = np.clip(out_m + offset_m, offset_m * 0.6, 0.07)
    vertices_m = body.vertices_m + push_m[:, None] * body.normals
    for _ in range(2):
        vertices_m = smooth @ vertices_m
    part = np.full(len(vertices_m), 0.5)
    if material in (SHIRT, TROUSERS):
        part = _folds(vertices_m)
        vertices_m = vertices_m + (0.35 * offset_m * (part - 0.5))[:, None] * body.normals
    normals = normals_of(vertices_m, body.faces)
    return Surface(material, vertices_m, normals, faces, cut_m, part, body.weights)


def _folds(vertices_m: Array) -> Array:
    """Give a smooth, seeded pattern (V,) between 0 and 1, long downwards."""
    rng = np.random.default_rng(5)
    ways = rng.normal(0, 1, (24, 3)) * (34.0, 34.0, 15.0)
    waves = np.sin(vertices_m @ ways.T + rng.uniform(0, 2 * np.pi, 24)).mean(axis=1)
    return np.asarray(np.clip(0.5 + 1.6 * waves, 0.0, 1.0))


def _smoother(body: Body) -> csr_matrix:
    """Mean of a vertex and its neighbours, as a matrix (V, V)."""
    f, n = body.faces, len(body.vertices_m)
    i = np.concatenate([f[:, 0], f[:, 1], f[:, 2], f[:, 1], f[:, 2], f[:, 0]])
    j = np.concatenate([f[:, 1], f[:, 2], f[:, 0], f[:, 0], f[:, 1], f[:, 2]])
    links = coo_matrix((np.ones(len(i)), (i, j)), shape=(n, n)).tocsr()
    links.data[:] = 1.0
    degree = np.maximum(np.asarray(links.sum(axis=1)).ravel(), 1.0)
    return csr_matrix(0.5 * (diags(np.ones(n)) + diags(1.0 / degree) @ links))


def _along_arm(body: Body) -> tuple[Array, Array]:
    """Place along the arm (V,), 0-1-2 shoulder-elbow-wrist, and the arm's share of the skin."""
    place, share = np.full(len(body.vertices_m), -1.0), np.zeros(len(body.vertices_m))
    for tag in "LR":
        s, e, w = (body.rig.head(f"{b}.{tag}") for b in ("upperarm01", "lowerarm01", "wrist"))
        mine = sum((body.share(stem, tag) for stem in ARM_STEMS), np.zeros_like(share))
        upper = np.clip((body.vertices_m - s) @ unit(e - s) / np.linalg.norm(e - s), -1.0, 1.0)
        lower = (body.vertices_m - e) @ unit(w - e) / np.linalg.norm(w - e)
        here = upper + np.clip(lower, 0.0, None) * (upper > 0.9)
        place = np.where(mine > 0.25, here, place)
        share += mine
    return place, share


def _shirt_cut(body: Body, place: Array, arm_share: Array) -> Array:
    v, head = body.vertices_m, body.rig.head
    look = body.person.outfit
    neck, hip_z = head("neck01"), head("upperleg01.L")[2]
    plane_m = (v - neck) @ unit(np.array([0.0, -0.42, 0.9])) - 0.004
    collar_m = np.maximum(-plane_m, np.abs(v[:, 0]) - 0.105)
    hem_m = v[:, 2] - (hip_z - 0.055)
    arm_m = np.linalg.norm(head("upperarm01.L") - head("lowerarm01.L"))
    if look.sleeve < 0.1:
        sleeve_m = 0.08 * (0.55 - arm_share)
    else:
        sleeve_m = np.where(place > -0.9, (look.sleeve - place) * arm_m, 0.2)
    return np.minimum(np.minimum(collar_m, sleeve_m), np.where(arm_share > 0.4, 0.2, hem_m))


def _trousers_cut(body: Body, arm_share: Array) -> Array:
    v, head = body.vertices_m, body.rig.head
    waist_m = head("upperleg01.L")[2] + 0.09 - v[:, 2]
    end_z = head("lowerleg01.L")[2] + 0.02 if body.person.outfit.shorts else head("foot.L")[2]
    return np.where(arm_share > 0.2, -0.1, np.minimum(waist_m, v[:, 2] - end_z + 0.01))


def _shoes_cut(body: Body) -> Array:
    return np.asarray(body.rig.head("foot.L")[2] + 0.012 - body.vertices_m[:, 2])


def _hair_cut(body: Body) -> Array:
    v, style = body.vertices_m, body.person.outfit.hair_style
    eye, top = body.rig.head("eye.L"), body.vertices_m[:, 2].max()
    k = (top - eye[2]) / 0.109
    local = (v - np.array([0.0, eye[1], eye[2]])) / k
    hairline = (local - (0.0, -0.02, 0.062)) @ np.array([0.0, 0.528, 0.849])
    sides = (local - (0.0, 0.062, 0.0)) @ np.array([0.0, 0.97, 0.24])
    cut = np.where(local[:, 2] > 0.035, hairline, np.minimum(hairline, sides))
    if style == BALDING:
        cut = np.minimum(cut, 0.052 - local[:, 2])
    if style in (BOB, LONG):
        behind = np.minimum(local[:, 1] - 0.052, local[:, 2] + 0.095)
        cut = np.maximum(cut, behind)
    if style not in (BOB, LONG):
        cut = np.minimum(cut, 0.03 * (_at_ear(body) - 1.0))
    on_head = body.share("head") + body.share("neck03") > (0.25 if style in (BOB, LONG) else 0.5)
    return np.where(on_head, cut * k, -0.05)


def _at_ear(body: Body) -> Array:
    """Distance (V,) from the ears' middle in ear sizes: under 1 is ear, large elsewhere."""
    eye, top = body.rig.head("eye.L"), body.vertices_m[:, 2].max()
    k = (top - eye[2]) / 0.109
    local = (body.vertices_m - np.array([0.0, eye[1], eye[2]])) / k
    away = np.linalg.norm((local[:, 1:] - (0.079, -0.016)) / (0.024, 0.036), axis=1)
    return np.where(np.abs(local[:, 0]) > 0.064, away, 9.0)


def _long_hair(body: Body, loose_m: float) -> Surface:
    """Hair from the back of the head down to between the shoulder blades, over the shirt."""
    head = body.rig.head
    eye, neck, v = head("eye.L"), head("neck01"), body.vertices_m
    k = (v[:, 2].max() - eye[2]) / 0.109
    body_skin = v[body.share("head") + body.share("neck") + body.share("spine") > 0.5]
    z = np.linspace(eye[2] + 0.03 * k, neck[2] - 0.15 * k, 22)
    x = np.linspace(-0.088, 0.088, 15) * k
    behind = np.full((len(z), len(x)), -np.inf)
    for i, height in enumerate(z):
        near = body_skin[np.abs(body_skin[:, 2] - height) < 0.02]
        for j, aside in enumerate(x):
            column = near[np.abs(near[:, 0] - aside) < 0.025 * k]
            behind[i, j] = column[:, 1].max() if len(column) else -np.inf
    occiput = behind[z > eye[2] - 0.06 * k].max(axis=0)
    fallen_m = np.clip(eye[2] - 0.04 * k - z, 0.0, None)[:, None]
    # It hangs from the back of the head and lies on the shirt where the back comes out.
    lying_m = np.where(z < neck[2] + 0.02, loose_m + 0.016, 0.012)[:, None]
    y = np.maximum(behind + lying_m, occiput - 0.30 * fallen_m + 0.006)
    y = np.minimum(y, occiput.max() + 0.05 * k)
    for _ in range(3):
        y[1:-1] = 0.25 * y[:-2] + 0.5 * y[1:-1] + 0.25 * y[2:]
    narrow = 1.0 - 0.25 * (np.arange(len(z)) / len(z))[:, None] ** 2
    grid = np.stack(np.broadcast_arrays(x[None] * narrow, y, z[:, None]), axis=-1)
    rows, columns = np.meshgrid(np.arange(len(z) - 1), np.arange(len(x) - 1), indexing="ij")
    a, n = (rows * len(x) + columns).ravel(), len(x)
    faces = np.concatenate(
        [np.stack([a, a + n, a + 1], axis=1), np.stack([a + 1, a + n, a + n + 1], axis=1)]
    ).astype(np.int32)
    vertices_m = grid.reshape(-1, 3)
    on_head = np.clip((vertices_m[:, 2] - neck[2]) / (eye[2] - 0.08 * k - neck[2]), 0.0, 1.0)
    weights = np.zeros((len(vertices_m), len(body.rig.names)))
    weights[:, body.rig.index["head"]] = on_head
    weights[:, body.rig.index["spine01"]] = 1.0 - on_head
    ones = np.ones(len(vertices_m))
    normals = normals_of(vertices_m, faces)
    return Surface(HAIR, vertices_m, normals, faces, ones, 0 * ones, weights)


def _bun(body: Body) -> Surface:
    """A knot of hair at the back of the head."""
    eye, top = body.rig.head("eye.L"), body.vertices_m[:, 2].max()
    k = (top - eye[2]) / 0.109
    centre = np.array([0.0, eye[1] + 0.195 * k, eye[2] + 0.055 * k])
    lat, lon = np.meshgrid(np.linspace(0, np.pi, 13), np.linspace(0, 2 * np.pi, 25), indexing="ij")
    normals = np.stack(
        [np.sin(lat) * np.cos(lon), np.sin(lat) * np.sin(lon), np.cos(lat)], axis=-1
    ).reshape(-1, 3)
    i, j = np.meshgrid(np.arange(12), np.arange(24), indexing="ij")
    a = (i * 25 + j).ravel()
    faces = np.concatenate(
        [np.stack([a, a + 25, a + 1], axis=1), np.stack([a + 1, a + 25, a + 26], axis=1)]
    ).astype(np.int32)
    weights = np.zeros((len(normals), len(body.rig.names)))
    weights[:, body.rig.index["head"]] = 1.0
    ones = np.ones(len(normals))
    vertices_m = centre + 0.042 * k * normals
    return Surface(HAIR, vertices_m, normals, faces, ones, 0 * ones, weights)

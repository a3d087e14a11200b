"""Bodies of the parametric model: surface, rig and weights, kept on disk once worked out.

The body model needs torch and half a minute to load, so what one person needs is written to a
cache folder (``SHOULDER_BENCH_CACHE``, otherwise in the temporary folder) and read from there.
"""

from __future__ import annotations

import os
import tempfile
from dataclasses import asdict, dataclass, field
from functools import cache
from hashlib import sha256
from importlib import import_module
from pathlib import Path
from typing import Any

import numpy as np
from numpy.typing import NDArray

from tests.bench import back as backs
from tests.bench.back import Back
from tests.bench.people import Person
from tests.bench.skeleton import Array, Posed, Rig, unit

PHENOTYPES = ("gender", "age", "muscle", "weight", "height", "proportions")


@dataclass(frozen=True, slots=True, eq=False)
class Body:
    """A body at rest, world metres.

    ``vertices_m`` (V, 3), ``normals`` (V, 3), ``faces`` (T, 3), ``weights`` (V, B) rows sum to 1.
    """

    person: Person
    rig: Rig
    back: Back
    vertices_m: Array = field(repr=False)
    normals: Array = field(repr=False)
    faces: NDArray[np.int32] = field(repr=False)
    weights: Array = field(repr=False)

    def share(self, stem: str, tag: str = "") -> Array:
        """Weight (V,) a vertex has in the bones whose names start with stem and end with tag."""
        columns = [
            i
            for i, name in enumerate(self.rig.names)
            if name.startswith(stem) and name.endswith(tag)
        ]
        return np.asarray(self.weights[:, columns].sum(axis=1))

    def skinned(self, posed: Posed) -> Array:
        """Vertices (V, 3) carried along by the bones of a pose, metres."""
        matrices = np.einsum("vb,bij->vij", self.weights, posed.skin_matrices()[:, :3])
        flat = np.einsum("vij,vj->vi", matrices[:, :, :3], self.vertices_m)
        return np.asarray(flat + matrices[:, :, 3])

    @property
    def sole_m(self) -> float:
        """Height of the lowest point at rest."""
        return float(self.vertices_m[:, 2].min())

    @property
    def height_m(self) -> float:
        """Stature at rest."""
        return float(np.ptp(self.vertices_m[:, 2]))


def load(person: Person) -> Body:
    """Give a person's body, from the cache where it is there."""
    shape = {key: value for key, value in asdict(person).items() if key in PHENOTYPES}
    key = sha256(repr(sorted(shape.items())).encode()).hexdigest()[:16]
    path = _cache_folder() / f"body_{key}.npz"
    if not path.exists():
        _write(path, shape)
    data = np.load(path)
    names = tuple(str(name) for name in data["names"])
    heads_m = data["heads"].astype(np.float64)
    vertices_m = data["vertices"].astype(np.float64)
    weights = np.zeros((len(vertices_m), len(names)))
    np.add.at(weights, (np.arange(len(weights))[:, None], data["bone"]), data["weight"])
    faces = data["faces"].astype(np.int32)
    on_trunk = weights[:, [name.startswith(backs.TRUNK_STEMS) for name in names]].sum(axis=1) > 0.5
    hips_m = np.mean([heads_m[names.index(f"upperleg01.{tag}")] for tag in "LR"], axis=0)
    back = backs.find(vertices_m, on_trunk, heads_m[names.index("neck01")], hips_m)
    marks_m = {"c7": ("spine01", back.c7_m), "psis": ("root", back.psis_m)}
    rig = Rig.of(names, tuple(int(parent) for parent in data["parents"]), heads_m, marks_m)
    return Body(person, rig, back, vertices_m, normals_of(vertices_m, faces), faces, weights)


def normals_of(vertices_m: Array, faces: NDArray[np.int32]) -> Array:
    """Area-weighted vertex normals (V, 3), pointing out."""
    a, b, c = (vertices_m[faces[:, i]] for i in range(3))
    out = np.zeros_like(vertices_m)
    for i in range(3):
        np.add.at(out, faces[:, i], np.cross(b - a, c - a))
    out[np.linalg.norm(out, axis=1) == 0] = (0.0, 0.0, 1.0)
    return unit(out)


def _cache_folder() -> Path:
    default = Path(tempfile.gettempdir()) / "shoulder_bench"
    folder = Path(os.environ.get("SHOULDER_BENCH_CACHE", default))
    folder.mkdir(parents=True, exist_ok=True)
    return folder


@cache
def _model() -> Any:
    torch: Any = import_module("torch")
    torch.set_num_threads(1)
    return import_module("anny").Anny().to(dtype=torch.float32)


def _write(path: Path, shape: dict[str, float]) -> None:
    torch: Any = import_module("torch")
    model = _model()
    pose = torch.eye(4)[None, None].repeat(1, model.bone_count, 1, 1)
    values = {key: torch.tensor([shape[key]]) for key in model.phenotype_labels}
    out = model(pose_parameters=pose, phenotype_kwargs=values)
    np.savez_compressed(
        path,
        vertices=out["rest_vertices"][0].numpy(),
        heads=out["rest_bone_heads"][0].numpy(),
        faces=model.faces.numpy(),
        names=np.array(model.bone_labels),
        parents=np.array([int(parent) for parent in model.bone_parents]),
        bone=model.vertex_bone_indices.numpy(),
        weight=model.vertex_bone_weights.numpy(),
    )

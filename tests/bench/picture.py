"""What a cheap camera does to a clean picture, seeded."""

from __future__ import annotations

import cv2
import numpy as np
from numpy.typing import NDArray

from tests.bench.scene import Lens


class Film:
    """Exposure, softness, noise and compression, one frame after the other."""

    def __init__(self, lens: Lens, seed: int) -> None:
        self._lens = lens
        self._rng = np.random.default_rng(seed + 77)

    def expose(self, picture: NDArray[np.uint8]) -> NDArray[np.uint8]:
        """Give the picture (H, W, 3) RGB as the camera would hand it over."""
        lens = self._lens
        soft = cv2.GaussianBlur(picture, (0, 0), lens.blur_px) if lens.blur_px > 0.25 else picture
        noise = self._rng.standard_normal(picture.shape, np.float32)
        values = soft.astype(np.float32) * lens.gain + lens.noise * noise
        rough = np.clip(values, 0, 255).astype(np.uint8)
        if lens.jpeg_quality >= 100:
            return rough
        quality = [int(cv2.IMWRITE_JPEG_QUALITY), lens.jpeg_quality]
        packed = cv2.imencode(".jpg", rough[:, :, ::-1], quality)[1]
        unpacked = cv2.imdecode(packed, cv2.IMREAD_COLOR)
        return np.ascontiguousarray(np.asarray(unpacked, dtype=np.uint8)[:, :, ::-1])

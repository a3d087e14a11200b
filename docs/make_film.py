"""Film the patient's window while it coaches the first hold of the sample clip.

python -m docs.make_film FILE.webp
"""

from __future__ import annotations

import argparse
import os
from pathlib import Path
from tempfile import TemporaryDirectory

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")

from PIL import Image
from PyQt6.QtCore import Qt, QTimer
from PyQt6.QtGui import QImage

from coach.app.demo import sample_clip
from coach.app.patient import patient_window
from coach.app.sitting import Folders
from coach.desktop.patient.analysis import Step
from coach.desktop.patient.speech import Speech
from coach.desktop.shared.application import create_application
from coach.domain.moment import Order, Stage
from coach.domain.movement import Movement, Side
from coach.domain.plan import Plan, PlannedExercise
from coach.domain.progress import Phase

WIDTH_PX, EACH_MS, LASTS_S = 560, 250, 13.0
PLAN = Plan(
    patient_code="SAMPLE",
    exercises=(
        PlannedExercise(movement=Movement.FLEXION, side=Side.RIGHT, hold_s=10, repetitions=3),
    ),
)
_ANSWERS = {
    Stage.WELCOME: (Order.START, None),
    Stage.PAIN_BEFORE: (Order.PAIN, 2),
    Stage.PREPARE: (Order.READY, None),
}


def film(place: Path) -> list[Image.Image]:
    """Give what the window shows, a picture every ``EACH_MS`` from the arm's first move on."""
    application = create_application(["film"])
    # The machine that films may have no sound output; what it says of that is not of the film.
    Speech._mute = lambda *_: None
    window = patient_window(PLAN, sample_clip(), Folders(place, place, place), begin=True)
    window.resize(1280, 800)
    taken: list[Image.Image] = []

    def take() -> None:
        smooth = Qt.TransformationMode.SmoothTransformation
        shown = window.grab().toImage().scaledToWidth(WIDTH_PX, smooth)
        shown = shown.convertToFormat(QImage.Format.Format_RGB888)
        size = (shown.width(), shown.height())
        bits = shown.constBits()
        assert bits is not None
        pixels = bits.asstring(shown.sizeInBytes())
        taken.append(Image.frombytes("RGB", size, pixels, "raw", "RGB", shown.bytesPerLine()))
        if len(taken) * EACH_MS >= LASTS_S * 1000:
            application.quit()

    timer = QTimer(interval=EACH_MS)
    timer.timeout.connect(take)

    def step(done: Step) -> None:
        stage = done.moment.stage
        if stage in _ANSWERS:
            window.engine.order(*_ANSWERS[stage])
        elif done.moment.phase is Phase.MOVING and not timer.isActive():
            timer.start()

    window.engine.stepped.connect(step)
    window.show()
    application.exec()
    timer.stop()
    window.close()
    return taken


def main() -> None:
    """Film."""
    parser = argparse.ArgumentParser(prog="python -m docs.make_film", description=__doc__)
    parser.add_argument("file", type=Path)
    file = parser.parse_args().file
    with TemporaryDirectory() as place:
        first, *rest = film(Path(place))
    first.save(
        file, save_all=True, append_images=rest, duration=EACH_MS, loop=0, quality=28, method=6
    )
    print(f"{file}: {len(rest) + 1} pictures, {file.stat().st_size / 1000:.0f} kB")


if __name__ == "__main__":
    main()

"""How the bundle looks to a system: its icons in the form it wants, and what macOS asks to know."""

import os
import sys
from pathlib import Path

ICONS = Path(__file__).resolve().parents[2] / "coach" / "desktop" / "shared" / "icons"
FORMS = {"win32": "ico", "darwin": "icns"}


def icon(drawn: str, folder: Path, system: str = sys.platform) -> str | None:
    """Write a drawing as the icon that a system's programs carry; Linux finds it by its name."""
    if system not in FORMS:
        return None
    os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")
    from PyQt6.QtCore import Qt
    from PyQt6.QtGui import QGuiApplication, QImage, QPainter
    from PyQt6.QtSvg import QSvgRenderer

    application = QGuiApplication.instance() or QGuiApplication(["icon"])
    image = QImage(256, 256, QImage.Format.Format_ARGB32)
    image.fill(Qt.GlobalColor.transparent)
    painter = QPainter(image)
    QSvgRenderer(str(ICONS / f"{drawn}.svg")).render(painter)
    painter.end()
    file = folder / f"{drawn}.{FORMS[system]}"
    if not image.save(str(file)):
        raise OSError(f"{file}: this Qt cannot write it.")
    del application
    return str(file)


INFORMATION: dict[str, object] = {
    "NSCameraUsageDescription": "The camera sees how far your arm moves."
    " No picture is kept and nothing leaves this computer.",
    "NSHighResolutionCapable": True,
    "LSApplicationCategoryType": "public.app-category.medical",
}
"""What macOS must be told; without the first sentence it ends a program that opens the camera."""

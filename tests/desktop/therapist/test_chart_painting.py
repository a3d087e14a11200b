from __future__ import annotations

from datetime import timedelta

import pytest
from PyQt6.QtCore import QRectF
from PyQt6.QtGui import QColor, QImage, QPainter

from coach.desktop.shared.chart import chart_picture, chart_png, paint_chart
from coach.desktop.shared.theme import LIGHT
from coach.review.report import report


def rows_of(image, colour, tolerance=40):
    """The rows and columns in which a colour is found."""
    wanted = QColor(colour)
    found = []
    for y in range(0, image.height(), 2):
        for x in range(0, image.width(), 2):
            pixel = image.pixelColor(x, y)
            distance = (
                abs(pixel.red() - wanted.red())
                + abs(pixel.green() - wanted.green())
                + abs(pixel.blue() - wanted.blue())
            )
            if distance < tolerance:
                found.append((x, y))
    return found


def chart_of(invented, values, **more):
    documents = [invented.make_session(n, (v,), **more) for n, v in enumerate(values)]
    return report(documents).rows[0].chart


@pytest.mark.parametrize("count", [0, 1, 2, 3, 61, 700])
def test_any_number_of_sessions_is_painted_inside_its_box(app, invented, count):
    values = [90.0 + n % 20 for n in range(count)]
    documents = [invented.make_session(n, (v,)) for n, v in enumerate(values)]
    if count == 0:
        documents = [invented.make_session(0, (), pain=(None, None))]
    image = QImage(900, 600, QImage.Format.Format_RGB32)
    image.fill(QColor("#00ff00"))
    painter = QPainter(image)
    box = QRectF(100, 100, 700, 400)
    painter.fillRect(box, QColor(LIGHT.card))
    paint_chart(painter, box, report(documents).rows[0].chart, 13)
    painter.end()
    edge = 20
    for x in range(0, 900, 3):
        for y in (*range(100 - edge), *range(500 + edge, 600)):
            if (x + y) % 7 == 0:
                assert image.pixelColor(x, y) == QColor("#00ff00"), (x, y)


def test_a_rising_range_rises_on_the_picture(app, invented):
    image = chart_picture(chart_of(invented, [80.0, 90.0, 140.0, 160.0], pain=(None, None)))
    plum = [p for p in rows_of(image, LIGHT.series[0]) if p[1] > 120]
    left = [y for x, y in plum if x < 500]
    right = [y for x, y in plum if x > 800]
    assert min(left) > max(right)


def test_pain_is_below_the_range_on_the_same_dates(app, invented):
    image = chart_picture(chart_of(invented, [90.0], pain=(2, 7)))
    plum = [p for p in rows_of(image, LIGHT.series[0]) if p[1] > 120]
    brown = rows_of(image, LIGHT.series[1])
    assert max(y for _, y in plum) < min(y for _, y in brown)
    middle = [sum(x for x, _ in part) / len(part) for part in (plum, brown)]
    assert middle[0] == pytest.approx(middle[1], abs=6)


def test_no_line_crosses_a_long_gap(app, invented):
    documents = [
        invented.make_session(n, (100.0,), at=invented.BEGIN + timedelta(days=d))
        for n, d in enumerate((0, 1, 2, 100, 101, 102))
    ]
    assert [len(run) for run in report(documents).rows[0].chart.runs] == [3, 3]


def test_a_png_of_the_asked_size_comes_out(app, invented):
    data = chart_png(chart_of(invented, [90.0, 100.0]), (640, 360))
    image = QImage.fromData(data, "PNG")
    assert (image.width(), image.height()) == (640, 360)

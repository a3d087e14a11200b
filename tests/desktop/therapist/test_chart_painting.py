from __future__ import annotations

from dataclasses import replace
from datetime import date, timedelta

import pytest
from PyQt6.QtCore import QRectF
from PyQt6.QtGui import QColor, QImage, QPainter

from coach.desktop.shared.canvas import Canvas
from coach.desktop.shared.chart import chart_picture, chart_png, paint_chart
from coach.desktop.shared.chart_marks import flags
from coach.desktop.shared.palettes import LIGHT
from coach.review.axis import Axis
from coach.review.chart import Event
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
    found = report(documents)
    crowded = tuple(
        Event(found.begin.toordinal() + n, f"a treatment of name {n}") for n in range(5)
    )
    chart = replace(found.rows[0].chart, not_beyond_deg=120.0, events=crowded)
    paint_chart(painter, box, chart, 13, weeks=found.adherence.weeks)
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


def painted(chart, weeks=()):
    image = QImage(1000, 600, QImage.Format.Format_RGB32)
    image.fill(QColor(LIGHT.card))
    painter = QPainter(image)
    paint_chart(painter, QRectF(10, 10, 980, 580), chart, 14, weeks=weeks)
    painter.end()
    return image


def test_weeks_left_out_are_empty_frames_after_the_last_session(app, invented):
    documents = [invented.make_session(n, (90.0,), pain=(None, None)) for n in range(7)]
    found = report(documents, until=date(2026, 2, 8))
    assert [w.done for w in found.adherence.weeks] == [7, 0, 0, 0, 0]
    image = painted(found.rows[0].chart, found.adherence.weeks)
    floor = [(x, 545) for x in range(60, 980)]  # low in the strip of weeks
    plum = [x for x, y in floor if near(image.pixelColor(x, y), (155, 130, 177))]
    frames = [x for x, y in floor if near(image.pixelColor(x, y), (133, 120, 154), 90)]
    # Done in the first fifth only, asked until the end.
    assert min(plum) > 60
    assert max(plum) < 60 + 980 / 4
    assert max(frames) > 800


def near(pixel, rgb, tolerance=15):
    return sum(abs(a - b) for a, b in zip(pixel.getRgb()[:3], rgb, strict=True)) < tolerance


def test_words_of_treatments_do_not_cover_each_other(app):
    image = QImage(600, 100, QImage.Format.Format_RGB32)
    painter = QPainter(image)
    canvas = Canvas(painter, 13)
    days = Axis(0.0, 40.0, ())
    events = [Event(d, f"injection on day {d}") for d in (1, 2, 20, 22, 39.5)]
    placed = flags(canvas, events, 50, 500, days, 400)
    cramped = flags(canvas, events, 50, 500, days, 90)
    painter.end()
    assert {f.words for f in placed} == {e.words for e in events}
    assert len(cramped) == len(events)
    assert "" in {f.words for f in cramped}
    for flag in placed:
        assert flag.left >= 50
        assert flag.left + flag.width <= 550
        for other in placed:
            if other is not flag and other.lane == flag.lane:
                assert flag.left + flag.width <= other.left or other.left + other.width <= flag.left
    day_one = next(f for f in placed if f.words.endswith("day 1"))
    assert day_one.x == pytest.approx(50 + 500 / 40)

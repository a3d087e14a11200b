"""Twelve weeks as cells, a day each; what a cell says is in its shape, not in its colour alone."""

from __future__ import annotations

import math
from typing import assert_never

from PyQt6.QtCore import QCoreApplication, QPointF, QRectF, QSize, Qt
from PyQt6.QtGui import QColor, QFontMetricsF, QPainter, QPaintEvent, QPen, QPolygonF
from PyQt6.QtWidgets import QSizePolicy, QWidget

from coach.desktop.patient.lettering import grown
from coach.desktop.shared.looks import colours, looks
from coach.desktop.shared.typeface import font
from coach.review.diary_entries import Day, Mark
from coach.review.wording import month

translate = QCoreApplication.translate

_ROWS = 7
_MARKS_NAMED = len(Mark) - 1
_KEY_ROW, _KEY_GAP = 1.75, 0.4
"""A row of the key, and what is free above it and below it; in heights of its letters."""
_LEFT = Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter


class Calendar(QWidget):
    """A column a week, Monday above; months over the columns, the key to the cells below."""

    def __init__(self, parent: QWidget | None = None) -> None:
        """Begin empty."""
        super().__init__(parent)
        self._days: tuple[Day, ...] = ()
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)

    def show_days(self, days: tuple[Day, ...]) -> None:
        """Show these days; the first is a Monday. Weeks before the beginning take no room."""
        known = [index for index, day in enumerate(days) if day.mark is not Mark.UNKNOWN]
        self._days = days[min(known, default=len(days) - 1) // _ROWS * _ROWS :]
        told = [
            translate("calendar", "{mark}: {count}").format(
                mark=name(mark), count=sum(day.mark is mark for day in days)
            )
            for mark in Mark
            if any(day.mark is mark for day in days)
        ]
        self.setAccessibleName(
            translate("calendar", "The last 12 weeks. {days}").format(days="; ".join(told))
        )
        self.update()

    def paintEvent(self, event: QPaintEvent | None) -> None:  # noqa: D102, N802
        if not self._days:
            return
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        letter_px = self._letter_px()
        weeks = (len(self._days) + _ROWS - 1) // _ROWS
        left_px, head_px = 2.6 * letter_px, 1.6 * letter_px
        foot_px = self._key_rows() * letter_px
        step_px = min((self.width() - left_px) / weeks, (self.height() - head_px - foot_px) / _ROWS)
        painter.setFont(font(letter_px))
        painter.setPen(QColor(colours().ink))
        every = 1 if step_px >= 1.1 * letter_px else 2
        for row in range(0, _ROWS, every):
            place = QRectF(0, head_px + (row + 0.5) * step_px - letter_px, left_px, 2 * letter_px)
            painter.drawText(place, _LEFT.value, _weekday(row))
        shown, free_px = 0, 0.0
        for index, day in enumerate(self._days):
            column, row = divmod(index, _ROWS)
            x = left_px + column * step_px
            if row == 0 and day.on.month != shown:
                shown = day.on.month
                if x >= free_px:
                    free_px = x + 2.0 * letter_px
                    place = QRectF(x, 0, 4 * letter_px, head_px)
                    painter.setPen(QColor(colours().ink))
                    painter.drawText(place, _LEFT.value, month(shown))
            cell = QRectF(x, head_px + row * step_px, step_px, step_px)
            _paint_mark(painter, cell, day.mark)
        self._key(painter, head_px + _ROWS * step_px + _KEY_GAP * letter_px, letter_px)
        painter.end()

    def minimumSizeHint(self) -> QSize:  # noqa: D102, N802
        if looks().text == 1.0:
            return QSize()
        return QSize(0, round((1.6 + 1.1 * _ROWS + self._key_rows()) * self._letter_px()))

    def _letter_px(self) -> float:
        window = self.window()
        return grown(0.026) * (self.height() if window is None else window.height())

    def _key_rows(self) -> float:
        """Give the key's height, in heights of its letters."""
        return 2 * _KEY_GAP + _KEY_ROW * math.ceil(_MARKS_NAMED / self._key_columns())

    def _key_columns(self) -> int:
        metrics = QFontMetricsF(font(self._letter_px()))
        widest = max(metrics.horizontalAdvance(name(mark)) for mark in Mark)
        return 2 if widest + 2.3 * self._letter_px() <= self.width() / 2 else 1

    def _key(self, painter: QPainter, top_px: float, letter_px: float) -> None:
        columns = self._key_columns()
        across_px = self.width() / columns
        for index, mark in enumerate(mark for mark in Mark if mark is not Mark.UNKNOWN):
            row, column = divmod(index, columns)
            side_px = 1.6 * letter_px
            x, y = column * across_px, top_px + row * _KEY_ROW * letter_px
            _paint_mark(painter, QRectF(x, y, side_px, side_px), mark)
            place = QRectF(x + 1.4 * side_px, y, across_px - 1.4 * side_px, side_px)
            painter.setPen(QColor(colours().ink))
            painter.drawText(place, _LEFT.value, name(mark))


def name(mark: Mark) -> str:
    """Name a mark for the patient."""
    match mark:
        case Mark.DONE:
            return translate("calendar", "done")
        case Mark.PARTLY:
            return translate("calendar", "partly done")
        case Mark.LEFT_OUT:
            return translate("calendar", "nothing done")
        case Mark.REST:
            return translate("calendar", "rest day")
        case Mark.DUE:
            return translate("calendar", "still to do today")
        case Mark.UNKNOWN:
            return translate("calendar", "before the beginning")
        case _ as never:
            assert_never(never)


def _paint_mark(painter: QPainter, cell: QRectF, mark: Mark) -> None:
    side = cell.width()
    inner = cell.adjusted(0.1 * side, 0.1 * side, -0.1 * side, -0.1 * side)
    thin = QPen(QColor(colours().line), max(1.2, 0.04 * side))
    painter.setBrush(Qt.BrushStyle.NoBrush)
    match mark:
        case Mark.DONE:
            painter.fillRect(inner, QColor(colours().accent))
            painter.setPen(QPen(QColor(colours().on_accent), max(1.6, 0.09 * side)))
            painter.drawPolyline(
                QPolygonF(
                    [
                        inner.topLeft() + QPointF(x * inner.width(), y * inner.height())
                        for x, y in ((0.24, 0.52), (0.43, 0.72), (0.78, 0.28))
                    ]
                )
            )
        case Mark.PARTLY:
            painter.setPen(Qt.PenStyle.NoPen)
            painter.setBrush(QColor(colours().accent))
            painter.drawPolygon(
                QPolygonF([inner.bottomLeft(), inner.bottomRight(), inner.topLeft()])
            )
            painter.setBrush(Qt.BrushStyle.NoBrush)
            painter.setPen(QPen(QColor(colours().accent), max(1.2, 0.05 * side)))
            painter.drawRect(inner)
        case Mark.LEFT_OUT:
            painter.setPen(thin)
            painter.drawRect(inner)
        case Mark.REST:
            painter.setPen(Qt.PenStyle.NoPen)
            painter.setBrush(QColor(colours().line))
            painter.drawEllipse(cell.center(), 0.12 * side, 0.12 * side)
        case Mark.DUE:
            painter.setPen(QPen(QColor(colours().ink), max(2.0, 0.1 * side)))
            painter.drawRect(inner)
        case Mark.UNKNOWN:
            pass
        case _ as never:
            assert_never(never)
    painter.setBrush(Qt.BrushStyle.NoBrush)


def _weekday(row: int) -> str:
    return (
        translate("calendar", "Mon"),
        translate("calendar", "Tue"),
        translate("calendar", "Wed"),
        translate("calendar", "Thu"),
        translate("calendar", "Fri"),
        translate("calendar", "Sat"),
        translate("calendar", "Sun"),
    )[row]

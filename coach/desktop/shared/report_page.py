"""The one-page report as an A4 PDF: vectors, embedded fonts, no screen needed."""

from __future__ import annotations

from PyQt6.QtCore import QBuffer, QIODevice, QMarginsF, QPointF, QRectF
from PyQt6.QtGui import QPageLayout, QPageSize, QPainter, QPdfWriter

from coach.desktop.shared.canvas import LINE_EM, Align, Canvas, broken
from coach.desktop.shared.chart import paint_chart
from coach.desktop.shared.palettes import LIGHT, Palette
from coach.desktop.shared.pdf_text import with_true_spaces
from coach.desktop.shared.weeks_chart import paint_weeks
from coach.domain.fault import Fault
from coach.review.change import Verdict
from coach.review.counts import sessions_counted
from coach.review.report import Report
from coach.review.report_columns import COLUMNS, column_title
from coach.review.verdict_wording import verdict_words
from coach.review.wording import day
from coach.texts import translate

_DPI = 1200
_MARGIN_MM = 13.0
_TEXT_POINT = 8.0
_HEAD_SIZE = 0.85
_CELL_SIZE = 0.97
_LINE = 1.2
_MOST_ROWS = 12
_MOST_CHARTS = 6
_DONE_EM, _WEEKS_SHARE = 11.5, 0.45
_RIGHT = frozenset(COLUMNS) - {"Movement", "Verdict"}


def report_pdf(report: Report, palette: Palette = LIGHT) -> bytes:
    """Write the page and give the file's bytes.

    Needs a running QGuiApplication, an offscreen one will do, with the fonts loaded.
    """
    buffer = QBuffer()
    buffer.open(QIODevice.OpenModeFlag.WriteOnly)
    writer = QPdfWriter(buffer)
    writer.setResolution(_DPI)
    writer.setPageSize(QPageSize(QPageSize.PageSizeId.A4))
    margins = QMarginsF(_MARGIN_MM, _MARGIN_MM, _MARGIN_MM, _MARGIN_MM)
    writer.setPageMargins(margins, QPageLayout.Unit.Millimeter)
    writer.setTitle(_title(report))
    writer.setCreator(report.software)
    painter = QPainter()
    if not painter.begin(writer):
        raise Fault(
            translate(
                "faults",
                "The report could not be drawn: try again, and restart the program if it fails.",
            )
        )
    box = QRectF(0, 0, writer.width(), writer.height())
    paint_report(painter, box, report, _TEXT_POINT * _DPI / 72, palette)
    painter.end()
    buffer.close()
    return with_true_spaces(bytes(buffer.data().data()))


def paint_report(
    painter: QPainter, box: QRectF, report: Report, em: float, palette: Palette = LIGHT
) -> None:
    """Paint the page into ``box``; ``em`` is the height of its text in device units."""
    canvas = Canvas(painter, em, palette)
    top = _head(canvas, box, report)
    top = _table(canvas, box, top, report) + 1.1 * em
    foot = _foot_height(canvas, box, report)
    bottom = box.bottom() - foot
    strip = max(_DONE_EM * em, _facts_height(canvas, box, report))
    charts = QRectF(box.left(), top, box.width(), bottom - strip - 1.6 * em - top)
    _charts(canvas, charts, report)
    _done(canvas, QRectF(box.left(), bottom - strip, box.width(), strip - em), report)
    _foot(canvas, QRectF(box.left(), bottom, box.width(), foot), report)


def _title(report: Report) -> str:
    return translate("report", "Shoulder report: {patient_code}").format(
        patient_code=report.patient_code
    )


def _head(canvas: Canvas, box: QRectF, report: Report) -> float:
    em, soft = canvas.em, canvas.palette.ink_soft
    row = QRectF(box.left(), box.top(), box.width(), 2.6 * em)
    canvas.text(row, _title(report), size=2.0, bold=True)
    if report.printed_on:
        right = Align.AlignRight | Align.AlignVCenter
        written = translate("report", "Written on {day}").format(day=day(report.printed_on))
        canvas.text(row, written, colour=soft, align=right)
    under = (
        translate("report", "{period}, {sessions}. Plan: {title}")
        if report.title
        else translate("report", "{period}, {sessions}")
    ).format(period=report.period, sessions=sessions_counted(report.sessions), title=report.title)
    canvas.text(row.translated(0, 2.2 * em), under, size=1.1, colour=soft)
    return box.top() + 5.0 * em


def _table(canvas: Canvas, box: QRectF, top: float, report: Report) -> float:
    em, colours = canvas.em, canvas.palette
    rows = report.rows[:_MOST_ROWS]
    edges = _columns(canvas, box, [r.cells for r in rows])

    def write(cells: tuple[str, ...], y: float, *, head: bool) -> float:
        size = _HEAD_SIZE if head else _CELL_SIZE
        lines = 1
        for (column, cell), (left, right) in zip(
            zip(COLUMNS, cells, strict=True), edges, strict=True
        ):
            side = Align.AlignRight if column in _RIGHT else Align.AlignLeft
            bold = head or cell == verdict_words(Verdict.REAL)
            within = [cell]
            if column == COLUMNS[0]:
                within = broken(cell, canvas.metrics(size, bold=bold), right - left)
            lines = max(lines, len(within))
            for number, line in enumerate(within):
                canvas.text(
                    QRectF(left, y + number * _LINE * em, right - left, 1.7 * em),
                    line,
                    size=size,
                    bold=bold,
                    colour=colours.ink_soft if head else colours.ink,
                    align=side | Align.AlignVCenter,
                )
        return y + (1.7 + (lines - 1) * _LINE) * em

    y = write(tuple(map(column_title, COLUMNS)), top, head=True)
    canvas.line(QPointF(box.left(), y), QPointF(box.right(), y), colours.line, 0.12)
    for row in rows:
        y = write(row.cells, y, head=False)
        canvas.line(QPointF(box.left(), y), QPointF(box.right(), y), colours.hairline, 0.06)
    left_out = len(report.rows) - _MOST_ROWS
    if left_out > 0:
        words = (
            translate("report", "1 more movement in the program")
            if left_out == 1
            else translate("report", "{count} more movements in the program")
        ).format(count=left_out)
        canvas.text(QRectF(box.left(), y, box.width(), 1.7 * em), words, colour=colours.ink_soft)
        y += 1.7 * em
    return y


def _columns(
    canvas: Canvas, box: QRectF, cells: list[tuple[str, ...]]
) -> list[tuple[float, float]]:
    """Give each column its widest text and share out the rest; the first yields where it must."""
    widths = [
        max(
            canvas.width(column, _HEAD_SIZE, bold=True),
            *(
                canvas.width(row[i], _CELL_SIZE, bold=row[i] == verdict_words(Verdict.REAL))
                for row in cells
            ),
            0.0,
        )
        for i, column in enumerate(map(column_title, COLUMNS))
    ]
    between = len(widths) - 1
    gap = max((box.width() - sum(widths)) / between, 0.7 * canvas.em)
    widths[0] -= max(0.0, sum(widths) + gap * between - box.width())
    edges: list[tuple[float, float]] = []
    left = box.left()
    for width in widths:
        edges.append((left, left + width))
        left += width + gap
    return edges


def _charts(canvas: Canvas, box: QRectF, report: Report) -> None:
    charts = [r.chart for r in report.rows if r.chart.dots][:_MOST_CHARTS]
    if not charts:
        canvas.text(
            QRectF(box.left(), box.top(), box.width(), 2 * canvas.em),
            translate("report", "No session gave a value to draw."),
            colour=canvas.palette.ink_soft,
        )
        return
    across = 1 if len(charts) <= 2 else 2
    down = -(-len(charts) // across)
    gap = 2.0 * canvas.em
    width = (box.width() - gap * (across - 1)) / across
    height = (box.height() - gap * (down - 1)) / down
    for index, chart in enumerate(charts):
        left = box.left() + (index % across) * (width + gap)
        top = box.top() + (index // across) * (height + gap)
        size = canvas.em * (1.0 if across == 1 else 0.82)
        paint_chart(canvas.painter, QRectF(left, top, width, height), chart, size, canvas.palette)


def _done(canvas: Canvas, box: QRectF, report: Report) -> None:
    em, colours = canvas.em, canvas.palette
    half = box.width() * _WEEKS_SHARE
    title = QRectF(box.left(), box.top(), half, 1.6 * em)
    words = translate("report", "Sessions by week, done / asked for")
    canvas.text(title, words, size=1.1, bold=True)
    weeks = QRectF(box.left(), title.bottom() + 0.3 * em, half, box.bottom() - title.bottom())
    paint_weeks(canvas.painter, weeks, report.adherence.weeks, 0.95 * em, colours)
    left, width, name_width = _facts_columns(canvas, box, report)
    words = translate("report", "What was done, pain, camera")
    canvas.text(QRectF(left, box.top(), box.right() - left, 1.6 * em), words, size=1.1, bold=True)
    y = title.bottom() + 0.2 * em
    for name, text in report.facts:
        canvas.text(QRectF(left, y, name_width, LINE_EM * em), name, colour=colours.ink_soft)
        y += canvas.paragraph(QRectF(left + name_width, y, width, em), text) + 0.08 * em


def _facts_columns(canvas: Canvas, box: QRectF, report: Report) -> tuple[float, float, float]:
    """Give the left edge of the facts, the width of what they say and that of their names."""
    name_width = max(canvas.width(name) for name, _ in report.facts) + canvas.em
    left = box.left() + _WEEKS_SHARE * box.width() + 2 * canvas.em
    return left, box.right() - left - name_width, name_width


def _facts_height(canvas: Canvas, box: QRectF, report: Report) -> float:
    _, width, _ = _facts_columns(canvas, box, report)
    lines = [len(broken(text, canvas.metrics(), width)) for _, text in report.facts]
    return (2.8 + LINE_EM * sum(lines) + 0.08 * len(lines)) * canvas.em


def _foot_lines(report: Report) -> tuple[str, ...]:
    measured = translate("report", "Measured with {software}.").format(software=report.software)
    return (*report.notes, report.method, measured)


def _foot_height(canvas: Canvas, box: QRectF, report: Report) -> float:
    metrics = canvas.metrics(0.85)
    lines = sum(len(broken(text, metrics, box.width())) for text in _foot_lines(report))
    return (lines * 1.32 * 0.85 + 2.4) * canvas.em


def _foot(canvas: Canvas, box: QRectF, report: Report) -> None:
    em, colours = canvas.em, canvas.palette
    canvas.line(box.topLeft(), box.topRight(), colours.line, 0.12)
    top = box.top() + 0.3 * em
    words = translate("report", "How to read this")
    canvas.text(QRectF(box.left(), top, box.width(), 1.5 * em), words, bold=True)
    top += 1.5 * em
    for text in _foot_lines(report):
        row = QRectF(box.left(), top, box.width(), em)
        top += canvas.paragraph(row, text, size=0.85, colour=colours.ink_soft)

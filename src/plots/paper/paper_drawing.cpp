// SPDX-License-Identifier: GPL-3.0-or-later
#include "plots/paper/paper_drawing.h"

#include "plots/plot_file.h"

#include <QFontMetricsF>
#include <QPainter>
#include <QStringList>

namespace piolo::plots {

namespace {

constexpr int leftMiddle = static_cast<int>(Qt::AlignLeft) | static_cast<int>(Qt::AlignVCenter);
constexpr int rightMiddle = static_cast<int>(Qt::AlignRight) | static_cast<int>(Qt::AlignVCenter);
constexpr int titlePixels = 24;
constexpr int textPixels = 15;
constexpr int smallPixels = 13;
constexpr int tempoPixels = 23;
constexpr double dayWidth = 190;
constexpr double ruleWidth = 1.2;

void setFont(QPainter& painter, const QFont& base, int pixels, bool bold = false) {
    QFont font = base;
    font.setPixelSize(pixels);
    font.setBold(bold);
    painter.setFont(font);
}

void drawElided(QPainter& painter, const QRectF& box, const QString& text) {
    const QFontMetricsF metrics(painter.font(), painter.device());
    painter.drawText(box, leftMiddle | static_cast<int>(Qt::TextSingleLine),
                     metrics.elidedText(text, Qt::ElideRight, box.width()));
}

void drawDay(QPainter& painter, const PaperSheet& sheet, const QRectF& box) {
    setFont(painter, sheet.font, textPixels);
    const double used = QFontMetricsF(painter.font(), painter.device()).horizontalAdvance(sheet.words.day);
    painter.drawText(box, leftMiddle, sheet.words.day);
    painter.drawLine(QLineF(box.left() + used + 8, box.bottom() - 4, box.right(), box.bottom() - 4));
}

void drawHeading(QPainter& painter, const PaperSheet& sheet, const PaperBlock& block) {
    const PaperLadder& ladder = sheet.ladders[block.ladder];
    const QRectF& box = block.heading;
    painter.setPen(QPen(Qt::black, 2));
    painter.drawLine(box.topLeft(), box.topRight());
    painter.setPen(QPen(Qt::black, ruleWidth));
    setFont(painter, sheet.font, titlePixels, true);
    drawElided(painter, {box.left(), box.top() + 8, box.width() - dayWidth - 16, 34},
               block.continued ? sheet.words.continued.arg(ladder.title) : ladder.title);
    drawDay(painter, sheet, {box.right() - dayWidth, box.top() + 8, dayWidth, 34});
    setFont(painter, sheet.font, textPixels);
    double top = box.top() + 44;
    for (const QString& line : ladder.lines) {
        drawElided(painter, {box.left(), top, box.width(), 22}, line);
        top += 22;
    }
    setFont(painter, sheet.font, smallPixels);
    drawElided(painter, {box.left(), top + 2, box.width(), 20}, sheet.words.howTo);
}

void drawRow(QPainter& painter, const PaperSheet& sheet, const PaperLadder& ladder, const PaperRow& row) {
    const PaperRungText& rung = ladder.rungs[row.rung];
    QRectF number = row.tempo;
    if (rung.target) {
        setFont(painter, sheet.font, smallPixels);
        painter.drawText(number.adjusted(0, number.height() - 16, 0, 0), rightMiddle, sheet.words.target);
        number.setBottom(number.bottom() - 14);
    }
    setFont(painter, sheet.font, rung.tempo.size() > 5 ? textPixels : tempoPixels, true);
    painter.drawText(number, rightMiddle, rung.tempo);
    for (const QRectF& circle : row.circles) painter.drawEllipse(circle);
    painter.drawRect(row.misses);
    setFont(painter, sheet.font, smallPixels - 2);
    painter.drawText(row.misses.adjusted(4, 1, 0, 0),
                     static_cast<int>(Qt::AlignLeft) | static_cast<int>(Qt::AlignTop), sheet.words.misses);
}

void drawNotes(QPainter& painter, const PaperSheet& sheet, const QRectF& box) {
    setFont(painter, sheet.font, textPixels);
    const double used = QFontMetricsF(painter.font(), painter.device()).horizontalAdvance(sheet.words.notes);
    const double first = box.top() + 40;
    painter.drawText(QRectF(box.left(), first - 24, used + 4, 24), leftMiddle, sheet.words.notes);
    painter.drawLine(QLineF(box.left() + used + 10, first, box.right(), first));
    painter.drawLine(QLineF(box.left(), first + 36, box.right(), first + 36));
}

void drawFooter(QPainter& painter, const PaperSheet& sheet, const PaperLayout& layout, std::size_t page) {
    if (layout.pages.size() < 2) return;
    setFont(painter, sheet.font, smallPixels);
    const QRectF box(layout.content.left(), layout.content.bottom() + 6, layout.content.width(), 20);
    painter.drawText(box, rightMiddle, sheet.words.page.arg(page + 1).arg(layout.pages.size()));
}

QString titleOf(const PaperSheet& sheet) {
    QStringList titles;
    for (const PaperLadder& ladder : sheet.ladders) titles << ladder.title;
    return titles.join(QStringLiteral("; "));
}

/// All pages, one below the other.
Drawing stacked(const PaperSheet& sheet, const PaperLayout& layout) {
    return [&sheet, &layout](QPainter& painter) {
        for (std::size_t page = 0; page < layout.pages.size(); ++page) {
            drawPaperPage(painter, sheet, layout, page);
            painter.translate(0, layout.size.height());
        }
    };
}

QSize stackSize(const PaperLayout& layout) {
    if (layout.pages.empty() || layout.pages.size() > mostPagesInPicture) return {};
    return {layout.size.width(), layout.size.height() * static_cast<int>(layout.pages.size())};
}

} // namespace

void drawPaperPage(QPainter& painter, const PaperSheet& sheet, const PaperLayout& layout, std::size_t page) {
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.fillRect(QRectF({0, 0}, QSizeF(layout.size)), Qt::white);
    painter.setBrush(Qt::NoBrush);
    for (const PaperBlock& block : layout.pages[page].blocks) {
        drawHeading(painter, sheet, block);
        for (const PaperRow& row : block.rows) drawRow(painter, sheet, sheet.ladders[block.ladder], row);
        drawNotes(painter, sheet, block.notes);
    }
    drawFooter(painter, sheet, layout, page);
    painter.restore();
}

QByteArray paperPdf(const PaperSheet& sheet) {
    const PaperLayout layout = layOutPaper(sheet.ladders, sheet.paper);
    return pdfPages(
        sheet.paper == PaperSize::a4 ? QPageSize::A4 : QPageSize::Letter, titleOf(sheet), layout.pages.size(),
        [&](QPainter& painter, std::size_t page) { drawPaperPage(painter, sheet, layout, page); });
}

QByteArray paperSvg(const PaperSheet& sheet) {
    const PaperLayout layout = layOutPaper(sheet.ladders, sheet.paper);
    const QSize size = stackSize(layout);
    return size.isEmpty() ? QByteArray() : svgBytes(size, titleOf(sheet), stacked(sheet, layout));
}

QByteArray paperPng(const PaperSheet& sheet) {
    const PaperLayout layout = layOutPaper(sheet.ladders, sheet.paper);
    const QSize size = stackSize(layout);
    return size.isEmpty() ? QByteArray() : pngBytes(size, 2, stacked(sheet, layout));
}

} // namespace piolo::plots

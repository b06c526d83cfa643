// SPDX-License-Identifier: GPL-3.0-or-later
#include "plots/paper/paper_drawing.h"

#include "plots/curve/tempo_curve.h"

#include "../recorder.h"
#include "../records.h"

#include <QImage>
#include <QPainter>

#include <doctest/doctest.h>

#include <algorithm>

using namespace piolo;
using namespace piolo::plots;

namespace {

PaperLadder ladder(int rungs, int circles, const char* title = "Ferrywake, letter C") {
    PaperLadder made;
    made.title = QString::fromLatin1(title);
    made.lines = {"Ferrywake Suite", "to 96", "The rule"};
    for (int rung = 0; rung < rungs; ++rung)
        made.rungs.push_back({QString::number(60 + 2 * rung), rung + 1 == rungs});
    made.circles = circles;
    return made;
}

PaperSheet sheetOf(std::vector<PaperLadder> ladders, PaperSize paper = PaperSize::a4) {
    needFonts();
    const PaperWords words{"Day", "misses", "target", "Notes", "Climb.", "%1, continued", "page %1 of %2"};
    return {std::move(ladders), words, paper, lightCurveStyle().font};
}

std::size_t rungsOn(const PaperLayout& layout) {
    std::size_t rungs = 0;
    for (const PaperPage& page : layout.pages)
        for (const PaperBlock& block : page.blocks) rungs += block.rows.size();
    return rungs;
}

/// Every box of a page is inside the content, and no two of them touch.
void checkPage(const PaperLayout& layout, const PaperPage& page) {
    std::vector<QRectF> boxes;
    for (const PaperBlock& block : page.blocks) {
        boxes.push_back(block.heading);
        boxes.push_back(block.notes);
        for (const PaperRow& row : block.rows) {
            boxes.push_back(row.tempo);
            boxes.push_back(row.misses);
            boxes.insert(boxes.end(), row.circles.begin(), row.circles.end());
            CHECK(row.box.contains(row.tempo));
            CHECK(row.box.contains(row.misses));
            for (const QRectF& circle : row.circles) CHECK(row.box.contains(circle));
        }
    }
    for (std::size_t one = 0; one < boxes.size(); ++one) {
        CHECK(layout.content.contains(boxes[one]));
        for (std::size_t other = one + 1; other < boxes.size(); ++other)
            CHECK_FALSE(boxes[one].intersects(boxes[other]));
    }
}

} // namespace

TEST_CASE("a page is as large as its paper: A4 and Letter at 96 pixels per inch") {
    // ISO 216: A4 is 210 x 297 mm. Letter, 8 1/2 x 11 inches: ANSI/ASME Y14.1, size A. Both from memory.
    CHECK(pixelsOf(PaperSize::a4) == QSize(qRound(210 / 25.4 * 96), qRound(297 / 25.4 * 96)));
    CHECK(pixelsOf(PaperSize::letter) == QSize(816, 1056));
}

TEST_CASE("whatever the ladder, every rung has all of its circles once, inside the page and apart") {
    for (const PaperSize paper : {PaperSize::a4, PaperSize::letter})
        for (const int rungs : {1, 8, 9, 23, 60, 391})
            for (const int circles : {1, 5, 6, 7, 17, 40, 100}) {
                CAPTURE(rungs);
                CAPTURE(circles);
                const std::vector ladders{ladder(rungs, circles)};
                const PaperLayout layout = layOutPaper(ladders, paper);
                CHECK(rungsOn(layout) == static_cast<std::size_t>(rungs));
                std::size_t next = 0;
                for (const PaperPage& page : layout.pages) {
                    REQUIRE(page.blocks.size() == 1);
                    for (const PaperRow& row : page.blocks.front().rows) {
                        CHECK(row.rung == next++);
                        CHECK(row.circles.size() == static_cast<std::size_t>(circles));
                    }
                }
                // All pages have the same layout, so the first and the last are enough.
                checkPage(layout, layout.pages.front());
                checkPage(layout, layout.pages.back());
            }
}

TEST_CASE("in a column the lowest rung is at the bottom, and the next column goes on") {
    const std::vector ladders{ladder(12, 5)};
    const PaperLayout layout = layOutPaper(ladders, PaperSize::a4);
    REQUIRE(layout.pages.size() == 1);
    const PaperBlock& block = layout.pages.front().blocks.front();
    REQUIRE(block.columns.size() == 2);
    for (std::size_t rung = 1; rung < block.rows.size(); ++rung) {
        const QRectF& below = block.rows[rung - 1].box;
        const QRectF& above = block.rows[rung].box;
        if (rung == 6)
            CHECK(above.left() > below.right());
        else
            CHECK(above.bottom() == doctest::Approx(below.top()));
    }
}

TEST_CASE("short ladders share a page, one that would not fit begins on the next") {
    const std::vector two{ladder(5, 5), ladder(5, 5)};
    const PaperLayout shared = layOutPaper(two, PaperSize::letter);
    REQUIRE(shared.pages.size() == 1);
    CHECK(shared.pages.front().blocks.size() == 2);
    checkPage(shared, shared.pages.front());
    const std::vector many{ladder(5, 5), ladder(7, 100), ladder(3, 5)};
    const PaperLayout apart = layOutPaper(many, PaperSize::a4);
    CHECK(rungsOn(apart) == 15);
    CHECK(apart.pages.size() > 1);
    for (const PaperPage& page : apart.pages) {
        CHECK_FALSE(page.blocks.empty());
        checkPage(apart, page);
    }
}

TEST_CASE("everything on a sheet is drawn: title, lines, rungs, circles and the page number") {
    const PaperSheet sheet = sheetOf({ladder(60, 5)});
    const PaperLayout layout = layOutPaper(sheet.ladders, sheet.paper);
    REQUIRE(layout.pages.size() > 1);
    std::size_t circles = 0;
    QStringList words;
    for (std::size_t page = 0; page < layout.pages.size(); ++page) {
        Recorder recorder(layout.size);
        QPainter painter(&recorder);
        drawPaperPage(painter, sheet, layout, page);
        painter.end();
        circles += recorder.shapes().ellipses.size();
        words += recorder.shapes().words;
    }
    CHECK(circles == 300);
    for (const char* word : {"Ferrywake, letter C", "Ferrywake, letter C, continued", "Ferrywake Suite",
                             "Day", "Notes", "target", "misses", "60", "178", "page 1 of 2"})
        CHECK_MESSAGE(words.contains(QString::fromLatin1(word)), word);
}

TEST_CASE("a long title is elided before the day's line, and nothing is drawn in the margins") {
    PaperSheet sheet =
        sheetOf({ladder(9, 17,
                        "The very long way from the second ending to the last movement's coda, "
                        "with everything between them")});
    sheet.ladders[0].lines[0] = QString(400, u'w');
    const PaperLayout layout = layOutPaper(sheet.ladders, sheet.paper);
    QImage image(layout.size, QImage::Format_RGB32);
    image.fill(Qt::white);
    QPainter painter(&image);
    drawPaperPage(painter, sheet, layout, 0);
    painter.end();
    const QRect inside = layout.content.toAlignedRect().adjusted(-3, -3, 3, 30);
    int stray = 0;
    int ink = 0;
    for (int y = 0; y < image.height(); ++y)
        for (int x = 0; x < image.width(); ++x)
            if (qGray(image.pixel(x, y)) < 200) ++(inside.contains(x, y) ? ink : stray);
    CHECK(stray == 0);
    CHECK(ink > 1000);
}

TEST_CASE("a sheet is black on white alone") {
    const PaperSheet sheet = sheetOf({ladder(9, 5)});
    QImage image;
    REQUIRE(image.loadFromData(paperPng(sheet)));
    bool grey = true;
    for (int y = 0; y < image.height(); y += 2)
        for (int x = 0; x < image.width(); x += 2) {
            const QColor colour = image.pixelColor(x, y);
            grey = grey && colour.alpha() == 255 && std::abs(colour.red() - colour.blue()) < 3 &&
                   std::abs(colour.red() - colour.green()) < 3;
        }
    CHECK(grey);
    CHECK(image.pixelColor(2, 2) == QColor(Qt::white));
}

TEST_CASE("a PDF has as many pages as the ladders need, a picture has them below each other, ten at most") {
    const PaperSheet sheet = sheetOf({ladder(60, 5)}, PaperSize::letter);
    const auto pages = static_cast<int>(layOutPaper(sheet.ladders, sheet.paper).pages.size());
    CHECK(pages == 2);
    CHECK(paperPdf(sheet).count("/Type /Page\n") == pages);
    QImage image;
    REQUIRE(image.loadFromData(paperPng(sheet)));
    CHECK(image.size() == QSize(816, 1056 * pages) * 2);
    CHECK(paperSvg(sheet).contains("viewBox=\"0 0 816 2112\""));
    const PaperSheet long_ = sheetOf({ladder(391, 100)});
    CHECK(paperPng(long_).isEmpty());
    CHECK(paperSvg(long_).isEmpty());
    CHECK(paperPdf(long_).startsWith("%PDF"));
}

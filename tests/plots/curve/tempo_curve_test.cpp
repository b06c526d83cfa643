// SPDX-License-Identifier: GPL-3.0-or-later
#include "plots/curve/tempo_curve.h"

#include "../recorder.h"
#include "../records.h"
#include "plots/curve/curve_layout.h"
#include "plots/plot_file.h"

#include <QDir>
#include <QFile>
#include <QImage>
#include <QPainter>
#include <QSvgRenderer>

#include <doctest/doctest.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <random>

using namespace piolo;
using namespace piolo::plots;

namespace {

const CurveView view{{2026, 4, 18}, 14};
constexpr std::array<QSize, 4> sizes{QSize(280, 200), QSize(340, 280), QSize(640, 360), QSize(1200, 600)};

PassageRecord twoDays() {
    PassageRecord record = freshRecord();
    play(record, 16, "ccccmccccccm");
    play(record, 18, "ccmccccccvcctm");
    return record;
}

/// The runs of a player who gets worse as the tempo rises.
PassageRecord manyDays(int runsADay, unsigned seed) {
    PassageRecord record = freshRecord();
    std::mt19937 random(seed);
    for (int day = 1; day <= 18; ++day)
        for (int run = 0; run < runsADay; ++run) {
            const auto chance = std::clamp(1200 - record.standing.tempo.thousandths() / 200, 100, 980);
            play(record, day, static_cast<int>(random() % 1000) < chance ? "c" : "m");
        }
    return record;
}

Shapes shapesOf(const PassageRecord& record, QSize size, const CurveView& seen = view) {
    needFonts();
    Recorder recorder(size);
    QPainter painter(&recorder);
    drawTempoCurve(painter, size, record, seen, lightCurveStyle());
    painter.end();
    return recorder.shapes();
}

QByteArray png(const PassageRecord& record, QSize size, const CurveStyle& style,
               const CurveView& seen = view) {
    needFonts();
    return pngBytes(size, 1, [&](QPainter& painter) { drawTempoCurve(painter, size, record, seen, style); });
}

int pixelsOf(const QImage& image, const QColor& colour) {
    int count = 0;
    for (int y = 0; y < image.height(); ++y)
        for (int x = 0; x < image.width(); ++x) count += image.pixelColor(x, y) == colour;
    return count;
}

std::vector<QRectF> labelsOf(const CurveLayout& layout) {
    std::vector<QRectF> boxes{layout.targetLabel.box};
    for (const CurveLabel& label : layout.tempi) boxes.push_back(label.box);
    for (const CurveLabel& label : layout.dates) boxes.push_back(label.box);
    return boxes;
}

} // namespace

TEST_CASE("each miss is a triangle that points down") {
    const Shapes shapes = shapesOf(twoDays(), QSize(640, 360));
    REQUIRE(shapes.polygons.size() == 4);
    for (const QPolygonF& triangle : shapes.polygons) {
        REQUIRE(triangle.size() == 3);
        CHECK(triangle[0].y() > triangle[1].y());
        CHECK(triangle[1].y() == triangle[2].y());
        CHECK(triangle[1].x() < triangle[0].x());
        CHECK(triangle[0].x() < triangle[2].x());
    }
}

TEST_CASE("the target is the one dashed line, named with its number") {
    const Shapes shapes = shapesOf(twoDays(), QSize(640, 360));
    std::vector<QLineF> dashed;
    for (const DrawnLine& drawn : shapes.lines)
        if (drawn.style != Qt::SolidLine) dashed.push_back(drawn.line);
    REQUIRE(dashed.size() == 1);
    CHECK(dashed.front().dy() == 0);
    CHECK(dashed.front().dx() > 500);
    CHECK(shapes.words.contains("target 96"));
}

TEST_CASE("days are separated by a vertical line and labelled with their dates") {
    const Shapes shapes = shapesOf(twoDays(), QSize(640, 360));
    const auto upright = std::count_if(shapes.lines.begin(), shapes.lines.end(),
                                       [](const DrawnLine& drawn) { return drawn.line.dx() == 0; });
    CHECK(upright == 1);
    CHECK(shapes.words.contains("16 Apr"));
    CHECK(shapes.words.contains("18 Apr"));
}

TEST_CASE("a faster run is drawn higher, and the line ends at the current tempo") {
    needFonts();
    const PassageRecord record = twoDays();
    const CurveSteps steps = stepsOf(record, view);
    const CurveLayout layout = layOut(steps, QSize(640, 360), lightCurveStyle());
    REQUIRE(layout.line.size() >= 2 * static_cast<int>(steps.steps.size()));
    CHECK(layout.line[8].y() < layout.line[0].y());
    CHECK(layout.line[0].y() == layout.line[1].y());
    CHECK(layout.target.y1() < layout.line[8].y());
    CHECK(layout.line.back().y() > layout.line[layout.line.size() - 2].y());
}

TEST_CASE("no two labels touch, and all are inside the picture") {
    needFonts();
    for (const QSize size : sizes) {
        for (const int runs : {1, 7, 40}) {
            for (const int days : {1, 3, 14, 0}) {
                CAPTURE(size.width());
                CAPTURE(runs);
                CAPTURE(days);
                const CurveSteps steps = stepsOf(manyDays(runs, 7), {{2026, 4, 18}, days});
                const auto boxes = labelsOf(layOut(steps, size, lightCurveStyle()));
                for (std::size_t i = 0; i < boxes.size(); ++i) {
                    CHECK(QRectF({0, 0}, size).contains(boxes[i]));
                    for (std::size_t j = 0; j < i; ++j) CHECK_FALSE(boxes[i].intersects(boxes[j]));
                }
            }
        }
    }
}

TEST_CASE("the newest day always has a label") {
    needFonts();
    for (const QSize size : sizes) {
        const CurveSteps steps = stepsOf(manyDays(40, 3), {{2026, 4, 18}, 0});
        const CurveLayout layout = layOut(steps, size, lightCurveStyle());
        REQUIRE_FALSE(layout.dates.empty());
        CHECK(layout.dates.front().text == "18 Apr");
    }
}

TEST_CASE("thousands of runs are thinned to pixel columns and keep their highest and lowest") {
    needFonts();
    const QSize size(280, 200);
    const CurveSteps steps = stepsOf(manyDays(300, 11), {{2026, 4, 18}, 0});
    REQUIRE(steps.steps.size() == 5400);
    const CurveLayout layout = layOut(steps, size, lightCurveStyle());
    CHECK(layout.line.size() <= 4 * (size.width() + 1));
    const double cells =
        layout.frame.width() * (layout.frame.height() + 20) / (0.49 * layout.markSize * layout.markSize);
    CHECK(static_cast<double>(layout.marks.size()) <= cells);
    const auto byBpm = [](const CurveStep& a, const CurveStep& b) { return a.bpm < b.bpm; };
    const auto [lowest, highest] = std::minmax_element(steps.steps.begin(), steps.steps.end(), byBpm);
    const CurveScale scale = scaleOf(steps, 7);
    CHECK(scale.low <= lowest->bpm);
    const QRectF bounds = layout.line.boundingRect();
    const double span = (highest->bpm - lowest->bpm) / bounds.height();
    const double whole = (steps.target - lowest->bpm) / (bounds.bottom() - layout.target.y1());
    CHECK(span == doctest::Approx(whole));
}

TEST_CASE("one run is a short step with its end, not a line across the picture") {
    PassageRecord record = freshRecord();
    play(record, 18, "c");
    const Shapes shapes = shapesOf(record, QSize(640, 360));
    REQUIRE(shapes.polylines.size() == 1);
    CHECK(shapes.polylines.front().boundingRect().width() < 64);
    CHECK(shapes.ellipses.size() == 1);
    CHECK(shapes.polygons.empty());
}

TEST_CASE("with no runs, the text says so and nothing else is drawn") {
    const Shapes shapes = shapesOf(freshRecord(), QSize(640, 360));
    CHECK(shapes.words.contains("Nothing played yet"));
    CHECK(shapes.lines.empty());
    CHECK(shapes.polylines.empty());
}

TEST_CASE("a clean try is an open circle of its own") {
    PassageRecord record = freshRecord();
    play(record, 18, "ct");
    CHECK(shapesOf(record, QSize(640, 360)).ellipses.size() == 2);
}

TEST_CASE("the same input gives the same picture, and another input another") {
    const PassageRecord record = twoDays();
    PassageRecord other = record;
    play(other, 18, "m");
    for (const QSize size : sizes) {
        CHECK(png(record, size, lightCurveStyle()) == png(record, size, lightCurveStyle()));
        CHECK(png(record, size, lightCurveStyle()) != png(other, size, lightCurveStyle()));
    }
}

TEST_CASE("light and dark differ in colour and in nothing else") {
    const QImage light = QImage::fromData(png(twoDays(), sizes[1], lightCurveStyle()));
    const QImage dark = QImage::fromData(png(twoDays(), sizes[1], darkCurveStyle()));
    CHECK(light.pixelColor(1, 1) == lightCurveStyle().paper);
    CHECK(dark.pixelColor(1, 1) == darkCurveStyle().paper);
    CHECK(pixelsOf(light, lightCurveStyle().miss) > 20);
    CHECK(pixelsOf(light, lightCurveStyle().miss) == pixelsOf(dark, darkCurveStyle().miss));
}

TEST_CASE("text and line stand out from the paper in both styles") {
    // WCAG 2.1, 1.4.3 (text, 4.5 to 1) and 1.4.11 (graphics, 3 to 1); its formula for relative luminance,
    // from memory.
    const auto luminance = [](const QColor& colour) {
        const auto part = [](float value) {
            return value <= 0.03928F ? value / 12.92F : std::pow((value + 0.055F) / 1.055F, 2.4F);
        };
        return 0.2126F * part(colour.redF()) + 0.7152F * part(colour.greenF()) +
               0.0722F * part(colour.blueF());
    };
    const auto contrast = [&](const QColor& a, const QColor& b) {
        const float high = std::max(luminance(a), luminance(b));
        const float low = std::min(luminance(a), luminance(b));
        return (high + 0.05F) / (low + 0.05F);
    };
    for (const CurveStyle& style : {lightCurveStyle(), darkCurveStyle()}) {
        CHECK(contrast(style.faint, style.paper) >= 4.5F);
        CHECK(contrast(style.ink, style.paper) >= 4.5F);
        CHECK(contrast(style.line, style.paper) >= 3.0F);
        CHECK(contrast(style.miss, style.paper) >= 3.0F);
    }
}

TEST_CASE("the file in SVG is the picture in PNG") {
    needFonts();
    const QSize size(640, 360);
    const PassageRecord record = twoDays();
    const Drawing drawing = [&](QPainter& painter) {
        drawTempoCurve(painter, size, record, view, lightCurveStyle());
    };
    const QByteArray svg = svgBytes(size, "Bars 41–44 <II> & more", drawing);
    QSvgRenderer renderer(svg);
    REQUIRE(renderer.isValid());
    CHECK(renderer.viewBoxF() == QRectF({0, 0}, size));
    CHECK(svg.contains("target 96"));
    QImage drawn(size, QImage::Format_ARGB32_Premultiplied);
    QPainter painter(&drawn);
    renderer.render(&painter);
    painter.end();
    const QImage direct = QImage::fromData(pngBytes(size, 1, drawing));
    CHECK(direct.size() == size);
    for (const QColor& colour : {lightCurveStyle().line, lightCurveStyle().miss}) {
        const int wanted = pixelsOf(direct, colour);
        REQUIRE(wanted > 20);
        CHECK(pixelsOf(drawn, colour) > wanted * 8 / 10);
        CHECK(pixelsOf(drawn, colour) < wanted * 12 / 10);
    }
}

TEST_CASE("a picture for a high-resolution screen has more pixels of the same drawing") {
    needFonts();
    const QImage image = QImage::fromData(pngBytes(QSize(280, 200), 2, [](QPainter& painter) {
        drawTempoCurve(painter, QSize(280, 200), twoDays(), view, lightCurveStyle());
    }));
    CHECK(image.size() == QSize(560, 400));
    CHECK(pixelsOf(image, lightCurveStyle().line) > 100);
}

TEST_CASE("pictures for viewing are saved in the build folder") {
    const QDir folder(QString(PIOLO_BUILD_DIR) + "/pictures");
    REQUIRE(QDir().mkpath(folder.path()));
    const auto keep = [&](const QString& name, const QByteArray& bytes) {
        QFile file(folder.filePath("curve-" + name + ".png"));
        REQUIRE(file.open(QIODevice::WriteOnly));
        CHECK(file.write(bytes) > 500);
    };
    const CurveView all{{2026, 4, 18}, 0};
    for (const QSize size : sizes) {
        const QString width = QString::number(size.width());
        keep("few-" + width, png(twoDays(), size, lightCurveStyle()));
        keep("many-" + width, png(manyDays(12, 5), size, darkCurveStyle()));
        keep("crowded-" + width, png(manyDays(120, 5), size, lightCurveStyle(), all));
    }
    keep("empty-280", png(freshRecord(), sizes[0], lightCurveStyle()));
    PassageRecord one = freshRecord();
    play(one, 18, "m");
    keep("one-340", png(one, sizes[1], lightCurveStyle()));
}

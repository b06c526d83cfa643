// SPDX-License-Identifier: GPL-3.0-or-later
#include "plots/curve/curves_plot.h"

#include "../recorder.h"
#include "../records.h"
#include "plots/curve/curves_ticks.h"
#include "plots/plot_file.h"

#include <QPainter>

#include <doctest/doctest.h>

#include <map>
#include <random>

using namespace piolo;
using namespace piolo::plots;

namespace {

constexpr QSizeF size{800, 320};

CurveSeries seriesNamed(const PassageRecord& record, CurveBy by, const char* name) {
    CurveSeries series = seriesOf(record, by);
    series.name = QString::fromLatin1(name);
    return series;
}

/// Two passages played on three days of April 2026.
std::vector<CurveSeries> two(CurveBy by) {
    PassageRecord coda = freshRecord();
    play(coda, 14, "cccc");
    play(coda, 15, "mm");
    play(coda, 18, "cccccc");
    PassageRecord trio = freshRecord();
    play(trio, 14, "cc");
    play(trio, 18, "ccm");
    return {seriesNamed(coda, by, "coda"), seriesNamed(trio, by, "trio")};
}

CurvesLayout laidOut(const std::vector<CurveSeries>& series, const CurvesView& view) {
    needFonts();
    return layOutCurves(series, view, size, lightCurveStyle());
}

CurvesLayout laidOut(const std::vector<CurveSeries>& series) {
    return laidOut(series, wholeView(series, {2026, 4, 18}));
}

/// The runs of a player who gets worse as the tempo rises, all on one day.
PassageRecord manyRuns(int runs, unsigned seed) {
    PassageRecord record = freshRecord();
    std::mt19937 random(seed);
    for (int run = 0; run < runs; ++run) {
        const auto chance = std::clamp(1200 - record.standing.tempo.thousandths() / 200, 100, 980);
        play(record, 18, static_cast<int>(random() % 1000) < chance ? "c" : "m");
    }
    return record;
}

int mostInAColumn(const QPolygonF& path) {
    std::map<int, int> columns;
    int most = 0;
    for (const QPointF& point : path)
        most = std::max(most, ++columns[static_cast<int>(std::floor(point.x()))]);
    return most;
}

} // namespace

TEST_CASE("by days, each day with a run is one point, at the tempo of its end") {
    const auto series = two(CurveBy::days).front();
    REQUIRE(series.points.size() == 3);
    CHECK(series.points[0].bpm == 64); // four clean runs: two climbs of 2 from 60
    CHECK(series.points[1].bpm == 56); // two misses: two drops of 4
    CHECK(series.points[2].bpm == 62);
    CHECK(series.points[2].x - series.points[0].x == 4);
    CHECK(series.points[1].mark == StepMark::miss); // no clean run
    CHECK(series.points[0].mark == StepMark::none);
    CHECK(series.points[0].clean == 4);
    CHECK(series.points[1].runs == 2);
}

TEST_CASE("by runs, each run is one point, except void ones; a try is at the tempo it left unchanged") {
    PassageRecord record = freshRecord();
    play(record, 18, "cvmt");
    const CurveSeries series = seriesOf(record, CurveBy::runs);
    REQUIRE(series.points.size() == 3);
    CHECK(series.points[1].mark == StepMark::miss);
    CHECK(series.points[1].x == 1);
    CHECK(series.points[2].mark == StepMark::cleanTry);
    CHECK(series.points[2].bpm == 56);
}

TEST_CASE("a full streak is secure at the target, not below it, and not below a raised target") {
    PassageRecord record = freshRecord();
    set(record, 18, Tempo::bpm(94));
    play(record, 18, "cc");
    record.entries.list().back().fullStreak = true; // climbs to 96
    play(record, 18, "cc");
    record.entries.list().back().fullStreak = true;
    const CurveSeries series = seriesOf(record, CurveBy::runs);
    CHECK(!series.points[1].secure);
    CHECK(series.points[3].secure);
    record.passage.tempi.rule.target = Tempo::bpm(98);
    CHECK(!seriesOf(record, CurveBy::runs).points[3].secure);
}

TEST_CASE("100,000 runs are laid out with at most four points per pixel column, in whole or in part") {
    const std::vector series{seriesOf(manyRuns(100'000, 7), CurveBy::runs)};
    for (const double part : {1.0, 0.31, 0.02}) {
        const CurvesLayout layout = laidOut(series, {0, 100'000 * part});
        CAPTURE(part);
        CHECK(mostInAColumn(layout.lines[0].path) <= 4);
        CHECK(layout.lines[0].path.size() <= 4 * (layout.frame.width() + 3));
        CHECK(layout.lines[0].marks.size() < 4'000); // marks that would hide each other are drawn once
    }
}

TEST_CASE("a view reads no points outside it except one on either side") {
    const std::vector series{seriesOf(manyRuns(1'000, 7), CurveBy::runs)};
    const PointRange seen = pointsBetween(series[0], 500, 509);
    CHECK(seen.first == 499);
    CHECK(seen.end == 511);
    CHECK(pointsBetween(series[0], -20, -10).end <= 1);
    CHECK(pointsBetween(series[0], 5'000, 6'000).first == 999);
}

TEST_CASE("no two names at the ends of lines touch, and each is nearest to its own line") {
    std::vector<CurveSeries> series;
    for (const char* name : {"one", "two", "three", "four"}) {
        PassageRecord record = freshRecord();
        play(record, 14, "cccc");
        play(record, 18, "c");
        series.push_back(seriesNamed(record, CurveBy::days, name)); // all end at the same tempo
    }
    const CurvesLayout layout = laidOut(series);
    for (std::size_t a = 0; a < 4; ++a) {
        CHECK(layout.lines[a].label.text == series[a].name);
        CHECK(layout.lines[a].label.box.bottom() <= size.height());
        for (std::size_t b = a + 1; b < 4; ++b)
            CHECK(!layout.lines[a].label.box.intersects(layout.lines[b].label.box));
    }
}

TEST_CASE("the whole view goes from the first point to today, or to a point beyond it") {
    const std::vector<CurveSeries> series = two(CurveBy::days);
    const auto first = static_cast<double>(Date{2026, 4, 14}.daysSince1970());
    CHECK(wholeView(series, {2026, 4, 20}) == CurvesView{first, first + 6});
    CHECK(wholeView(series, {2026, 3, 1}) == CurvesView{first, first + 4});
    CHECK(wholeView({}, {2026, 4, 20}).from < wholeView({}, {2026, 4, 20}).to);
}

TEST_CASE("a due date that is near is a vertical line with a name, drawn once for each piece") {
    std::vector<CurveSeries> series = two(CurveBy::days);
    for (CurveSeries& one : series) one.due = Date{2026, 4, 20};
    const CurvesLayout layout = laidOut(series);
    REQUIRE(layout.dues.size() == 1);
    CHECK(layout.dues[0].dx() == 0);
    CHECK(layout.frame.contains(layout.dues[0].center()));
    REQUIRE(layout.dueLabels.size() == 1);
    CHECK(layout.dueLabels[0].text == "due");
}

TEST_CASE("a due date that is far leaves the picture to what was played, and is named at its edge") {
    std::vector<CurveSeries> series = two(CurveBy::days);
    const CurvesView played = wholeView(series, {2026, 4, 18});
    series[0].due = Date{2027, 5, 2};
    series[1].due = Date{2026, 5, 2};
    CHECK(wholeView(series, {2026, 4, 18}) == played);
    const CurvesLayout layout = laidOut(series);
    CHECK(layout.dues.empty());
    REQUIRE(layout.dueLabels.size() == 1);
    CHECK(layout.dueLabels[0].text == "due 2 May →");
    CHECK(layout.dueLabels[0].box.right() <= layout.frame.right() + 0.5);
    series.resize(1);
    CHECK(laidOut(series).dueLabels[0].text == "due 2 May 2027 →");
    // After forty days of practice, two weeks are near.
    const auto last = series[0].points.back().x;
    series[0].points.front().x = last - 40;
    series[0].due = Date::fromDaysSince1970(static_cast<std::int64_t>(last) + 10);
    CHECK(laidOut(series).dues.size() == 1);
}

TEST_CASE("a target that is far above what was played is named at the edge and has no line") {
    std::vector<CurveSeries> series{two(CurveBy::days)[0]};
    for (SeriesPoint& point : series[0].points) point.bpm = 60;
    series[0].target = 132;
    const CurvesLayout layout = laidOut(series);
    CHECK(layout.scale.high < 132);
    CHECK(layout.lines[0].target.isNull());
    CHECK(layout.targetLabel.text == "target 132 ↑");
    CHECK(layout.frame.contains(layout.targetLabel.box));
    series[0].target = 69;
    CHECK(laidOut(series).targetLabel.text == "target 69");
    series[0].target = 40; // lowered after it was played
    CHECK(laidOut(series).targetLabel.text == "target 40 ↓");
}

TEST_CASE("a single passage has its target across the sheet with a name; several have a short line each") {
    const std::vector<CurveSeries> both = two(CurveBy::days);
    const CurvesLayout alone = laidOut({both[0]});
    CHECK(alone.targetLabel.text == "target 96");
    CHECK(alone.lines[0].target.length() > 0.9 * alone.frame.width());
    const CurvesLayout several = laidOut(both);
    CHECK(several.targetLabel.text == "");
    CHECK(several.lines[1].target.length() < 40);
    CHECK(several.frame.contains(several.lines[1].target.center()));
}

TEST_CASE("the point nearest to a position is found, and none if none is near") {
    const std::vector<CurveSeries> series = two(CurveBy::days);
    const CurvesLayout layout = laidOut(series);
    const QPointF at = layout.at(series[0].points[1]);
    const auto found = pointNear(series, layout, at + QPointF(3, 2), 24);
    REQUIRE(found.has_value());
    CHECK(*found == CurvesPoint{0, 1});
    const QPointF between = (layout.at(series[0].points[1]) + layout.at(series[0].points[2])) / 2;
    CHECK(!pointNear(series, layout, between, 24).has_value());
}

TEST_CASE("every line, mark and name is drawn; the pointed one has a ring") {
    const std::vector<CurveSeries> series = two(CurveBy::runs);
    const CurvesLayout layout = laidOut(series);
    Recorder recorder(size.toSize());
    QPainter painter(&recorder);
    drawCurves(painter, size, layout, lightCurveStyle(), layout.at(series[0].points[2]));
    painter.end();
    const Shapes& shapes = recorder.shapes();
    CHECK(shapes.words.contains("coda"));
    CHECK(shapes.words.contains("trio"));
    CHECK(shapes.polygons.size() == 3); // three misses
    CHECK(shapes.ellipses.size() == 3); // two ends and the ring
    CHECK(shapes.polylines.size() >= 2);
}

TEST_CASE("dates are a round number of days apart, runs have round numbers counted from 1") {
    const auto day = static_cast<double>(Date{2026, 4, 1}.daysSince1970());
    const auto dates = curvesTicks(CurveBy::days, day, day + 28, 5, QLocale::c());
    REQUIRE(dates.size() == 5);
    CHECK(dates.back().text == "29 Apr");
    CHECK(dates.front().text == "1 Apr");
    CHECK(dates[1].x - dates[0].x == 7);
    CHECK(curvesTicks(CurveBy::days, day, day + 400, 4, QLocale::c()).back().text == "6 May 2027");
    const auto runs = curvesTicks(CurveBy::runs, 0, 999, 6, QLocale::c());
    REQUIRE(runs.size() == 5);
    CHECK(runs[0].x == 199);
    CHECK(runs[0].text == "200");
    CHECK(runs[4].text == "1000");
}

TEST_CASE("a PDF has one page of the picture's size at 96 pixels per inch") {
    needFonts();
    const auto series = two(CurveBy::days);
    const CurvesLayout layout = laidOut(series);
    const QByteArray pdf = pdfBytes(size.toSize(), "coda", [&](QPainter& painter) {
        drawCurves(painter, size, layout, lightCurveStyle());
    });
    CHECK(pdf.startsWith("%PDF-"));
    CHECK(pdf.trimmed().endsWith("%%EOF"));
    // ISO 32000-1, 7.7.3.3: MediaBox in points of 1/72 inch. 800 × 320 pixels are 600 × 240 points.
    CHECK(pdf.contains("/MediaBox [0 0 600.000000 240.000000]"));
    CHECK(pdf.count("/Type /Page\n") == 1);
}

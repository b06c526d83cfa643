// SPDX-License-Identifier: GPL-3.0-or-later
#include "plots/staff/staff_layout.h"

#include "../records.h"
#include "plots/staff/staff_pitch.h"
#include "staff_passages.h"

#include <QPainterPath>

#include <doctest/doctest.h>

#include <map>

using namespace piolo;
using namespace piolo::plots;

namespace {

/// A sign that nothing else may overlap.
struct Solid {
    StaffPart part;
    std::size_t event;
    QRectF box;
    std::string name;
};

QRectF shrunk(const QRectF& box) { return box.adjusted(0.07, 0.07, -0.07, -0.07); }

std::vector<Solid> solidsOf(const StaffSystem& system) {
    std::vector<Solid> solids;
    for (const StaffSign& sign : system.signs)
        solids.push_back(
            {sign.part, sign.event, shrunk(sign.box), "sign " + std::to_string(int(sign.glyph))});
    for (const StaffWord& word : system.words)
        solids.push_back({word.part, noEvent, shrunk(word.box), "word " + word.text.toStdString()});
    for (const StaffStroke& stroke : system.strokes)
        if (stroke.part != StaffPart::staffLine)
            solids.push_back({stroke.part, stroke.event, stroke.box().adjusted(0.02, 0.02, -0.02, -0.02),
                              "stroke " + std::to_string(int(stroke.part))});
    return solids;
}

/// Parts of one event that may touch: a stem and its head, a head and its ledger line.
bool belong(const Solid& a, const Solid& b) {
    if (a.event != b.event) return false;
    if (a.event == noEvent) return a.part == StaffPart::bracket && b.part == StaffPart::bracket;
    const auto isOf = [](const Solid& one, std::initializer_list<StaffPart> parts) {
        return std::find(parts.begin(), parts.end(), one.part) != parts.end();
    };
    const auto joined = {StaffPart::head, StaffPart::stem, StaffPart::ledger, StaffPart::flag};
    return isOf(a, joined) && isOf(b, joined) && !(a.part == StaffPart::head && b.part == StaffPart::head);
}

void checkApart(const StaffSystem& system) {
    const std::vector<Solid> solids = solidsOf(system);
    for (std::size_t i = 0; i < solids.size(); ++i)
        for (std::size_t j = i + 1; j < solids.size(); ++j)
            if (!belong(solids[i], solids[j]) && solids[i].box.intersects(solids[j].box)) {
                CAPTURE(solids[i].name);
                CAPTURE(solids[j].name);
                CAPTURE(solids[i].event);
                CAPTURE(solids[j].event);
                REQUIRE_FALSE("two signs lie on each other");
            }
}

/// No head, accidental, number or rest is under a beam.
void checkBeams(const StaffSystem& system) {
    for (const StaffBeamShape& beam : system.beams) {
        QPainterPath shape;
        shape.addPolygon(beam.shape);
        for (const StaffSign& sign : system.signs)
            if (sign.part != StaffPart::flag && shape.intersects(shrunk(sign.box))) {
                CAPTURE(int(sign.part));
                CAPTURE(sign.event);
                REQUIRE_FALSE("a sign lies under a beam");
            }
        for (const StaffWord& word : system.words) REQUIRE_FALSE(shape.intersects(shrunk(word.box)));
    }
}

/// No tie or slur crosses a head, an accidental or a number.
void checkArcs(const StaffSystem& system) {
    for (const StaffArc& arc : system.arcs) {
        QPainterPath path(arc.from);
        path.cubicTo(arc.over, arc.back, arc.to);
        for (int i = 0; i <= 40; ++i) {
            const QPointF at = path.pointAtPercent(i / 40.0);
            for (const StaffSign& sign : system.signs)
                if (sign.part == StaffPart::head ||
                    (arc.part == StaffPart::slur && sign.part != StaffPart::flag))
                    REQUIRE_FALSE(shrunk(sign.box).contains(at));
            for (const StaffWord& word : system.words) REQUIRE_FALSE(shrunk(word.box).contains(at));
        }
    }
}

void checkInside(const StaffLayout& layout) {
    const double right = layout.width - 2 * StaffLayout::margin + 1e-6;
    double above = 0;
    for (const StaffSystem& system : layout.systems) {
        for (const Solid& solid : solidsOf(system)) {
            REQUIRE(solid.box.left() >= -1e-6);
            REQUIRE(solid.box.right() <= right);
            REQUIRE(system.extent.top() <= solid.box.top());
            REQUIRE(system.extent.bottom() >= solid.box.bottom());
        }
        REQUIRE(system.staffTop + system.extent.top() > above);
        above = system.staffTop + system.extent.bottom();
    }
    REQUIRE(above < layout.height);
}

void checkOnce(const StaffMusic& music, const StaffLayout& layout) {
    std::map<std::size_t, std::size_t> heads, wanted;
    for (const StaffEvent& event : layout.rhythm.events)
        for (const std::size_t note : event.notes) ++wanted[note];
    for (const StaffSystem& system : layout.systems)
        for (const StaffSign& sign : system.signs)
            if (sign.part == StaffPart::head) {
                ++heads[sign.note];
                const int position = staffPosition(music.notes[sign.note].written, music.clef);
                REQUIRE(sign.at.y() == doctest::Approx(4 - position / 2.0));
            }
    REQUIRE(heads.size() == music.notes.size());
    REQUIRE(heads == wanted);
}

/// As many ledger lines as the outermost heads need, above and below.
void checkLedgers(const StaffMusic& music, const StaffLayout& layout) {
    std::map<std::size_t, int> lines;
    for (const StaffSystem& system : layout.systems)
        for (const StaffStroke& stroke : system.strokes)
            if (stroke.part == StaffPart::ledger) ++lines[stroke.event];
    for (std::size_t i = 0; i < layout.rhythm.events.size(); ++i) {
        int above = 0;
        int below = 0;
        for (const std::size_t note : layout.rhythm.events[i].notes) {
            const int position = staffPosition(music.notes[note].written, music.clef);
            above = std::max(above, (position - 8) / 2);
            below = std::max(below, -position / 2);
        }
        REQUIRE(lines[i] == above + below);
    }
}

void checkAll(const StaffMusic& music, double width, const StaffGlyphs& glyphs) {
    const StaffLayout layout = layOutStaff(music, width, 10, glyphs);
    for (const StaffSystem& system : layout.systems) {
        checkApart(system);
        checkBeams(system);
        checkArcs(system);
    }
    checkInside(layout);
    checkOnce(music, layout);
    checkLedgers(music, layout);
}

} // namespace

TEST_CASE("in every key, clef and subdivision nothing collides and nothing is clipped") {
    needFonts();
    const StaffGlyphs glyphs;
    for (const Clef clef : {Clef::treble, Clef::bass})
        for (int fifths = -7; fifths <= 7; ++fifths)
            for (int pulses = 1; pulses <= 8; ++pulses) {
                CAPTURE(int(clef));
                CAPTURE(fifths);
                CAPTURE(pulses);
                for (const double width : {500.0, 900.0, 1500.0})
                    checkAll(evenScale(clef, fifths, pulses), width, glyphs);
            }
}

TEST_CASE("nor in any passage, from E1 to C8") {
    needFonts();
    const StaffGlyphs glyphs;
    const unsigned seed = 20260417;
    CAPTURE(seed);
    std::mt19937 random(seed);
    for (int round = 0; round < 400; ++round) {
        CAPTURE(round);
        checkAll(randomPassage(random), 600 + 100.0 * (round % 9), glyphs);
    }
}

TEST_CASE("nor with shapes of our own, where no music font is installed") {
    needFonts();
    const StaffGlyphs glyphs = StaffGlyphs::ownShapes();
    CHECK_FALSE(glyphs.fromFont());
    std::mt19937 random(20260418);
    for (int round = 0; round < 150; ++round) {
        CAPTURE(round);
        checkAll(randomPassage(random), 900, glyphs);
    }
}

TEST_CASE("the music font is installed and has every sign") {
    needFonts();
    CHECK(StaffGlyphs::usual().fromFont());
    for (std::size_t i = 0; i < staffGlyphs; ++i)
        CHECK_FALSE(StaffGlyphs::usual().box(static_cast<StaffGlyph>(i)).isEmpty());
}

TEST_CASE("a bar that is wider than the page makes the staff smaller, not cut") {
    needFonts();
    const StaffLayout layout = layOutStaff(evenScale(Clef::treble, 7, 8), 260, 10, StaffGlyphs::usual());
    CHECK(layout.space < 10);
    CHECK(layout.width * layout.space == doctest::Approx(260));
    checkInside(layout);
}

TEST_CASE("systems are filled to their width, and later ones number their first bar") {
    needFonts();
    StaffMusic music = evenScale(Clef::treble, 2, 4);
    music.music.firstBar = 41;
    const StaffLayout layout = layOutStaff(music, 420, 10, StaffGlyphs::usual());
    REQUIRE(layout.systems.size() >= 2);
    const double room = layout.width - 2 * StaffLayout::margin;
    CHECK(layout.systems[0].bars.back().right == doctest::Approx(room).epsilon(0.001));
    const auto hasNumber = [&](std::size_t system, const char* text) {
        const auto& words = layout.systems[system].words;
        return std::any_of(words.begin(), words.end(), [&](const StaffWord& word) {
            return word.part == StaffPart::barNumber && word.text == QLatin1String(text);
        });
    };
    CHECK(hasNumber(0, "41"));
    CHECK(hasNumber(1, "42"));
    CHECK(layout.systemOf(1) == 1);
    CHECK(layout.unevenness() >= 1);
    CHECK(layOutStaff(music, 4000, 10, StaffGlyphs::usual()).unevenness() == doctest::Approx(1));
}

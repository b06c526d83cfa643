// SPDX-License-Identifier: GPL-3.0-or-later
// Where every sign of a passage goes, before anything is drawn.
#pragma once

#include "plots/staff/staff_glyphs.h"
#include "plots/staff/staff_rhythm.h"

#include <QLineF>
#include <QPointF>
#include <QPolygonF>
#include <QString>

#include <cstddef>
#include <limits>
#include <optional>
#include <vector>

namespace piolo::plots {

enum class StaffPart : std::uint8_t {
    clef,
    signature,
    meter,
    barNumber,
    head,
    accidental,
    dot,
    rest,
    flag,
    articulation,
    tupletNumber,
    bracket,
    staffLine,
    barLine,
    stem,
    ledger,
    tie,
    slur
};

inline constexpr std::size_t noEvent = std::numeric_limits<std::size_t>::max();

struct StaffSign {
    StaffPart part = StaffPart::head;
    StaffGlyph glyph = StaffGlyph::blackHead;
    QPointF at;                  ///< of the glyph's own 0,0
    bool turned = false;         ///< upside down
    std::size_t event = noEvent; ///< of the rhythm
    std::size_t note = noEvent;  ///< of the music, for heads and accidentals
    QRectF box{};
};
struct StaffWord {
    StaffPart part = StaffPart::meter;
    QString text;
    double height = 1; ///< of its digits
    QRectF box{};
};
struct StaffStroke {
    StaffPart part = StaffPart::stem;
    QLineF line;
    double width = 0.12;
    std::size_t event = noEvent;

    [[nodiscard]] QRectF box() const;
};
/// One beam; a group may have several.
struct StaffBeamShape {
    QPolygonF shape;
    std::size_t beam = 0; ///< of the rhythm
};
/// A tie or slur: a cubic curve, thicker in the middle.
struct StaffArc {
    StaffPart part = StaffPart::tie;
    QPointF from, over, back, to; ///< the ends, and the two control points
};
struct StaffBarSpan {
    std::size_t bar = 0; ///< of the rhythm
    double left = 0;
    double right = 0;
};

/// y = 0 is the highest line of the staff, 4 the lowest; its lines begin at x = 0.
struct StaffSystem {
    double staffTop = 0; ///< the picture's y for y = 0; x = 0 is at StaffLayout::margin
    QRectF extent;       ///< of everything in the system
    double stretch = 0;  ///< the room given to a quarter note
    std::vector<StaffBarSpan> bars;
    std::vector<StaffSign> signs;
    std::vector<StaffWord> words;
    std::vector<StaffStroke> strokes;
    std::vector<StaffBeamShape> beams;
    std::vector<StaffArc> arcs;
};

/// All lengths are in staff spaces except `space` itself.
struct StaffLayout {
    static constexpr double margin = 0.5; ///< around the whole picture

    double space = 8; ///< device-independent pixels per staff space
    double width = 0;
    double height = 0;
    StaffRhythm rhythm;
    std::vector<StaffSystem> systems;

    /// The system that contains this bar of the rhythm.
    [[nodiscard]] std::size_t systemOf(std::size_t bar) const;
    /// How much wider the same notes are in one system than in another; 1 if all systems are alike.
    [[nodiscard]] double unevenness() const;
    /// The system and box of a note's first head; nothing if the note is not drawn.
    [[nodiscard]] std::optional<std::pair<std::size_t, QRectF>> headOf(std::size_t note) const;
};

/// Breaks the music into systems of `width` pixels with staff spaces of `space` pixels, or smaller if even a
/// single bar would not fit. Each system holds as many bars as look good in it and is stretched to its width.
[[nodiscard]] StaffLayout layOutStaff(const StaffMusic& music, double width, double space,
                                      const StaffGlyphs& glyphs);

} // namespace piolo::plots

// SPDX-License-Identifier: GPL-3.0-or-later
// Where every sign of a passage stands, before anything is drawn.
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
/// One beam of however many a group has.
struct StaffBeamShape {
    QPolygonF shape;
    std::size_t beam = 0; ///< of the rhythm
};
/// A tie or slur: a cubic curve, thicker in its middle.
struct StaffArc {
    StaffPart part = StaffPart::tie;
    QPointF from, over, back, to; ///< the ends, and the two points that pull it
};
struct StaffBarPlace {
    std::size_t bar = 0; ///< of the rhythm
    double left = 0;
    double right = 0;
};

/// y = 0 is the highest line of the staff, 4 the lowest; x = 0 where its lines begin.
struct StaffSystem {
    double staffTop = 0; ///< where y = 0 lies in the picture; x = 0 lies at StaffLayout::margin
    QRectF extent;       ///< of everything in it
    double stretch = 0;  ///< the room that a quarter note has in it
    std::vector<StaffBarPlace> bars;
    std::vector<StaffSign> signs;
    std::vector<StaffWord> words;
    std::vector<StaffStroke> strokes;
    std::vector<StaffBeamShape> beams;
    std::vector<StaffArc> arcs;
};

/// All lengths in staff spaces but `space` itself.
struct StaffLayout {
    static constexpr double margin = 0.5; ///< around the whole picture

    double space = 8; ///< device-independent pixels to a staff space
    double width = 0;
    double height = 0;
    StaffRhythm rhythm;
    std::vector<StaffSystem> systems;

    /// The system and bar in which that bar of the rhythm stands.
    [[nodiscard]] std::size_t systemOf(std::size_t bar) const;
    /// How much wider the same notes stand in one system than in another: 1 when all are alike.
    [[nodiscard]] double unevenness() const;
    /// Where a note's first head stands; nothing for a note that is not drawn.
    [[nodiscard]] std::optional<std::pair<std::size_t, QRectF>> headOf(std::size_t note) const;
};

/// Breaks the music into systems of `width` pixels with staff spaces of `space` pixels, or of fewer where one
/// bar alone would not fit. As many bars to a system as stand well in it; each is filled to its width.
[[nodiscard]] StaffLayout layOutStaff(const StaffMusic& music, double width, double space,
                                      const StaffGlyphs& glyphs);

} // namespace piolo::plots

// SPDX-License-Identifier: GPL-3.0-or-later
// The signs of music notation as outlines, so that a picture does not depend on the fonts where it is viewed.
#pragma once

#include <QPainterPath>
#include <QRectF>
#include <QString>

#include <array>
#include <cstddef>
#include <cstdint>

namespace piolo::plots {

enum class StaffGlyph : std::uint8_t {
    trebleClef,
    bassClef,
    doubleFlat,
    flat,
    natural,
    sharp,
    doubleSharp,
    wholeHead,
    halfHead,
    blackHead,
    wholeRest,
    halfRest,
    quarterRest,
    eighthRest,
    sixteenthRest,
    thirtySecondRest,
    sixtyFourthRest,
    hundredTwentyEighthRest,
    eighthFlag, ///< at the end of an upward stem; flipped for a downward one
    sixteenthFlag,
    thirtySecondFlag,
    sixtyFourthFlag,
    hundredTwentyEighthFlag,
    accent,
    dot
};
inline constexpr std::size_t staffGlyphs = 25;

/// Lengths in staff spaces, y downward. Each sign begins at x = 0. Its y = 0 is the middle of a head, the
/// middle of an accidental's note, the middle line for rests, the line that a clef names, or the stem end of
/// a flag.
class StaffGlyphs {
public:
    /// Uses the music font if it is installed, otherwise simple shapes of our own. Needs a QGuiApplication.
    StaffGlyphs();
    /// Our own shapes, whether or not the font is installed.
    [[nodiscard]] static StaffGlyphs ownShapes();
    /// The glyphs for every staff, made once. Window thread.
    [[nodiscard]] static const StaffGlyphs& usual();

    /// Debian's package fonts-oflb-euterpe.
    static constexpr const char* family = "Euterpe";

    [[nodiscard]] bool fromFont() const noexcept { return fromFont_; }
    [[nodiscard]] const QPainterPath& path(StaffGlyph glyph) const { return paths_[index(glyph)]; }
    [[nodiscard]] QRectF box(StaffGlyph glyph) const { return boxes_[index(glyph)]; }
    [[nodiscard]] double width(StaffGlyph glyph) const { return box(glyph).width(); }
    /// Outlines of digits and letters, `height` tall, from x = 0 on the line y = 0.
    [[nodiscard]] static QPainterPath text(const QString& text, double height);

private:
    struct OwnShapes {};
    explicit StaffGlyphs(OwnShapes);
    static std::size_t index(StaffGlyph glyph) { return static_cast<std::size_t>(glyph); }
    void take(StaffGlyph glyph, const QPainterPath& path);
    void takeFont();

    bool fromFont_ = false;
    std::array<QPainterPath, staffGlyphs> paths_;
    std::array<QRectF, staffGlyphs> boxes_;
};

} // namespace piolo::plots

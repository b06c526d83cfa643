// SPDX-License-Identifier: GPL-3.0-or-later
#include "plots/staff/staff_glyphs.h"

#include "plots/staff/staff_shapes.h"

#include <QFont>
#include <QFontDatabase>
#include <QFontMetricsF>
#include <QRawFont>
#include <QTransform>

namespace piolo::plots {

namespace {

/// Where the font's own y = 0 is, as seen from the y = 0 used here.
enum class Anchor { space, middleLine, second, fourth, top, middle };

struct FontSign {
    StaffGlyph glyph;
    char32_t letter; // in Unicode's Musical Symbols block
    Anchor anchor;
};

constexpr FontSign fontSigns[] = {
    {StaffGlyph::trebleClef, 0x1D11E, Anchor::second},
    {StaffGlyph::bassClef, 0x1D122, Anchor::fourth},
    {StaffGlyph::doubleFlat, 0x1D12B, Anchor::space},
    {StaffGlyph::flat, 0x266D, Anchor::space},
    {StaffGlyph::natural, 0x266E, Anchor::space},
    {StaffGlyph::sharp, 0x266F, Anchor::space},
    {StaffGlyph::doubleSharp, 0x1D12A, Anchor::space},
    {StaffGlyph::wholeHead, 0x1D15D, Anchor::space},
    {StaffGlyph::halfHead, 0x1D157, Anchor::space},
    {StaffGlyph::blackHead, 0x1D158, Anchor::space},
    {StaffGlyph::quarterRest, 0x1D13D, Anchor::middleLine},
    {StaffGlyph::eighthRest, 0x1D13E, Anchor::middleLine},
    {StaffGlyph::sixteenthRest, 0x1D13F, Anchor::middleLine},
    {StaffGlyph::thirtySecondRest, 0x1D140, Anchor::middleLine},
    {StaffGlyph::sixtyFourthRest, 0x1D141, Anchor::middleLine},
    {StaffGlyph::hundredTwentyEighthRest, 0x1D142, Anchor::middleLine},
    {StaffGlyph::eighthFlag, 0x1D16E, Anchor::top},
    {StaffGlyph::sixteenthFlag, 0x1D16F, Anchor::top},
    {StaffGlyph::thirtySecondFlag, 0x1D170, Anchor::top},
    {StaffGlyph::sixtyFourthFlag, 0x1D171, Anchor::top},
    {StaffGlyph::hundredTwentyEighthFlag, 0x1D172, Anchor::top},
    {StaffGlyph::accent, 0x1D17B, Anchor::middle},
};

/// The font's staff, measured from its five-line staff sign: the middle of the lowest line, and a space.
struct FontStaff {
    double lowest = 0;
    double space = 1;
};

FontStaff staffOf(const QRectF& fiveLines) {
    constexpr double thickness = 0.12; // of a space: the sign is four spaces and one line thickness high
    const double space = fiveLines.height() / (4 + thickness);
    return {fiveLines.bottom() - thickness * space / 2, space};
}

double anchorOf(Anchor anchor, const FontStaff& staff, const QRectF& box) {
    switch (anchor) {
    case Anchor::space:
        return staff.lowest - staff.space / 2;
    case Anchor::middleLine:
        return staff.lowest - 2 * staff.space;
    case Anchor::second:
        return staff.lowest - staff.space;
    case Anchor::fourth:
        return staff.lowest - 3 * staff.space;
    case Anchor::top:
        return box.top();
    case Anchor::middle:
        break;
    }
    return box.center().y();
}

QPainterPath outline(const QRawFont& font, char32_t letter) {
    const QList<quint32> glyphs = font.glyphIndexesForString(QString::fromUcs4(&letter, 1));
    return glyphs.isEmpty() || glyphs.front() == 0 ? QPainterPath() : font.pathForGlyph(glyphs.front());
}

} // namespace

StaffGlyphs::StaffGlyphs() : StaffGlyphs(OwnShapes{}) {
    if (QFontDatabase::hasFamily(QLatin1String(family))) takeFont();
}

StaffGlyphs::StaffGlyphs(OwnShapes) {
    for (std::size_t i = 0; i < staffGlyphs; ++i) {
        const auto glyph = static_cast<StaffGlyph>(i);
        take(glyph, plainShape(glyph));
    }
}

StaffGlyphs StaffGlyphs::ownShapes() { return StaffGlyphs(OwnShapes{}); }

const StaffGlyphs& StaffGlyphs::usual() {
    static const StaffGlyphs glyphs;
    return glyphs;
}

void StaffGlyphs::take(StaffGlyph glyph, const QPainterPath& path) {
    const QRectF box = path.boundingRect();
    paths_[index(glyph)] = path.translated(-box.left(), 0);
    boxes_[index(glyph)] = box.translated(-box.left(), 0);
}

/// A font that lacks any of the signs is not used at all: shapes from two designs do not go together.
void StaffGlyphs::takeFont() {
    QFont wanted(QLatin1String(family), -1);
    wanted.setStyleStrategy(QFont::NoFontMerging);
    wanted.setHintingPreference(QFont::PreferNoHinting);
    wanted.setPixelSize(1024);
    const QRawFont font = QRawFont::fromFont(wanted);
    const QRectF lines = outline(font, 0x1D11A).boundingRect();
    if (lines.isEmpty()) return;
    const FontStaff staff = staffOf(lines);
    StaffGlyphs found = *this;
    for (const FontSign& sign : fontSigns) {
        const QPainterPath path = outline(font, sign.letter);
        if (path.isEmpty()) return;
        const double down = anchorOf(sign.anchor, staff, path.boundingRect());
        const double scale = 1 / staff.space;
        found.take(sign.glyph, QTransform().scale(scale, scale).translate(0, -down).map(path));
    }
    found.fromFont_ = true;
    *this = found;
}

QPainterPath StaffGlyphs::text(const QString& text, double height) {
    QFont font;
    font.setFamilies({QStringLiteral("Inter"), QStringLiteral("DejaVu Sans")});
    font.setWeight(QFont::DemiBold);
    font.setPixelSize(200);
    QPainterPath path;
    path.addText(0, 0, font, text);
    const double capitals = QFontMetricsF(font).capHeight();
    const double scale = height / (capitals > 0 ? capitals : 140);
    const QPainterPath scaled = QTransform().scale(scale, scale).map(path);
    return scaled.translated(-scaled.boundingRect().left(), 0);
}

} // namespace piolo::plots

// SPDX-License-Identifier: GPL-3.0-or-later
// Clef, key signature and meter.
#include "plots/staff/staff_pitch.h"
#include "plots/staff/staff_system.h"

#include <algorithm>

namespace piolo::plots {

namespace {

constexpr double headMargin = 0.4;
constexpr double afterClef = 0.7;
constexpr double betweenSigns = 0.1;
constexpr double afterPart = 0.6;
constexpr double digitHeight = 1.86;

StaffGlyph clefOf(const StaffMusic& music) {
    return music.clef == Clef::treble ? StaffGlyph::trebleClef : StaffGlyph::bassClef;
}

StaffGlyph signOf(const StaffMusic& music) { return music.fifths > 0 ? StaffGlyph::sharp : StaffGlyph::flat; }

double signatureWidth(const StaffMusic& music, const StaffGlyphs& glyphs) {
    const auto signs = static_cast<double>(signaturePositions(music.fifths, music.clef).size());
    return signs > 0 ? signs * (glyphs.width(signOf(music)) + betweenSigns) + afterPart : 0;
}

double wordWidth(int number, double height) {
    return StaffGlyphs::text(QString::number(number), height).boundingRect().width();
}

double meterWidth(const Meter& meter) {
    return std::max(wordWidth(meter.numerator(), digitHeight), wordWidth(meter.denominator(), digitHeight));
}

void addMeter(StaffDraft& draft, double left) {
    const Meter& meter = draft.scene.music.music.meter;
    const double width = meterWidth(meter);
    double top = (2 - digitHeight) / 2;
    for (const int number : {meter.numerator(), meter.denominator()}) {
        const double own = wordWidth(number, digitHeight);
        draft.add(StaffWord{StaffPart::meter, QString::number(number), digitHeight,
                            QRectF(left + (width - own) / 2, top, own, digitHeight)});
        top += 2;
    }
}

} // namespace

double headWidth(const StaffMusic& music, const StaffGlyphs& glyphs, bool first) {
    return headMargin + glyphs.width(clefOf(music)) + afterClef + signatureWidth(music, glyphs) +
           (first ? meterWidth(music.music.meter) + afterPart : 0);
}

void addHead(StaffDraft& draft, bool first) {
    const StaffMusic& music = draft.scene.music;
    const StaffGlyph clef = clefOf(music);
    double x = headMargin;
    StaffSign sign;
    sign.part = StaffPart::clef;
    sign.glyph = clef;
    sign.at = {x, music.clef == Clef::treble ? 3.0 : 1.0};
    draft.add(sign);
    x += draft.scene.glyphs.width(clef) + afterClef;
    for (const int position : signaturePositions(music.fifths, music.clef)) {
        sign.part = StaffPart::signature;
        sign.glyph = signOf(music);
        sign.at = {x, staffY(position)};
        draft.add(sign);
        x += draft.scene.glyphs.width(sign.glyph) + betweenSigns;
    }
    if (music.fifths != 0) x += afterPart;
    if (first) addMeter(draft, x);
}

} // namespace piolo::plots

// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/staff/staff_view.h"

#include "models/text/formatter.h"
#include "text/scale_words.h"

#include "core/time/fraction_sum.h"

#include <algorithm>
#include <utility>

namespace piolo::models {

namespace {

/// As spoken: "B flat 4", with the names used in each language.
QString pitchWords(WrittenPitch pitch) {
    QString name = text::keyName(text::withoutDouble(pitch));
    name.replace(QChar(0x266D), qtTrId("staff.flat"));
    name.replace(QChar(0x266F), qtTrId("staff.sharp"));
    if (pitch.alter < -1) name += qtTrId("staff.double-flat");
    if (pitch.alter > 1) name += qtTrId("staff.double-sharp");
    return name + QLatin1Char(' ') + QString::number(pitch.octave);
}

QString clefWords(Clef clef) { return clef == Clef::treble ? qtTrId("staff.treble") : qtTrId("staff.bass"); }

QString countWords(std::size_t notes) { return qtTrId("staff.notes", static_cast<int>(notes)); }

/// By sound: the lowest note may be spelled higher than another.
auto rangeOf(const std::vector<Note>& notes) {
    return std::ranges::minmax(notes, {}, [](const Note& note) { return midiNumber(note.written); });
}

} // namespace

void StaffView::show(std::optional<StaffMusic> music) {
    if (music && music->notes.empty()) music.reset();
    if (music == music_) return;
    music_ = std::move(music);
    emit changed();
}

QString StaffView::words() const {
    if (!known()) return {};
    const auto [lowest, highest] = rangeOf(music_->notes);
    return qtTrId("staff.spoken")
        .arg(Formatter::bars(music_->music), countWords(music_->notes.size()), pitchWords(lowest.written),
             pitchWords(highest.written), text::signatureText(music_->fifths), clefWords(music_->clef));
}

int StaffView::noteAt(int bar, int beat, int part, int parts) const {
    if (!known() || bar < 0 || beat < 0 || part < 0 || parts < 1) return -1;
    const Music& music = music_->music;
    const Fraction unit = fractionOf(music.meter.beat());
    const auto pulses = std::int64_t{beat} * parts + part;
    const auto inBar = reducedFraction(pulses * unit.numerator, std::int64_t{parts} * unit.denominator);
    const auto bars = reducedFraction(std::int64_t{bar - music.firstBar + 1} * music.meter.numerator(),
                                      music.meter.denominator());
    if (!inBar || !bars) return -1;
    // The bar before the first full one ends where the pick-up ends.
    const Fraction bar0{music.meter.numerator(), music.meter.denominator()};
    const auto moment = sum(*sum(*bars, *inBar), music.pickup);
    const auto place = moment ? difference(*moment, bar0) : std::nullopt;
    if (!place) return -1;
    for (std::size_t i = 0; i < music_->notes.size(); ++i) {
        const Note& note = music_->notes[i];
        const auto end = sum(note.onset, note.length);
        if (order(note.onset, *place) <= 0 && end && order(*place, *end) < 0) return static_cast<int>(i);
    }
    return -1;
}

} // namespace piolo::models

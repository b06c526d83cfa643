// SPDX-License-Identifier: GPL-3.0-or-later
#include "target.h"

#include "core/music/key_signature.h"
#include "core/music/pitch_text.h"
#include "core/time/fraction_sum.h"
#include "score/pick/excerpt.h"
#include "score/read/score_file.h"
#include "score/write/musicxml_writer.h"

#include <algorithm>
#include <string>
#include <vector>

namespace piolo::fuzz {

namespace {

/// The notes that are attacked, as text.
std::string struck(const std::vector<Note>& notes) {
    std::string all;
    for (const Note& note : notes)
        if (!note.tiedBefore)
            all += note.onset.reduced().text() + ' ' + pitchText(note.written) + ' ' +
                   std::to_string(note.sounding) + '\n';
    return all;
}

/// Whatever can be written at all is read back with every note at its place.
void writeAndRead(const score::Excerpt& made) {
    score::WrittenPart part;
    part.music = made.music;
    part.tempo = made.tempo;
    part.notes = score::notesKept(made);
    if (part.notes.empty()) return;
    part.fifths = likelyFifths(part.notes);
    part.transposition = part.notes.front().sounding - midiNumber(part.notes.front().written);
    const auto text = score::musicXmlOf(part);
    if (!text) return;
    const auto again = score::readMusicXml(*text, "b.musicxml");
    hold(again.faults.empty(), "a score written here is a good one");
    const auto bars = again.score.parts.at(0).bars.size();
    const auto back = score::excerpt(again.score, 0, {0, bars - 1});
    hold(back.ok(), "its bars can be picked");
    hold(!back.ok() || struck(back->notes) == struck(part.notes), "its notes are those that were written");
}

void pick(const score::Score& score, std::size_t part, score::Stretch stretch) {
    const auto made = score::excerpt(score, part, stretch);
    if (!made) {
        hold(static_cast<int>(made.fault().number) >= 251, "bars that are refused are refused as bars");
        return;
    }
    hold(made->music.bars >= 1 && made->music.bars <= 999, "a passage has whole bars");
    hold(made->music.subdivision >= 1 && made->music.subdivision <= 8, "a beat has one to eight pulses");
    hold(std::ranges::is_sorted(made->notes,
                                [](const Note& a, const Note& b) { return order(a.onset, b.onset) < 0; }),
         "notes stand in the order of time");
    for (const Note& note : made->notes)
        hold(note.sounding >= 0 && note.sounding <= 127, "a note has a MIDI number");
    writeAndRead(*made);
}

} // namespace

void runScore(std::string_view bytes) {
    const auto reading = score::readScore(bytes, "a.mxl");
    for (const Fault& fault : reading.faults)
        hold(fault.location.file.starts_with("a.mxl"), "a fault names its file");
    if (!reading.faults.empty()) return;
    hold(!reading.score.parts.empty(), "a good score has a part");
    for (std::size_t part = 0; part < reading.score.parts.size(); ++part) {
        const std::size_t bars = reading.score.parts[part].bars.size();
        hold(bars > 0, "a part has a bar");
        pick(reading.score, part, {0, bars - 1});
        pick(reading.score, part, {bars / 2, bars / 2});
    }
}

} // namespace piolo::fuzz

// SPDX-License-Identifier: GPL-3.0-or-later
#include "command/verbs/score_text.h"

#include "command/output/printed_text.h"
#include "core/music/pitch_text.h"
#include "core/time/tempo.h"

namespace piolo::command {
namespace {

std::string decimal(std::int64_t thousandths) {
    std::string below = std::to_string(1000 + thousandths % 1000).substr(1);
    while (below.ends_with('0')) below.pop_back();
    return std::to_string(thousandths / 1000) + (below.empty() ? "" : '.' + below);
}

std::string soundsOf(score::Transposition transposition) {
    const int semitones = transposition.semitones();
    if (semitones == 0) return {};
    return ", sounds " + std::to_string(std::abs(semitones)) +
           (semitones < 0 ? " semitones lower" : " semitones higher");
}

/// One line for each meter, with the bar where it begins.
std::string metersOf(const score::Part& part) {
    std::string text;
    const score::TimeSignature* before = nullptr;
    for (const score::Bar& bar : part.bars) {
        if (before == nullptr || bar.time != *before)
            text += "  bar " + printed(bar.number) + ": " +
                    (bar.time.counted ? bar.time.text() : "no single meter") + '\n';
        before = &bar.time;
    }
    return text;
}

std::string tempoOf(const score::TempoMark& mark) {
    std::string text;
    if (mark.beat)
        text = mark.beat->text() + " = " + (mark.text.empty() ? "another beat" : printed(mark.text));
    if (mark.quarters)
        text += std::string(text.empty() ? "" : ", ") + "sounding 1/4 = " + decimal(*mark.quarters);
    return text;
}

std::string noteLine(const Note& note) {
    return "  " + note.onset.text() + ' ' + note.length.text() + ' ' + pitchText(note.written) + ' ' +
           std::to_string(note.sounding) + (note.tiedBefore ? " tied\n" : "\n");
}

} // namespace

std::string scoreReport(const score::Score& score) {
    std::string text = (score.title.empty() ? "(no title)" : printed(score.title)) + '\n';
    if (!score.composer.empty()) text += printed(score.composer) + '\n';
    for (std::size_t i = 0; i < score.parts.size(); ++i) {
        const score::Part& part = score.parts[i];
        text += "part " + std::to_string(i + 1) + ": " + printed(part.name) + ", " +
                std::to_string(part.bars.size()) + " bars, " + printed(part.bars.front().number) + " to " +
                printed(part.bars.back().number) + soundsOf(part.bars.front().transposition) + '\n' +
                metersOf(part);
    }
    for (const score::TempoMark& mark : score.tempi)
        text += "tempo in bar " +
                printed(score.parts.front().bars.size() > mark.bar ? score.parts.front().bars[mark.bar].number
                                                                   : std::to_string(mark.bar + 1)) +
                ": " + tempoOf(mark) + '\n';
    return text;
}

std::string excerptReport(const score::Part& part, const score::Excerpt& made) {
    const Music& music = made.music;
    std::string text = printed(part.name) + ": " + std::to_string(music.bars) +
                       (music.bars == 1 ? " bar" : " bars") + " from bar " + std::to_string(music.firstBar) +
                       (music.pickup.isZero() ? "" : ", pick-up " + music.pickup.text()) + '\n';
    text += "meter " + music.meter.text() + ", beat " + fractionOf(music.meter.beat()).text() +
            (music.meter.groups().empty() ? "" : ", groups " + music.meter.groupsText()) + '\n';
    text += "tempo " + (made.tempo ? made.tempo->text() : "not marked") + '\n';
    text += "subdivision " + std::to_string(music.subdivision) +
            (made.onGrid ? "" : ", on which most notes fall, not all") + '\n';
    if (!made.notes.empty() && score::notesKept(made).empty())
        text += "these notes are too many for a passage, which keeps " + std::to_string(Passage::mostNotes) +
                " at most: it is made without them\n";
    text += std::to_string(made.notes.size()) + " notes: onset, length, as written, MIDI number\n";
    for (const Note& note : made.notes) text += noteLine(note);
    return text;
}

} // namespace piolo::command

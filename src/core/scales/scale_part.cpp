// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/scales/scale_part.h"

#include "core/music/key_signature.h"
#include "core/time/fraction_sum.h"

#include <algorithm>

namespace piolo {

namespace {

constexpr int beatsOfBar = 4;
constexpr int highestOctave = 9;
constexpr int highestMidi = 127;

/// The octave of the lowest tonic within the range.
std::optional<int> lowestTonic(Tonic tonic, NoteRange range) {
    for (int octave = 0; octave <= highestOctave; ++octave) {
        const WrittenPitch pitch{tonic.step, tonic.alter, static_cast<std::int8_t>(octave)};
        if (below(pitch, range.lowest)) continue;
        if (below(range.highest, pitch)) return std::nullopt;
        return octave;
    }
    return std::nullopt;
}

/// The lowest note of the ladder within the range.
int lowestIndex(const ScaleLadder& ladder, NoteRange range) {
    int index = 0;
    while (!below(ladder.at(index - 1, Direction::down), range.lowest) &&
           !below(ladder.at(index - 1, Direction::up), range.lowest))
        --index;
    return index;
}

int highestIndex(const ScaleLadder& ladder, NoteRange range) {
    int index = 0;
    while (!below(range.highest, ladder.at(index + 1, Direction::up)) &&
           !below(range.highest, ladder.at(index + 1, Direction::down)))
        ++index;
    return index;
}

ScaleReach reachOf(ScaleRange range, const ScaleLadder& ladder, NoteRange notes, int lowest) {
    if (range == ScaleRange::oneOctave) return {0, ladder.size()};
    if (range == ScaleRange::twoOctaves) return {0, 2 * ladder.size()};
    return {lowest, highestIndex(ladder, notes)};
}

/// The notes one after the other. The last one is held to the bar line or, if it is the landing note, lasts
/// one beat.
std::vector<Note> laidOut(const std::vector<WrittenPitch>& pitches, int notesPerBeat, int semitones) {
    std::vector<Note> notes;
    const int perBar = notesPerBeat * beatsOfBar;
    int place = 0;
    for (const WrittenPitch pitch : pitches) {
        const bool last = static_cast<std::size_t>(place) + 1 == pitches.size();
        const int held = place % perBar == 0 ? notesPerBeat : perBar - place % perBar;
        Note note;
        note.written = pitch;
        note.sounding = midiNumber(pitch) + semitones;
        note.onset = Fraction{place, perBar}.reduced();
        note.length = Fraction{last ? held : 1, perBar}.reduced();
        notes.push_back(note);
        ++place;
    }
    return notes;
}

Music musicOf(int notesPerBeat, std::size_t notes) {
    const auto beats = static_cast<std::int32_t>(notes - 1) / notesPerBeat;
    Music music;
    music.subdivision = notesPerBeat;
    music.landing = beats > 0 && beats % beatsOfBar == 0;
    music.bars = music.landing ? beats / beatsOfBar : beats / beatsOfBar + 1;
    return music;
}

/// True if the values are valid for Note and WrittenPitch.
bool canBe(const Note& note) {
    return note.written.octave >= 0 && note.written.octave <= highestOctave && note.sounding >= 0 &&
           note.sounding <= highestMidi;
}

} // namespace

bool hasTonic(NoteRange range, Tonic tonic) { return lowestTonic(tonic, range).has_value(); }

std::optional<ScalePart> scalePart(const Scale& scale, Transposition transposition, NoteRange range) {
    const auto octave = lowestTonic(scale.tonic, range);
    if (!octave) return std::nullopt;
    const ScaleLadder ladder(scale.tonic, *octave, scale.kind);
    const int lowest = lowestIndex(ladder, range);
    auto walk = walkOf(scale.pattern, reachOf(scale.range, ladder, range, lowest));
    ScalePart part;
    part.ending = endOnBeat(walk, scale.notesPerBeat, scale.pattern, lowest);
    if (walk.size() > Passage::mostNotes) return std::nullopt;
    std::vector<WrittenPitch> pitches;
    pitches.reserve(walk.size());
    for (const auto& [index, direction] : walk) pitches.push_back(ladder.at(index, direction));
    part.notes = laidOut(pitches, scale.notesPerBeat, transposition.semitones);
    if (!std::ranges::all_of(part.notes, canBe)) return std::nullopt;
    part.music = musicOf(scale.notesPerBeat, walk.size());
    part.fifths = fifthsOf(scale.tonic, scale.kind);
    const auto [least, most] = std::ranges::minmax_element(pitches, below);
    part.lowest = *least;
    part.highest = *most;
    part.altissimo = below(range.highest, part.highest);
    return part;
}

} // namespace piolo

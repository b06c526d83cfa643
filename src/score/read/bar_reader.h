// SPDX-License-Identifier: GPL-3.0-or-later
// Reads one part, bar by bar.
#pragma once

#include "score/read/score.h"
#include "score/read/source.h"

#include <cstddef>
#include <optional>
#include <vector>

namespace piolo::score {

/// State that carries over from bar to bar of a part. Use one object per part.
class BarReader {
public:
    /// `notesLeft` is the number of notes that may still be read in the whole score; it is counted down.
    BarReader(Source& source, Part& part, std::vector<TempoMark>& tempi, std::size_t& notesLeft)
        : source_(source), part_(part), tempi_(tempi), notesLeft_(notesLeft) {}

    /// Adds a bar to the part. Faults are added to the source.
    void read(pugi::xml_node measure);

private:
    void readElement(pugi::xml_node element);
    void readAttributes(pugi::xml_node attributes);
    void readTranspose(pugi::xml_node transpose);
    void readNote(pugi::xml_node note);
    void readPitch(pugi::xml_node note, ScoreNote& into);
    void placeNote(pugi::xml_node note, ScoreNote& into);
    void readBack(pugi::xml_node backup);
    void readTempo(pugi::xml_node element);
    void readSigns(pugi::xml_node element);
    void moveOn(pugi::xml_node element, Fraction length);
    std::optional<Fraction> length(pugi::xml_node element);
    std::int32_t voiceOf(pugi::xml_node note);
    Bar& bar() { return part_.bars.back(); }

    Source& source_;
    Part& part_;
    std::vector<TempoMark>& tempi_;
    std::size_t& notesLeft_;
    std::optional<Fraction> divisions_; ///< per quarter
    TimeSignature time_;
    std::int32_t fifths_ = 0;
    Transposition transposition_;
    Fraction at_;        ///< from the beginning of the bar
    Fraction lastOnset_; ///< the onset of further notes of a chord
};

} // namespace piolo::score

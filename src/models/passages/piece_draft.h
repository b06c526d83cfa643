// SPDX-License-Identifier: GPL-3.0-or-later
// A piece as typed: texts by field, and the values that they give.
#pragma once

// Qt comes first: moc cannot read the standard headers before it.
#include <QString>

#include "core/facts/piece_fact.h"
#include "core/passage/piece.h"

#include <optional>

namespace piolo::models {

struct PieceDraft {
    Id id; ///< none: a new piece
    QString name;
    QString instrument;
    QString due; ///< as typed; empty: no date
    QString composer;
    QString transposition; ///< semitones from the written to the sounding note; empty: none
    QString bars;          ///< empty: not known
    QString meter;         ///< of the whole piece; empty: 4/4
    QString beat;          ///< in which it is counted, "3/8"; empty: the meter's usual one
    QString tempo;         ///< of that beat; empty: not known
    QString notes;
    bool operator==(const PieceDraft&) const = default;
    /// As recorded.
    void setMusic(const PieceMusic& music);
};

/// The draft of a recorded piece.
[[nodiscard]] PieceDraft draftOf(const Piece& piece);

// The value of a field; nothing if it is not valid.
[[nodiscard]] std::optional<int> semitonesOf(const PieceDraft& draft);
[[nodiscard]] std::optional<int> barsOf(const PieceDraft& draft);
[[nodiscard]] std::optional<Meter> meterOf(const PieceDraft& draft);

/// A fact with the fields that differ. The draft must be valid.
[[nodiscard]] PieceFact changesIn(const PieceDraft& draft, const PieceDraft& before);

} // namespace piolo::models

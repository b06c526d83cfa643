// SPDX-License-Identifier: GPL-3.0-or-later
// Everything typed in the form of a passage: its fields, its piece, and the notes of its bars.
#pragma once

// Qt comes first: moc cannot read the standard headers before it.
#include <QString>
#include <QVariantMap>

#include "core/history/notebook.h"
#include "models/passages/piece_draft.h"
#include "score/pick/excerpt.h"
#include "score/read/score.h"

#include <vector>

namespace piolo::models {

/// The choice of a piece that is not recorded yet.
inline constexpr auto newPieceChoice = "new";

/// Plain values.
struct TypedPassage {
    QVariantMap values; ///< by field, as in passage_draft.h
    QString piece;      ///< "" for a separate exercise, newPieceChoice, or the piece's id
    PieceDraft pieceDraft;
    Music notedMusic{};        ///< the music to which `notes` belong
    std::vector<Note> notes{}; ///< saved as long as the bars stay the same
    bool operator==(const TypedPassage&) const = default;

    /// The notes, if they belong to these bars.
    [[nodiscard]] std::vector<Note> notesFor(const Music& music) const;
};

/// Bars picked from a score.
struct PickedBars {
    const score::Excerpt& excerpt;
    const score::Score& score;
    const score::Part& part;
    PieceMusic pieceMusic; ///< of the whole piece
};

/// The form of that passage as recorded; of a new one if it is unknown.
[[nodiscard]] TypedPassage recordedForm(const Notebook& notebook, Id passage);
/// The form of a new passage from the first half of that one: its fields as typed, without the title, its
/// piece and its notes as recorded.
[[nodiscard]] TypedPassage firstHalfOf(const TypedPassage& whole, const Notebook& notebook, Id passage);
/// The form of a new passage with these bars, without a title. Its piece is the recorded one with the title
/// of the score, or a new one.
[[nodiscard]] TypedPassage formOf(const PickedBars& picked, const Notebook& notebook);
/// Empty for no id.
[[nodiscard]] PieceDraft recordedPiece(const Notebook& notebook, Id piece);

} // namespace piolo::models

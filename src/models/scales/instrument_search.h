// SPDX-License-Identifier: GPL-3.0-or-later
// Finds instruments by what a player types or what a piece says of its part.
#pragma once

#include <QString>
#include <QVariantList>

#include "core/history/notebook.h"
#include "core/music/instrument.h"

#include <optional>

namespace piolo::models {

// Window thread; names are those of the window's language.

/// By family: a list of {text, instruments}, with instruments as {value, text}. Each word that is typed is a
/// part of the instrument's name or of its family's, in any case and without regard to accents. Families
/// without such an instrument are left out.
[[nodiscard]] QVariantList instrumentsByFamily(const QString& typed);
/// The first instrument of the list of which a word begins with what is typed; otherwise the first one; "" if
/// there is none.
[[nodiscard]] QString firstInstrument(const QString& typed);

/// The instrument that a part's name means ("Alto Sax 1", "Klarinette in B"); a transposition other than 0
/// decides between those of one name. Null if none or more than one can be meant.
[[nodiscard]] const Instrument* instrumentMeant(const QString& partName, int transposition);

/// The instrument of the piece to which the passage played or made last belongs; otherwise of the first
/// piece, by name, that names one.
struct InstrumentOfPiece {
    const Instrument* instrument = nullptr;
    QString piece;
};
[[nodiscard]] std::optional<InstrumentOfPiece> instrumentOfPieces(const Notebook& notebook);

} // namespace piolo::models

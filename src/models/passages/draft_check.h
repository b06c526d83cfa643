// SPDX-License-Identifier: GPL-3.0-or-later
// Checks what is typed in the form of a passage.
#pragma once

// Qt comes first: moc cannot read the standard headers before it.
#include <QVariantMap>

#include "core/passage/passage.h"

namespace piolo::models {

/// The passage typed, with a valid value instead of each invalid one, and one line for each invalid field.
struct DraftCheck {
    Passage passage;
    QVariantMap faults;
};

/// The fields are those of passage_draft.h.
[[nodiscard]] DraftCheck checkDraft(const QVariantMap& draft);

} // namespace piolo::models

// SPDX-License-Identifier: GPL-3.0-or-later
// What was typed and not saved, by passage.
#pragma once

#include "models/passages/typed_passage.h"

#include <map>
#include <optional>
#include <utility>

namespace piolo::models {

/// Plain values. No id: the form of a new passage.
class UnsavedForms {
public:
    void keep(Id passage, TypedPassage typed) { forms_[passage] = std::move(typed); }
    /// Returns the form of that passage, which is then no longer kept.
    [[nodiscard]] std::optional<TypedPassage> take(Id passage) {
        auto kept = forms_.extract(passage);
        if (kept.empty()) return std::nullopt;
        return std::move(kept.mapped());
    }

private:
    std::map<Id, TypedPassage> forms_;
};

} // namespace piolo::models

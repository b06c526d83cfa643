// SPDX-License-Identifier: GPL-3.0-or-later
// Practice settings.
#pragma once

#include <string_view>

#include "core/base/fields.h"
#include "core/facts/fact_role.h"
#include "core/passage/practice_settings.h"

namespace piolo {

/// Practice settings, whole.
struct SettingsFact {
    static constexpr std::string_view kindName = "settings";
    static constexpr FactRole role = FactRole::elsewhere;

    PracticeSettings settings;
    bool operator==(const SettingsFact&) const = default;
};

template <typename Fields>
void describe(Fields& in, SettingsFact& fact) {
    describe(in, fact.settings);
}

} // namespace piolo

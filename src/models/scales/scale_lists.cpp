// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/scales/scale_lists.h"

#include "models/settings/setting_choices.h"
#include "text/scale_words.h"

namespace piolo::models {

namespace {

/// A choice for each value, with core's name.
template <typename Value, typename Text>
QVariantList choicesOf(std::size_t count, const Text& text) {
    QVariantList list;
    for (std::size_t place = 0; place < count; ++place) {
        const auto value = static_cast<Value>(place);
        list << choice(wordOf(nameOf(value)), text(value));
    }
    return list;
}

} // namespace

QString wordOf(std::string_view name) {
    return QString::fromUtf8(name.data(), static_cast<qsizetype>(name.size()));
}

QVariantList scaleKindChoices() { return choicesOf<ScaleKind>(scaleKindCount, text::kindName); }
QVariantList rangeChoices() { return choicesOf<ScaleRange>(scaleRangeCount, text::rangeName); }
QVariantList patternChoices() { return choicesOf<ScalePattern>(scalePatternCount, text::patternName); }
QVariantList keyOrderChoices() { return choicesOf<KeyOrder>(keyOrderCount, text::orderName); }

} // namespace piolo::models

// SPDX-License-Identifier: GPL-3.0-or-later
#include "journal/groups/click_group.h"

#include "journal/json/json_list.h"

#include <array>

namespace piolo::journal {

namespace {

using nlohmann::json;
using Json = nlohmann::ordered_json;

std::optional<Accent> accentOf(const json& word) {
    return word.is_string() ? accentNamed(word.get_ref<const std::string&>()) : std::nullopt;
}

std::optional<BreathPlace> breathOf(const json& numbers) {
    if (!numbers.is_array() || numbers.size() != 3) return std::nullopt;
    std::array<std::int32_t, 3> read{};
    for (std::size_t i = 0; i < read.size(); ++i) {
        const auto number = integerIn(numbers[i], -1, ClickPattern::lastBar);
        if (!number) return std::nullopt;
        read[i] = static_cast<std::int32_t>(*number);
    }
    const BreathPlace place{read[0], read[1], read[2]};
    return isInRange(place) ? std::optional(place) : std::nullopt;
}

std::vector<Accent> accentsOf(JsonObject& group) {
    auto accents = listOf<Accent>(group, "accents", accentOf);
    if (accents.size() > ClickPattern::mostAccents) group.refuse("accents");
    return accents;
}

std::vector<BreathPlace> breathsOf(JsonObject& group) {
    auto breaths = listOf<BreathPlace>(group, "breaths", breathOf);
    if (!areBreaths(breaths)) group.refuse("breaths");
    return breaths;
}

Fraction swingOf(JsonObject& group) {
    const auto swing = parseSwing(group.text("swing"));
    if (!swing) group.refuse("swing");
    return swing.value_or(Fraction{1, 1});
}

} // namespace

ClickPattern clickOf(JsonObject group) {
    ClickPattern click;
    click.on = group.choice("on", clickOnNamed);
    if (group.has("accents")) click.accents = accentsOf(group);
    if (group.has("swing")) {
        click.swing = swingOf(group);
        click.swung = group.choice("swung", swungNotesNamed);
    }
    click.barsOn = group.small("barsOn", 1, ClickPattern::mostBarsInTurn);
    click.barsOff = group.small("barsOff", 0, ClickPattern::mostBarsInTurn);
    click.silentBars = group.small("silentBars", 0, 100);
    click.leftOutBeats = group.small("leftOutBeats", 0, 100);
    click.seed = group.small("seed", 0, ClickPattern::mostSeed);
    if (group.has("breaths")) {
        click.breaths = breathsOf(group);
        click.breathBelow = group.tempo("breathBelow");
    }
    return click;
}

Json groupOf(const ClickPattern& click) {
    const ClickPattern usual;
    Json group{{"on", nameOf(click.on)}};
    for (const Accent accent : click.accents) group["accents"].push_back(nameOf(accent));
    if (click.swing != usual.swing || click.swung != usual.swung) {
        group["swing"] = swingText(click.swing);
        group["swung"] = nameOf(click.swung);
    }
    group["barsOn"] = click.barsOn;
    group["barsOff"] = click.barsOff;
    group["silentBars"] = click.silentBars;
    group["leftOutBeats"] = click.leftOutBeats;
    group["seed"] = click.seed;
    if (!click.breaths.empty() || click.breathBelow != usual.breathBelow) {
        group["breaths"] = Json::array();
        for (const auto& [bar, beat, beats] : click.breaths)
            group["breaths"].push_back(Json::array({bar, beat, beats}));
        group["breathBelow"] = click.breathBelow.thousandths();
    }
    return group;
}

} // namespace piolo::journal

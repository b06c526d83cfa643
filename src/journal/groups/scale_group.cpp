// SPDX-License-Identifier: GPL-3.0-or-later
#include "journal/groups/scale_group.h"

#include "core/music/pitch_text.h"

namespace piolo::journal {

namespace {

using Json = nlohmann::ordered_json;

constexpr std::size_t longestInstrument = 100;

std::string instrumentOf(JsonObject& group) {
    std::string name = group.text("instrument");
    if (name.size() > longestInstrument) group.refuse("instrument");
    return name;
}

std::optional<WrittenPitch> pitchOf(JsonObject& group, const char* key) {
    if (!group.has(key)) return std::nullopt;
    const auto pitch = pitchNamed(group.text(key));
    if (!pitch) group.refuse(key);
    return pitch;
}

/// Only the spelling of textOf(), so that it is written back the same.
Tonic tonicOf(JsonObject& group) {
    const std::string text = group.text("tonic");
    const auto tonic = tonicNamed(text);
    if (!tonic || textOf(*tonic) != text) group.refuse("tonic");
    return tonic.value_or(Tonic{});
}

} // namespace

Scale scaleOf(JsonObject group) {
    Scale scale;
    scale.tonic = tonicOf(group);
    scale.kind = group.choice("kind", scaleKindNamed);
    scale.range = group.choice("range", scaleRangeNamed);
    scale.pattern = group.choice("pattern", scalePatternNamed);
    scale.notesPerBeat = group.small("notes", 1, Scale::mostNotesPerBeat);
    if (group.has("instrument")) scale.instrument = instrumentOf(group);
    return scale;
}

ScaleSettings scaleSettingsOf(JsonObject group) {
    ScaleSettings settings;
    if (group.has("instrument")) settings.instrument = instrumentOf(group);
    settings.lowest = pitchOf(group, "lowest");
    settings.highest = pitchOf(group, "highest");
    settings.spelling =
        SpellingChoice(static_cast<std::uint16_t>(group.small("spelling", 0, SpellingChoice::most)));
    settings.order = group.choice("order", keyOrderNamed);
    settings.seed = group.small("seed", 0, ScaleSettings::mostSeed);
    settings.view.kind = group.choice("kind", scaleKindNamed);
    settings.view.range = group.choice("range", scaleRangeNamed);
    settings.view.pattern = group.choice("pattern", scalePatternNamed);
    return settings;
}

Json groupOf(const Scale& scale) {
    Json group{{"tonic", textOf(scale.tonic)},
               {"kind", nameOf(scale.kind)},
               {"range", nameOf(scale.range)},
               {"pattern", nameOf(scale.pattern)},
               {"notes", scale.notesPerBeat}};
    if (!scale.instrument.empty()) group["instrument"] = scale.instrument;
    return group;
}

Json groupOf(const ScaleSettings& settings) {
    Json group = Json::object();
    if (!settings.instrument.empty()) group["instrument"] = settings.instrument;
    if (settings.lowest) group["lowest"] = pitchText(*settings.lowest);
    if (settings.highest) group["highest"] = pitchText(*settings.highest);
    group["spelling"] = settings.spelling.bits();
    group["order"] = nameOf(settings.order);
    group["seed"] = settings.seed;
    group["kind"] = nameOf(settings.view.kind);
    group["range"] = nameOf(settings.view.range);
    group["pattern"] = nameOf(settings.view.pattern);
    return group;
}

} // namespace piolo::journal

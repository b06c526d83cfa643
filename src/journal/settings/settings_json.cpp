// SPDX-License-Identifier: GPL-3.0-or-later
#include "journal/settings/settings_json.h"

#include "core/base/utf8.h"

#include <algorithm>
#include <array>
#include <utility>

namespace piolo::journal {

namespace {

using nlohmann::json;

struct Millis {
    MillisRange range;
    int value = 0;
};
struct Theme {
    std::string name;
};
struct DeviceId {
    std::string text;
};

bool read(const json& value, std::string& into) {
    if (value.is_string()) into = value.get<std::string>();
    return value.is_string();
}

bool read(const json& value, bool& into) {
    if (value.is_boolean()) into = value.get<bool>();
    return value.is_boolean();
}

bool read(const json& value, double& into) {
    if (!value.is_number()) return false;
    into = value.get<double>();
    return into >= 0 && into <= 1;
}

bool read(const json& value, Millis& into) {
    const auto millis = integerIn(value, into.range.least, into.range.most);
    if (millis) into.value = static_cast<int>(*millis);
    return millis.has_value();
}

bool read(const json& value, Theme& into) {
    return read(value, into.name) && (into.name == "system" || into.name == "light" || into.name == "dark");
}

bool read(const json& value, DeviceId& into) {
    const auto id = value.is_string() ? Id::parse(value.get<std::string>()) : std::nullopt;
    if (id) into.text = id->text();
    return id && !id->isNone();
}

template <typename Value>
bool read(const json& value, std::map<std::string, Value>& into) {
    if (!value.is_object()) return false;
    for (const auto& [name, element] : value.items())
        if (!read(element, into[name])) return false;
    return true;
}

template <typename Value>
Value fresh(const Value& /*into*/) {
    return {};
}

Millis fresh(const Millis& into) { return into; }

/// Removes known keys from the object, so that the unknown ones remain.
class Taking {
public:
    Taking(json& object, FirstFault& first) : object_(object), first_(first) {}

    template <typename Value>
    void take(const char* key, Value& into) {
        const auto found = object_.find(key);
        if (found == object_.end()) return;
        Value value = fresh(into);
        if (read(*found, value))
            into = std::move(value);
        else
            first_.keep(FaultNumber::badFactValue, {key, shown(*found)});
        object_.erase(found);
    }

private:
    json& object_;
    FirstFault& first_;
};

json parsed(std::string_view text, FirstFault& first) {
    if (!isUtf8(text)) {
        first.keep(FaultNumber::notUtf8, {});
        return json::object();
    }
    auto object = parseJson(text);
    if (object && object->is_object()) return std::move(*object);
    first.keep(FaultNumber::badJson, {});
    return json::object();
}

} // namespace

MachineSettings settingsFromJson(std::string_view text, FirstFault& first) {
    json object = parsed(text, first);
    Taking taking(object, first);
    MachineSettings settings;
    DeviceId device;
    Theme theme{settings.theme};
    Millis offset{MachineSettings::offsetRange, settings.offsetMillis};
    Millis hold{MachineSettings::holdRange, settings.holdMillis};
    Millis twice{MachineSettings::twiceRange, settings.twiceMillis};
    Millis bounce{MachineSettings::bounceRange, settings.bounceMillis};
    taking.take("device", device);
    taking.take("soundDevice", settings.soundDevice);
    taking.take("offsetMs", offset);
    taking.take("voice", settings.voice);
    taking.take("levels", settings.levels);
    taking.take("muted", settings.muted);
    taking.take("keys", settings.keys);
    taking.take("holdMs", hold);
    taking.take("twiceMs", twice);
    taking.take("bounceMs", bounce);
    taking.take("theme", theme);
    taking.take("language", settings.language);
    taking.take("modelClick", settings.modelClick);
    taking.take("folder", settings.folder);
    taking.take("welcomed", settings.welcomed);
    settings.device = device.text;
    settings.theme = theme.name;
    settings.offsetMillis = offset.value;
    settings.holdMillis = hold.value;
    settings.twiceMillis = twice.value;
    settings.bounceMillis = bounce.value;
    settings.unknown = object.dump();
    return settings;
}

std::string settingsToJson(const MachineSettings& settings) {
    nlohmann::ordered_json object{{"device", settings.device},
                                  {"soundDevice", settings.soundDevice},
                                  {"offsetMs", settings.offsetMillis},
                                  {"voice", settings.voice},
                                  {"levels", settings.levels},
                                  {"muted", settings.muted},
                                  {"keys", settings.keys},
                                  {"holdMs", settings.holdMillis},
                                  {"twiceMs", settings.twiceMillis},
                                  {"bounceMs", settings.bounceMillis},
                                  {"theme", settings.theme},
                                  {"language", settings.language},
                                  {"modelClick", settings.modelClick},
                                  {"folder", settings.folder},
                                  {"welcomed", settings.welcomed}};
    const auto unknown = parseJson(settings.unknown);
    if (unknown && unknown->is_object())
        for (const auto& [name, value] : unknown->items())
            if (!object.contains(name)) object[name] = value;
    return object.dump(2, ' ', false, json::error_handler_t::replace) + "\n";
}

} // namespace piolo::journal

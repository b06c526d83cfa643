// SPDX-License-Identifier: GPL-3.0-or-later
#include "journal/json/json_object.h"

#include "core/base/clean_text.h"

#include <utility>

namespace piolo::journal {

namespace {

using nlohmann::json;

constexpr int deepest = 16;
/// A fault shows only the beginning of a long value.
constexpr std::size_t longestShown = 60;

const json& nothing() {
    static const json none;
    return none;
}

const json& emptyObject() {
    static const json none = json::object();
    return none;
}

} // namespace

std::string shown(const json& value) {
    std::string text = value.dump(-1, ' ', true, json::error_handler_t::replace);
    if (text.size() > longestShown) text = text.substr(0, longestShown) + "…";
    return text;
}

std::optional<json> parseJson(std::string_view text) {
    bool tooDeep = false;
    const auto watch = [&tooDeep](int depth, json::parse_event_t, json&) {
        tooDeep = tooDeep || depth > deepest;
        return !tooDeep;
    };
    json value = json::parse(text, watch, false);
    if (tooDeep || value.is_discarded()) return std::nullopt;
    return value;
}

void FirstFault::keep(FaultNumber number, std::vector<std::string> arguments) {
    if (!fault) fault = Fault{number, location, std::move(arguments)};
}

JsonObject::JsonObject(const json& object, std::string path, FirstFault& first)
    : object_(object.is_object() ? &object : &emptyObject()), path_(std::move(path)), first_(&first) {}

bool JsonObject::has(const char* key) const { return object_->contains(key); }

const json& JsonObject::value(const char* key) {
    const auto found = object_->find(key);
    if (found != object_->end()) return *found;
    first_->keep(FaultNumber::badFact, {path_ + key});
    return nothing();
}

void JsonObject::refuse(const char* key) {
    first_->keep(FaultNumber::badFactValue, {path_ + key, shown(value(key))});
}

std::int64_t JsonObject::integer(const char* key, std::int64_t least, std::int64_t most) {
    const auto number = integerIn(value(key), least, most);
    return number ? *number : refused(key, least);
}

std::int32_t JsonObject::small(const char* key, std::int32_t least, std::int32_t most) {
    return static_cast<std::int32_t>(integer(key, least, most));
}

bool JsonObject::flag(const char* key) {
    const json& found = value(key);
    return found.is_boolean() ? found.get<bool>() : refused(key, false);
}

std::string JsonObject::text(const char* key) {
    const json& found = value(key);
    return found.is_string() ? cleanText(found.get_ref<const std::string&>()) : refused(key, std::string{});
}

Id JsonObject::id(const char* key) {
    const auto found = Id::parse(text(key));
    return found && !found->isNone() ? *found : refused(key, Id{});
}

Tempo JsonObject::tempo(const char* key) {
    return Tempo::clampedThousandths(integer(key, Tempo::least, Tempo::most));
}

JsonObject JsonObject::object(const char* key) {
    const json& found = value(key);
    if (!found.is_object()) refuse(key);
    return {found, path_ + key + ".", *first_};
}

std::optional<std::int64_t> integerIn(const json& value, std::int64_t least, std::int64_t most) {
    if (!value.is_number_integer()) return std::nullopt;
    if (value.is_number_unsigned() && value.get<std::uint64_t>() > static_cast<std::uint64_t>(INT64_MAX))
        return std::nullopt;
    const auto number = value.get<std::int64_t>();
    if (number < least || number > most) return std::nullopt;
    return number;
}

} // namespace piolo::journal

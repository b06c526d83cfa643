// SPDX-License-Identifier: GPL-3.0-or-later
// Checked reading of one JSON object. Never throws; keeps the first fault.
#pragma once

#include "core/base/fault.h"
#include "core/base/id.h"
#include "core/time/tempo.h"

#include <cstdint>
#include <nlohmann/json.hpp>
#include <optional>
#include <string>
#include <string_view>

namespace piolo::journal {

/// Parses a JSON text. Nothing if it is not valid JSON or is nested deeper than 16 levels.
[[nodiscard]] std::optional<nlohmann::json> parseJson(std::string_view text);

/// Keeps the first fault of a line.
struct FirstFault {
    FaultLocation location;
    std::optional<Fault> fault;
    void keep(FaultNumber number, std::vector<std::string> arguments);
};

/// An object whose values are read by key. A missing key is badFact {key}; a value with the wrong type or out
/// of range is badFactValue {key, value}. After a fault, results are placeholders: check FirstFault.
class JsonObject {
public:
    /// `path` is put before the keys in faults: "tempi." or "".
    JsonObject(const nlohmann::json& object, std::string path, FirstFault& first);

    [[nodiscard]] bool has(const char* key) const;
    std::int64_t integer(const char* key, std::int64_t least, std::int64_t most);
    /// The same for a range that fits into 32 bits.
    std::int32_t small(const char* key, std::int32_t least, std::int32_t most);
    bool flag(const char* key);
    /// As cleanText() leaves it.
    std::string text(const char* key);
    Id id(const char* key);
    Tempo tempo(const char* key);
    /// The value itself; null if it is missing.
    const nlohmann::json& value(const char* key);
    /// An object inside this one; empty if it is missing or not an object.
    JsonObject object(const char* key);
    /// The value with the name found at the key, or a fault.
    template <typename Value>
    Value choice(const char* key, std::optional<Value> (*valueOf)(std::string_view) noexcept) {
        const auto found = valueOf(text(key));
        if (!found) refuse(key);
        return found.value_or(Value{});
    }
    /// Reports that the value of `key` is invalid.
    void refuse(const char* key);

private:
    template <typename Value>
    Value refused(const char* key, Value instead) {
        refuse(key);
        return instead;
    }

    const nlohmann::json* object_;
    std::string path_;
    FirstFault* first_;
};

/// The beginning of a value, for use in a fault.
[[nodiscard]] std::string shown(const nlohmann::json& value);
/// An integer in least…most, or nothing; 1.0 does not count as an integer.
[[nodiscard]] std::optional<std::int64_t> integerIn(const nlohmann::json& value, std::int64_t least,
                                                    std::int64_t most);

} // namespace piolo::journal

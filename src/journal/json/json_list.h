// SPDX-License-Identifier: GPL-3.0-or-later
// Checked reading of a JSON array, element by element.
#pragma once

#include "journal/json/json_object.h"

#include <optional>
#include <vector>

namespace piolo::journal {

/// Converts every element with `read`; a fault if one is invalid or if there is no array.
template <typename Element>
std::vector<Element> listOf(JsonObject& line, const char* key,
                            std::optional<Element> (*read)(const nlohmann::json&)) {
    std::vector<Element> list;
    const nlohmann::json& found = line.value(key);
    if (!found.is_array())
        line.refuse(key);
    else
        for (const nlohmann::json& element : found) {
            const auto item = read(element);
            if (!item) {
                line.refuse(key);
                break;
            }
            list.push_back(*item);
        }
    return list;
}

} // namespace piolo::journal

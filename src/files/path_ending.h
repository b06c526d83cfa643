// SPDX-License-Identifier: GPL-3.0-or-later
// What kind of file a path names.
#pragma once

#include <algorithm>
#include <string_view>

namespace piolo::files {

/// True if `path` ends in `ending`, in any case, with at least one character before it. `ending` must be in
/// lower case.
[[nodiscard]] inline bool endsIn(std::string_view path, std::string_view ending) noexcept {
    if (path.size() <= ending.size()) return false;
    const auto isSame = [](char a, char b) { return (a >= 'A' && a <= 'Z' ? a - 'A' + 'a' : a) == b; };
    return std::ranges::equal(path.substr(path.size() - ending.size()), ending, isSame);
}

} // namespace piolo::files

// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/passage/picture.h"

#include <algorithm>

namespace piolo {

namespace {

constexpr std::size_t nameDigits = 32;

bool isHex(char c) { return (c >= '0' && c <= '9') || (c >= 'a' && c <= 'f'); }

bool isPart(std::int32_t from, std::int32_t length) {
    return from >= 0 && length >= 1 && length <= Picture::whole && from <= Picture::whole - length;
}

} // namespace

bool isPictureName(std::string_view name) noexcept {
    if (name.size() != nameDigits + 4) return false;
    const auto ending = name.substr(nameDigits);
    return (ending == ".png" || ending == ".jpg") &&
           std::all_of(name.begin(), name.begin() + nameDigits, isHex);
}

bool isPicture(const Picture& picture) noexcept {
    return isPictureName(picture.file) && isPart(picture.left, picture.width) &&
           isPart(picture.top, picture.height);
}

} // namespace piolo

// SPDX-License-Identifier: GPL-3.0-or-later
#include "journal/json/json_reading.h"

#include <algorithm>

namespace piolo::journal {

namespace {

std::size_t characters(std::string_view utf8) {
    return static_cast<std::size_t>(
        std::count_if(utf8.begin(), utf8.end(), [](char c) { return (c & 0xC0) != 0x80; }));
}

} // namespace

void JsonReading::read(const char* key, std::string& value, Name /*name*/) {
    value = object_.text(key);
    nameTooLong_ = nameTooLong_ || characters(value) > longestName_;
}

void JsonReading::read(const char* key, std::string& value, Longest longest) {
    value = object_.text(key);
    check(value.size() <= longest.bytes, key);
}

} // namespace piolo::journal

// SPDX-License-Identifier: GPL-3.0-or-later
#include "journal/folder/own_file.h"

#include <algorithm>

namespace piolo::journal {

namespace {
constexpr std::string_view ending = ".jsonl";
constexpr std::size_t yearDigits = 4;
} // namespace

std::string journalFolder(const std::string& folder) { return folder + "/journal"; }

std::string ownFile(const std::string& folder, std::string_view device, Date date) {
    const std::string year = date.text().substr(0, yearDigits);
    return journalFolder(folder) + "/" + std::string(device) + "-" + year + std::string(ending);
}

bool isOwnFile(std::string_view path, std::string_view device) {
    const auto name = path.substr(path.rfind('/') + 1);
    if (device.empty() || name.size() != device.size() + 1 + yearDigits + ending.size()) return false;
    const auto year = name.substr(device.size() + 1, yearDigits);
    const auto isDigit = [](char c) { return c >= '0' && c <= '9'; };
    return name.starts_with(device) && name[device.size()] == '-' && name.ends_with(ending) &&
           std::all_of(year.begin(), year.end(), isDigit);
}

} // namespace piolo::journal

// SPDX-License-Identifier: GPL-3.0-or-later
// Passage files that must be refused: each is a good one with one change.
#pragma once

#include "core/base/fault.h"

#include <string>
#include <vector>

namespace piolo::test {

struct HostileFile {
    std::string from; ///< part of the good file …
    std::string to;   ///< … and what replaces it
    FaultNumber number;
    long line;
    std::vector<std::string> arguments;
    bool schemaSees = true; ///< false: JSON Schema cannot express it
};

/// One piece on line 4 and two passages on lines 7 and 8.
std::string goodPassageFile();
std::vector<HostileFile> hostileFiles();
std::string changed(std::string text, const std::string& from, const std::string& to);

} // namespace piolo::test

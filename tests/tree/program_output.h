// SPDX-License-Identifier: GPL-3.0-or-later
// What a program prints, for the tests of the tree.
#pragma once

#include <string>

/// Standard output of a shell command line.
std::string outputOf(const std::string& command);

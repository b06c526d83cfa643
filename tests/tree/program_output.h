// SPDX-License-Identifier: GPL-3.0-or-later
// The output of a program, for the tests of the tree.
#pragma once

#include <string>

/// The standard output of a shell command line.
std::string outputOf(const std::string& command);

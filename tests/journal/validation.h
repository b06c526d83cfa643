// SPDX-License-Identifier: GPL-3.0-or-later
// Held against a JSON Schema by a validator that knows nothing of this program: Python's jsonschema.
#pragma once

#include <string>

namespace piolo::test {

/// Whether Python and its jsonschema are there; tells so when not.
bool hasValidator();
/// The numbers of the lines that the schema of that name in docs/ refuses, one a line.
std::string refusedLines(const std::string& schema, const std::string& lines);

} // namespace piolo::test

// SPDX-License-Identifier: GPL-3.0-or-later
// Checks against a JSON Schema with an independent validator: Python's jsonschema.
#pragma once

#include <string>

namespace piolo::test {

/// True if Python and its jsonschema are installed; otherwise prints a message.
bool hasValidator();
/// The numbers of the lines that do not match the named schema in docs/, one per line.
std::string refusedLines(const std::string& schema, const std::string& lines);

} // namespace piolo::test

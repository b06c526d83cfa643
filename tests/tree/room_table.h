// SPDX-License-Identifier: GPL-3.0-or-later
// The table of dependencies in src/rooms.cmake, read for the tests of the tree.
#pragma once

#include <map>
#include <set>
#include <string>

/// Maps each room to the rooms it may use; includes app, which may use every room.
std::map<std::string, std::set<std::string>> roomTable();
/// The content of a file under the source folder.
std::string sourceText(const std::string& path);

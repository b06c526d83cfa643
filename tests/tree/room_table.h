// SPDX-License-Identifier: GPL-3.0-or-later
// The table of arrows in src/rooms.cmake, read for the tests of the tree.
#pragma once

#include <map>
#include <set>
#include <string>

/// Room to the rooms it sees; app, which sees every room, is added.
std::map<std::string, std::set<std::string>> roomTable();
/// A whole file under the source folder.
std::string sourceText(const std::string& path);

// SPDX-License-Identifier: GPL-3.0-or-later
// How much of a score is read. docs/limits.md lists the same limits with their tests.
#pragma once

#include <cstddef>

namespace piolo::score {

/// Bytes of the XML after unpacking.
inline constexpr std::size_t largestScore = std::size_t{32} * 1024 * 1024;
/// Bytes of a compressed file (.mxl).
inline constexpr std::size_t largestArchive = std::size_t{16} * 1024 * 1024;
/// Bytes of META-INF/container.xml.
inline constexpr std::size_t largestContainer = std::size_t{64} * 1024;
/// Number of '<' and '=' in the XML, which determine the memory for parsing.
inline constexpr std::size_t mostMarkup = 2'000'000;
/// Depth of nested elements.
inline constexpr int deepestElement = 64;
/// Notes and rests in all parts.
inline constexpr std::size_t mostNotes = 200'000;
/// Bars in all parts.
inline constexpr std::size_t mostBars = 100'000;
/// Divisions per quarter note; also the longest duration in divisions.
inline constexpr int mostDivisions = 1'000'000;
/// Titles, names and bar numbers are cut to this many bytes.
inline constexpr std::size_t longestText = 1000;
/// Faults reported for one file.
inline constexpr std::size_t mostFaults = 100;

} // namespace piolo::score

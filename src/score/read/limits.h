// SPDX-License-Identifier: GPL-3.0-or-later
// How much of a score is read. docs/limits.md has the same numbers with their tests.
#pragma once

#include <cstddef>

namespace piolo::score {

/// Bytes of the XML, unpacked.
inline constexpr std::size_t largestScore = std::size_t{32} * 1024 * 1024;
/// Bytes of a packed file (.mxl).
inline constexpr std::size_t largestArchive = std::size_t{16} * 1024 * 1024;
/// Bytes of META-INF/container.xml.
inline constexpr std::size_t largestContainer = std::size_t{64} * 1024;
/// '<' and '=' in the XML: what takes memory when it is parsed.
inline constexpr std::size_t mostMarkup = 2'000'000;
/// Elements inside each other.
inline constexpr int deepestElement = 64;
/// Notes and rests of all parts.
inline constexpr std::size_t mostNotes = 200'000;
/// Bars of all parts.
inline constexpr std::size_t mostBars = 100'000;
/// Divisions of a quarter note, and a duration in them.
inline constexpr int mostDivisions = 1'000'000;
/// A title, a name or a bar's number is cut to so many bytes.
inline constexpr std::size_t longestText = 1000;
/// Faults told of one file.
inline constexpr std::size_t mostFaults = 100;

} // namespace piolo::score

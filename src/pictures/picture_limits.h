// SPDX-License-Identifier: GPL-3.0-or-later
// Where pictures of music come to an end.
#pragma once

#include <cstddef>
#include <cstdint>

namespace piolo::pictures {

/// Bytes of a file that is taken in.
inline constexpr std::size_t mostBytes = 64U * 1024 * 1024;
/// Pixels of a picture: a page of 21 by 29.7 cm scanned at 600 to the inch has 35 million.
inline constexpr std::int64_t mostPixels = 40'000'000;
/// Bytes of a picture in memory, which is also Qt's own limit for reading one.
inline constexpr std::int64_t mostDecoded = 128LL * 1024 * 1024;
/// A page becomes so many pixels along its shorter side, fewer when the longer side would have more than
/// pageLongSide: one line of it fills a screen 3840 wide.
inline constexpr int pageShortSide = 3300;
inline constexpr int pageLongSide = 6000;
/// A page that takes longer to draw is given up.
inline constexpr std::int64_t mostMillisAPage = 20'000;

} // namespace piolo::pictures

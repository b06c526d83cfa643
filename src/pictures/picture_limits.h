// SPDX-License-Identifier: GPL-3.0-or-later
// Limits for pictures of music.
#pragma once

#include <cstddef>
#include <cstdint>

namespace piolo::pictures {

/// The largest file accepted, in bytes.
inline constexpr std::size_t mostBytes = 64U * 1024 * 1024;
/// The most pixels of a picture: a page of 21 by 29.7 cm scanned at 600 dpi has 35 million.
inline constexpr std::int64_t mostPixels = 40'000'000;
/// The largest decoded picture, in bytes; also Qt's own limit for reading one.
inline constexpr std::int64_t mostDecoded = 128LL * 1024 * 1024;
/// The shorter side of a drawn page in pixels, reduced if the longer side would exceed pageLongSide: one line
/// of music fills a screen 3840 pixels wide.
inline constexpr int pageShortSide = 3300;
inline constexpr int pageLongSide = 6000;
/// Drawing a page or decoding a picture stops after this time.
inline constexpr std::int64_t mostChildMillis = 10'000;
/// The address space of the process that does it, in bytes.
inline constexpr std::uint64_t mostChildBytes = 512ULL * 1024 * 1024;

} // namespace piolo::pictures

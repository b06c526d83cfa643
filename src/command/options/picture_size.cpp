// SPDX-License-Identifier: GPL-3.0-or-later
#include "command/options/picture_size.h"

#include <charconv>
#include <optional>

namespace piolo::command {
namespace {

constexpr int leastSide = 64;
constexpr int mostSide = 8192;

std::optional<int> side(std::string_view text) {
    int value = 0;
    const auto read = std::from_chars(text.data(), text.data() + text.size(), value);
    if (read.ec != std::errc() || read.ptr != text.data() + text.size()) return std::nullopt;
    if (value < leastSide || value > mostSide) return std::nullopt;
    return value;
}

} // namespace

PictureSize readSize(OptionReader& in, PictureSize fallback) {
    const std::string word = in.text("--size", "");
    if (word.empty()) return fallback;
    const auto cross = word.find('x');
    const auto width = side(std::string_view(word).substr(0, cross));
    const auto height =
        cross == std::string::npos ? std::nullopt : side(std::string_view(word).substr(cross + 1));
    if (width && height) return {*width, *height};
    in.fail({FaultNumber::badChoice, {}, {word, "width x height, 64x64 to 8192x8192, for example 960x360"}},
            "--size");
    return fallback;
}

} // namespace piolo::command

// SPDX-License-Identifier: GPL-3.0-or-later
// The picture of a passage's music.
#pragma once

#include "core/base/fields.h"

#include <cstdint>
#include <string>
#include <string_view>

namespace piolo {

/// The picture of a passage's music, and the part of it that shows the passage.
struct Picture {
    static constexpr std::int32_t whole = 10'000;

    std::string file;      ///< its name in the folder's pictures/: 32 lower-case hex digits and .png or .jpg
    std::int32_t left = 0; ///< all four in ten-thousandths of the picture; left + width <= whole
    std::int32_t top = 0;  ///< top + height <= whole
    std::int32_t width = whole;  ///< at least 1
    std::int32_t height = whole; ///< at least 1
    bool operator==(const Picture&) const = default;
};

/// True for a name that a picture may have: no path leads out of the folder.
[[nodiscard]] bool isPictureName(std::string_view name) noexcept;
/// Named and cropped inside the bounds.
[[nodiscard]] bool isPicture(const Picture& picture) noexcept;

template <typename Fields>
void describe(Fields& in, Picture& picture) {
    in.field("file", picture.file);
    in.check(isPictureName(picture.file), "file");
    in.field("left", picture.left, Range{0, Picture::whole - 1});
    in.field("top", picture.top, Range{0, Picture::whole - 1});
    in.field("width", picture.width, Range{1, Picture::whole});
    in.field("height", picture.height, Range{1, Picture::whole});
    in.check(picture.left + picture.width <= Picture::whole, "width");
    in.check(picture.top + picture.height <= Picture::whole, "height");
}

} // namespace piolo

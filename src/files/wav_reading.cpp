// SPDX-License-Identifier: GPL-3.0-or-later
#include "files/byte_order.h"
#include "files/file_fault.h"
#include "files/wav.h"
#include "files/whole_file.h"

#include <bit>
#include <optional>
#include <string_view>

namespace piolo::files {

namespace {

using View = std::span<const std::uint8_t>;

constexpr std::uint32_t formatFloat = 3;
constexpr std::uint32_t extensibleTag = 0xFFFE;

std::string_view nameAt(View bytes, std::size_t at) {
    return {reinterpret_cast<const char*>(bytes.data()) + at, 4};
}

/// The content of the first chunk with that name, if it is complete.
std::optional<View> chunk(View bytes, std::string_view name) {
    std::size_t at = 12;
    while (bytes.size() - at >= 8) {
        const std::size_t size = getLittle(bytes, at + 4, 4);
        if (size > bytes.size() - at - 8) return std::nullopt;
        if (nameAt(bytes, at) == name) return bytes.subspan(at + 8, size);
        at += 8 + size + size % 2;
        if (at > bytes.size()) return std::nullopt;
    }
    return std::nullopt;
}

/// Empty if the format is float32 mono; otherwise what is wrong.
std::string_view wrongFormat(View format) {
    if (format.size() < 16) return "fmt";
    std::uint32_t tag = getLittle(format, 0, 2);
    if (tag == extensibleTag && format.size() >= 26) tag = getLittle(format, 24, 2);
    if (tag != formatFloat || getLittle(format, 14, 2) != 32) return "not float32";
    if (getLittle(format, 2, 2) != 1) return "not mono";
    const auto rate = getLittle(format, 4, 4);
    return rate == 0 || rate > 0x7FFF'FFFF ? "rate" : "";
}

Fault bad(const std::string& path, std::string_view what) {
    return {FaultNumber::badWav, {path, 0}, {std::string(what)}};
}

} // namespace

Result<Wav> readWav(const std::string& path) {
    const auto read = wholeFile(path);
    if (!read) return read.fault();
    const View bytes(reinterpret_cast<const std::uint8_t*>(read->data()), read->size());
    if (bytes.size() < 12 || nameAt(bytes, 0) != "RIFF" || nameAt(bytes, 8) != "WAVE")
        return bad(path, "not RIFF/WAVE");
    const auto format = chunk(bytes, "fmt ");
    if (!format) return bad(path, "fmt");
    if (const auto wrong = wrongFormat(*format); !wrong.empty()) return bad(path, wrong);
    const auto data = chunk(bytes, "data");
    if (!data || data->size() % 4 != 0) return bad(path, "data");
    Wav wav{static_cast<std::int32_t>(getLittle(*format, 4, 4)), {}};
    wav.samples.reserve(data->size() / 4);
    for (std::size_t at = 0; at < data->size(); at += 4)
        wav.samples.push_back(std::bit_cast<float>(getLittle(*data, at, 4)));
    return wav;
}

} // namespace piolo::files

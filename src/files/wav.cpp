// SPDX-License-Identifier: GPL-3.0-or-later
#include "files/wav.h"

#include "files/byte_order.h"

#include <array>
#include <bit>
#include <string_view>
#include <utility>

namespace piolo::files {

namespace {

constexpr std::uint32_t headerBytes = 58;
constexpr std::uint32_t bytesAfterSize = headerBytes - 8;
constexpr std::uint16_t floatTag = 3;

void putName(Bytes& out, std::string_view name) { out.insert(out.end(), name.begin(), name.end()); }

Bytes header(std::int32_t rate, std::uint32_t frames) {
    const auto perSecond = static_cast<std::uint32_t>(rate);
    Bytes out;
    putName(out, "RIFF");
    putLittle(out, bytesAfterSize + frames * 4, 4);
    putName(out, "WAVEfmt ");
    putLittle(out, 18, 4);
    putLittle(out, floatTag, 2);
    putLittle(out, 1, 2);
    putLittle(out, perSecond, 4);
    putLittle(out, perSecond * 4, 4);
    putLittle(out, 4, 2);
    putLittle(out, 32, 2);
    putLittle(out, 0, 2);
    putName(out, "fact");
    putLittle(out, 4, 4);
    putLittle(out, frames, 4);
    putName(out, "data");
    putLittle(out, frames * 4, 4);
    return out;
}

} // namespace

std::uint64_t mostWavFrames() noexcept { return (0xFFFF'FFFFULL - bytesAfterSize) / 4; }

struct WavWriter::Body {
    std::string path;
    std::uint64_t announced;
    std::uint64_t written = 0;
    AtomicFile file;
};

WavWriter::WavWriter(std::unique_ptr<Body> body) : body_(std::move(body)) {}
WavWriter::WavWriter(WavWriter&&) noexcept = default;
WavWriter& WavWriter::operator=(WavWriter&&) noexcept = default;
WavWriter::~WavWriter() = default;

Result<WavWriter> WavWriter::create(const std::string& path, std::int32_t rate, std::uint64_t frames) {
    if (frames > mostWavFrames()) return Fault{FaultNumber::tooLarge, {path, 0}, {std::to_string(frames)}};
    auto file = AtomicFile::create(path);
    if (!file) return file.fault();
    const Bytes head = header(rate, static_cast<std::uint32_t>(frames));
    if (auto written = file.value().write(std::as_bytes(std::span(head))); !written) return written.fault();
    return WavWriter(std::make_unique<Body>(Body{path, frames, 0, std::move(file).value()}));
}

Done WavWriter::write(std::span<const float> samples) {
    body_->written += samples.size();
    if constexpr (std::endian::native == std::endian::little)
        return body_->file.write(std::as_bytes(samples));
    Bytes bytes;
    bytes.reserve(samples.size() * 4);
    for (const float sample : samples) putLittle(bytes, std::bit_cast<std::uint32_t>(sample), 4);
    return body_->file.write(std::as_bytes(std::span(bytes)));
}

Done WavWriter::commit() {
    if (body_->written == body_->announced) return body_->file.commit();
    return Fault{FaultNumber::cannotWrite,
                 {body_->path, 0},
                 {std::to_string(body_->announced) + " frames announced, " + std::to_string(body_->written) +
                  " written"}};
}

} // namespace piolo::files

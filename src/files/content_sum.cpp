// SPDX-License-Identifier: GPL-3.0-or-later
#include "files/content_sum.h"

#include <algorithm>
#include <cstring>

namespace piolo::files {

namespace {

// Each step is reversible, so that two different words never give the same result.
std::uint64_t mixed(std::uint64_t sum, std::uint64_t word) noexcept {
    sum = (sum ^ word) * 0x9E37'79B9'7F4A'7C15ULL;
    return sum ^ (sum >> 29U);
}

} // namespace

void ContentSum::mix(const char* bytes) noexcept {
    for (std::size_t lane = 0; lane < lanes; ++lane) {
        std::uint64_t word = 0;
        std::memcpy(&word, bytes + lane * sizeof word, sizeof word);
        lanes_[lane] = mixed(lanes_[lane], word);
    }
}

void ContentSum::add(std::string_view bytes) noexcept {
    if (const std::size_t begun = length_ % stripe; begun > 0) {
        const std::size_t missing = std::min(stripe - begun, bytes.size());
        std::memcpy(begun_.data() + begun, bytes.data(), missing);
        length_ += missing;
        bytes.remove_prefix(missing);
        if (begun + missing < stripe) return;
        mix(begun_.data());
    }
    length_ += bytes.size();
    for (; bytes.size() >= stripe; bytes.remove_prefix(stripe)) mix(bytes.data());
    if (!bytes.empty()) std::memcpy(begun_.data(), bytes.data(), bytes.size());
}

std::uint64_t ContentSum::value() const noexcept {
    ContentSum whole = *this;
    std::fill(whole.begun_.begin() + static_cast<std::ptrdiff_t>(length_ % stripe), whole.begun_.end(), '\0');
    whole.mix(whole.begun_.data());
    std::uint64_t sum = length_;
    for (const std::uint64_t lane : whole.lanes_) sum = mixed(sum, lane);
    return sum;
}

std::uint64_t contentSum(std::string_view bytes) noexcept {
    ContentSum sum;
    sum.add(bytes);
    return sum.value();
}

} // namespace piolo::files

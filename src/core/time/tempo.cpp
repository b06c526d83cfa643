// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/time/tempo.h"

#include "core/base/digits.h"

namespace piolo {

namespace {

constexpr std::size_t mostWholeDigits = 6;
constexpr std::size_t mostDecimals = 3;

Fault badTempo(std::string_view text) { return {FaultNumber::badTempo, {}, {std::string(text)}}; }

} // namespace

Result<Tempo> Tempo::parse(std::string_view text) {
    const std::size_t point = text.find('.');
    const auto whole = digitsOf(text.substr(0, point), 1, mostWholeDigits);
    if (!whole) return badTempo(text);
    std::int64_t thousandths = *whole * 1000;
    if (point != std::string_view::npos) {
        const std::string_view decimals = text.substr(point + 1);
        const auto part = digitsOf(decimals, 1, mostDecimals);
        if (!part) return badTempo(text);
        std::int64_t scaled = *part;
        for (std::size_t place = decimals.size(); place < mostDecimals; ++place) scaled *= 10;
        thousandths += scaled;
    }
    const auto tempo = fromThousandths(thousandths);
    if (!tempo) return badTempo(text);
    return *tempo;
}

std::string Tempo::text() const {
    std::string shown = std::to_string(thousandths_ / 1000);
    const std::int32_t rest = thousandths_ % 1000;
    if (rest == 0) return shown;
    shown += '.';
    shown += padded(rest, mostDecimals);
    while (shown.back() == '0') shown.pop_back();
    return shown;
}

} // namespace piolo

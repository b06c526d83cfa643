// SPDX-License-Identifier: GPL-3.0-or-later
// Facts for a small practice folder: an invented band's passages.
#pragma once

#include "core/history/fact.h"
#include "journal/lines/fact_line.h"

#include <string>
#include <vector>

namespace piolo::test {

/// Device names are 32 hexadecimal digits.
inline const std::string stand(32, 'a');

/// Fact number `seq` of a device; its id is {9, seq}, its time `seq` minutes into 1 March 2026 in Lisbon.
inline Fact fact(std::uint64_t seq, FactBody body) {
    constexpr std::int64_t midnight = 1'772'323'200'000;
    const auto minutes = static_cast<std::int64_t>(seq) * 60'000;
    return {{9, seq}, stand, seq, midnight + minutes, {midnight + minutes, 0}, std::move(body)};
}

/// A passage's defining fact: 60 to 64, two clean runs climb by 4.
inline Fact defined(std::uint64_t seq, Id passage, const std::string& title) {
    Tempi tempi;
    tempi.rule = {StepKind::bpm, 4, 4, 2, Tempo::bpm(40), Tempo::bpm(64)};
    return fact(seq, PassageFact{passage, Title{title, {}}, Music{}, tempi});
}

inline Fact run(std::uint64_t seq, Id passage, int bpm, Mark mark, RunKind kind = RunKind::run) {
    const Reason reason = mark == Mark::voided ? Reason::stopped : Reason::none;
    return fact(seq, RunFact{passage, Tempo::bpm(bpm), mark, reason, kind, 0, {}});
}

/// The facts as the lines of a journal file.
inline std::string lines(const std::vector<Fact>& facts) {
    std::string text;
    for (const Fact& each : facts) text += journal::toLine(each) + '\n';
    return text;
}

} // namespace piolo::test

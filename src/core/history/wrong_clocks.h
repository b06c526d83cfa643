// SPDX-License-Identifier: GPL-3.0-or-later
// When things happened, if the clock of a device was wrong.
#pragma once

#include "core/history/fact.h"

#include <cstddef>
#include <cstdint>
#include <string>
#include <unordered_map>
#include <vector>

namespace piolo {

/// The last date that is not in the future for anybody: it is tomorrow already where others practise.
[[nodiscard]] Date latestPlausible(Date today) noexcept;
/// Whether its date counts: a run, a tempo or a run-through.
[[nodiscard]] bool isPractice(const FactBody& body) noexcept;

/// Facts of one device whose dates are in the future, close together. The dates are those recorded.
struct DatedAhead {
    std::string device;
    Date from;
    Date to;
    std::uint64_t until = 0; ///< the device's highest seq among them
    std::size_t count = 0;
    bool operator==(const DatedAhead&) const = default;
};

/// What clock facts say, in any order of arrival. Of one device's, only the newest `mostOfADevice` count.
class WrongClocks {
public:
    static constexpr std::size_t mostOfADevice = 100;

    void add(const Fact& fact, const ClockFact& said);
    /// When the fact happened: as recorded, unless a clock fact says otherwise.
    [[nodiscard]] Timestamp at(const Fact& fact) const;
    /// Grows with each fact that was added: what at() gave before may no longer hold.
    [[nodiscard]] std::size_t version() const noexcept { return version_; }

private:
    std::unordered_map<std::string, std::vector<Fact>> devices_; ///< in order
    std::size_t version_ = 0;
};

/// Gathers facts that happened after a date.
class AheadFacts {
public:
    void add(const Fact& fact);
    /// By device and date. A gap of more than `gapDays` between two dates of a device divides its facts: its
    /// clock was wrong twice.
    [[nodiscard]] std::vector<DatedAhead> groups() &&;

private:
    static constexpr std::int64_t gapDays = 60;
    std::vector<DatedAhead> each_;
};

} // namespace piolo

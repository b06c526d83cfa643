// SPDX-License-Identifier: GPL-3.0-or-later
// A practice folder of several devices in which everything possible has happened.
#pragma once

#include "../../core/history/random_history.h"
#include "../../files/scratch_folder.h"
#include "../lines/random_facts.h"

#include <map>
#include <string>
#include <vector>

namespace piolo::test {

inline const std::string testDevice(32, 'a');
inline const std::string pitDevice(32, 'b');
inline constexpr std::int64_t readAt = 2'000'000'000'000; // later than the orders of the facts in the folder

/// Random histories of several passages, and facts of every kind. Each fact is in the file of its device.
class RandomFolder {
public:
    explicit RandomFolder(unsigned seed, int passages = 3, int facts = 60);

    [[nodiscard]] const std::string& path() const { return folder_.path(); }
    [[nodiscard]] std::string journal(const std::string& name) const { return folder_ / ("journal/" + name); }
    [[nodiscard]] std::vector<std::string> files() const;
    [[nodiscard]] const std::vector<Fact>& facts() const { return facts_; }

    /// Facts that are in no file yet: about the same passages and facts, and about others.
    [[nodiscard]] std::vector<Fact> more();
    /// Appends them to the files of their devices.
    void append(const std::vector<Fact>& facts);
    /// Appends these bytes to a file.
    void appendBytes(const std::string& name, const std::string& bytes) const;

private:
    [[nodiscard]] std::vector<Fact> history(int facts);

    ScratchFolder folder_;
    testing::Dice dice_;
    RandomFacts random_;
    std::uint64_t made_ = 0;
    std::vector<Fact> facts_;
};

} // namespace piolo::test

// SPDX-License-Identifier: GPL-3.0-or-later
// Facts of every kind, generated from a seed.
#pragma once

#include "core/history/fact.h"

#include <random>
#include <string>

namespace piolo::test {

/// PIOLO_SEED from the environment, or a fixed one.
unsigned seedOfTest();

class RandomFacts {
public:
    explicit RandomFacts(unsigned seed) : random_(seed) {}

    std::int64_t number(std::int64_t least, std::int64_t most);
    bool coin() { return number(0, 1) == 1; }
    Id id();
    /// Letters of many scripts, quotes, backslashes and control characters.
    std::string text();
    Tempo tempo();
    /// A body of the kind at `index` of FactBody.
    FactBody body(std::size_t index);
    /// A complete fact of that kind.
    Fact fact(std::size_t index);

private:
    std::int32_t small(std::int64_t least, std::int64_t most) {
        return static_cast<std::int32_t>(number(least, most));
    }
    RunFact run();
    Music music();
    Tempi tempi();
    ClickPattern click();
    PassageFact passage();
    PieceFact piece();
    RunThroughFact runThrough();
    WrittenPitch pitch();
    Scale scale();
    ScaleSettings scales();
    PictureFact picture();
    FactBody clock();
    std::vector<Note> notes();
    SettingsFact settings();

    std::mt19937_64 random_;
};

} // namespace piolo::test

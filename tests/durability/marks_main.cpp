// SPDX-License-Identifier: GPL-3.0-or-later
// piolo_marks FOLDER STATE SEED: makes marks in a practice folder until it is killed. Writes to standard
// output, each line in one write: "open", and "saved ID" for each fact reported as saved.
#include "journal/folder/journal.h"

#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <random>
#include <string>
#include <thread>
#include <unistd.h>

using namespace piolo;

namespace {

void say(const std::string& line) {
    if (::write(STDOUT_FILENO, line.data(), line.size()) != static_cast<ssize_t>(line.size())) std::_Exit(3);
}

FactBody mark(std::mt19937_64& random, Id passage, Id last) {
    if (random() % 8 == 0 && !last.isNone()) return BackFact{passage, last};
    const bool clean = random() % 4 != 0;
    RunFact run{passage, Tempo::bpm(80), clean ? Mark::clean : Mark::missed, Reason::none, RunKind::run, 4000,
                {}};
    // Some long lines, so that a write does not always fit in one page.
    for (auto spots = random() % 3 == 0 ? random() % 900 : 0; spots > 0; --spots) run.spots.push_back({4, 2});
    return run;
}

} // namespace

int main(int count, char** words) {
    if (count != 4) {
        std::fputs("usage: piolo_marks FOLDER STATE SEED\n", stderr);
        return 2;
    }
    std::mt19937_64 random(std::strtoull(words[3], nullptr, 10));
    journal::JournalHearer hearer;
    hearer.saved = [](Id id) { say("saved " + id.text() + "\n"); };
    auto opened = journal::Journal::open({words[1], "5eed0000000000000000000000000001", words[2]}, hearer);
    if (!opened || opened.value()->readOnly()) return 1;
    say("open\n");
    Id last;
    for (;;) {
        for (auto burst = 1 + random() % 40; burst > 0; --burst)
            last = opened.value()->record(mark(random, {0, 1}, last)).id;
        std::this_thread::sleep_for(std::chrono::microseconds(random() % 3000));
    }
}

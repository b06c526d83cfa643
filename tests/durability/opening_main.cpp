// SPDX-License-Identifier: GPL-3.0-or-later
// piolo_opening FOLDER: opens a practice folder as the window does, folds it, and prints the cost: seconds,
// peak memory in kB, facts, faults.
#include "core/history/notebook.h"
#include "journal/folder/practice_folder.h"
#include "ten_years.h"

#include <chrono>
#include <cstdio>
#include <sys/resource.h>

using namespace piolo;

namespace {

double secondsSince(std::chrono::steady_clock::time_point start) {
    return std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count();
}

} // namespace

int main(int count, char** words) {
    if (count != 2) {
        std::fputs("usage: piolo_opening FOLDER\n", stderr);
        return 2;
    }
    const auto start = std::chrono::steady_clock::now();
    auto found = journal::readFolder(words[1], test::deviceOfTenYears());
    if (!found) return 1;
    const double read = secondsSince(start);
    const auto facts = found->facts.size();
    const Notebook notebook = fold(std::move(found.value().facts));
    std::size_t entries = 0;
    const auto passages = notebook.passages();
    for (const Id passage : passages) entries += notebook.passage(passage)->entries.size();
    const double all = secondsSince(start);
    rusage used{};
    getrusage(RUSAGE_SELF, &used);
    std::printf("read %.3f s, read and folded %.3f s, peak %ld kB, %zu facts, %zu faults, %zu passages, %zu "
                "entries\n",
                read, all, used.ru_maxrss, facts, found->faults.size(), passages.size(), entries);
    return 0;
}

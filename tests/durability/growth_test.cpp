// SPDX-License-Identifier: GPL-3.0-or-later
// What a longer journal costs, counted instead of timed.
#include "../files/scratch_folder.h"
#include "core/history/notebook.h"
#include "journal/folder/practice_folder.h"
#include "ten_years.h"

#include <atomic>
#include <cstdlib>
#include <doctest/doctest.h>
#include <new>

namespace {
std::atomic<long> allocations{0};
std::atomic<long> bytes{0};
} // namespace

void* operator new(std::size_t size) {
    ++allocations;
    bytes += static_cast<long>(size);
    if (void* given = std::malloc(size)) return given;
    throw std::bad_alloc();
}
void operator delete(void* given) noexcept { std::free(given); }
void operator delete(void* given, std::size_t) noexcept { std::free(given); }

using namespace piolo;
using piolo::test::ScratchFolder;

namespace {

struct Cost {
    long allocations = 0;
    long bytes = 0;
};

template <typename Work>
Cost costOf(Work work) {
    const Cost before{allocations, bytes};
    work();
    return {allocations - before.allocations, bytes - before.bytes};
}

/// A folder with `runs` runs, read and folded as the window does.
struct Opened {
    explicit Opened(long runs) {
        const test::TenYears years{runs, 1851};
        REQUIRE(test::writeTenYears(folder.path(), years));
        reading = costOf([&] {
            auto found = journal::readFolder(folder.path(), test::deviceOfTenYears());
            CHECK(found->faults.empty());
            facts = found->facts.size();
            notebook = fold(std::move(found.value().facts));
        });
        folding = costOf([&] { passages = notebook.passages(); });
    }

    /// Adds a run at the end of the newest passage.
    Cost oneMore() {
        const Timestamp now{test::endOf({}), 60};
        const RunFact run{passages.back(), Tempo::bpm(80), Mark::clean, {}, RunKind::run, 16'000, {}};
        const Fact fact{{77, 77}, test::deviceOfTenYears(), 1'000'000, now.utcMillis, now, run};
        return costOf([&] {
            notebook.add(fact);
            CHECK(notebook.passage(passages.back())->entries.back().id == fact.id);
        });
    }

    ScratchFolder folder;
    std::size_t facts = 0;
    Notebook notebook;
    std::vector<Id> passages;
    Cost reading;
    Cost folding;
};

} // namespace

TEST_CASE("ten years are the same bytes for the same seed, and different bytes for another") {
    const ScratchFolder a;
    const ScratchFolder b;
    const ScratchFolder c;
    REQUIRE(test::writeTenYears(a.path(), {500, 7}));
    REQUIRE(test::writeTenYears(b.path(), {500, 7}));
    REQUIRE(test::writeTenYears(c.path(), {500, 8}));
    const std::string name = "/journal/" + test::deviceOfTenYears() + "-2026.jsonl";
    CHECK(test::contentOf(a.path() + name) == test::contentOf(b.path() + name));
    CHECK(test::contentOf(a.path() + name) != test::contentOf(c.path() + name));
}

TEST_CASE(
    "a journal four times as long costs at most four times the memory and the pieces of memory to open") {
    const Opened small(5'000);
    const Opened large(20'000);
    CHECK(large.facts > 19'999);
    // A quarter more, because tables double: on which side of a doubling a size falls is chance.
    const auto grows = [](long cost, long fourfold) { return fourfold <= 4 * cost + cost; };
    CHECK(grows(small.reading.allocations, large.reading.allocations));
    CHECK(grows(small.reading.bytes, large.reading.bytes));
    CHECK(grows(small.folding.allocations, large.folding.allocations));
    CHECK(grows(small.folding.bytes, large.folding.bytes));
}

TEST_CASE("reading a run takes a few allocations, not a tree of them") {
    const Opened opened(10'000);
    CHECK(opened.reading.allocations < 6 * static_cast<long>(opened.facts));
}

TEST_CASE("one more run costs no more in a long journal than in a short one") {
    Opened small(2'000);
    Opened large(20'000);
    // The vectors of a passage may double at this very run; the number of its facts bounds that.
    CHECK(large.oneMore().allocations <= small.oneMore().allocations + 4);
}

TEST_CASE("passages that were removed are not folded to show the list") {
    Opened opened(20'000);
    const Cost rest = costOf([&] { CHECK(opened.notebook.passages(true).size() > opened.passages.size()); });
    // The entries of removed passages are only created now.
    CHECK(rest.bytes > static_cast<long>(100 * sizeof(Entry)));
    const Cost again = costOf([&] { CHECK_FALSE(opened.notebook.passages(true).empty()); });
    CHECK(again.bytes < rest.bytes / 4);
}

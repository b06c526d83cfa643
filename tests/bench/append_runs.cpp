// SPDX-License-Identifier: GPL-3.0-or-later
// Saves runs of a passage durably one by one: `append_runs journal|wal|delete|bare COUNT FOLDER`. `journal`
// is the practice log, `wal` and `delete` are SQLite with that journal mode, `bare` writes the same lines
// with write() and fdatasync() only. Prints the count and the nanoseconds.
#include "journal/folder/journal.h"
#include "journal/lines/fact_line.h"
#include "sqlite_log.h"
#include "stopwatch.h"

#include <cstdlib>
#include <fcntl.h>
#include <string_view>
#include <unistd.h>

namespace {

using namespace piolo;

const std::string device(32, 'c');
constexpr int patience = 60'000; // milliseconds

[[noreturn]] void fail(const char* what) {
    std::perror(what);
    std::exit(1);
}

RunFact runNumbered(unsigned number) {
    RunFact run{
        {0, 0xa001}, Tempo::bpm(static_cast<int>(80 + number % 40)), Mark::clean, {}, RunKind::run, 16'000,
        {}};
    if (number % 5 != 4) return run;
    run.mark = Mark::missed;
    run.spots = {{static_cast<std::int32_t>(1 + number % 7), 2}};
    return run;
}

/// Numbers and dates the same facts for the variants that have no journal to do so.
class Scribe {
public:
    Fact fact(unsigned number) {
        const Timestamp at = clock_->now();
        return {randomness_->id(), device, number + 1, at.utcMillis + number, at, runNumbered(number)};
    }

private:
    std::shared_ptr<journal::Clock> clock_ = journal::systemClock();
    std::shared_ptr<journal::Randomness> randomness_ = journal::systemRandomness();
};

void toJournal(unsigned count, const std::string& folder) {
    auto opened = journal::Journal::open({folder, device, folder + "/state"}, {});
    if (!opened) fail("open");
    auto& log = **opened;
    bench::timed(count, [&] {
        for (unsigned i = 0; i < count; ++i) {
            log.record(runNumbered(i));
            if (!log.flush(patience)) fail("flush");
        }
    });
}

void toSqlite(unsigned count, const std::string& folder, const std::string& mode) {
    bench::SqliteLog log(folder + "/log.sqlite", mode);
    Scribe scribe;
    bench::timed(count, [&] {
        for (unsigned i = 0; i < count; ++i) log.add(scribe.fact(i));
    });
}

void toFile(unsigned count, const std::string& folder) {
    const int file = ::open((folder + "/bare").c_str(), O_WRONLY | O_APPEND | O_CREAT, 0666);
    if (file < 0) fail("open");
    Scribe scribe;
    bench::timed(count, [&] {
        for (unsigned i = 0; i < count; ++i) {
            const std::string line = journal::toLine(scribe.fact(i)) + "\n";
            if (::write(file, line.data(), line.size()) != static_cast<ssize_t>(line.size())) fail("write");
            if (::fdatasync(file) != 0) fail("fdatasync");
        }
    });
    ::close(file);
}

} // namespace

int main(int argc, char** argv) {
    if (argc != 4) return 2;
    const std::string who = argv[1];
    const auto count = static_cast<unsigned>(std::strtoul(argv[2], nullptr, 10));
    const std::string folder = argv[3];
    if (who == "journal")
        toJournal(count, folder);
    else if (who == "bare")
        toFile(count, folder);
    else
        toSqlite(count, folder, who);
    return 0;
}

// SPDX-License-Identifier: GPL-3.0-or-later
// Opens a practice log and folds it: `open_journal journal|bytes FOLDER` or `open_journal
// sqlite|fill|checkpoint|keep FOLDER BASE`. `fill` puts the folder's facts into a new SQLite database,
// `sqlite` opens that database; `keep` writes a checkpoint, `checkpoint` opens the folder with it; `bytes`
// only reads the journal's bytes. Prints the number of facts (or bytes) and the nanoseconds.
#include "core/history/notebook.h"
#include "journal/checkpoint/checkpoint.h"
#include "journal/folder/own_file.h"
#include "journal/folder/practice_folder.h"
#include "sqlite_log.h"
#include "stopwatch.h"

#include <chrono>
#include <cstdint>
#include <cstdlib>
#include <fcntl.h>
#include <filesystem>
#include <string_view>
#include <unistd.h>

namespace {

using namespace piolo;

[[noreturn]] void fail(const char* what) {
    std::perror(what);
    std::exit(1);
}

const std::string device = "be0000000000000000000000000000ac";

std::vector<Fact> factsOf(const std::string& folder) {
    auto read = journal::readFolder(folder, device);
    if (!read || !read->faults.empty()) fail("the folder has faults");
    return std::move(std::move(read).value().facts);
}

/// The work that the window does when it opens: the records of all passages.
std::size_t entriesOf(const Notebook& notebook) {
    std::size_t entries = 0;
    for (const Id& id : notebook.passages(true))
        if (const auto* record = notebook.passage(id)) entries += record->entries.size();
    return entries;
}

std::uint64_t bytesOf(const std::filesystem::path& path) {
    std::vector<char> piece(1U << 20U);
    const int file = ::open(path.c_str(), O_RDONLY);
    if (file < 0) fail("open");
    std::uint64_t all = 0;
    ssize_t got = 0;
    while ((got = ::read(file, piece.data(), piece.size())) > 0) all += static_cast<std::uint64_t>(got);
    ::close(file);
    return all;
}

template <typename Load>
void openAndFold(Load load) {
    std::size_t entries = 0;
    bench::timed(1, [&] { entries = entriesOf(load()); });
    std::printf("%zu entries\n", entries);
}

Notebook withCheckpoint(const std::string& folder, const std::string& file) {
    const auto known = journal::loadCheckpoint(file, device);
    if (!known) fail("no checkpoint");
    auto found = journal::readOn(folder, device, *known);
    if (!found) fail("the checkpoint does not fit");
    Notebook notebook(found->stored);
    notebook.addAll(std::move(found->facts));
    return notebook;
}

void fill(const std::string& folder, const std::string& base) {
    bench::SqliteLog log(base, "wal");
    log.begin();
    for (const Fact& fact : factsOf(folder)) log.add(fact);
    log.commit();
}

} // namespace

int main(int argc, char** argv) {
    if (argc < 3) return 2;
    const std::string_view who = argv[1];
    const std::string folder = argv[2];
    const std::string base = argc > 3 ? argv[3] : "";
    if (who == "journal") openAndFold([&] { return fold(factsOf(folder)); });
    if (who == "sqlite") openAndFold([&] { return fold(bench::SqliteLog(base, "wal").all()); });
    if (who == "checkpoint") openAndFold([&] { return withCheckpoint(folder, base); });
    if (who == "keep" && !journal::writeCheckpoint(base, folder, device)) fail("keep");
    if (who == "fill") fill(folder, base);
    if (who == "bytes")
        bench::timed(1, [&] {
            for (const auto& entry : std::filesystem::directory_iterator(journal::journalFolder(folder)))
                bytesOf(entry.path());
        });
    return 0;
}

// SPDX-License-Identifier: GPL-3.0-or-later
#include "journal/folder/practice_folder.h"

#include "core/base/id_index.h"
#include "files/file_fault.h"
#include "journal/folder/journal_page.h"
#include "journal/folder/known_folder.h"
#include "journal/folder/line_source.h"
#include "journal/folder/own_file.h"
#include "journal/lines/fact_line.h"

#include <algorithm>
#include <climits>
#include <deque>
#include <filesystem>
#include <functional>
#include <future>
#include <iterator>
#include <optional>
#include <thread>
#include <utility>

namespace piolo::journal {

namespace {

namespace fs = std::filesystem;

constexpr std::uintmax_t mostExpected = 1'000'000;
constexpr std::uintmax_t worthAThread = 1'000'000; ///< bytes

/// Collects the content of several pages in the order in which they are added.
class Gathering {
public:
    /// Reserves room for the usual content of that many bytes.
    void expect(std::uintmax_t bytes) {
        const auto facts = static_cast<std::size_t>(std::min(bytes / usualLine, mostExpected));
        contents_.facts.reserve(facts);
        byId_.reserve(facts);
    }

    /// The page of a file, after its known faults.
    void add(JournalPage page, const std::vector<Fault>& known = {}) {
        highest_.raiseTo(page.highest);
        contents_.files.push_back({page.path, page.extent});
        for (Fault fault : known) {
            fault.location.file = page.path;
            contents_.faults.push_back(std::move(fault));
        }
        if (page.unclosed) contents_.unclosed.push_back(page.path);
        for (std::size_t i = 0; i < page.facts.size(); ++i) {
            byId_.expect(page.facts[std::min(i + ahead, page.facts.size() - 1)].id);
            keep(page, i);
        }
        const auto line = [](const Fault& fault) {
            return fault.location.line == 0 ? LONG_MAX : fault.location.line;
        };
        std::stable_sort(page.faults.begin(), page.faults.end(),
                         [&](const Fault& a, const Fault& b) { return line(a) < line(b); });
        limitFaults(page.faults, page.moreFaults);
        std::move(page.faults.begin(), page.faults.end(), std::back_inserter(contents_.faults));
    }

    void add(const KnownFolder& known) {
        highest_.raiseTo(known.highest);
        contents_.stored = known.history;
    }

    FolderContents contents() && {
        contents_.highest = highest_;
        return std::move(contents_);
    }

private:
    static constexpr std::size_t ahead = 8; ///< look-ups in progress while one fact is processed

    void keep(JournalPage& page, std::size_t i) {
        Fact& fact = page.facts[i];
        const auto [first, isNew] = byId_.keep(fact.id, static_cast<std::uint32_t>(contents_.facts.size()));
        if (!isNew && contents_.facts[first] != fact)
            page.faults.push_back({FaultNumber::repeatedId, {page.path, page.lines[i]}, {fact.id.text()}});
        else
            contents_.facts.push_back(std::move(fact));
    }

    HighestPositions highest_;
    FolderContents contents_;
    IdIndex byId_;
};

/// Pages in order of path. Large files are read concurrently, as many as there are processors.
class PagesAhead {
public:
    PagesAhead(std::vector<std::string> paths, std::string device)
        : paths_(std::move(paths)), known_(paths_.size()), device_(std::move(device)) {}

    /// Call before the first next().
    void setKnown(std::size_t file, const ReadExtent& extent) { known_[file] = extent; }

    /// Nothing after the last page.
    std::optional<JournalPage> next() {
        const auto atOnce = std::max<std::size_t>(std::thread::hardware_concurrency(), 1);
        while (begun_ < paths_.size() && pages_.size() < atOnce) begin(begun_++);
        if (pages_.empty()) return std::nullopt;
        auto page = pages_.front().get();
        pages_.pop_front();
        return page;
    }

private:
    void begin(std::size_t file) {
        const std::string& path = paths_[file];
        std::error_code missing;
        const auto bytes = fs::file_size(path, missing);
        const bool large = !missing && bytes >= worthAThread;
        // With both policies allowed, a machine without free threads reads the page on demand.
        const auto when = large ? std::launch::async | std::launch::deferred : std::launch::deferred;
        pages_.push_back(std::async(when, readPage, path, std::cref(device_), known_[file]));
    }

    std::vector<std::string> paths_;
    std::vector<std::optional<ReadExtent>> known_;
    std::string device_;
    std::size_t begun_ = 0;
    std::deque<std::future<JournalPage>> pages_;
};

/// For each path, the known file with its name, or null.
std::vector<const KnownFile*> inTheirPlaces(const std::vector<KnownFile>& files,
                                            const std::vector<std::string>& paths) {
    std::vector<const KnownFile*> found;
    for (const auto& path : paths) {
        const auto name = fs::path(path).filename().string();
        const auto file = std::find_if(files.begin(), files.end(),
                                       [&](const KnownFile& known) { return known.name == name; });
        found.push_back(file == files.end() ? nullptr : &*file);
    }
    return found;
}

/// Only all facts together decide the fate of a repeated id.
bool repeats(const JournalPage& page, const StoredHistory& history) {
    return std::any_of(page.facts.begin(), page.facts.end(),
                       [&](const Fact& fact) { return history.knows(fact.id); });
}

std::uintmax_t bytesOf(const std::vector<std::string>& paths) {
    std::uintmax_t bytes = 0;
    for (const auto& path : paths) {
        std::error_code missing;
        const auto size = fs::file_size(path, missing);
        if (!missing) bytes += size;
    }
    return bytes;
}

} // namespace

Result<std::vector<std::string>> journalFiles(const std::string& folder) {
    std::vector<std::string> paths;
    std::error_code error;
    if (!fs::exists(folder, error)) return error ? files::readFault(folder, error.value()) : Result(paths);
    auto entry = fs::directory_iterator(folder, error);
    for (; !error && entry != fs::directory_iterator(); entry.increment(error))
        if (entry->path().extension() == ".jsonl") paths.push_back(entry->path().string());
    if (error) return files::readFault(folder, error.value());
    std::sort(paths.begin(), paths.end());
    return paths;
}

Result<FolderContents> readFolder(const std::string& folder, const std::string& device,
                                  const std::stop_token& stop) {
    std::error_code error;
    const auto status = fs::status(folder, error);
    if (!fs::exists(status)) return files::readFault(folder, error ? error.value() : ENOENT);
    if (!fs::is_directory(status)) return Fault{FaultNumber::notAPracticeFolder, {folder, 0}, {}};
    const auto paths = journalFiles(journalFolder(folder));
    if (!paths) return paths.fault();
    Gathering gathering;
    gathering.expect(bytesOf(*paths));
    PagesAhead pages(*paths, device);
    while (auto page = stop.stop_requested() ? std::nullopt : pages.next()) gathering.add(*std::move(page));
    return std::move(gathering).contents();
}

std::optional<FolderContents> readOn(const std::string& folder, const std::string& device,
                                     const KnownFolder& known) {
    const auto paths = journalFiles(journalFolder(folder));
    if (!paths) return std::nullopt;
    const std::vector<const KnownFile*> files = inTheirPlaces(known.files, *paths);
    PagesAhead pages(*paths, device);
    std::size_t found = 0;
    for (std::size_t i = 0; i < files.size(); ++i)
        if (files[i] != nullptr) {
            pages.setKnown(i, files[i]->extent);
            ++found;
        }
    if (found != known.files.size()) return std::nullopt;
    Gathering gathering;
    gathering.add(known);
    for (const KnownFile* file : files) {
        auto page = pages.next();
        if (!page || page->changed || repeats(*page, *known.history)) return std::nullopt;
        if (file != nullptr && !page->faults.empty() &&
            file->faults.size() + page->faults.size() > mostFaultsInFile)
            return std::nullopt;
        gathering.add(*std::move(page), file == nullptr ? std::vector<Fault>{} : file->faults);
    }
    return std::move(gathering).contents();
}

Result<FolderContents> readJournalFile(const std::string& path, const std::string& device) {
    auto source = LineSource::open(path, longestLine);
    if (!source) return source.fault();
    Gathering gathering;
    gathering.add(readPage(path, device));
    return std::move(gathering).contents();
}

} // namespace piolo::journal

// SPDX-License-Identifier: GPL-3.0-or-later
#include "journal/practice_folder.h"

#include "core/id_index.h"
#include "files/file_fault.h"
#include "journal/fact_line.h"
#include "journal/line_head.h"
#include "journal/line_source.h"
#include "journal/own_file.h"

#include <algorithm>
#include <filesystem>
#include <utility>

namespace piolo::journal {

namespace {

namespace fs = std::filesystem;

constexpr std::int64_t dayMillis = 86'400'000;
constexpr std::uintmax_t usualLine = 270;
constexpr std::uintmax_t mostExpected = 1'000'000;

/// Gathers what several files hold.
class Gathering {
public:
    Gathering(std::string device, std::int64_t nowMillis)
        : device_(std::move(device)), latestOrder_(nowMillis + dayMillis) {}

    /// Room for what so many bytes usually hold.
    void expect(std::uintmax_t bytes) {
        const auto facts = static_cast<std::size_t>(std::min(bytes / usualLine, mostExpected));
        contents_.facts.reserve(facts);
        byId_.reserve(facts);
    }

    void readFile(const std::string& path) {
        auto source = LineSource::open(path, longestLine);
        if (!source) return contents_.faults.push_back(source.fault());
        place_.file = path;
        while (const auto line = source.value().next()) take(*line);
        if (source.value().fault()) contents_.faults.push_back(*source.value().fault());
    }

    FolderContents contents() && { return std::move(contents_); }

private:
    void take(const SourceLine& line) {
        place_.line = line.number;
        LineHead head;
        auto fact = line.tooLong ? Result<Fact>(Fault{FaultNumber::lineTooLong, place_, {}})
                                 : readLine(line.text, place_, head);
        if (!line.closed && isOwnFile(place_.file, device_)) contents_.unclosed.push_back(place_.file);
        note(head);
        if (fact)
            keep(std::move(fact).value());
        else
            contents_.faults.push_back(line.closed ? fact.fault() : asTorn(fact.fault()));
    }

    /// A line that breaks off in the middle is torn; one that is whole JSON has its own fault.
    static Fault asTorn(Fault fault) {
        const auto broken = {FaultNumber::badJson, FaultNumber::notUtf8, FaultNumber::lineTooLong};
        if (std::find(broken.begin(), broken.end(), fault.number) == broken.end()) return fault;
        return {FaultNumber::tornLine, fault.place, {}};
    }

    void note(const LineHead& head) {
        if (head.order <= latestOrder_) contents_.highestOrder = std::max(contents_.highestOrder, head.order);
        if (head.device != device_) return;
        contents_.highestOwnOrder = std::max(contents_.highestOwnOrder, head.order);
        contents_.highestSeq = std::max(contents_.highestSeq, head.seq);
    }

    void keep(Fact fact) {
        const auto [first, isNew] = byId_.keep(fact.id, static_cast<std::uint32_t>(contents_.facts.size()));
        if (!isNew && contents_.facts[first] != fact)
            contents_.faults.push_back({FaultNumber::repeatedId, place_, {fact.id.text()}});
        else
            contents_.facts.push_back(std::move(fact));
    }

    std::string device_;
    std::int64_t latestOrder_;
    Place place_; ///< of the line that is being read
    FolderContents contents_;
    IdIndex byId_;
};

/// The names of the journal's files, sorted, so that every machine reads them in the same order.
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

Result<FolderContents> readFolder(const std::string& folder, const std::string& device,
                                  std::int64_t nowMillis) {
    std::error_code error;
    const auto status = fs::status(folder, error);
    if (!fs::exists(status)) return files::readFault(folder, error ? error.value() : ENOENT);
    if (!fs::is_directory(status)) return Fault{FaultNumber::notAPracticeFolder, {folder, 0}, {}};
    const auto paths = journalFiles(journalFolder(folder));
    if (!paths) return paths.fault();
    Gathering gathering(device, nowMillis);
    gathering.expect(bytesOf(*paths));
    for (const auto& path : *paths) gathering.readFile(path);
    return std::move(gathering).contents();
}

Result<FolderContents> readJournalFile(const std::string& path, const std::string& device,
                                       std::int64_t nowMillis) {
    auto source = LineSource::open(path, longestLine);
    if (!source) return source.fault();
    Gathering gathering(device, nowMillis);
    gathering.readFile(path);
    return std::move(gathering).contents();
}

} // namespace piolo::journal

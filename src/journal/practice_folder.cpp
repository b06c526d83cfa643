// SPDX-License-Identifier: GPL-3.0-or-later
#include "journal/practice_folder.h"

#include "files/file_fault.h"
#include "journal/fact_line.h"
#include "journal/line_head.h"
#include "journal/line_source.h"
#include "journal/own_file.h"

#include <algorithm>
#include <filesystem>
#include <unordered_map>
#include <utility>

namespace piolo::journal {

namespace {

namespace fs = std::filesystem;

constexpr std::int64_t dayMillis = 86'400'000;

/// Gathers what several files hold.
class Gathering {
public:
    Gathering(std::string device, std::int64_t nowMillis)
        : device_(std::move(device)), latestOrder_(nowMillis + dayMillis) {}

    void readFile(const std::string& path) {
        auto source = LineSource::open(path, longestLine);
        if (!source) return contents_.faults.push_back(source.fault());
        while (const auto line = source.value().next()) take(*line, path);
        if (source.value().fault()) contents_.faults.push_back(*source.value().fault());
    }

    FolderContents contents() && { return std::move(contents_); }

private:
    void take(const SourceLine& line, const std::string& path) {
        const Place place{path, line.number};
        LineHead head;
        auto fact = line.tooLong ? Result<Fact>(Fault{FaultNumber::lineTooLong, place, {}})
                                 : readLine(line.text, place, head);
        if (!line.closed && isOwnFile(path, device_)) contents_.unclosed.push_back(path);
        note(head);
        if (fact)
            keep(std::move(fact).value(), place);
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

    void keep(Fact fact, const Place& place) {
        const auto [first, isNew] = byId_.try_emplace(fact.id, contents_.facts.size());
        if (!isNew && contents_.facts[first->second] != fact)
            contents_.faults.push_back({FaultNumber::repeatedId, place, {fact.id.text()}});
        else
            contents_.facts.push_back(std::move(fact));
    }

    std::string device_;
    std::int64_t latestOrder_;
    FolderContents contents_;
    std::unordered_map<Id, std::size_t> byId_;
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

// SPDX-License-Identifier: GPL-3.0-or-later
#include "journal/folder/journal_page.h"

#include "journal/folder/line_source.h"
#include "journal/folder/own_file.h"
#include "journal/lines/fact_line.h"
#include "journal/lines/line_head.h"

#include <algorithm>
#include <filesystem>
#include <utility>

namespace piolo::journal {

namespace {

constexpr std::uintmax_t mostExpectedInPage = 100'000;

/// A line that ends in the middle is torn; if it is complete JSON, it has a fault of its own.
Fault asTorn(Fault fault) {
    const auto broken = {FaultNumber::badJson, FaultNumber::notUtf8, FaultNumber::lineTooLong};
    if (std::find(broken.begin(), broken.end(), fault.number) == broken.end()) return fault;
    return {FaultNumber::tornLine, fault.location, {}};
}

/// Reads one file line by line into its page.
class PageReader {
public:
    PageReader(const std::string& path, const std::string& device) : device_(device) {
        location_.file = page_.path = path;
    }

    JournalPage read(const std::optional<ReadExtent>& known) && {
        auto source = LineSource::open(location_.file, longestLine);
        if (!source) {
            page_.changed = known.has_value();
            page_.faults.push_back(source.fault());
            return std::move(page_);
        }
        page_.changed = known && !source.value().skip(*known);
        if (page_.changed) return std::move(page_);
        if (!known) expect();
        while (const auto line = source.value().next()) take(*line);
        if (source.value().fault()) page_.faults.push_back(*source.value().fault());
        page_.extent = source.value().extent();
        return std::move(page_);
    }

private:
    /// Reserves room for the usual content of the file.
    void expect() {
        std::error_code unknown;
        const auto bytes = std::filesystem::file_size(location_.file, unknown);
        if (unknown) return;
        const auto facts = static_cast<std::size_t>(std::min(bytes / usualLine, mostExpectedInPage));
        page_.facts.reserve(facts);
        page_.lines.reserve(facts);
    }

    void take(const SourceLine& line) {
        location_.line = line.number;
        LineHead head;
        auto fact = line.tooLong ? Result<Fact>(Fault{FaultNumber::lineTooLong, location_, {}})
                                 : readLine(line.text, location_, head);
        page_.unclosed = !line.closed && isOwnFile(location_.file, device_);
        note(head);
        if (!fact) return keep(line.closed ? fact.fault() : asTorn(fact.fault()));
        page_.facts.push_back(std::move(fact).value());
        page_.lines.push_back(line.number);
    }

    void keep(Fault fault) {
        if (page_.faults.size() < mostFaultsInFile)
            page_.faults.push_back(std::move(fault));
        else
            ++page_.moreFaults;
    }

    void note(const LineHead& head) {
        page_.highest.raiseTo({head.order, head.device == device_ ? head.seq : 0});
    }

    const std::string& device_;
    FaultLocation location_; ///< of the current line
    JournalPage page_;
};

} // namespace

void HighestPositions::raiseTo(const HighestPositions& other) noexcept {
    order = std::max(order, other.order);
    ownSeq = std::max(ownSeq, other.ownSeq);
}

void limitFaults(std::vector<Fault>& faults, std::size_t more) {
    if (faults.size() > mostFaultsInFile) {
        more += faults.size() - mostFaultsInFile;
        faults.resize(mostFaultsInFile);
    }
    if (more == 0) return;
    const std::string file = faults.front().location.file;
    faults.push_back({FaultNumber::moreFaults, {file, 0}, {std::to_string(more)}});
}

JournalPage readPage(const std::string& path, const std::string& device,
                     const std::optional<ReadExtent>& known) {
    return PageReader(path, device).read(known);
}

} // namespace piolo::journal

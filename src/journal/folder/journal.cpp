// SPDX-License-Identifier: GPL-3.0-or-later
#include "journal/folder/journal.h"

#include "files/file_fault.h"
#include "journal/checkpoint/checkpoint.h"
#include "journal/checkpoint/checkpoint_writer.h"
#include "journal/folder/fact_writer.h"
#include "journal/folder/kept_lines.h"
#include "journal/folder/known_place.h"
#include "journal/folder/made_folder.h"
#include "journal/folder/own_file.h"
#include "journal/lines/fact_line.h"
#include "journal/lines/sequence.h"

#include <mutex>
#include <optional>
#include <utility>

namespace piolo::journal {

namespace {

Timestamp endOf(Date day, std::int16_t offsetMinutes) {
    constexpr std::int64_t dayMillis = 86'400'000;
    constexpr std::int64_t minuteMillis = 60'000;
    return {(day.daysSince1970() + 1) * dayMillis - 1 - offsetMinutes * minuteMillis, offsetMinutes};
}

bool mayBeRead(const Fault& fault) {
    return fault.number == FaultNumber::folderInUse || fault.number == FaultNumber::noLocks;
}

} // namespace

struct Journal::Body {
    JournalLocation location;
    JournalPorts ports;
    FolderContents contents;
    std::mutex mutex; ///< makes numbering, timestamp and queueing one step
    Sequence sequence;
    std::unique_ptr<FactWriter> writer; ///< null if read-only
    std::size_t readByLine = 0;         ///< the number of facts that were not in a checkpoint
    std::optional<CheckpointWriter> checkpointing;
    ino_t home = 0; ///< the inode of the journal folder
    Fault readOnlyReason;

    Body(JournalLocation where, JournalPorts with) : location(std::move(where)), ports(std::move(with)) {}

    /// Creates the journal folder if it is missing; from then on nothing is written anywhere else.
    Done makeHome() {
        const std::string folder = journalFolder(location.folder);
        if (auto made = makeFolder(folder); !made) return made;
        if (const int error = ports.opener->stayIn(folder)) return files::writeFault(folder, error);
        home = inodeOf(folder);
        return done();
    }
    Done read() {
        auto known = readWithCheckpoint();
        auto found = known ? Result(*std::move(known)) : readFolder(location.folder, location.device);
        if (!found) return found.fault();
        contents = std::move(found).value();
        sequence = Sequence(contents);
        readByLine = contents.facts.size();
        return done();
    }

    [[nodiscard]] std::string checkpoint() const {
        return checkpointFile(location.folder, location.device, location.cacheDir);
    }
    [[nodiscard]] std::optional<FolderContents> readWithCheckpoint() const {
        if (location.cacheDir.empty()) return std::nullopt;
        const auto known = loadCheckpoint(checkpoint(), location.device);
        return known ? readOn(location.folder, location.device, *known) : std::nullopt;
    }
};

Journal::Journal(std::unique_ptr<Body> body) : body_(std::move(body)) {}

// A fault here can be reported to nobody any more.
Journal::~Journal() {
    if (body_->writer) static_cast<void>(KeptLines(body_->location).keep(body_->writer->end(), body_->home));
}

Result<std::unique_ptr<Journal>> Journal::open(JournalLocation location, JournalHearer hearer,
                                               JournalPorts ports) {
    auto lock = FolderLock::take(location.folder, location.device, location.stateDir, ports.lock);
    const bool writes = lock.ok();
    if (!writes && !mayBeRead(lock.fault())) return lock.fault();
    auto body = std::make_unique<Body>(std::move(location), std::move(ports));
    if (!writes) body->readOnlyReason = lock.fault();
    if (writes) {
        if (auto made = body->makeHome(); !made) return made.fault();
        // Facts of an earlier start come before any new ones; if it fails, they stay where they are.
        if (auto restored = KeptLines(body->location).restore(*body->ports.opener);
            !restored && hearer.trouble)
            hearer.trouble(restored.fault());
    }
    // Read only after taking the lock, so that the last lines of a previous writer are included.
    if (auto read = body->read(); !read) return read.fault();
    if (writes) {
        const auto& unclosed = body->contents.unclosed;
        body->writer =
            std::make_unique<FactWriter>(std::move(lock).value(), unclosed, std::move(hearer), body->ports);
        if (!unclosed.empty()) body->writer->flush(body->ports.pauses.farewell);
    }
    return std::unique_ptr<Journal>(new Journal(std::move(body)));
}

void Journal::keepCheckpoint() {
    Body& own = *body_;
    const bool useful = !own.location.cacheDir.empty() && own.readByLine >= worthACheckpoint;
    if (readOnly() || !useful || own.checkpointing) return;
    own.checkpointing.emplace(CheckpointTask{own.checkpoint(), own.location.folder, own.location.device},
                              own.ports.pauses.farewell);
}

const FolderContents& Journal::contents() const { return body_->contents; }
std::vector<Fact> Journal::takeFacts() { return std::exchange(body_->contents.facts, {}); }
bool Journal::readOnly() const { return body_->writer == nullptr; }
const Fault& Journal::readOnlyReason() const { return body_->readOnlyReason; }
const std::string& Journal::device() const { return body_->location.device; }
Timestamp Journal::now() const { return body_->ports.clock->now(); }

Fact Journal::record(FactBody body) { return place(std::move(body), std::nullopt); }
Fact Journal::recordOn(Date day, FactBody body) { return place(std::move(body), day); }

Fact Journal::place(FactBody factBody, std::optional<Date> day) {
    Fact fact;
    fact.device = body_->location.device;
    fact.body = std::move(factBody);
    const std::lock_guard lock(body_->mutex);
    fact.id = body_->ports.randomness->id();
    fact.at = body_->ports.clock->now();
    const auto [seq, order] = body_->sequence.next(fact.at.utcMillis);
    if (day && *day < fact.at.date()) fact.at = endOf(*day, fact.at.offsetMinutes);
    fact.seq = seq;
    fact.order = order;
    if (body_->writer)
        body_->writer->add(
            {fact.id, ownFile(body_->location.folder, fact.device, fact.at.date()), toLine(fact) + "\n"});
    return fact;
}

std::size_t Journal::unsaved() const { return body_->writer ? body_->writer->unsaved() : 0; }
bool Journal::flush(int millis) { return !body_->writer || body_->writer->flush(millis); }

} // namespace piolo::journal

// SPDX-License-Identifier: GPL-3.0-or-later
// The writing side of a practice folder: facts get their id and position at once and are written by a
// separate thread.
#pragma once

#include "core/base/result.h"
#include "core/history/fact.h"
#include "journal/folder/ports.h"
#include "journal/folder/practice_folder.h"

#include <functional>
#include <memory>
#include <optional>
#include <string>

namespace piolo::journal {

struct JournalLocation {
    std::string folder;     ///< the practice folder; created if missing
    std::string device;     ///< this device's id: 32 hexadecimal digits
    std::string stateDir;   ///< where locks are kept, outside the folder; created if missing
    std::string cacheDir{}; ///< where checkpoints are kept, outside the folder; empty: nowhere
};

struct JournalPorts {
    std::shared_ptr<Clock> clock = systemClock();
    std::shared_ptr<Randomness> randomness = systemRandomness();
    std::shared_ptr<AppendOpener> opener = posixOpener();
    Pauses pauses;
    LockCall lock = systemLock();
};

/// Callbacks from the writer, on the writer thread. Set them before open(); they must not wait for the thread
/// that destroys the journal. None is called after the destructor has returned.
struct JournalHearer {
    std::function<void(Id)> saved;             ///< the fact is on disk (fdatasync has returned)
    std::function<void(const Fault&)> trouble; ///< a write failed (cannotWrite, diskFull), reported once
                                               ///< until a write succeeds; the facts are kept and retried. Or
                                               ///< a line was written that is too long to be read back
                                               ///< (lineTooLong)
};

/// An open practice folder. record() may be called from any thread. Only open(), flush() and the destructor
/// wait for the disk; after Pauses::farewell, the destructor puts unsaved facts into the state directory, and
/// the next open() of this folder writes them first.
class Journal {
public:
    /// Reads the folder, takes the lock (one writer per folder and device; if another process holds it, or
    /// the disk has no locks, the journal is read-only) and closes a torn last line of its own. Faults:
    /// cannotMakeFolder, cannotRead, cannotWrite.
    static Result<std::unique_ptr<Journal>> open(JournalLocation location, JournalHearer hearer,
                                                 JournalPorts ports = {});
    ~Journal();
    Journal(const Journal&) = delete;
    Journal& operator=(const Journal&) = delete;

    /// Starts writing a checkpoint on another thread if many facts had to be read line by line. A failure
    /// only makes the next open() slower. The destructor stops it early and waits for it no longer than
    /// Pauses::farewell.
    void keepCheckpoint();

    [[nodiscard]] const FolderContents& contents() const;
    /// Moves the facts out of contents(), so that ten years of them are not in memory twice.
    [[nodiscard]] std::vector<Fact> takeFacts();
    /// record() returns its fact without writing it.
    [[nodiscard]] bool readOnly() const;
    /// Why: folderInUse (another window writes to this folder) or noLocks.
    [[nodiscard]] const Fault& readOnlyReason() const;
    [[nodiscard]] const std::string& device() const;

    /// Gives the body its id, seq, order and time and passes it to the writer. Thread-safe; does not wait for
    /// the disk.
    Fact record(FactBody body);
    /// The same for something that happened on an earlier day but was not recorded then: its time is the last
    /// millisecond of `day` at the current local offset; its order is that of record(). If `day` is not
    /// before today, it counts as now.
    Fact recordOn(Date day, FactBody body);
    /// The number of recorded facts that are not on disk yet.
    [[nodiscard]] std::size_t unsaved() const;
    /// Waits until everything is on disk or `millis` have passed. True if everything is on disk.
    bool flush(int millis);
    /// The wall clock from the ports.
    [[nodiscard]] Timestamp now() const;

private:
    struct Body;
    Fact place(FactBody body, std::optional<Date> day);
    explicit Journal(std::unique_ptr<Body> body);
    std::unique_ptr<Body> body_;
};

} // namespace piolo::journal

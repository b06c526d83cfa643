// SPDX-License-Identifier: GPL-3.0-or-later
// The writing side of a practice folder: facts get their id and place at once, and go to disk on a thread of
// their own.
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

struct JournalPlace {
    std::string folder;   ///< the practice folder; made when missing
    std::string device;   ///< this device's id: 32 hexadecimal digits
    std::string stateDir; ///< where locks live, outside the folder; made when missing
};

struct JournalPorts {
    std::shared_ptr<Clock> clock = systemClock();
    std::shared_ptr<Randomness> randomness = systemRandomness();
    std::shared_ptr<AppendOpener> opener = posixOpener();
    Pauses pauses;
};

/// What the writer tells, on the writer's own thread. Set before open(); neither may wait for the thread that
/// destroys the journal. Nothing is told once the destructor has returned.
struct JournalHearer {
    std::function<void(Id)> saved;             ///< the fact is on disk (fdatasync has returned)
    std::function<void(const Fault&)> trouble; ///< a write failed, told once until it succeeds (cannotWrite,
                                               ///< diskFull): the facts are kept and tried again; or a line
                                               ///< was written that is too long to be read back (lineTooLong)
};

/// One open practice folder. record() may be called from any thread; nothing here waits for the disk but
/// open(), flush() and the destructor, which gives up on what is unsaved after Pauses::farewell.
class Journal {
public:
    /// Reads the folder, takes the lock (one writer per folder and device; when another holds it the journal
    /// is read-only), closes an own torn last line. Faults: cannotMakeFolder, cannotRead, cannotWrite.
    static Result<std::unique_ptr<Journal>> open(JournalPlace place, JournalHearer hearer,
                                                 JournalPorts ports = {});
    ~Journal();
    Journal(const Journal&) = delete;
    Journal& operator=(const Journal&) = delete;

    [[nodiscard]] const FolderContents& contents() const;
    /// Hands over the facts that were read: contents() then has none. Ten years of them need not stand in
    /// memory twice.
    [[nodiscard]] std::vector<Fact> takeFacts();
    /// Another window writes this folder: record() then gives its fact, which is not written.
    [[nodiscard]] bool readOnly() const;
    [[nodiscard]] const std::string& device() const;

    /// Gives the body its id, seq, order and time and hands it to the writer. Thread-safe; does not wait for
    /// the disk.
    Fact record(FactBody body);
    /// The same of what happened on an earlier day, when nobody wrote it down: its time is the last
    /// millisecond of `day`, by the local offset now; its order is that of record(). A day that is not before
    /// today is today, now.
    Fact recordOn(Date day, FactBody body);
    /// Facts recorded and not yet on disk.
    [[nodiscard]] std::size_t unsaved() const;
    /// Waits until all is on disk, or `millis` have passed. True when all is.
    bool flush(int millis);
    /// The wall clock of the ports.
    [[nodiscard]] Timestamp now() const;

private:
    struct Body;
    Fact place(FactBody body, std::optional<Date> day);
    explicit Journal(std::unique_ptr<Body> body);
    std::unique_ptr<Body> body_;
};

} // namespace piolo::journal

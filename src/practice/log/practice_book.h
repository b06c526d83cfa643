// SPDX-License-Identifier: GPL-3.0-or-later
// The open practice folder as the window sees it: the journal and the notebook folded from it.
#pragma once

// Qt comes first: moc cannot read the standard headers before it.
#include <QObject>
#include <QString>

#include "core/history/notebook.h"
#include "journal/folder/journal.h"

#include <memory>
#include <unordered_set>
#include <vector>

namespace piolo::practice {

/// Window thread, except where stated. Models read the notebook and write only with record().
class PracticeBook : public QObject {
    Q_OBJECT
public:
    /// Opens the folder; faults as Journal::open().
    static Result<std::unique_ptr<PracticeBook>> open(journal::JournalLocation location,
                                                      journal::JournalPorts ports = {});
    ~PracticeBook() override;

    [[nodiscard]] const Notebook& notebook() const { return notebook_; }
    [[nodiscard]] const std::string& device() const;
    [[nodiscard]] const std::string& folder() const { return folder_; }
    [[nodiscard]] bool readOnly() const;
    /// As Journal::readOnlyReason().
    [[nodiscard]] const Fault& readOnlyReason() const;
    /// What could not be read when the folder was opened.
    [[nodiscard]] const std::vector<Fault>& readFaults() const;
    /// The current local date.
    [[nodiscard]] Date today() const;

    /// Records and folds; changed() follows at once, savedChanged() when it is on disk. If read-only, only
    /// returns the fact.
    Fact record(FactBody body);
    /// Records all of them for that day (Journal::recordOn()) and folds them; changed() follows once, without
    /// a passage. Returns their ids; empty if read-only.
    std::vector<Id> recordAll(Date day, std::vector<FactBody> bodies);
    /// Any thread. Completes the fact and passes it on to be written; the window folds it when adopt() is
    /// called with it.
    Fact write(FactBody body);
    /// Folds a fact returned by write().
    void adopt(const Fact& fact);

    [[nodiscard]] int unsavedCount() const { return static_cast<int>(waiting_.size()); }
    /// The most recent problem with the disk, while it lasts.
    [[nodiscard]] std::optional<Fault> trouble() const { return trouble_; }
    /// A new random id for a passage or piece.
    [[nodiscard]] Id newId() const;
    /// As Journal::keepCheckpoint(): call once the window is visible.
    void keepCheckpoint();
    /// Waits up to `millis` until everything is on disk.
    bool flush(int millis);

signals:
    /// The notebook has changed; `passage` is 32 hexadecimal digits, or empty if pieces, settings or many
    /// passages changed.
    void changed(const QString& passage);
    void savedChanged();
    void troubleChanged();

private:
    PracticeBook();
    void fold(const Fact& fact);
    void heardSaved(Id fact);
    void heardTrouble(const Fault& fault);

    std::string folder_;
    std::shared_ptr<journal::Randomness> randomness_;
    std::unique_ptr<journal::Journal> journal_;
    Notebook notebook_;
    std::unordered_set<Id> waiting_;
    std::unordered_set<Id> savedEarly_;
    std::optional<Fault> trouble_;
};

} // namespace piolo::practice

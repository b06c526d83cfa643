// SPDX-License-Identifier: GPL-3.0-or-later
// The open practice folder as the window knows it: the journal, and the notebook that is its fold.
#pragma once

// Qt stands first: moc cannot read the standard headers before it.
#include <QObject>
#include <QString>

#include "core/history/notebook.h"
#include "journal/folder/journal.h"

#include <memory>
#include <unordered_set>
#include <vector>

namespace piolo::practice {

/// Window's thread, but for what it says. Models read the notebook, and write only by record().
class PracticeBook : public QObject {
    Q_OBJECT
public:
    /// Opens the folder; faults as Journal::open().
    static Result<std::unique_ptr<PracticeBook>> open(journal::JournalLocation place,
                                                      journal::JournalPorts ports = {});
    ~PracticeBook() override;

    [[nodiscard]] const Notebook& notebook() const { return notebook_; }
    [[nodiscard]] const std::string& device() const;
    [[nodiscard]] const std::string& folder() const { return folder_; }
    [[nodiscard]] bool readOnly() const;
    /// What could not be read when the folder was opened.
    [[nodiscard]] const std::vector<Fault>& readFaults() const;
    /// The local date now.
    [[nodiscard]] Date today() const;

    /// Records and folds; changed() follows at once, savedChanged() when it is on disk. Does nothing but give
    /// back the fact when read-only.
    Fact record(FactBody body);
    /// Records all of them as of that day (Journal::recordOn()) and folds them; changed() follows once,
    /// without a passage. Their ids; none when read-only.
    std::vector<Id> recordAll(Date day, std::vector<FactBody> bodies);
    /// Any thread: gives the body its place and hands it to the disk; the window folds it when adopt() is
    /// called with it.
    Fact write(FactBody body);
    /// Folds a fact that write() gave.
    void adopt(const Fact& fact);

    [[nodiscard]] int unsavedCount() const { return static_cast<int>(waiting_.size()); }
    /// The newest trouble with the disk, while it lasts.
    [[nodiscard]] std::optional<Fault> trouble() const { return trouble_; }
    /// A fresh random id for a new passage or piece.
    [[nodiscard]] Id newId() const;
    /// As Journal::keepCheckpoint(): once the window is up.
    void keepCheckpoint();
    /// Waits up to `millis` until all is on disk.
    bool flush(int millis);

signals:
    /// The notebook changed; `passage` as 32 hexadecimal digits, empty when pieces, settings or many passages
    /// did.
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

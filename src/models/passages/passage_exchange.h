// SPDX-License-Identifier: GPL-3.0-or-later
// Passage files in the window: written from here, and looked over before anything of one is taken.
#pragma once

// Qt stands first: moc cannot read the standard headers before it.
#include <QAbstractListModel>
#include <QString>
#include <QtQml/qqmlregistration.h>

#include "core/passage/import_plan.h"
#include "models/passages/passage_picks.h"

#include <future>
#include <unordered_set>
#include <vector>

namespace piolo::models {

/// Window's thread; files are read on a thread of their own. The rows are what the file that was read would
/// change: pieces first, then passages.
class PassageExchange : public QAbstractListModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by PracticeRoom")
    /// The file that was read, "" for none.
    Q_PROPERTY(QString file READ file NOTIFY changed)
    Q_PROPERTY(bool reading READ reading NOTIFY changed)
    /// One plain line; "" when all is well.
    Q_PROPERTY(QString fault READ fault NOTIFY changed)
    /// "2 new, 1 the same, 3 different or removed here"; after taking what was done.
    Q_PROPERTY(QString summary READ summary NOTIFY changed)
    /// Rows that differ or were removed here, and how many of them have a tick.
    Q_PROPERTY(int asked READ asked NOTIFY changed)
    Q_PROPERTY(int ticked READ ticked NOTIFY changed)
    /// Taking would change something.
    Q_PROPERTY(bool canTake READ canTake NOTIFY changed)
    Q_PROPERTY(bool readOnly READ readOnly CONSTANT)
public:
    enum Role {
        NameRole = Qt::UserRole + 1,
        PieceRole,   ///< a piece, not a passage
        StateRole,   ///< "new", "differs", …
        ChangesRole, ///< value by value, in one text; "" for none
        EditedRole,  ///< edited here since it was imported
        AskedRole,   ///< has a tick box: it differs, or was removed here
        TickedRole,
    };

    PassageExchange(practice::PracticeBook& book, PassagePicks& picks, QObject* parent = nullptr);
    /// Waits for a file that is being read.
    ~PassageExchange() override;

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;

    [[nodiscard]] QString file() const { return file_; }
    [[nodiscard]] bool reading() const { return reading_; }
    [[nodiscard]] QString fault() const { return fault_; }
    [[nodiscard]] QString summary() const;
    [[nodiscard]] int asked() const;
    [[nodiscard]] int ticked() const;
    [[nodiscard]] bool canTake() const;
    [[nodiscard]] bool readOnly() const { return book_.readOnly(); }

    /// Writes the passages that have a tick, with their pieces; all passages: all pieces too. "" when the
    /// file is there, else one plain sentence.
    Q_INVOKABLE [[nodiscard]] QString write(const QString& path) const;
    /// Reads the file of that path, or of a file's address. Nothing while another is read.
    Q_INVOKABLE void read(const QString& pathOrAddress);
    /// Forgets the file.
    Q_INVOKABLE void close();
    /// Ticks a row that differs or was removed here: it is to be as in the file.
    Q_INVOKABLE void tick(int row, bool on);
    Q_INVOKABLE void tickAll(bool on);
    /// Records what is new and what has a tick.
    Q_INVOKABLE void take();

signals:
    void changed();

private:
    void heard(const QString& path, const Result<PassageSet>& set);
    void plan();
    [[nodiscard]] bool takesRow(const ImportItem& item) const;
    [[nodiscard]] int countOf(ImportState state) const;

    practice::PracticeBook& book_;
    PassagePicks& picks_;
    QString file_, fault_, done_;
    bool reading_ = false;
    PassageSet set_;
    std::vector<ImportItem> plan_;
    std::unordered_set<Id> ticked_;
    std::future<void> reader_;
};

} // namespace piolo::models

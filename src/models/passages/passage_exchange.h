// SPDX-License-Identifier: GPL-3.0-or-later
// Passage files in the window: writing them, and reviewing one before importing from it.
#pragma once

// Qt comes first: moc cannot read the standard headers before it.
#include <QAbstractListModel>
#include <QString>
#include <QtQml/qqmlregistration.h>

#include "core/passage/import_review.h"
#include "models/passages/passage_picks.h"

#include <future>

namespace piolo::models {

/// Window thread; files are read on another thread. The rows are the changes that the file would make: pieces
/// first, then passages.
class PassageExchange : public QAbstractListModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by PracticeRoom")
    /// The file that was read, or "".
    Q_PROPERTY(QString file READ file NOTIFY changed)
    Q_PROPERTY(bool reading READ reading NOTIFY changed)
    /// One line; "" if all is well.
    Q_PROPERTY(QString fault READ fault NOTIFY changed)
    /// "2 new, 1 the same, 3 different or removed here"; after the import, what was done.
    Q_PROPERTY(QString summary READ summary NOTIFY changed)
    /// The number of rows that differ or were removed here, and how many of them are ticked.
    Q_PROPERTY(int asked READ asked NOTIFY changed)
    Q_PROPERTY(int ticked READ ticked NOTIFY changed)
    /// True if importing would change something.
    Q_PROPERTY(bool canTake READ canTake NOTIFY changed)
    Q_PROPERTY(bool readOnly READ readOnly CONSTANT)
public:
    enum Role {
        NameRole = Qt::UserRole + 1,
        PieceRole,   ///< true for a piece, false for a passage
        StateRole,   ///< "new", "differs", …
        ChangesRole, ///< value by value, as one text; "" if there are none
        EditedRole,  ///< edited here since it was imported
        AskedRole,   ///< has a tick box because it differs or was removed here
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

    /// Writes the ticked passages with their pieces; if all passages are ticked, all pieces. Returns "" on
    /// success, otherwise one sentence.
    Q_INVOKABLE [[nodiscard]] QString write(const QString& path) const;
    /// Reads the file with that path or URL. Does nothing while another one is being read.
    Q_INVOKABLE void read(const QString& pathOrAddress);
    /// Forgets the file.
    Q_INVOKABLE void close();
    /// Ticks a row that differs or was removed here: it will be replaced from the file.
    Q_INVOKABLE void tick(int row, bool on);
    Q_INVOKABLE void tickAll(bool on);
    /// Records the new and the ticked items.
    Q_INVOKABLE void take();

signals:
    void changed();

private:
    void heard(const QString& path, const Result<PassageSet>& set);
    void plan();

    practice::PracticeBook& book_;
    PassagePicks& picks_;
    QString file_, fault_, done_;
    bool reading_ = false;
    PassageSet set_;
    ImportReview review_;
    std::future<void> reader_;
};

} // namespace piolo::models

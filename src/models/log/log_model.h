// SPDX-License-Identifier: GPL-3.0-or-later
// The practice log, one row per day, newest first; the lines of a day are made when they are needed.
#pragma once

// Qt comes first: moc cannot read the standard headers before it.
#include <QAbstractListModel>
#include <QString>
#include <QVariantList>
#include <QtQml/qqmlregistration.h>

#include "models/log/log_dates.h"
#include "models/log/log_figures.h"
#include "plots/curve/curve_series.h"
#include "practice/figures/log_lines.h"
#include "practice/log/log_index.h"
#include "practice/log/take_backs.h"

#include <vector>

namespace piolo::models {

/// Window thread. Follows the book while it is shown; changes made meanwhile are read when it is shown again.
/// Only the index of days is made before a day is looked at.
class LogModel : public QAbstractListModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("belongs to the practice room")
    Q_PROPERTY(bool shown READ shown WRITE setShown NOTIFY shownChanged)
    Q_PROPERTY(int count READ count NOTIFY refreshed)
    /// True if nothing was ever played, whatever the filter.
    Q_PROPERTY(bool nothingYet READ nothingYet NOTIFY refreshed)
    Q_PROPERTY(bool readOnly READ readOnly CONSTANT)
    /// What was taken back last since the log was opened, in a sentence; "" if nothing was.
    Q_PROPERTY(QString takenBack READ takenBack NOTIFY takenBackChanged)
    Q_PROPERTY(piolo::models::LogFigures* figures READ figures CONSTANT)
    Q_PROPERTY(piolo::models::LogDates* dates READ dates CONSTANT)
    /// 32 digits, or "" for all.
    Q_PROPERTY(QString piece READ piece WRITE setPiece NOTIFY filterChanged)
    Q_PROPERTY(QString passage READ passage WRITE setPassage NOTIFY filterChanged)
    /// "run", "try", "silent", "context", "aside", "tempo", "runThrough", or "" for all.
    Q_PROPERTY(QString kind READ kind WRITE setKind NOTIFY filterChanged)
    /// "4w", "1y": how far back from today, or "" for all.
    Q_PROPERTY(QString since READ since WRITE setSince NOTIFY filterChanged)
    /// Lists of {value, text}; the passages are those of the piece.
    Q_PROPERTY(QVariantList pieces READ pieces NOTIFY refreshed)
    Q_PROPERTY(QVariantList passages READ passages NOTIFY refreshed)
    Q_PROPERTY(QVariantList kinds READ kinds CONSTANT)
    Q_PROPERTY(QVariantList stretches READ stretches CONSTANT)
public:
    enum Role {
        DayTitle = Qt::UserRole + 1, ///< "Tuesday, 18 April"
        Figures,                     ///< "41 min · 22 of 30 clean"
        Lines,                       ///< maps, in the order played, at most MostAtOnce; see lineMap()
        LineCount                    ///< of all of them
    };
    Q_ENUM(Role)
    /// So many lines of a day, and entries of a line, are made unless more are asked for.
    enum Amount { MostAtOnce = 100 };
    Q_ENUM(Amount)

    explicit LogModel(practice::PracticeBook& book, QObject* parent = nullptr);

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;

    [[nodiscard]] bool shown() const { return shown_; }
    void setShown(bool shown);
    [[nodiscard]] int count() const { return static_cast<int>(days_.size()); }
    [[nodiscard]] bool nothingYet() const { return nothingYet_; }
    [[nodiscard]] bool readOnly() const;
    [[nodiscard]] QString takenBack() const;
    [[nodiscard]] LogFigures* figures() { return &figures_; }
    [[nodiscard]] LogDates* dates() { return &dates_; }
    [[nodiscard]] QString piece() const;
    void setPiece(const QString& piece);
    [[nodiscard]] QString passage() const;
    void setPassage(const QString& passage);
    [[nodiscard]] QString kind() const;
    void setKind(const QString& kind);
    [[nodiscard]] QString since() const { return since_; }
    void setSince(const QString& since);
    [[nodiscard]] QVariantList pieces() const;
    [[nodiscard]] QVariantList passages() const;
    [[nodiscard]] static QVariantList kinds();
    [[nodiscard]] static QVariantList stretches();
    [[nodiscard]] const practice::LogFilter& filter() const { return filter_; }
    [[nodiscard]] Date today() const;
    /// The curves of the passages selected by the filter.
    [[nodiscard]] std::vector<plots::CurveSeries> curves(plots::CurveBy by) const;
    /// The records of these curves, valid until the notebook changes.
    [[nodiscard]] std::vector<const PassageRecord*>
    records(const std::vector<plots::CurveSeries>& curves) const;

    /// The first `most` lines of that day.
    Q_INVOKABLE [[nodiscard]] QVariantList linesOf(int day, int most) const;
    /// The first `most` entries of that line of that day; see entryMaps().
    Q_INVOKABLE [[nodiscard]] QVariantList entriesOf(int day, int line, int most = MostAtOnce) const;
    /// How many entries that line has.
    Q_INVOKABLE [[nodiscard]] int entryCount(int day, int line) const;
    /// The line of that day that holds the entry; -1 if none does.
    Q_INVOKABLE [[nodiscard]] int lineOf(int day, const QString& entry) const;
    /// Records that the entry is retracted: it counts as never played. Does nothing if there is no such entry
    /// or if the folder is read-only. For a run-through, `passage` is its piece.
    Q_INVOKABLE void takeBack(const QString& passage, const QString& entry);
    /// Records that what takenBack() names counts again.
    Q_INVOKABLE void putBack();
    /// Records that the run was clean, or missed, after all.
    Q_INVOKABLE void setClean(const QString& passage, const QString& entry, bool clean);
    /// Records the player's note on an entry; an empty note removes it.
    Q_INVOKABLE void setNote(const QString& passage, const QString& entry, const QString& text);

signals:
    void shownChanged();
    void filterChanged();
    void takenBackChanged();
    void refreshed();

private:
    void follow();
    void refresh();
    void filterBy(const practice::LogFilter& filter);
    [[nodiscard]] bool counts(Id subject, Id wanted) const;
    [[nodiscard]] std::vector<practice::LogLine> linesOn(int day) const;
    [[nodiscard]] QString figuresText(const practice::LogDay& day) const;

    practice::PracticeBook& book_;
    practice::TakeBacks takeBacks_;
    practice::LogFilter filter_;
    QString since_;
    std::vector<practice::LogDay> days_;
    LogFigures figures_;
    LogDates dates_;
    bool nothingYet_ = true;
    bool shown_ = false;
};

} // namespace piolo::models

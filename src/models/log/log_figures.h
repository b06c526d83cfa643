// SPDX-License-Identifier: GPL-3.0-or-later
// The figures of the log: practice time per day, missed days, and where a passage breaks.
#pragma once

// Qt comes first: moc cannot read the standard headers before it.
#include <QObject>
#include <QString>
#include <QVariantList>
#include <QVariantMap>
#include <QtQml/qqmlregistration.h>

#include "core/history/misses.h"
#include "practice/log/log_index.h"

namespace piolo::practice {
class PracticeBook;
} // namespace piolo::practice

namespace piolo::models {

/// Window thread. Computed when first read after the log has changed.
class LogFigures : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("belongs to the log")
    /// Practice time per day for four weeks; see practiceMaps().
    Q_PROPERTY(QVariantList days READ days NOTIFY changed)
    Q_PROPERTY(int mostMinutes READ mostMinutes NOTIFY changed)
    /// One sentence on missed days; "" if nothing was ever played.
    Q_PROPERTY(QString gapText READ gapText NOTIFY changed)
    /// This week and last week in a line; "" if nothing was played in either.
    Q_PROPERTY(QString weekText READ weekText NOTIFY changed)
    /// The passages that went worst of late; see worstMaps().
    Q_PROPERTY(QVariantList worst READ worst NOTIFY changed)
    /// Where the passage breaks; see missesMap().
    Q_PROPERTY(QVariantMap breaks READ breaks NOTIFY changed)
    /// "New passage: bars 42–43"; "" if nothing stands out.
    Q_PROPERTY(QString stretchText READ stretchText NOTIFY changed)
    /// Why these bars.
    Q_PROPERTY(QString stretchNote READ stretchNote NOTIFY changed)
    /// "Last bar first"; "" if it is too long or too short.
    Q_PROPERTY(QString buildUpText READ buildUpText NOTIFY changed)
    /// "Split into 4 parts", which overlap by a beat; "" if it has one bar or too many.
    Q_PROPERTY(QString partsText READ partsText NOTIFY changed)
    /// What was last made of it, and the first passage made (32 digits); "" if nothing was.
    Q_PROPERTY(QString madeText READ madeText NOTIFY madeChanged)
    Q_PROPERTY(QString made READ made NOTIFY madeChanged)
public:
    explicit LogFigures(practice::PracticeBook& book, QObject* parent = nullptr);

    [[nodiscard]] QVariantList days() const { return days_; }
    [[nodiscard]] int mostMinutes() const { return mostMinutes_; }
    [[nodiscard]] QString gapText() const { return gapText_; }
    [[nodiscard]] QString weekText() const { return weekText_; }
    [[nodiscard]] QVariantList worst() const { return worst_; }
    [[nodiscard]] QVariantMap breaks() const { return breaks_; }
    [[nodiscard]] QString stretchText() const;
    [[nodiscard]] QString stretchNote() const;
    [[nodiscard]] QString buildUpText() const;
    [[nodiscard]] QString partsText() const;
    [[nodiscard]] QString madeText() const { return madeText_; }
    [[nodiscard]] QString made() const { return made_; }

    /// Reads the notebook for the passage that the filter names, or the one played most recently.
    void read(const practice::LogFilter& filter);
    /// Records a new passage with the bars that have most of the misses.
    Q_INVOKABLE void makeStretch();
    /// Records the passages that build this one up from its last bar.
    Q_INVOKABLE void buildUp();
    /// Records its parts, one after the other, each landing on the first beat of the next.
    Q_INVOKABLE void makeParts();

signals:
    void changed();
    void madeChanged();

private:
    void readDays();
    /// Of `worst`; without it, of the first passage whose curve is shown.
    void readBreaks(const practice::LogFilter& filter, Id worst);
    void make(const std::vector<BuildUpPart>& parts);

    practice::PracticeBook& book_;
    QVariantList days_;
    int mostMinutes_ = 0;
    QString gapText_, weekText_;
    QVariantList worst_;
    Id passage_;
    QVariantMap breaks_;
    std::optional<BuildUpPart> stretch_;
    std::vector<BuildUpPart> buildUp_;
    std::vector<BuildUpPart> parts_;
    QString madeText_, made_;
};

} // namespace piolo::models

// SPDX-License-Identifier: GPL-3.0-or-later
// Which scales to practise, on which instrument, and how the keys are named and ordered.
#pragma once

// Qt comes first: moc cannot read the standard headers before it.
#include <QObject>
#include <QString>
#include <QVariantList>
#include <QtQml/qqmlregistration.h>

#include "core/scales/scale_passage.h"

namespace piolo::practice {
class PracticeBook;
} // namespace piolo::practice

namespace piolo::models {

/// Window thread. Each choice is a practice setting, recorded when it changes; unknown values are ignored.
/// Values are core's names; notes are written as in "Bb3".
class ScaleChoices : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("belongs to the scales")
    Q_PROPERTY(bool readOnly READ readOnly CONSTANT)
    /// True if an instrument was chosen: without one there is no grid.
    Q_PROPERTY(bool ready READ ready NOTIFY changed)
    Q_PROPERTY(QString instrument READ instrument WRITE setInstrument NOTIFY changed)
    Q_PROPERTY(QString instrumentText READ instrumentText NOTIFY changed)
    /// The instrument that a piece or an import names, if it is another one: value, text, and the piece. ""
    /// if there is none.
    Q_PROPERTY(QString proposed READ proposed NOTIFY changed)
    Q_PROPERTY(QString proposedText READ proposedText NOTIFY changed)
    Q_PROPERTY(QString proposedBy READ proposedBy NOTIFY changed)
    Q_PROPERTY(QVariantList lowestNotes READ lowestNotes NOTIFY changed)
    Q_PROPERTY(QString lowest READ lowest WRITE setLowest NOTIFY changed)
    Q_PROPERTY(QVariantList highestNotes READ highestNotes NOTIFY changed)
    Q_PROPERTY(QString highest READ highest WRITE setHighest NOTIFY changed)
    Q_PROPERTY(QVariantList kinds READ kinds NOTIFY worded)
    Q_PROPERTY(QString kind READ kind WRITE setKind NOTIFY changed)
    Q_PROPERTY(QVariantList ranges READ ranges NOTIFY worded)
    Q_PROPERTY(QString range READ range WRITE setRange NOTIFY changed)
    Q_PROPERTY(QVariantList patterns READ patterns NOTIFY worded)
    Q_PROPERTY(QString pattern READ pattern WRITE setPattern NOTIFY changed)
    Q_PROPERTY(QVariantList orders READ orders NOTIFY worded)
    Q_PROPERTY(QString order READ order WRITE setOrder NOTIFY changed)
public:
    explicit ScaleChoices(practice::PracticeBook& book, QObject* parent = nullptr);

    [[nodiscard]] const ScaleSettings& settings() const;
    [[nodiscard]] bool readOnly() const;
    [[nodiscard]] bool ready() const { return !settings().instrument.empty(); }
    [[nodiscard]] QString instrument() const { return QString::fromStdString(settings().instrument); }
    /// The player's own range belongs to the instrument for which it was set.
    void setInstrument(const QString& name);
    [[nodiscard]] QString instrumentText() const;
    [[nodiscard]] QString proposed() const;
    [[nodiscard]] QString proposedText() const;
    [[nodiscard]] QString proposedBy() const;
    /// The instruments by family: instrument_search.h.
    Q_INVOKABLE [[nodiscard]] static QVariantList found(const QString& typed);
    Q_INVOKABLE [[nodiscard]] static QString firstFound(const QString& typed);
    [[nodiscard]] QVariantList lowestNotes() const;
    [[nodiscard]] QString lowest() const;
    void setLowest(const QString& note);
    [[nodiscard]] QVariantList highestNotes() const;
    [[nodiscard]] QString highest() const;
    void setHighest(const QString& note);
    [[nodiscard]] static QVariantList kinds();
    [[nodiscard]] QString kind() const;
    void setKind(const QString& name);
    [[nodiscard]] static QVariantList ranges();
    [[nodiscard]] QString range() const;
    void setRange(const QString& name);
    [[nodiscard]] static QVariantList patterns();
    [[nodiscard]] QString pattern() const;
    void setPattern(const QString& name);
    [[nodiscard]] static QVariantList orders();
    [[nodiscard]] QString order() const;
    void setOrder(const QString& name);

    /// Draws another random order of the keys.
    Q_INVOKABLE void drawAgain();
    /// Switches the key of that pitch class between its two names.
    void turnSpelling(int pitchClass);

signals:
    void changed();
    /// The language has changed.
    void worded();

private:
    void record(const ScaleSettings& wanted);

    practice::PracticeBook& book_;
};

} // namespace piolo::models

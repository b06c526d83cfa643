// SPDX-License-Identifier: GPL-3.0-or-later
// How the open passage is played and felt, and the player's choice of both on the drill screen.
#pragma once

// Qt comes first: moc cannot read the standard headers before it.
#include <QObject>
#include <QString>
#include <QVariantList>
#include <QtQml/qqmlregistration.h>

#include "core/history/notebook.h"

namespace piolo::practice {
class PracticeBook;
} // namespace piolo::practice

namespace piolo::models {

/// Window thread. Choices are recorded at once; the streak restarts with another articulation or rhythm, and
/// continues with another beat. No choices are accepted while the click runs.
class PlayedAs : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("belongs to the drill")
    /// Lists of {value, text}. The beats are those in which the same speed is exact, including the current
    /// one.
    Q_PROPERTY(QVariantList beats READ beats NOTIFY changed)
    Q_PROPERTY(QVariantList articulations READ articulations CONSTANT)
    Q_PROPERTY(QVariantList rhythms READ rhythms CONSTANT)
    Q_PROPERTY(QString beat READ beat NOTIFY changed)
    Q_PROPERTY(int articulation READ articulation NOTIFY changed)
    Q_PROPERTY(int rhythm READ rhythm NOTIFY changed)
    /// "slurred · long and short"; "" if both are as written.
    Q_PROPERTY(QString text READ text NOTIFY changed)
    Q_PROPERTY(QString fingering READ fingering NOTIFY changed)
    /// "Best: as written 92, all slurred 84"; "" if there is only one kind of best.
    Q_PROPERTY(QString bests READ bests NOTIFY changed)
public:
    explicit PlayedAs(practice::PracticeBook& book, QObject* parent = nullptr)
        : QObject(parent), book_(book) {}

    [[nodiscard]] QVariantList beats() const { return beats_; }
    [[nodiscard]] static QVariantList articulations();
    [[nodiscard]] static QVariantList rhythms();
    [[nodiscard]] QString beat() const;
    [[nodiscard]] int articulation() const { return static_cast<int>(passage_.manner.articulation); }
    [[nodiscard]] int rhythm() const { return static_cast<int>(passage_.manner.rhythm); }
    [[nodiscard]] QString text() const;
    [[nodiscard]] QString fingering() const;
    [[nodiscard]] QString bests() const { return bests_; }

    /// `tempo` is the one shown. `open`: choices are accepted now.
    void show(const PassageRecord& record, Tempo tempo, bool open);

    Q_INVOKABLE void feel(const QString& beat);
    Q_INVOKABLE void setArticulation(int articulation);
    Q_INVOKABLE void setRhythm(int rhythm);

signals:
    void changed();
    /// From now on, the current tempo counts a different beat.
    void felt();

private:
    void record(const Manner& manner);

    practice::PracticeBook& book_;
    Passage passage_;
    QVariantList beats_;
    QString bests_;
    bool open_ = false;
};

} // namespace piolo::models

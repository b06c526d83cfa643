// SPDX-License-Identifier: GPL-3.0-or-later
// A set as the screens show it: what is taken in turn, whose turn it is, and what was played.
#pragma once

// Qt comes first: moc cannot read the standard headers before it.
#include <QObject>
#include <QString>
#include <QVariantList>
#include <QtQml/qqmlregistration.h>

#include "models/set/set_picks.h"
#include "practice/set/set_control.h"

namespace piolo::models {

/// Window thread.
class SetModel : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by PracticeRoom")
    Q_PROPERTY(piolo::models::SetPicks* picks READ picks CONSTANT)
    /// A turn lasts minutes, not runs.
    Q_PROPERTY(bool byMinutes READ byMinutes WRITE setByMinutes NOTIFY lengthChanged)
    /// How many of them.
    Q_PROPERTY(int amount READ amount WRITE setAmount NOTIFY lengthChanged)
    Q_PROPERTY(int mostAmount READ mostAmount CONSTANT)
    /// "3 runs each"
    Q_PROPERTY(QString amountText READ amountText NOTIFY lengthChanged)
    /// Enough passages are ticked.
    Q_PROPERTY(bool ready READ isReady NOTIFY readyChanged)
    /// "2 of 3 · next: River Suite, II"; "" while no set is played.
    Q_PROPERTY(QString turnText READ turnText NOTIFY turnChanged)
    /// "2 of 3" and the title of the passage, while its turn is announced; otherwise "".
    Q_PROPERTY(QString announcedPlace READ announcedPlace NOTIFY turnChanged)
    Q_PROPERTY(QString announcedTitle READ announcedTitle NOTIFY turnChanged)
    /// Of the set that was played last, one for each passage: {title, text}; empty before.
    Q_PROPERTY(QVariantList results READ results NOTIFY resultsChanged)
public:
    /// All of them must outlive this object.
    SetModel(practice::PracticeBook& book, practice::SetControl& control, QObject* parent = nullptr);

    [[nodiscard]] SetPicks* picks() { return &picks_; }
    [[nodiscard]] bool byMinutes() const { return length_.by == practice::TurnLength::By::minutes; }
    void setByMinutes(bool minutes);
    [[nodiscard]] int amount() const { return byMinutes() ? length_.minutes : length_.runs; }
    void setAmount(int amount);
    [[nodiscard]] static int mostAmount() { return practice::TurnLength::most; }
    [[nodiscard]] QString amountText() const;
    [[nodiscard]] bool isReady() const;
    [[nodiscard]] QString turnText() const;
    [[nodiscard]] QString announcedPlace() const;
    [[nodiscard]] QString announcedTitle() const;
    [[nodiscard]] QVariantList results() const;

    /// Starts the chosen set. False if it cannot begin.
    bool start();

signals:
    void lengthChanged();
    void readyChanged();
    void turnChanged();
    void resultsChanged();

private:
    [[nodiscard]] QString placeText() const;
    [[nodiscard]] QString titleAt(std::size_t place) const;
    [[nodiscard]] QString resultOf(const practice::SetPart& part) const;

    practice::PracticeBook& book_;
    practice::SetControl& control_;
    SetPicks picks_;
    practice::TurnLength length_;
};

} // namespace piolo::models

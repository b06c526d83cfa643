// SPDX-License-Identifier: GPL-3.0-or-later
// A piece played from start to finish, in words: its clock, its stops, and the earlier run-throughs.
#pragma once

// Qt comes first: moc cannot read the standard headers before it.
#include <QObject>
#include <QString>
#include <QTimer>
#include <QVariantList>
#include <QtQml/qqmlregistration.h>

#include "practice/run_through/run_through_control.h"

#include <map>

namespace piolo::models {

/// Window thread.
class RunThroughModel : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("belongs to the practice room")
    Q_PROPERTY(bool open READ isOpen NOTIFY changed)
    Q_PROPERTY(QString title READ title NOTIFY changed)
    Q_PROPERTY(State state READ state NOTIFY changed)
    /// "2:31" since the first note.
    Q_PROPERTY(QString clock READ clock NOTIFY ticked)
    /// "Run-through 2:31" while it is played, or that it waits to be saved; otherwise "".
    Q_PROPERTY(QString nowText READ nowText NOTIFY ticked)
    /// "about bar 31"; "" if the clock cannot tell.
    Q_PROPERTY(QString place READ place NOTIFY ticked)
    /// A list of {time, bar}: the stops with their bars as typed; "" for an unknown bar.
    Q_PROPERTY(QVariantList stops READ stops NOTIFY changed)
    /// "2 stops"
    Q_PROPERTY(QString counted READ counted NOTIFY changed)
    /// One line for an invalid bar; "" if all are valid.
    Q_PROPERTY(QString fault READ fault NOTIFY changed)
    /// The earlier run-throughs, newest first: a list of {day, length, stops}.
    Q_PROPERTY(QVariantList past READ past NOTIFY changed)
public:
    // In the order of the control's own enumerators.
    enum class State { Ready, Playing, Review };
    Q_ENUM(State)

    /// Both must outlive this object.
    RunThroughModel(practice::PracticeBook& book, practice::RunThroughControl& control,
                    QObject* parent = nullptr);

    [[nodiscard]] bool isOpen() const { return control_.piece().has_value(); }
    [[nodiscard]] QString title() const;
    [[nodiscard]] State state() const { return static_cast<State>(control_.state()); }
    [[nodiscard]] QString clock() const;
    [[nodiscard]] QString nowText() const;
    [[nodiscard]] QString place() const;
    [[nodiscard]] QVariantList stops() const;
    [[nodiscard]] QString counted() const;
    [[nodiscard]] QString fault() const;
    [[nodiscard]] QVariantList past() const;

    /// Shows that piece (id of 32 digits). Does nothing while one is being played or reviewed.
    Q_INVOKABLE void open(const QString& piece);
    Q_INVOKABLE void start() { control_.start(); }
    /// The music stopped here and continues.
    Q_INVOKABLE void markStop() { control_.markStop(); }
    /// The most recent stop was not one.
    Q_INVOKABLE void takeBackStop() { control_.takeBackStop(); }
    /// The last note was reached, or the player gave up.
    Q_INVOKABLE void finish(bool reachedTheEnd) { control_.finish(reachedTheEnd); }
    /// The player corrects the bar during the review.
    Q_INVOKABLE void setBar(int stop, const QString& bar);
    /// Records it. Does nothing while a bar is invalid or if the folder is read-only.
    Q_INVOKABLE void keep() { control_.keep(); }
    Q_INVOKABLE void discard() { control_.discard(); }

signals:
    void changed();
    void ticked();

private:
    void followState();
    [[nodiscard]] QString barText(int stop) const;

    practice::PracticeBook& book_;
    practice::RunThroughControl& control_;
    QTimer timer_;
    std::map<int, QString> typed_; // the corrected bars, by stop
};

} // namespace piolo::models

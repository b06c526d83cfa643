// SPDX-License-Identifier: GPL-3.0-or-later
// A piece played from start to finish: its stops, and the earlier run-throughs.
#pragma once

// Qt comes first: moc cannot read the standard headers before it.
#include <QObject>
#include <QString>
#include <QTimer>
#include <QVariantList>
#include <QtQml/qqmlregistration.h>

#include "practice/keys/pedal_press.h"
#include "practice/log/practice_book.h"
#include "practice/ports/sound_port.h"

#include <optional>
#include <vector>

namespace piolo::models {

/// Window thread. There is no click: the clock estimates the current bar if the piece's tempo and meter are
/// known. The player reviews a run-through before it is recorded.
class RunThroughModel : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("belongs to the practice room")
    Q_PROPERTY(bool open READ isOpen NOTIFY changed)
    Q_PROPERTY(QString title READ title NOTIFY changed)
    Q_PROPERTY(State state READ state NOTIFY changed)
    /// "2:31" since the first note.
    Q_PROPERTY(QString clock READ clock NOTIFY ticked)
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
    enum class State { Ready, Playing, Review };
    Q_ENUM(State)

    RunThroughModel(practice::PracticeBook& book, practice::SoundPort& sound, QObject* parent = nullptr);

    [[nodiscard]] bool isOpen() const { return piece().has_value(); }
    [[nodiscard]] QString title() const;
    [[nodiscard]] State state() const { return state_; }
    [[nodiscard]] QString clock() const;
    [[nodiscard]] QString place() const;
    [[nodiscard]] QVariantList stops() const;
    [[nodiscard]] QString counted() const;
    [[nodiscard]] QString fault() const;
    [[nodiscard]] QVariantList past() const;

    /// Shows that piece (id of 32 digits). Does nothing while one is being played or reviewed.
    Q_INVOKABLE void open(const QString& piece);
    Q_INVOKABLE void start();
    /// The music stopped here and continues.
    Q_INVOKABLE void markStop();
    /// The most recent stop was not one.
    Q_INVOKABLE void takeBackStop();
    /// The single pedal: a press starts or marks a stop; holding it marks the last note; a double press takes
    /// back a stop.
    void pedal(const practice::PedalAct& act);
    /// The last note was reached, or the player gave up.
    Q_INVOKABLE void finish(bool reachedTheEnd);
    /// The player corrects the bar.
    Q_INVOKABLE void setBar(int stop, const QString& bar);
    /// Records it. Does nothing while a bar is invalid or if the folder is read-only.
    Q_INVOKABLE void keep();
    Q_INVOKABLE void discard();

signals:
    void changed();
    void ticked();

private:
    struct Halt {
        std::int64_t millis = 0;
        QString bar;
    };
    [[nodiscard]] std::optional<Piece> piece() const;
    [[nodiscard]] std::int64_t played() const;
    [[nodiscard]] std::optional<std::int32_t> barAt(std::int64_t millis) const;
    void turnTo(State state);

    practice::PracticeBook& book_;
    practice::SoundPort& sound_;
    QTimer timer_;
    Id id_;
    State state_ = State::Ready;
    std::int64_t began_ = 0;
    std::int64_t millis_ = 0; // of the run-through being reviewed
    bool finished_ = true;
    std::vector<Halt> halts_;
};

} // namespace piolo::models

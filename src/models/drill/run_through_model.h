// SPDX-License-Identifier: GPL-3.0-or-later
// A piece played from start to finish: its stops, and what the ones before were like.
#pragma once

// Qt stands first: moc cannot read the standard headers before it.
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

/// Window's thread. There is no click: the clock tells about which bar it is, where the piece's tempo and
/// meter are known. What was played is looked over before it is recorded.
class RunThroughModel : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("belongs to the practice room")
    Q_PROPERTY(bool open READ isOpen NOTIFY changed)
    Q_PROPERTY(QString title READ title NOTIFY changed)
    Q_PROPERTY(State state READ state NOTIFY changed)
    /// "2:31" since the first note.
    Q_PROPERTY(QString clock READ clock NOTIFY ticked)
    /// "about bar 31"; "" when the clock cannot tell.
    Q_PROPERTY(QString place READ place NOTIFY ticked)
    /// A list of {time, bar}: the stops made, their bars as they are typed, "" for one that is not known.
    Q_PROPERTY(QVariantList stops READ stops NOTIFY changed)
    /// "2 stops"
    Q_PROPERTY(QString counted READ counted NOTIFY changed)
    /// One plain line for a bar that is none; "" when all are good.
    Q_PROPERTY(QString fault READ fault NOTIFY changed)
    /// The run-throughs before, newest first: a list of {day, length, stops}.
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

    /// Shows that piece (id of 32 digits). Not while one is played or looked over.
    Q_INVOKABLE void open(const QString& piece);
    Q_INVOKABLE void start();
    /// The music stopped here; it goes on.
    Q_INVOKABLE void markStop();
    /// The stop marked last was none.
    Q_INVOKABLE void takeBackStop();
    /// The one pedal: a press starts, or marks a stop; held it is the last note; twice it takes a stop back.
    void pedal(const practice::PedalAct& act);
    /// The last note, or the end of patience.
    Q_INVOKABLE void finish(bool reachedTheEnd);
    /// The player knows the bar better.
    Q_INVOKABLE void setBar(int stop, const QString& bar);
    /// Records it. Nothing while a bar is at fault, or when the folder is read-only.
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
    std::int64_t millis_ = 0; // of what is looked over
    bool finished_ = true;
    std::vector<Halt> halts_;
};

} // namespace piolo::models

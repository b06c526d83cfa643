// SPDX-License-Identifier: GPL-3.0-or-later
// The keys as the screens show and change them.
#pragma once

// Qt comes first: moc cannot read the standard headers before it.
#include <QAbstractListModel>
#include <QString>
#include <QStringList>
#include <QVariantList>
#include <QVariantMap>
#include <QtQml/qqmlregistration.h>

#include "models/keys/key_capture.h"
#include "models/keys/key_listener.h"
#include "models/keys/key_table.h"
#include "models/keys/midi_switches.h"

#include <cstdint>
#include <functional>

namespace piolo::models {

/// One row per action, which QML knows by name. Window thread.
class KeyBindings : public QAbstractListModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("belongs to the practice room")
    /// The action that is waiting for a new key; "" if none is.
    Q_PROPERTY(QString capturing READ capturing NOTIFY capturingChanged)
    /// Why the last key pressed for `capturing` was not accepted; "" if it was.
    Q_PROPERTY(QString conflict READ conflict NOTIFY capturingChanged)
    /// True if that key can be taken over, with takeOver() or by pressing it again.
    Q_PROPERTY(bool contested READ isContested NOTIFY capturingChanged)
    /// True while the player is at that button: its keys go to the button.
    Q_PROPERTY(bool deciding READ isDeciding WRITE setDeciding NOTIFY decidingChanged)
    /// What the last change did, line by line; "" if nothing was changed yet.
    Q_PROPERTY(QString saying READ saying NOTIFY sayingChanged)
    /// The MIDI status while waiting for a switch; "" while not waiting.
    Q_PROPERTY(QString midiLine READ midiLine NOTIFY midiLineChanged)
    /// Sets of keys by what a pedal sends: a list of {value, text}.
    Q_PROPERTY(QVariantList sets READ sets CONSTANT)
    /// The keys of each action by its name, as people read them, including what the single pedal does for it:
    /// `shown.mark` is "Space, PgDown", `shown.stop` "Esc, F5 held".
    Q_PROPERTY(QVariant shown READ shown NOTIFY keysChanged)
public:
    /// `chips`: a list of {trigger, text}, one entry for each key.
    enum Role { actionRole = Qt::UserRole + 1, wordsRole, keysRole, chipsRole };
    using Keys = KeyTable::Saved;

    /// `saved`: as MachineSettings.keys. `save` is called with all keys that differ from the defaults.
    /// `clock` returns the current time in nanoseconds of the monotonic clock.
    KeyBindings(const Keys& saved, std::function<void(const Keys&)> save, std::function<std::int64_t()> clock,
                QObject* parent = nullptr);

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;

    /// Handles the keys of the window and of MIDI.
    [[nodiscard]] KeyListener& listener() { return listener_; }
    [[nodiscard]] QString capturing() const;
    [[nodiscard]] QString conflict() const { return capture_.conflict(); }
    [[nodiscard]] bool isContested() const { return capture_.isContested(); }
    [[nodiscard]] bool isDeciding() const { return deciding_; }
    void setDeciding(bool deciding);
    [[nodiscard]] QString saying() const { return saying_; }
    [[nodiscard]] QString midiLine() const;
    [[nodiscard]] QVariantList sets() const { return KeyTable::sets(); }
    [[nodiscard]] QVariant shown() const;
    [[nodiscard]] QString shown(KeyAction action) const;

    /// Adds the next key or MIDI switch pressed to the action (at most four; the oldest is removed). Esc
    /// cancels.
    Q_INVOKABLE void capture(const QString& action);
    /// The same, and midiLine reports which MIDI inputs are open.
    Q_INVOKABLE void captureMidi(const QString& action);
    /// Removes the contested key from the other action.
    Q_INVOKABLE void takeOver();
    Q_INVOKABLE void giveUp();
    /// Unbinds that key. Not the last one that marks, nor the last one that stops.
    Q_INVOKABLE void takeAway(const QString& action, const QString& trigger);
    Q_INVOKABLE void useSet(const QString& set);
    /// Restores the default keys.
    Q_INVOKABLE void restore();
    /// Call after the language has changed.
    void reword();
    /// Handles MIDI switches while any is bound or a key is being captured. `switches` must outlive this
    /// object.
    void watch(MidiSwitches& switches);

signals:
    void capturingChanged();
    void decidingChanged();
    void sayingChanged();
    void midiLineChanged();
    void keysChanged();

private:
    void take(const QString& trigger);
    void captureChanged();
    void changeTo(const KeyTable& changed);
    void change(const KeyTable& before, const QStringList& lines);
    void say(const QStringList& lines);
    void wantMidi();

    std::function<void(const Keys&)> save_;
    KeyTable table_;
    KeyCapture capture_{table_};
    KeyListener listener_;
    MidiSwitches* midi_ = nullptr;
    QString saying_;
    bool deciding_ = false;
    bool midiAsked_ = false;
};

} // namespace piolo::models

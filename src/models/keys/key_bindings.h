// SPDX-License-Identifier: GPL-3.0-or-later
// The keys as the screens show and change them.
#pragma once

// Qt stands first: moc cannot read the standard headers before it.
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

/// A row for each action, which QML knows by its name. Window's thread.
class KeyBindings : public QAbstractListModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("belongs to the practice room")
    /// The action that waits for its new key; "" when none does.
    Q_PROPERTY(QString capturing READ capturing NOTIFY capturingChanged)
    /// Why the last key pressed for `capturing` was not taken; "" when it was.
    Q_PROPERTY(QString conflict READ conflict NOTIFY capturingChanged)
    /// That key can be taken over: by takeOver(), or by pressing it again.
    Q_PROPERTY(bool contested READ isContested NOTIFY capturingChanged)
    /// The player is at the button for that: its keys are the button's.
    Q_PROPERTY(bool deciding READ isDeciding WRITE setDeciding NOTIFY decidingChanged)
    /// What the last change did, line by line; "" when nothing was changed yet.
    Q_PROPERTY(QString saying READ saying NOTIFY sayingChanged)
    /// What a MIDI switch is waited for with; "" when none is.
    Q_PROPERTY(QString midiLine READ midiLine NOTIFY midiLineChanged)
    /// Keys by what a pedal sends: a list of {value, text}.
    Q_PROPERTY(QVariantList sets READ sets CONSTANT)
    /// The keys of each action under its name, as people read them, what the one pedal does of it too:
    /// `shown.mark` is "Space, PgDown", `shown.stop` "Esc, F5 held".
    Q_PROPERTY(QVariant shown READ shown NOTIFY keysChanged)
public:
    /// `chips`: a list of {trigger, text}, one for each key.
    enum Role { actionRole = Qt::UserRole + 1, wordsRole, keysRole, chipsRole };
    using Keys = KeyTable::Saved;

    /// `saved`: as MachineSettings.keys. `save` is called with all keys that differ from the usual ones.
    /// `clock` gives the present moment in nanoseconds of the monotonic clock.
    KeyBindings(const Keys& saved, std::function<void(const Keys&)> save, std::function<std::int64_t()> clock,
                QObject* parent = nullptr);

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;

    /// Where the keys of the window and of MIDI are heard.
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

    /// The next key or MIDI switch pressed is added to the action (four at most, the oldest gives way). Esc
    /// gives up.
    Q_INVOKABLE void capture(const QString& action);
    /// The same, and what MIDI is listened to is told.
    Q_INVOKABLE void captureMidi(const QString& action);
    /// The contested key leaves the action that has it.
    Q_INVOKABLE void takeOver();
    Q_INVOKABLE void giveUp();
    /// That key does nothing any more. Not the last one that marks, nor the last one that stops.
    Q_INVOKABLE void takeAway(const QString& action, const QString& trigger);
    Q_INVOKABLE void useSet(const QString& set);
    /// The usual keys again.
    Q_INVOKABLE void restore();
    /// Another language is spoken from here on.
    void reword();
    /// Listens to MIDI switches, while any is bound or a key is waited for. `switches` outlives this.
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

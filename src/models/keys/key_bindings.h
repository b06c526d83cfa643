// SPDX-License-Identifier: GPL-3.0-or-later
// The keys' way from the window to what they do, and how they are changed.
#pragma once

// Qt stands first: moc cannot read the standard headers before it.
#include <QAbstractListModel>
#include <QKeyEvent>
#include <QQuickWindow>
#include <QString>
#include <QStringList>
#include <QVariantList>
#include <QtQml/qqmlregistration.h>

#include "models/keys/key_table.h"
#include "models/keys/midi_switches.h"
#include "practice/keys/key_press_watch.h"

#include <cstdint>
#include <functional>
#include <optional>

namespace piolo::models {

/// A row for each action. Window's thread.
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
    /// The keys of each action as people read them, what the one pedal does of it too: "Space, PgDown", "Esc,
    /// F5 held".
    Q_PROPERTY(QString markKeys READ markKeys NOTIFY keysChanged)
    Q_PROPERTY(QString pedalKeys READ pedalKeys NOTIFY keysChanged)
    Q_PROPERTY(QString cleanKeys READ cleanKeys NOTIFY keysChanged)
    Q_PROPERTY(QString backKeys READ backKeys NOTIFY keysChanged)
    Q_PROPERTY(QString fasterKeys READ fasterKeys NOTIFY keysChanged)
    Q_PROPERTY(QString slowerKeys READ slowerKeys NOTIFY keysChanged)
    Q_PROPERTY(QString stopKeys READ stopKeys NOTIFY keysChanged)
    Q_PROPERTY(QString tryKeys READ tryKeys NOTIFY keysChanged)
    Q_PROPERTY(QString hearKeys READ hearKeys NOTIFY keysChanged)
    Q_PROPERTY(QString nextKeys READ nextKeys NOTIFY keysChanged)
    Q_PROPERTY(QString stretchKeys READ stretchKeys NOTIFY keysChanged)
    Q_PROPERTY(QString saveKeys READ saveKeys NOTIFY keysChanged)
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

    /// Where the player is: the keys of that place are heard, all others are left to the controls.
    void setPlace(KeyPlace place) { place_ = place; }
    /// The click runs: keys come before those of any focused control.
    void setUrgent(bool urgent) { urgent_ = urgent; }
    void setBounceMillis(int millis) { watch_.setBounce(millis); }
    [[nodiscard]] QString capturing() const { return capturing_; }
    [[nodiscard]] QString conflict() const { return conflict_; }
    [[nodiscard]] bool isContested() const { return !contested_.isEmpty(); }
    [[nodiscard]] bool isDeciding() const { return deciding_; }
    void setDeciding(bool deciding);
    [[nodiscard]] QString saying() const { return saying_; }
    [[nodiscard]] QString midiLine() const;
    [[nodiscard]] QVariantList sets() const { return KeyTable::sets(); }

    [[nodiscard]] QString markKeys() const { return keysAndPedal("mark", QStringLiteral("%1")); }
    [[nodiscard]] QString pedalKeys() const { return keysOf("pedal"); }
    [[nodiscard]] QString cleanKeys() const { return keysOf("clean"); }
    [[nodiscard]] QString backKeys() const { return keysAndPedal("back", qtTrId("keys.twice")); }
    [[nodiscard]] QString fasterKeys() const { return keysOf("faster"); }
    [[nodiscard]] QString slowerKeys() const { return keysOf("slower"); }
    [[nodiscard]] QString stopKeys() const { return keysAndPedal("stop", qtTrId("keys.held")); }
    [[nodiscard]] QString tryKeys() const { return keysOf("try"); }
    [[nodiscard]] QString hearKeys() const { return keysOf("hear"); }
    [[nodiscard]] QString nextKeys() const { return keysAndPedal("next", qtTrId("keys.held")); }
    [[nodiscard]] QString stretchKeys() const { return keysOf("stretch"); }
    [[nodiscard]] QString saveKeys() const { return keysOf("save"); }

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

    /// Listens to the keys of that window.
    void watch(QQuickWindow* window);
    /// Listens to MIDI switches, while any is bound or a key is waited for. `switches` outlives this.
    void watch(MidiSwitches& switches);
    bool eventFilter(QObject* watched, QEvent* event) override;

signals:
    /// A key of that action was pressed, at that moment (nanoseconds of the monotonic clock).
    void pressed(const QString& action, qint64 nanos);
    /// The same of the one pedal, which is read by when it moves.
    void pedalDown(qint64 nanos);
    void pedalUp(qint64 nanos);
    /// The pedal's last release was none.
    void pedalStillDown();
    /// The keyboard went away.
    void pedalLost();
    void capturingChanged();
    void decidingChanged();
    void sayingChanged();
    void midiLineChanged();
    void keysChanged();

private:
    /// A key or switch on its way: its contact is its own, whatever the modifiers.
    struct Hit {
        QString trigger;
        int contact = 0;
        std::int64_t nanos = 0;
    };
    [[nodiscard]] QString keysOf(const char* action) const;
    /// `way`: what the pedal does for it, with %1 for its keys.
    [[nodiscard]] QString keysAndPedal(const char* action, const QString& way) const;
    bool press(const QKeyEvent& event);
    void release(const QKeyEvent& event);
    void move(const practice::MidiMoment& moment);
    void take(const Hit& hit);
    void act(int row, const Hit& hit);
    void lift(int contact, std::int64_t nanos);
    void bind(const QString& trigger);
    void contest(int rival, const QString& trigger);
    void change(const KeyTable& before, const QStringList& lines);
    void say(const QStringList& lines);
    void wantMidi();
    [[nodiscard]] bool leftToControl(const QKeyEvent& event) const;
    [[nodiscard]] std::int64_t momentOf(const QKeyEvent& event) const;

    std::function<void(const Keys&)> save_;
    std::function<std::int64_t()> clock_;
    KeyTable table_;
    practice::KeyPressWatch watch_;
    MidiSwitches* midi_ = nullptr;
    QQuickWindow* window_ = nullptr;
    KeyPlace place_ = KeyPlace::none;
    bool urgent_ = false;
    QString capturing_;
    QString conflict_;
    QString contested_;
    QString saying_;
    bool deciding_ = false;
    bool midiAsked_ = false;
    std::optional<int> pedal_; // the contact that moved the one pedal last
};

} // namespace piolo::models

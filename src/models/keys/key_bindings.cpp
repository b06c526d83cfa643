// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/keys/key_bindings.h"

#include "models/text/table_text.h"

namespace piolo::models {

namespace {

QString nameOf(const KeyActionInfo& info) { return tableText(info.name); }

std::optional<KeyAction> named(const QString& name) { return keyActionNamed(name.toStdString()); }

QVariantList chipsOf(const QStringList& triggers) {
    QVariantList chips;
    for (const QString& trigger : triggers)
        chips << QVariantMap{{"trigger", trigger}, {"text", triggerWords(trigger)}};
    return chips;
}

} // namespace

KeyBindings::KeyBindings(const Keys& saved, std::function<void(const Keys&)> save,
                         std::function<std::int64_t()> clock, QObject* parent)
    : QAbstractListModel(parent), save_(std::move(save)), table_(saved), listener_(table_, std::move(clock)) {
    connect(&listener_, &KeyListener::offered, this, &KeyBindings::take);
}

int KeyBindings::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(keyActions.size());
}

QVariant KeyBindings::data(const QModelIndex& index, int role) const {
    if (!checkIndex(index, CheckIndexOption::IndexIsValid)) return {};
    const KeyActionInfo& info = keyActions[static_cast<std::size_t>(index.row())];
    switch (role) {
    case actionRole:
        return nameOf(info);
    case Qt::DisplayRole:
    case wordsRole:
        return KeyTable::words(info.action);
    case keysRole:
        return triggerWords(table_.triggers(info.action));
    case chipsRole:
        return chipsOf(table_.triggers(info.action));
    default:
        return {};
    }
}

QHash<int, QByteArray> KeyBindings::roleNames() const {
    return {{actionRole, "action"}, {wordsRole, "words"}, {keysRole, "keys"}, {chipsRole, "chips"}};
}

QString KeyBindings::capturing() const {
    const auto action = capture_.action();
    return action ? nameOf(infoOf(*action)) : QString();
}

QString KeyBindings::shown(KeyAction action) const {
    const char* const byPedal = infoOf(action).byPedal;
    QStringList all{triggerWords(table_.triggers(action))};
    const QString pedal = triggerWords(table_.triggers(KeyAction::pedal));
    if (byPedal != nullptr && !pedal.isEmpty())
        all << (*byPedal == '\0' ? pedal : qtTrId(byPedal).arg(pedal));
    all.removeAll(QString());
    return all.join(QStringLiteral(", "));
}

QVariant KeyBindings::shown() const {
    QVariantMap map;
    for (const KeyActionInfo& info : keyActions) map.insert(nameOf(info), shown(info.action));
    return map;
}

QString KeyBindings::midiLine() const {
    if (!midiAsked_) return {};
    if (midi_ == nullptr || !midi_->isThere()) return qtTrId("keys.midi.none");
    if (!capture_.action()) return {};
    if (midi_->inputs().isEmpty()) return qtTrId("keys.midi.unplugged");
    return qtTrId("keys.midi.listening").arg(midi_->inputs().join(QStringLiteral(", ")));
}

void KeyBindings::captureChanged() {
    listener_.setCapturing(capture_.action().has_value());
    wantMidi();
    emit capturingChanged();
}

void KeyBindings::capture(const QString& action) {
    const auto known = named(action);
    if (!known) return;
    capture_.begin(*known);
    midiAsked_ = false;
    say({});
    captureChanged();
}

void KeyBindings::captureMidi(const QString& action) {
    capture(action);
    midiAsked_ = true;
    if (midi_ == nullptr || !midi_->isThere()) capture_.giveUp();
    captureChanged();
    emit midiLineChanged();
}

void KeyBindings::giveUp() {
    capture_.giveUp();
    captureChanged();
    emit midiLineChanged();
}

void KeyBindings::setDeciding(bool deciding) {
    if (deciding == deciding_) return;
    deciding_ = deciding;
    listener_.setDeciding(deciding);
    emit decidingChanged();
}

void KeyBindings::take(const QString& trigger) {
    if (trigger == QLatin1String("Esc") && capture_.action() != KeyAction::stop) return giveUp();
    const KeyTable before = table_;
    const QStringList lines = capture_.offer(trigger);
    if (lines.isEmpty()) return captureChanged();
    giveUp();
    change(before, lines);
}

void KeyBindings::takeOver() {
    const KeyTable before = table_;
    const QStringList lines = capture_.takeOver();
    if (lines.isEmpty()) return;
    giveUp();
    change(before, lines);
}

// Earlier messages are in the previous language, and the screen that was waiting for a key is created again.
void KeyBindings::reword() {
    beginResetModel();
    giveUp();
    say({});
    endResetModel();
    emit keysChanged();
}

void KeyBindings::takeAway(const QString& action, const QString& trigger) {
    const auto known = named(action);
    if (!known || !table_.triggers(*known).contains(trigger)) return;
    const QString key = triggerWords(trigger);
    if (table_.isNeeded(*known, trigger)) return say({qtTrId("keys.kept").arg(key, KeyTable::words(*known))});
    const KeyTable before = table_;
    table_.remove(*known, trigger);
    change(before, {qtTrId("keys.removed").arg(key, KeyTable::words(*known))});
}

void KeyBindings::useSet(const QString& set) {
    KeyTable changed = table_;
    changed.use(set);
    changeTo(changed);
}

void KeyBindings::restore() {
    KeyTable changed = table_;
    changed.restore();
    changeTo(changed);
}

void KeyBindings::changeTo(const KeyTable& changed) {
    const KeyTable before = table_;
    table_ = changed;
    QStringList lines = table_.differences(before);
    if (lines.isEmpty()) lines << qtTrId("keys.unchanged");
    change(before, lines);
}

// Keeps the rows, so that the focused item keeps the focus.
void KeyBindings::change(const KeyTable& before, const QStringList& lines) {
    for (const KeyActionInfo& info : keyActions) {
        if (table_.triggers(info.action) == before.triggers(info.action)) continue;
        const QModelIndex row = index(static_cast<int>(rowOf(info.action)));
        emit dataChanged(row, row);
    }
    say(lines);
    wantMidi();
    save_(table_.changed());
    emit keysChanged();
}

void KeyBindings::say(const QStringList& lines) {
    saying_ = lines.join(QLatin1Char('\n'));
    emit sayingChanged();
}

void KeyBindings::watch(MidiSwitches& switches) {
    midi_ = &switches;
    connect(midi_, &MidiSwitches::changed, this, &KeyBindings::midiLineChanged);
    listener_.watch(switches);
    wantMidi();
}

void KeyBindings::wantMidi() {
    if (midi_ != nullptr) midi_->want(table_.hasMidi() || capture_.action().has_value());
}

} // namespace piolo::models

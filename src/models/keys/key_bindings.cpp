// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/keys/key_bindings.h"

namespace piolo::models {

KeyBindings::KeyBindings(const Keys& saved, std::function<void(const Keys&)> save,
                         std::function<std::int64_t()> clock, QObject* parent)
    : QAbstractListModel(parent), save_(std::move(save)), clock_(std::move(clock)), table_(saved) {}

int KeyBindings::rowCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : table_.count(); }

QVariant KeyBindings::data(const QModelIndex& index, int role) const {
    if (!checkIndex(index, CheckIndexOption::IndexIsValid)) return {};
    const KeyAction& action = table_.action(index.row());
    switch (role) {
    case actionRole:
        return action.name;
    case Qt::DisplayRole:
    case wordsRole:
        return action.words;
    case keysRole:
        return triggerWords(action.triggers);
    case chipsRole: {
        QVariantList chips;
        for (const QString& trigger : action.triggers)
            chips << QVariantMap{{"trigger", trigger}, {"text", triggerWords(trigger)}};
        return chips;
    }
    default:
        return {};
    }
}

QHash<int, QByteArray> KeyBindings::roleNames() const {
    return {{actionRole, "action"}, {wordsRole, "words"}, {keysRole, "keys"}, {chipsRole, "chips"}};
}

QString KeyBindings::keysOf(const char* action) const {
    return triggerWords(table_.triggersOf(QString::fromLatin1(action)));
}

QString KeyBindings::keysAndPedal(const char* action, const QString& way) const {
    const QString pedal = pedalKeys();
    QStringList all{keysOf(action)};
    if (!pedal.isEmpty()) all << way.arg(pedal);
    all.removeAll(QString());
    return all.join(QStringLiteral(", "));
}

QString KeyBindings::midiLine() const {
    if (!midiAsked_) return {};
    if (midi_ == nullptr || !midi_->isThere()) return qtTrId("keys.midi.none");
    if (capturing_.isEmpty()) return {};
    if (midi_->inputs().isEmpty()) return qtTrId("keys.midi.unplugged");
    return qtTrId("keys.midi.listening").arg(midi_->inputs().join(QStringLiteral(", ")));
}

void KeyBindings::capture(const QString& action) {
    if (table_.rowOf(action) < 0) return;
    capturing_ = action;
    conflict_.clear();
    contested_.clear();
    midiAsked_ = false;
    say({});
    wantMidi();
    emit capturingChanged();
}

void KeyBindings::captureMidi(const QString& action) {
    capture(action);
    midiAsked_ = true;
    if (midi_ == nullptr || !midi_->isThere()) {
        capturing_.clear();
        wantMidi();
    }
    emit capturingChanged();
    emit midiLineChanged();
}

void KeyBindings::giveUp() {
    capturing_.clear();
    conflict_.clear();
    contested_.clear();
    wantMidi();
    emit capturingChanged();
    emit midiLineChanged();
}

void KeyBindings::setDeciding(bool deciding) {
    if (deciding == deciding_) return;
    deciding_ = deciding;
    emit decidingChanged();
}

void KeyBindings::bind(const QString& trigger) {
    const int row = table_.rowOf(capturing_);
    const int rival = table_.rival(row, trigger);
    if (rival < 0 || trigger == contested_) {
        contested_ = trigger;
        return takeOver();
    }
    contest(rival, trigger);
}

void KeyBindings::contest(int rival, const QString& trigger) {
    const QString key = triggerWords(trigger);
    const QString holder = table_.action(rival).words;
    const bool needed = table_.isNeeded(rival, trigger);
    contested_ = needed ? QString() : trigger;
    conflict_ = needed ? qtTrId("keys.last").arg(key, holder) : qtTrId("keys.taken").arg(key, holder);
    emit capturingChanged();
}

// What was said before is in another language, and the screen that waited for a key is made anew.
void KeyBindings::reword() {
    giveUp();
    say({});
    beginResetModel();
    table_.reword();
    endResetModel();
    emit keysChanged();
}

void KeyBindings::takeOver() {
    const int row = table_.rowOf(capturing_);
    if (row < 0 || contested_.isEmpty()) return;
    const KeyTable before = table_;
    QStringList lines;
    for (int rival = table_.rival(row, contested_); rival >= 0; rival = table_.rival(row, contested_)) {
        lines << qtTrId("keys.moved-from").arg(triggerWords(contested_), table_.action(rival).words);
        table_.remove(rival, contested_);
    }
    const QString gone = table_.add(row, contested_);
    lines.prepend(qtTrId("keys.moved-to").arg(triggerWords(contested_), table_.action(row).words));
    if (!gone.isEmpty()) lines << qtTrId("keys.full").arg(triggerWords(gone)).arg(KeyTable::most);
    giveUp();
    change(before, lines);
}

void KeyBindings::takeAway(const QString& action, const QString& trigger) {
    const int row = table_.rowOf(action);
    if (row < 0 || !table_.action(row).triggers.contains(trigger)) return;
    const QString key = triggerWords(trigger);
    if (table_.isNeeded(row, trigger)) return say({qtTrId("keys.kept").arg(key, table_.action(row).words)});
    const KeyTable before = table_;
    table_.remove(row, trigger);
    change(before, {qtTrId("keys.removed").arg(key, table_.action(row).words)});
}

void KeyBindings::useSet(const QString& set) {
    const KeyTable before = table_;
    table_.use(set);
    QStringList lines = table_.differences(before);
    if (lines.isEmpty()) lines << qtTrId("keys.unchanged");
    change(before, lines);
}

void KeyBindings::restore() {
    const KeyTable before = table_;
    table_.restore();
    QStringList lines = table_.differences(before);
    if (lines.isEmpty()) lines << qtTrId("keys.unchanged");
    change(before, lines);
}

// Rows stay what they are: what was focused keeps the focus.
void KeyBindings::change(const KeyTable& before, const QStringList& lines) {
    for (int row = 0; row < table_.count(); ++row)
        if (table_.action(row).triggers != before.action(row).triggers)
            emit dataChanged(index(row), index(row));
    say(lines);
    wantMidi();
    save_(table_.changed());
    emit keysChanged();
}

void KeyBindings::say(const QStringList& lines) {
    saying_ = lines.join(QLatin1Char('\n'));
    emit sayingChanged();
}

void KeyBindings::wantMidi() {
    if (midi_ != nullptr) midi_->want(table_.hasMidi() || !capturing_.isEmpty());
}

} // namespace piolo::models

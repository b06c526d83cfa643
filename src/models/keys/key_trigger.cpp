// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/keys/key_trigger.h"

#include "core/base/midi_press.h"

#include <QKeySequence>
#include <QtGlobal>

#include <algorithm>

namespace piolo::models {

namespace {

const QString between = QStringLiteral(", ");

QString midiWords(const MidiSwitch& which) {
    const QString kind = which.kind == MidiSwitch::Kind::note         ? qtTrId("keys.midi.note")
                         : which.kind == MidiSwitch::Kind::controller ? qtTrId("keys.midi.controller")
                                                                      : qtTrId("keys.midi.program");
    return kind.arg(which.number).arg(which.channel);
}

/// Normalises the text of a key; any other text stays as it is.
QString settled(const QString& text) {
    const auto keys = QKeySequence::fromString(text, QKeySequence::PortableText);
    const bool one = keys.count() == 1 && keys[0].key() != Qt::Key_unknown;
    return one ? keys.toString(QKeySequence::PortableText) : text;
}

} // namespace

QString triggerOf(const QKeyEvent& event) {
    switch (event.key()) {
    case 0:
    case Qt::Key_unknown:
    case Qt::Key_Shift:
    case Qt::Key_Control:
    case Qt::Key_Alt:
    case Qt::Key_Meta:
    case Qt::Key_AltGr:
    case Qt::Key_CapsLock:
    case Qt::Key_NumLock:
    case Qt::Key_Tab:
    case Qt::Key_Backtab:
        return {};
    default:
        break;
    }
    const int key = event.key() == Qt::Key_Enter ? static_cast<int>(Qt::Key_Return) : event.key();
    const QKeyCombination pressed(event.modifiers() & ~Qt::KeypadModifier, static_cast<Qt::Key>(key));
    return QKeySequence(pressed).toString(QKeySequence::PortableText);
}

bool isMidi(const QString& trigger) { return MidiSwitch::named(trigger.toStdString()).has_value(); }

QString triggerWords(const QString& trigger) {
    if (const auto midi = MidiSwitch::named(trigger.toStdString())) return midiWords(*midi);
    const auto keys = QKeySequence::fromString(trigger, QKeySequence::PortableText);
    const bool one = keys.count() == 1 && keys[0].key() != Qt::Key_unknown;
    return one ? keys.toString(QKeySequence::NativeText) : trigger;
}

QString triggerWords(const QStringList& triggers) {
    QStringList texts;
    for (const QString& trigger : triggers) texts << triggerWords(trigger);
    return texts.join(between);
}

// A key can be a comma itself: the text is split only if there is something before the separator.
QStringList triggersIn(const std::string& text) {
    QStringList triggers;
    QString rest = QString::fromStdString(text);
    while (!rest.isEmpty()) {
        const auto cut = rest.indexOf(between, 1);
        const QString trigger = settled(cut < 0 ? rest : rest.left(cut));
        if (!triggers.contains(trigger)) triggers << trigger;
        rest = cut < 0 ? QString() : rest.mid(cut + between.size());
    }
    return triggers;
}

std::string textOf(const QStringList& triggers) { return triggers.join(between).toStdString(); }

} // namespace piolo::models

// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/keys/key_listener.h"

#include "models/keys/event_moment.h"

#include <QQuickItem>

namespace piolo::models {

namespace {

constexpr std::int64_t nanosPerMilli = 1'000'000;

/// A dialog that lies over the screens has the keys to itself.
bool isInDialog(const QQuickItem* item) {
    for (; item != nullptr; item = item->parentItem())
        if (item->inherits("QQuickDialogPopupItem") || item->inherits("QQuickOverlay")) return true;
    return false;
}

/// Keys have codes from 0 up, so switches get codes from -1 down.
int contactOf(const MidiSwitch& which) { return -1 - which.code(); }

/// True if that key types or edits in that field. One line has no use for keys that move by lines or pages,
/// and one for numbers none for letters.
bool isTyping(const QQuickItem& field, int key) {
    if (!field.inherits("QQuickTextInput")) return true;
    const auto hints = Qt::InputMethodHints(field.property("inputMethodHints").toInt());
    if (hints.testFlag(Qt::ImhFormattedNumbersOnly) &&
        (key == Qt::Key_Space || (key >= Qt::Key_A && key <= Qt::Key_Z)))
        return false;
    const bool moves =
        key == Qt::Key_Up || key == Qt::Key_Down || key == Qt::Key_PageUp || key == Qt::Key_PageDown;
    return !moves && (key < Qt::Key_F1 || key > Qt::Key_F35);
}

} // namespace

KeyListener::KeyListener(const KeyTable& table, std::function<std::int64_t()> clock, QObject* parent)
    : QObject(parent), table_(table), clock_(std::move(clock)) {}

void KeyListener::watch(QQuickWindow* window) {
    if (window_ != nullptr) window_->removeEventFilter(this);
    window_ = window;
    if (window_ != nullptr) window_->installEventFilter(this);
}

void KeyListener::watch(MidiSwitches& switches) {
    connect(&switches, &MidiSwitches::moved, this, &KeyListener::move);
}

bool KeyListener::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() == QEvent::KeyPress) return press(*static_cast<QKeyEvent*>(event));
    if (event->type() == QEvent::KeyRelease) release(*static_cast<QKeyEvent*>(event));
    if (event->type() == QEvent::FocusOut) {
        watch_.forget();
        emit pedalLost();
    }
    return QObject::eventFilter(watched, event);
}

bool KeyListener::press(const QKeyEvent& event) {
    if (deciding_ &&
        (event.key() == Qt::Key_Space || event.key() == Qt::Key_Return || event.key() == Qt::Key_Enter))
        return false;
    const Hit hit{triggerOf(event), event.key(), momentOf(event)};
    if (hit.trigger.isEmpty()) return false;
    if (!capturing_ && (!actionOf(hit.trigger) || leftToControl(event))) return false;
    const auto millis = static_cast<std::int64_t>(event.timestamp());
    if (event.isAutoRepeat()) return true;
    if (watch_.pressed(hit.contact, millis))
        take(hit);
    else if (pedal_ == hit.contact)
        emit pedalStillDown();
    return true;
}

void KeyListener::release(const QKeyEvent& event) {
    if (event.isAutoRepeat()) return;
    watch_.released(event.key(), static_cast<std::int64_t>(event.timestamp()));
    lift(event.key(), momentOf(event));
}

void KeyListener::move(const practice::MidiMoment& moment) {
    const Hit hit{QString::fromStdString(moment.press.which.text()), contactOf(moment.press.which),
                  moment.nanos};
    const std::int64_t millis = moment.nanos / nanosPerMilli;
    if (moment.press.way != MidiPress::Way::up) {
        if (watch_.pressed(hit.contact, millis))
            take(hit);
        else if (pedal_ == hit.contact)
            emit pedalStillDown();
    }
    if (moment.press.way == MidiPress::Way::down) return;
    watch_.released(hit.contact, millis);
    lift(hit.contact, moment.nanos);
}

void KeyListener::take(const Hit& hit) {
    if (capturing_)
        emit offered(hit.trigger);
    else if (const auto action = actionOf(hit.trigger))
        act(*action, hit);
}

// A tempo that is typed into can be tapped, too.
std::optional<KeyAction> KeyListener::actionOf(const QString& trigger) const {
    const QQuickItem* const focused = window_ == nullptr ? nullptr : window_->activeFocusItem();
    if (!urgent_ && focused != nullptr && focused->property("tappable").toBool())
        if (const auto action = table_.at(trigger, KeyScope::figure)) return action;
    return table_.at(trigger, scope_);
}

void KeyListener::act(KeyAction action, const Hit& hit) {
    if (action != KeyAction::pedal) {
        emit pressed(action, hit.nanos);
        return;
    }
    pedal_ = hit.contact;
    emit pedalDown(hit.nanos);
}

void KeyListener::lift(int contact, std::int64_t nanos) {
    if (pedal_ == contact) emit pedalUp(nanos);
}

// Text fields need keys for typing and open lists for moving. While nothing runs, Space and Return press the
// control that was reached by Tab; one that was clicked or touched is done with, and does not take them.
bool KeyListener::leftToControl(const QKeyEvent& event) const {
    const QQuickItem* focused = window_ == nullptr ? nullptr : window_->activeFocusItem();
    if (focused == nullptr) return false;
    const bool types = (event.modifiers() & (Qt::ControlModifier | Qt::AltModifier | Qt::MetaModifier)) == 0;
    if (types && focused->flags().testFlag(QQuickItem::ItemAcceptsInputMethod) &&
        isTyping(*focused, event.key()))
        return true;
    if (urgent_) return false;
    if (isInDialog(focused)) return true;
    if (focused->inherits("QQuickComboBox") && focused->property("down").toBool()) return true;
    const bool presses =
        event.key() == Qt::Key_Space || event.key() == Qt::Key_Return || event.key() == Qt::Key_Enter;
    const bool clicked = focused->property("focusReason").toInt() == Qt::MouseFocusReason;
    const bool isControl = focused->inherits("QQuickAbstractButton") || focused->inherits("QQuickComboBox");
    return presses && types && isControl && !clicked;
}

std::int64_t KeyListener::momentOf(const QKeyEvent& event) const {
    return eventMoment(event.timestamp(), clock_());
}

} // namespace piolo::models

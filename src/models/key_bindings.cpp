// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/key_bindings.h"

#include <QKeySequence>
#include <QQuickItem>

#include <algorithm>

namespace piolo::models {

namespace {

constexpr std::size_t mostKeys = 4; // what a QKeySequence holds

QString textOf(const std::vector<int>& keys, QKeySequence::SequenceFormat format) {
    QStringList texts;
    for (const int key : keys) texts.append(QKeySequence(key).toString(format));
    return texts.join(QStringLiteral(", "));
}

std::vector<int> keysIn(const std::string& text) {
    const auto sequence = QKeySequence::fromString(QString::fromStdString(text), QKeySequence::PortableText);
    std::vector<int> keys;
    keys.reserve(static_cast<std::size_t>(sequence.count()));
    for (int at = 0; at < sequence.count(); ++at)
        keys.push_back(sequence[static_cast<uint>(at)].toCombined());
    return keys;
}

bool isModifier(int key) {
    return key == Qt::Key_Shift || key == Qt::Key_Control || key == Qt::Key_Alt || key == Qt::Key_Meta ||
           key == Qt::Key_AltGr || key == Qt::Key_CapsLock || key == Qt::Key_NumLock || key == 0 ||
           key == Qt::Key_unknown;
}

// Enter on the number pad is Return, and the pad's keys are those of the same name.
int combined(const QKeyEvent& event) {
    const int key = event.key() == Qt::Key_Enter ? static_cast<int>(Qt::Key_Return) : event.key();
    return QKeyCombination(event.modifiers() & ~Qt::KeypadModifier, static_cast<Qt::Key>(key)).toCombined();
}

} // namespace

KeyBindings::KeyBindings(const Keys& saved, std::function<void(const Keys&)> save,
                         std::function<std::int64_t()> clock, QObject* parent)
    : QAbstractListModel(parent), save_(std::move(save)), clock_(std::move(clock)), bindings_(usual()) {
    for (Binding& binding : bindings_)
        if (const auto found = saved.find(binding.action.toStdString()); found != saved.end())
            binding.keys = keysIn(found->second);
}

std::vector<KeyBindings::Binding> KeyBindings::usual() {
    return {
        {QStringLiteral("mark"),
         tr("Start; while the click runs: a miss"),
         {Qt::Key_Space, Qt::Key_PageDown}},
        {QStringLiteral("clean"), tr("Clean, in open-ended runs"), {Qt::Key_Return}},
        {QStringLiteral("back"), tr("Take back the last mark"), {Qt::Key_Backspace, Qt::Key_PageUp}},
        {QStringLiteral("faster"), tr("Faster, while stopped"), {Qt::Key_Up}},
        {QStringLiteral("slower"), tr("Slower, while stopped"), {Qt::Key_Down}},
        {QStringLiteral("stop"), tr("Stop the click"), {Qt::Key_Escape}},
        {QStringLiteral("try"), tr("Try one run at the target"), {Qt::Key_T}},
        {QStringLiteral("hear"), tr("Hear the passage's notes first, while stopped"), {Qt::Key_H}},
    };
}

int KeyBindings::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(bindings_.size());
}

QVariant KeyBindings::data(const QModelIndex& index, int role) const {
    if (!checkIndex(index, CheckIndexOption::IndexIsValid)) return {};
    const Binding& binding = bindings_[static_cast<std::size_t>(index.row())];
    switch (role) {
    case actionRole:
        return binding.action;
    case Qt::DisplayRole:
    case wordsRole:
        return binding.words;
    case keysRole:
        return textOf(binding.keys, QKeySequence::NativeText);
    default:
        return {};
    }
}

QHash<int, QByteArray> KeyBindings::roleNames() const {
    return {{actionRole, "action"}, {wordsRole, "words"}, {keysRole, "keys"}};
}

void KeyBindings::setListening(bool listening) {
    if (listening == listening_) return;
    listening_ = listening;
    emit listeningChanged();
}

void KeyBindings::setUrgent(bool urgent) {
    if (urgent == urgent_) return;
    urgent_ = urgent;
    emit listeningChanged();
}

QString KeyBindings::keysOf(const char* action) const {
    const Binding* binding = find(QString::fromLatin1(action));
    return binding == nullptr ? QString() : textOf(binding->keys, QKeySequence::NativeText);
}

KeyBindings::Binding* KeyBindings::find(const QString& action) {
    return const_cast<Binding*>(std::as_const(*this).find(action));
}

const KeyBindings::Binding* KeyBindings::find(const QString& action) const {
    const auto found = std::find_if(bindings_.begin(), bindings_.end(),
                                    [&](const Binding& b) { return b.action == action; });
    return found == bindings_.end() ? nullptr : &*found;
}

const KeyBindings::Binding* KeyBindings::holder(int key) const {
    const auto found = std::find_if(bindings_.begin(), bindings_.end(), [&](const Binding& b) {
        return std::find(b.keys.begin(), b.keys.end(), key) != b.keys.end();
    });
    return found == bindings_.end() ? nullptr : &*found;
}

void KeyBindings::capture(const QString& action) {
    if (find(action) == nullptr) return;
    capturing_ = action;
    conflict_.clear();
    emit capturingChanged();
}

void KeyBindings::giveUp() {
    capturing_.clear();
    conflict_.clear();
    emit capturingChanged();
}

void KeyBindings::restore() {
    beginResetModel();
    bindings_ = usual();
    endResetModel();
    store();
}

void KeyBindings::bind(int key) {
    Binding* binding = find(capturing_);
    const Binding* other = holder(key);
    if (other != nullptr && other != binding) {
        conflict_ = tr("%1 is taken: %2").arg(textOf({key}, QKeySequence::NativeText), other->words);
        emit capturingChanged();
        return;
    }
    std::erase(binding->keys, key);
    binding->keys.insert(binding->keys.begin(), key);
    if (binding->keys.size() > mostKeys) binding->keys.pop_back();
    const QModelIndex row = index(static_cast<int>(binding - bindings_.data()));
    emit dataChanged(row, row);
    emit bound(capturing_, textOf({key}, QKeySequence::NativeText));
    giveUp();
    store();
}

void KeyBindings::store() {
    Keys changed;
    const std::vector<Binding> untouched = usual();
    for (std::size_t row = 0; row < bindings_.size(); ++row)
        if (bindings_[row].keys != untouched[row].keys)
            changed[bindings_[row].action.toStdString()] =
                textOf(bindings_[row].keys, QKeySequence::PortableText).toStdString();
    save_(changed);
    emit keysChanged();
}

void KeyBindings::watch(QQuickWindow* window) {
    if (window_ != nullptr) window_->removeEventFilter(this);
    window_ = window;
    if (window_ != nullptr) window_->installEventFilter(this);
}

bool KeyBindings::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() == QEvent::KeyPress) return press(*static_cast<QKeyEvent*>(event));
    if (event->type() == QEvent::KeyRelease) {
        const auto& release = *static_cast<QKeyEvent*>(event);
        if (!release.isAutoRepeat())
            watch_.released(release.key(), static_cast<std::int64_t>(release.timestamp()));
    }
    if (event->type() == QEvent::FocusOut) watch_.forget();
    return QAbstractListModel::eventFilter(watched, event);
}

bool KeyBindings::press(const QKeyEvent& event) {
    const int key = combined(event);
    const bool capturing = !capturing_.isEmpty();
    if (isModifier(event.key())) return false;
    if (!capturing && (!listening_ || holder(key) == nullptr || leftToControl(key))) return false;
    if (event.isAutoRepeat() || !watch_.pressed(event.key(), static_cast<std::int64_t>(event.timestamp())))
        return true;
    if (!capturing) {
        emit pressed(holder(key)->action, momentOf(event));
        return true;
    }
    if (key == Qt::Key_Escape && capturing_ != QLatin1String("stop"))
        giveUp();
    else
        bind(key);
    return true;
}

// A text field types, and while nothing runs a focused button is pressed.
bool KeyBindings::leftToControl(int key) const {
    const QQuickItem* focused = window_ == nullptr ? nullptr : window_->activeFocusItem();
    if (focused == nullptr) return false;
    if (focused->flags().testFlag(QQuickItem::ItemAcceptsInputMethod)) return true;
    const bool presses = key == Qt::Key_Space || key == Qt::Key_Return;
    return !urgent_ && presses && focused->inherits("QQuickAbstractButton");
}

// X11 and Wayland stamp keys in milliseconds of the same monotonic clock, cut to 32 bits. Where the age that
// comes of it is not plausible (another clock), the key was pressed now.
std::int64_t KeyBindings::momentOf(const QKeyEvent& event) const {
    constexpr std::uint32_t oldest = 500;
    const std::int64_t now = clock_();
    const auto age =
        static_cast<std::uint32_t>(now / 1'000'000) - static_cast<std::uint32_t>(event.timestamp());
    return age <= oldest ? now - std::int64_t{age} * 1'000'000 : now;
}

} // namespace piolo::models

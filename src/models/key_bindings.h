// SPDX-License-Identifier: GPL-3.0-or-later
// Which key does what in the drill, and the keys' way from the window to the drill.
#pragma once

// Qt stands first: moc cannot read the standard headers before it.
#include <QAbstractListModel>
#include <QKeyEvent>
#include <QQuickWindow>
#include <QString>
#include <QtQml/qqmlregistration.h>

#include "models/key_press_watch.h"

#include <cstdint>
#include <functional>
#include <map>
#include <string>
#include <vector>

namespace piolo::models {

/// A row for each action. Window's thread.
class KeyBindings : public QAbstractListModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("belongs to the practice room")
    /// The screen wants the drill's keys: the drill is shown and no dialog is open.
    Q_PROPERTY(bool listening READ listening NOTIFY listeningChanged)
    /// The click runs: the drill's keys come before those of any focused control.
    Q_PROPERTY(bool urgent READ urgent NOTIFY listeningChanged)
    /// The action that waits for its new key; "" when none does.
    Q_PROPERTY(QString capturing READ capturing NOTIFY capturingChanged)
    /// Why the last key pressed for `capturing` was not taken; "" when it was.
    Q_PROPERTY(QString conflict READ conflict NOTIFY capturingChanged)
    /// The keys of each action as people read them: "Space, PgDown".
    Q_PROPERTY(QString markKeys READ markKeys NOTIFY keysChanged)
    Q_PROPERTY(QString cleanKeys READ cleanKeys NOTIFY keysChanged)
    Q_PROPERTY(QString backKeys READ backKeys NOTIFY keysChanged)
    Q_PROPERTY(QString fasterKeys READ fasterKeys NOTIFY keysChanged)
    Q_PROPERTY(QString slowerKeys READ slowerKeys NOTIFY keysChanged)
    Q_PROPERTY(QString stopKeys READ stopKeys NOTIFY keysChanged)
    Q_PROPERTY(QString tryKeys READ tryKeys NOTIFY keysChanged)
    Q_PROPERTY(QString hearKeys READ hearKeys NOTIFY keysChanged)
public:
    enum Role { actionRole = Qt::UserRole + 1, wordsRole, keysRole };
    using Keys = std::map<std::string, std::string>;

    /// `saved`: as MachineSettings.keys. `save` is called with all keys that differ from the usual ones.
    /// `clock` gives the present moment in nanoseconds of the monotonic clock.
    KeyBindings(const Keys& saved, std::function<void(const Keys&)> save, std::function<std::int64_t()> clock,
                QObject* parent = nullptr);

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;

    [[nodiscard]] bool listening() const { return listening_; }
    void setListening(bool listening);
    [[nodiscard]] bool urgent() const { return urgent_; }
    void setUrgent(bool urgent);
    [[nodiscard]] QString capturing() const { return capturing_; }
    [[nodiscard]] QString conflict() const { return conflict_; }

    [[nodiscard]] QString markKeys() const { return keysOf("mark"); }
    [[nodiscard]] QString cleanKeys() const { return keysOf("clean"); }
    [[nodiscard]] QString backKeys() const { return keysOf("back"); }
    [[nodiscard]] QString fasterKeys() const { return keysOf("faster"); }
    [[nodiscard]] QString slowerKeys() const { return keysOf("slower"); }
    [[nodiscard]] QString stopKeys() const { return keysOf("stop"); }
    [[nodiscard]] QString tryKeys() const { return keysOf("try"); }
    [[nodiscard]] QString hearKeys() const { return keysOf("hear"); }

    /// The next key pressed is added to the action (four keys at most, the oldest gives way). Esc gives up.
    Q_INVOKABLE void capture(const QString& action);
    Q_INVOKABLE void giveUp();
    /// The usual keys again.
    Q_INVOKABLE void restore();

    /// Listens to the keys of that window.
    void watch(QQuickWindow* window);
    bool eventFilter(QObject* watched, QEvent* event) override;

signals:
    /// A key of that action was pressed, at that moment (nanoseconds of the monotonic clock).
    void pressed(const QString& action, qint64 nanos);
    /// A key was bound.
    void bound(const QString& action, const QString& key);
    void listeningChanged();
    void capturingChanged();
    void keysChanged();

private:
    struct Binding {
        QString action;
        QString words;
        std::vector<int> keys;
    };
    [[nodiscard]] static std::vector<Binding> usual();
    [[nodiscard]] QString keysOf(const char* action) const;
    bool press(const QKeyEvent& event);
    void bind(int key);
    void store();
    [[nodiscard]] Binding* find(const QString& action);
    [[nodiscard]] const Binding* find(const QString& action) const;
    [[nodiscard]] const Binding* holder(int key) const;
    [[nodiscard]] bool leftToControl(int key) const;
    [[nodiscard]] std::int64_t momentOf(const QKeyEvent& event) const;

    std::function<void(const Keys&)> save_;
    std::function<std::int64_t()> clock_;
    std::vector<Binding> bindings_;
    KeyPressWatch watch_;
    QQuickWindow* window_ = nullptr;
    bool listening_ = false;
    bool urgent_ = false;
    QString capturing_;
    QString conflict_;
};

} // namespace piolo::models

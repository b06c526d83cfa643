// SPDX-License-Identifier: GPL-3.0-or-later
// What goes on while another screen is shown, and the way back to it.
#pragma once

// Qt comes first: moc cannot read the standard headers before it.
#include <QObject>
#include <QString>
#include <QtQml/qqmlregistration.h>

#include <functional>
#include <vector>

namespace piolo::models {

/// Window thread.
class UnderWay : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("belongs to the practice room")
    /// "Run-through 2:31"; "" if nothing is under way elsewhere.
    Q_PROPERTY(QString text READ text NOTIFY changed)
    /// The name of its screen.
    Q_PROPERTY(QString screen READ screen NOTIFY changed)
    /// It sounds, or waits for an answer.
    Q_PROPERTY(bool urgent READ isUrgent NOTIFY changed)
public:
    /// What a screen has under way; nothing if `text` is empty.
    struct State {
        QString text;
        bool urgent = false;

        bool operator==(const State&) const = default;
    };
    using Source = std::function<State()>;

    using QObject::QObject;

    /// Urgent ones come first, then those that were watched first. Whoever changes calls refresh().
    void watch(const QString& screen, Source source);
    void setShown(const QString& screen);
    void refresh();

    [[nodiscard]] QString text() const { return state_.text; }
    [[nodiscard]] QString screen() const { return screen_; }
    [[nodiscard]] bool isUrgent() const { return state_.urgent; }

signals:
    void changed();

private:
    struct Watched {
        QString screen;
        Source source;
    };

    std::vector<Watched> watched_;
    QString shown_;
    QString screen_;
    State state_;
};

} // namespace piolo::models

// SPDX-License-Identifier: GPL-3.0-or-later
// The frame around a passage on the picture of its page, as it is moved and before it is kept.
#pragma once

// Qt comes first: moc cannot read the standard headers before it.
#include <QObject>
#include <QString>
#include <QtQml/qqmlregistration.h>

#include "core/passage/passage.h"
#include "core/passage/picture.h"

namespace piolo::models {

/// Window's thread. All places are ten-thousandths of the page, so that what is kept is what is seen.
class PictureFrame : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("belongs to the picture of a passage")
    Q_PROPERTY(int left READ left NOTIFY changed)
    Q_PROPERTY(int right READ right NOTIFY changed)
    Q_PROPERTY(int top READ top NOTIFY changed)
    Q_PROPERTY(int bottom READ bottom NOTIFY changed)
    /// It is elsewhere than it was shown.
    Q_PROPERTY(bool moved READ moved NOTIFY changed)
    /// Where it is, in words.
    Q_PROPERTY(QString sentence READ sentence NOTIFY changed)
public:
    enum Edge { Left = 1, Right = 2, Top = 4, Bottom = 8, All = 15 };
    Q_ENUM(Edge)
    /// It never becomes smaller than this, a fiftieth of the page.
    static constexpr int least = Picture::whole / 50;

    using QObject::QObject;

    [[nodiscard]] int left() const { return now_.left; }
    [[nodiscard]] int right() const { return now_.right; }
    [[nodiscard]] int top() const { return now_.top; }
    [[nodiscard]] int bottom() const { return now_.bottom; }
    [[nodiscard]] bool moved() const { return now_ != shown_; }
    [[nodiscard]] QString sentence() const;

    /// Stands around that part of the page.
    void show(const Picture& picture);
    /// The same picture, cropped to the frame.
    [[nodiscard]] Picture cropped(Picture picture) const;

    /// Moves those edges (a sum of Edge; All: the frame as it is) as far as the page reaches.
    Q_INVOKABLE void move(int edges, int across, int down);
    /// Remembers where it is; dragTo() then counts from there.
    Q_INVOKABLE void hold() { held_ = now_; }
    Q_INVOKABLE void dragTo(int edges, int across, int down);
    /// Around the whole page.
    Q_INVOKABLE void widen();
    /// Back to what was shown.
    Q_INVOKABLE void revert();

signals:
    void changed();

private:
    struct Sides {
        int left = 0, top = 0, right = Picture::whole, bottom = Picture::whole;
        bool operator==(const Sides&) const = default;
    };
    static Sides moved(Sides from, int edges, int across, int down);
    void stand(const Sides& sides);

    Sides now_, held_, shown_;
};

} // namespace piolo::models

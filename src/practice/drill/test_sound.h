// SPDX-License-Identifier: GPL-3.0-or-later
// Lets a player hear a change of the sound, once, after the last of a row of changes.
#pragma once

// Qt comes first: moc cannot read the standard headers before it.
#include <QObject>
#include <QTimer>

#include "engine/click/mix.h"
#include "practice/drill/drill_session.h"

#include <functional>

namespace piolo::practice {

/// Window thread.
class TestSound : public QObject {
    Q_OBJECT
public:
    static constexpr int settleMillis = 300; ///< longer than the repeat of a key

    /// `mayPlay`: nothing else is being played or listened to. `session` must outlive this object.
    TestSound(DrillSession& session, std::function<bool()> mayPlay, QObject* parent = nullptr);

    /// That layer is to be heard as it is now; another call before it has begun replaces this one.
    void want(engine::Layer layer);

private:
    void play();

    DrillSession& session_;
    std::function<bool()> mayPlay_;
    QTimer settling_;
    engine::Layer wanted_ = engine::Layer::beat;
};

} // namespace piolo::practice

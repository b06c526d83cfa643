// SPDX-License-Identifier: GPL-3.0-or-later
// Where the beat is tapped.
#pragma once

#include "core/time/tap_tempo.h"
#include "models/drill/mark_area.h"

#include <QString>
#include <QtQml/qqmlregistration.h>

namespace piolo::models {

/// Reports every press as MarkArea does, and also Space and Return of the button that it is inside. Window
/// thread.
class TapArea : public piolo::models::MarkArea { // in full, for QML
    Q_OBJECT
    QML_ELEMENT
public:
    explicit TapArea(QQuickItem* parent = nullptr);
    bool eventFilter(QObject* watched, QEvent* event) override;
    /// A press now, as a screen reader asks for it.
    Q_INVOKABLE void press();

signals:
    /// The tempo of the taps, from the second on.
    void tapped(const QString& tempo);

protected:
    void componentComplete() override;

private:
    void count(quint64 stamp);

    TapTempo taps_;
};

} // namespace piolo::models

// SPDX-License-Identifier: GPL-3.0-or-later
// What a tempo curve is drawn of.
#pragma once

// Qt comes first: moc cannot read the standard headers before it.
#include <QObject>
#include <QtQml/qqmlregistration.h>

#include "core/history/notebook.h"

namespace piolo::models {

/// Window thread.
class CurveSource : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("has a passage")
public:
    using QObject::QObject;

    /// Null if there is no passage. Valid until the notebook changes.
    [[nodiscard]] virtual const PassageRecord* record() const = 0;
    [[nodiscard]] virtual Date date() const = 0;
    /// False while a curve would take time from the click.
    [[nodiscard]] virtual bool mayDraw() const { return true; }

signals:
    void curveChanged();
};

} // namespace piolo::models

// SPDX-License-Identifier: GPL-3.0-or-later
// The formatter for QML: `Formatter.tempo(84500)`.
#pragma once

// Qt comes first: moc cannot read the standard headers before it.
#include <QObject>
#include <QtQml/qqml.h>
#include <QtQml/qqmlregistration.h>

#include "text/formatter.h"

namespace piolo::models {

using text::Formatter;

struct FormatterElement {
    Q_GADGET
    QML_FOREIGN(piolo::text::Formatter)
    QML_NAMED_ELEMENT(Formatter)
    QML_SINGLETON
};

} // namespace piolo::models

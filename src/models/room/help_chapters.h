// SPDX-License-Identifier: GPL-3.0-or-later
// The table of help chapters, for QML.
#pragma once

// Qt comes first: moc cannot read the standard headers before it.
#include <QObject>
#include <QString>
#include <QVariantList>
#include <QtQml/qqmlregistration.h>

namespace piolo::models {

/// Window thread.
class HelpChapters : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_SINGLETON
    /// Every chapter: a list of {name, source, title}, in the language at the time of reading.
    Q_PROPERTY(QVariantList all READ all CONSTANT)
public:
    using QObject::QObject;

    [[nodiscard]] static QVariantList all();
    /// The name of the chapter that is opened from that part of the screen; of the first chapter if there is
    /// none.
    Q_INVOKABLE static QString openedFrom(const QString& screen, const QString& part);
};

} // namespace piolo::models

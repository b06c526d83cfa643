// SPDX-License-Identifier: GPL-3.0-or-later
// The table of screens, for QML.
#pragma once

// Qt comes first: moc cannot read the standard headers before it.
#include <QObject>
#include <QVariantList>
#include <QtQml/qqmlregistration.h>

namespace piolo::models {

/// Window thread.
class Screens : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_SINGLETON
    /// Every screen: a list of {name, source, kept}.
    Q_PROPERTY(QVariantList all READ all CONSTANT)
    /// The screens of the navigation: a list of {name, text, sign}, in the language at the time of reading;
    /// those at the left, and those at the right.
    Q_PROPERTY(QVariantList tabs READ tabs CONSTANT)
    Q_PROPERTY(QVariantList smallTabs READ smallTabs CONSTANT)
public:
    using QObject::QObject;

    [[nodiscard]] static QVariantList all();
    [[nodiscard]] static QVariantList tabs();
    [[nodiscard]] static QVariantList smallTabs();
};

} // namespace piolo::models

// SPDX-License-Identifier: GPL-3.0-or-later
#include <QQmlEngine>
#include <QQmlExtensionPlugin>
#include <QtQuickTest/quicktest.h>

Q_IMPORT_QML_PLUGIN(PioloPlugin)

class PartsSetup : public QObject {
    Q_OBJECT
public slots:
    void qmlEngineAvailable(QQmlEngine* engine) { engine->addImportPath(QStringLiteral("qrc:/qt/qml")); }
};

QUICK_TEST_MAIN_WITH_SETUP(parts, PartsSetup)

#include "parts_main.moc"

// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/window/fault_window.h"

#include "command/output/report.h"
#include "practice/faults/fault_text.h"

#include <QGuiApplication>
#include <QQmlApplicationEngine>

namespace piolo::app {

int showFault(const Fault& fault) {
    const int code = command::report(fault);
    QQmlApplicationEngine engine;
    engine.addImportPath(QStringLiteral("qrc:/qt/qml"));
    engine.setInitialProperties({{QStringLiteral("fault"), practice::faultLine(fault)}});
    engine.load(QUrl(QStringLiteral("qrc:/qt/qml/Piolo/FaultWindow.qml")));
    if (!engine.rootObjects().isEmpty()) QGuiApplication::exec();
    return code;
}

} // namespace piolo::app

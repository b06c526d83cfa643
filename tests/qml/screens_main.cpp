// SPDX-License-Identifier: GPL-3.0-or-later
#include "text/translation.h"

#define DOCTEST_CONFIG_IMPLEMENT
#include <doctest/doctest.h>

#include <QGuiApplication>
#include <QQmlExtensionPlugin>

#include <private/qguiapplication_p.h>
#include <qpa/qplatformaccessibility.h>
#include <qpa/qplatformintegration.h>

Q_IMPORT_QML_PLUGIN(PioloPlugin)

int main(int argc, char** argv) {
    qputenv("QT_QPA_PLATFORM", "offscreen");
    qputenv("QT_QUICK_BACKEND", "software");
    const QGuiApplication application(argc, argv);
    piolo::text::loadEnglish();
    QLocale::setDefault(QLocale::c());
    // Items create their accessible interface only if accessibility is active before they are loaded.
    QGuiApplicationPrivate::platformIntegration()->accessibility()->setActive(true);
    return doctest::Context(argc, argv).run();
}

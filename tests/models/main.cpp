// SPDX-License-Identifier: GPL-3.0-or-later
// The models need an event loop and fonts but no screen.
#include "text/translation.h"

#define DOCTEST_CONFIG_IMPLEMENT
#include <doctest/doctest.h>

#include <QGuiApplication>

int main(int argc, char** argv) {
    qputenv("QT_QPA_PLATFORM", "offscreen");
    const QGuiApplication application(argc, argv);
    piolo::text::loadEnglish();
    QLocale::setDefault(QLocale::c());
    return doctest::Context(argc, argv).run();
}

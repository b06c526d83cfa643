// SPDX-License-Identifier: GPL-3.0-or-later
// Drawing test pages needs fonts but no screen.
#define DOCTEST_CONFIG_IMPLEMENT
#include <doctest/doctest.h>

#include <QGuiApplication>

int main(int argc, char** argv) {
    qputenv("QT_QPA_PLATFORM", "offscreen");
    const QGuiApplication application(argc, argv);
    return doctest::Context(argc, argv).run();
}

// SPDX-License-Identifier: GPL-3.0-or-later
// The session and the practice log need an event loop.
#define DOCTEST_CONFIG_IMPLEMENT
#include <doctest/doctest.h>

#include <QCoreApplication>
#include <QLocale>

int main(int argc, char** argv) {
    const QCoreApplication application(argc, argv);
    QLocale::setDefault(QLocale::c());
    return doctest::Context(argc, argv).run();
}

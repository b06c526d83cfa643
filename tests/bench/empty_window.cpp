// SPDX-License-Identifier: GPL-3.0-or-later
// The least that Qt Quick can show: one empty window of the size of the practice window.
#include <QGuiApplication>
#include <QQuickWindow>

int main(int argc, char** argv) {
    const QGuiApplication application(argc, argv);
    QQuickWindow window;
    window.resize(1280, 800);
    window.show();
    return QGuiApplication::exec();
}

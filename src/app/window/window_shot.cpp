// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/window/window_shot.h"

#include "command/output/report.h"

#include <QGuiApplication>
#include <QImage>
#include <QQuickWindow>
#include <QTimer>

namespace piolo::app {

namespace {

/// Long enough for pictures and lists that are filled after the first frame.
constexpr int settleMillis = 600;

int savePicture(QQuickWindow& window, const std::string& path) {
    if (window.grabWindow().save(QString::fromStdString(path), "PNG")) return command::exitDone;
    return command::report({FaultNumber::cannotWrite, {path}, {"PNG"}});
}

} // namespace

int shootWindow(QQuickWindow& window, const WindowOptions& options) {
    if (options.width > 0) window.resize(options.width, options.height);
    QTimer::singleShot(settleMillis, &window,
                       [&] { QGuiApplication::exit(savePicture(window, options.shot)); });
    return QGuiApplication::exec();
}

} // namespace piolo::app

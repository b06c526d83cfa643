// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/window/quiet_start.h"

#include <QString>
#include <QtGlobal>

namespace piolo::app {

namespace {

QtMessageHandler usual = nullptr;

void passOn(QtMsgType type, const QMessageLogContext& context, const QString& text) {
    if (text.startsWith(QLatin1String("QStandardPaths: XDG_RUNTIME_DIR not set"))) return;
    usual(type, context, text);
}

} // namespace

void quietStart() { usual = qInstallMessageHandler(passOn); }

} // namespace piolo::app

// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/output/drawing_application.h"

namespace piolo::app {

DrawingApplication::DrawingApplication() {
    if (QCoreApplication::instance() != nullptr) return;
    // Standard error holds faults alone, not Qt's remarks on a missing session.
    qInstallMessageHandler([](QtMsgType, const QMessageLogContext&, const QString&) {});
    qputenv("QT_QPA_PLATFORM", "offscreen"); // draws without a display
    own_.emplace(count_, arguments_);
}

} // namespace piolo::app

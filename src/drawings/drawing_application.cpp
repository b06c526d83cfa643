// SPDX-License-Identifier: GPL-3.0-or-later
#include "drawings/drawing_application.h"

#include "text/translation.h"

namespace piolo::drawings {

DrawingApplication::DrawingApplication() {
    if (QCoreApplication::instance() != nullptr) return;
    // Standard error is for faults only, not for Qt's warnings about a missing session.
    qInstallMessageHandler([](QtMsgType, const QMessageLogContext&, const QString&) {});
    qputenv("QT_QPA_PLATFORM", "offscreen"); // draws without a display
    own_.emplace(count_, arguments_);
    text::loadEnglish();
}

} // namespace piolo::drawings

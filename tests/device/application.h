// SPDX-License-Identifier: GPL-3.0-or-later
// The application object that event loops need, without a sound server to find.
#pragma once

#include <QCoreApplication>

namespace piolo::device {

/// Creates it at the first call.
inline void needApplication() {
    qputenv("PULSE_SERVER", "unix:/nowhere/native");
    static int count = 1;
    static char name[] = "test_device";
    static char* arguments[] = {name, nullptr};
    static const QCoreApplication application{count, arguments};
}

} // namespace piolo::device

// SPDX-License-Identifier: GPL-3.0-or-later
// What a verb needs for drawing text without a display.
#pragma once

#include <QGuiApplication>

#include <optional>

namespace piolo::drawings {

/// Creates an application if there is none, for as long as this object exists.
class DrawingApplication {
public:
    DrawingApplication();

private:
    int count_ = 1;
    char name_[6] = "piolo";
    char* arguments_[2] = {name_, nullptr};
    std::optional<QGuiApplication> own_;
};

} // namespace piolo::drawings

// SPDX-License-Identifier: GPL-3.0-or-later
// What a verb needs to draw text without a display.
#pragma once

#include <QGuiApplication>

#include <optional>

namespace piolo::command {

/// An application of its own where there is none; stands as long as it draws.
class DrawingApplication {
public:
    DrawingApplication();

private:
    int count_ = 1;
    char name_[6] = "piolo";
    char* arguments_[2] = {name_, nullptr};
    std::optional<QGuiApplication> own_;
};

} // namespace piolo::command

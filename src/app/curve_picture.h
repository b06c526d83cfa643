// SPDX-License-Identifier: GPL-3.0-or-later
// A passage's tempo curve as the bytes of a picture.
#pragma once

#include "core/notebook.h"
#include "plots/tempo_curve.h"

#include <QSize>

#include <string>

namespace piolo::app {

struct CurvePicture {
    QSize size;
    plots::CurveView view;
};

/// Both draw without a display, through an application of their own where there is none. Empty when that
/// fails. `scale`: dots of the picture to each of its size.
[[nodiscard]] std::string curvePng(const PassageRecord& record, const CurvePicture& picture, int scale);
[[nodiscard]] std::string curveSvg(const PassageRecord& record, const CurvePicture& picture);

} // namespace piolo::app

// SPDX-License-Identifier: GPL-3.0-or-later
// Tempo curves as the bytes of a picture.
#pragma once

#include "core/history/notebook.h"
#include "plots/curve/curve_series.h"
#include "plots/curve/tempo_curve.h"

#include <QSize>

#include <string>
#include <vector>

namespace piolo::command {

enum class PictureKind { svg, png, pdf };

struct CurvePicture {
    QSize size;
    plots::CurveView view;
};

// All of these draw without a display, creating an application if there is none. Empty if that fails.

/// One passage, run by run, as on the drill screen.
[[nodiscard]] std::string curveBytes(PictureKind kind, const PassageRecord& record,
                                     const CurvePicture& picture);
/// The same as PNG, with `scale` pixels per unit of its size.
[[nodiscard]] std::string curvePng(const PassageRecord& record, const CurvePicture& picture, int scale);
/// Several passages, or one by days, as on the log screen: all of them, up to the newest day with a run.
[[nodiscard]] std::string curvesBytes(PictureKind kind, const std::vector<plots::CurveSeries>& series,
                                      const CurvePicture& picture);

} // namespace piolo::command

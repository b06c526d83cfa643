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

// All draw without a display, through an application of their own where there is none. Empty when that fails.

/// One passage, run by run, as on the drill's screen.
[[nodiscard]] std::string curveBytes(PictureKind kind, const PassageRecord& record,
                                     const CurvePicture& picture);
/// The same as PNG. `scale`: dots of the picture to each of its size.
[[nodiscard]] std::string curvePng(const PassageRecord& record, const CurvePicture& picture, int scale);
/// Several passages, or one along the days, as on the log's screen: all of them, up to the newest day played.
[[nodiscard]] std::string curvesBytes(PictureKind kind, const std::vector<plots::CurveSeries>& series,
                                      const CurvePicture& picture);

} // namespace piolo::command

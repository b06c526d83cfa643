// SPDX-License-Identifier: GPL-3.0-or-later
// Tempo curves as the bytes of a file.
#pragma once

#include "core/history/notebook.h"
#include "plots/curve/curve_series.h"
#include "plots/curve/tempo_curve.h"
#include "plots/picture_kind.h"

#include <QSize>

#include <optional>
#include <string>
#include <vector>

namespace piolo::drawings {

/// What a file with curves shows.
struct CurveRequest {
    std::optional<plots::PictureKind> kind; ///< nothing: comma-separated values
    std::optional<plots::CurveBy>
        by;     ///< nothing: one passage run by run as on the drill screen, several by runs
    QSize size; ///< in device-independent pixels
};

/// The curves of `passages` up to the newest day with a run. Creates an application if there is none, and
/// needs no display. Empty if nothing can be drawn.
[[nodiscard]] std::string curveFile(const Notebook& notebook, const std::vector<Id>& passages,
                                    const CurveRequest& request);
/// The curve of one passage as a PNG with `scale` pixels per unit of `size`; otherwise the same.
[[nodiscard]] std::string curvePng(const PassageRecord& record, QSize size, const plots::CurveView& view,
                                   int scale);

} // namespace piolo::drawings

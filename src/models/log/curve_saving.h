// SPDX-License-Identifier: GPL-3.0-or-later
// The log's curves as a file.
#pragma once

// Qt stands first: moc cannot read the standard headers before it.
#include <QString>

#include "plots/curve/curves_plot.h"

#include <vector>

namespace piolo::models {

/// What is saved: the picture as it is seen, and all entries of its passages as comma-separated values.
struct SavedCurves {
    const std::vector<plots::CurveSeries>& series;
    plots::CurvesView view;
    QSize size;
    std::vector<const PassageRecord*> records;
};

/// Writes .svg, .png, .pdf or .csv, by the name's end; "~/" is the home folder. The file appears whole or not
/// at all. "" when it is there, else one plain sentence.
[[nodiscard]] QString saveCurves(const QString& path, const SavedCurves& saved);

} // namespace piolo::models

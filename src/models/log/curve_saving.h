// SPDX-License-Identifier: GPL-3.0-or-later
// Saves the log's curves as a file.
#pragma once

// Qt comes first: moc cannot read the standard headers before it.
#include <QString>

#include "plots/curve/curves_plot.h"

#include <vector>

namespace piolo::models {

/// What to save: the picture as shown, and all entries of its passages as comma-separated values.
struct SavedCurves {
    const std::vector<plots::CurveSeries>& series;
    plots::CurvesView view;
    QSize size;
    std::vector<const PassageRecord*> records;
};

/// Writes .svg, .png, .pdf or .csv, depending on the file name; "~/" is the home folder. The file appears
/// whole or not at all. Returns "" on success, otherwise one sentence.
[[nodiscard]] QString saveCurves(const QString& path, const SavedCurves& saved);

} // namespace piolo::models

// SPDX-License-Identifier: GPL-3.0-or-later
// A passage's tempo curve: the same picture on the screen, in a file and in print.
#pragma once

#include "core/history/notebook.h"

#include <QColor>
#include <QFont>
#include <QLocale>
#include <QSizeF>
#include <QString>

class QPainter;

namespace piolo::plots {

/// Colours and texts of a plot. The caller supplies the texts, translated.
struct CurveStyle {
    QColor paper, ink, faint, line, miss, clean;
    QFont font;
    QString targetWord;            ///< "target"
    QString dueWord;               ///< "due"
    QString emptyWords;            ///< shown if there is nothing to draw yet
    QLocale locale = QLocale::c(); ///< for the dates under the curve
};
/// Ink on paper, with English texts. A transparent `paper` leaves the background unchanged.
[[nodiscard]] CurveStyle lightCurveStyle();
/// The same in light ink on dark paper.
[[nodiscard]] CurveStyle darkCurveStyle();

/// What to draw: a passage's entries of the last `days` days up to `today` (0 days: all entries).
struct CurveView {
    Date today;
    int days = 14;
};
/// The last `days` days (at least 1) up to today; if nothing of them is drawn, those up to the last day that
/// is.
[[nodiscard]] CurveView viewWithSteps(const PassageRecord& record, Date today, int days);

/// Draws the curve into 0,0 … size (device-independent pixels): run by run, grouped by day, thinned to pixel
/// columns, with separators between days. A miss is a triangle, so that colour is not the only cue; a try is
/// an open circle, or an open triangle if missed; the target is a dashed line with its number. Void runs are
/// not drawn. Text needs a QGuiApplication. The same input gives the same picture.
void drawTempoCurve(QPainter& painter, QSizeF size, const PassageRecord& record, const CurveView& view,
                    const CurveStyle& style);

} // namespace piolo::plots

// SPDX-License-Identifier: GPL-3.0-or-later
// A passage's tempo curve: the same picture on the screen, in a file, and in print.
#pragma once

#include "core/history/notebook.h"

#include <QColor>
#include <QFont>
#include <QLocale>
#include <QSizeF>
#include <QString>

class QPainter;

namespace piolo::plots {

/// Colours and words of a plot; the words come from outside, translated.
struct CurveStyle {
    QColor paper, ink, faint, line, miss, clean;
    QFont font;
    QString targetWord;            ///< "target"
    QString dueWord;               ///< "due"
    QString emptyWords;            ///< shown when there is nothing to draw yet
    QLocale locale = QLocale::c(); ///< of the dates under the curve
};
/// Ink on paper, with English words. A transparent `paper` leaves the ground as it is.
[[nodiscard]] CurveStyle lightCurveStyle();
/// The same in light ink on dark paper.
[[nodiscard]] CurveStyle darkCurveStyle();

/// What is drawn: a passage's entries of the last `days` up to `today` (0 days: all).
struct CurveView {
    Date today;
    int days = 14;
};

/// Draws the curve into 0,0 … size (device-independent pixels): steps over played days, run by run, thinned
/// to pixel columns; a triangle (not colour alone) at a miss; the target as a dashed line with its number;
/// days told apart. A try is an open circle, or an open triangle when missed. Void runs are not drawn. Needs
/// a QGuiApplication for its text; the same input gives the same picture.
void drawTempoCurve(QPainter& painter, QSizeF size, const PassageRecord& record, const CurveView& view,
                    const CurveStyle& style);

} // namespace piolo::plots

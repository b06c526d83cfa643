// SPDX-License-Identifier: GPL-3.0-or-later
#include "drawings/plugin/drawing_functions.h"

extern "C" const piolo::drawings::DrawingFunctions pioloDrawing{
    piolo::drawings::curveFile, piolo::drawings::sheetFile, piolo::drawings::staffPicture};

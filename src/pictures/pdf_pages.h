// SPDX-License-Identifier: GPL-3.0-or-later
// The pages of a PDF as pictures, drawn in a child (picture_child.h).
#pragma once

#include "pictures/picture_child.h"

namespace piolo::pictures {

/// Any thread. The number of pages, at least 1. Faults: brokenPicture, pdfLocked, and those of workInChild().
Result<int> pageCount(const PictureFile& pdf, const GiveUp& giveUp);

/// Any thread. Draws the page (counted from 1) on white paper, as a PNG; the same page gives the same bytes.
/// Faults: those of pageCount(), noSuchPage.
Result<PictureFile> pageAsPicture(const PictureFile& pdf, int page, const GiveUp& giveUp);

} // namespace piolo::pictures

// SPDX-License-Identifier: GPL-3.0-or-later
// The pages of a PDF as pictures. Poppler is loaded when they are first used.
#pragma once

#include "pictures/picture_file.h"

#include <functional>

namespace piolo::pictures {

/// Called from time to time while a page is drawn; return true to stop.
using GiveUp = std::function<bool()>;

/// Any thread; takes as long as the file needs. The number of pages, at least 1. Faults: brokenPicture,
/// pdfLocked, cannotRead.
Result<int> pageCount(const PictureFile& pdf);

/// Any thread; takes up to mostMillisAPage. Draws the page (counted from 1) on white paper, as a PNG; the
/// same page gives the same bytes. Faults: those of pageCount(), noSuchPage, pageTooSlow (also if `giveUp`
/// stopped it).
Result<PictureFile> pageAsPicture(const PictureFile& pdf, int page, const GiveUp& giveUp);

} // namespace piolo::pictures

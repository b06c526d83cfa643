// SPDX-License-Identifier: GPL-3.0-or-later
// The pages of a PDF, as pictures. The only file that sees Poppler.
#pragma once

#include "pictures/picture_file.h"

#include <functional>

namespace piolo::pictures {

/// Asked now and then while a page is drawn: true gives it up.
using GiveUp = std::function<bool()>;

/// Any thread, takes as long as the file makes it. How many pages it has, at least 1. Faults: brokenPicture,
/// pdfLocked.
Result<int> pageCount(const PictureFile& pdf);

/// Any thread; up to mostMillisAPage. That page (from 1) on white paper, as a PNG; the same page gives the
/// same bytes. Faults: as pageCount(), noSuchPage, pageTooSlow (given up, too).
Result<PictureFile> pageAsPicture(const PictureFile& pdf, int page, const GiveUp& giveUp);

} // namespace piolo::pictures

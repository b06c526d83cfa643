// SPDX-License-Identifier: GPL-3.0-or-later
// Poppler's part of the child that draws pictures.
#pragma once

#include "pictures/picture_file.h"

namespace piolo::pictures {

/// The number of pages, at least 1. Faults: brokenPicture, pdfLocked.
Result<int> countPages(const PictureFile& pdf);
/// The page (counted from 1) on white paper, as a PNG; the same page gives the same bytes. Faults: those of
/// countPages(), noSuchPage.
Result<PictureFile> drawPage(const PictureFile& pdf, int page);

} // namespace piolo::pictures

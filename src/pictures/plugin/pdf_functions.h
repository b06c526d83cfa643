// SPDX-License-Identifier: GPL-3.0-or-later
// The functions of Poppler that the program uses; it is loaded when a PDF is first read.
#pragma once

#include "pictures/pdf_pages.h"

namespace piolo::pictures {

/// The functions of pdf_pages.h, as implemented in the plugin.
struct PdfFunctions {
    static constexpr const char* plugin = "pdf";
    static constexpr const char* object = "pioloPdf";

    Result<int> (*pageCount)(const PictureFile& pdf);
    Result<PictureFile> (*pageAsPicture)(const PictureFile& pdf, int page, const GiveUp& giveUp);
};

} // namespace piolo::pictures

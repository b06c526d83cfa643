// SPDX-License-Identifier: GPL-3.0-or-later
// What the program asks of Poppler, which is loaded when a PDF is first read.
#pragma once

#include "pictures/pdf_pages.h"

namespace piolo::pictures {

/// The functions of pdf_pages.h, as they are behind the plugin.
struct PdfFunctions {
    static constexpr const char* plugin = "pdf";
    static constexpr const char* object = "pioloPdf";

    Result<int> (*pageCount)(const PictureFile& pdf);
    Result<PictureFile> (*pageAsPicture)(const PictureFile& pdf, int page, const GiveUp& giveUp);
};

} // namespace piolo::pictures

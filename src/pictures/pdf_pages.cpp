// SPDX-License-Identifier: GPL-3.0-or-later
#include "pictures/pdf_pages.h"

#include "files/plugin.h"
#include "pictures/plugin/pdf_functions.h"

namespace piolo::pictures {

Result<int> pageCount(const PictureFile& pdf) {
    const auto poppler = files::pluginFunctions<PdfFunctions>();
    if (!poppler) return poppler.fault();
    return (*poppler)->pageCount(pdf);
}

Result<PictureFile> pageAsPicture(const PictureFile& pdf, int page, const GiveUp& giveUp) {
    const auto poppler = files::pluginFunctions<PdfFunctions>();
    if (!poppler) return poppler.fault();
    return (*poppler)->pageAsPicture(pdf, page, giveUp);
}

} // namespace piolo::pictures

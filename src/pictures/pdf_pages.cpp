// SPDX-License-Identifier: GPL-3.0-or-later
#include "pictures/pdf_pages.h"

#include <charconv>

namespace piolo::pictures {

Result<int> pageCount(const PictureFile& pdf, const GiveUp& giveUp) {
    const auto counted = workInChild(pdf, "count", 1, giveUp);
    if (!counted) return counted.fault();
    int pages = 0;
    const char* const end = counted->data() + counted->size();
    const auto read = std::from_chars(counted->data(), end, pages);
    if (read.ec != std::errc() || read.ptr != end || pages < 1)
        return Fault{FaultNumber::brokenPicture, {pdf.path}, {}};
    return pages;
}

Result<PictureFile> pageAsPicture(const PictureFile& pdf, int page, const GiveUp& giveUp) {
    auto drawn = workInChild(pdf, "page", page, giveUp);
    if (!drawn) return drawn.fault();
    return PictureFile{pdf.path, std::move(drawn).value(), PictureKind::png};
}

} // namespace piolo::pictures

// SPDX-License-Identifier: GPL-3.0-or-later
#include "pictures/plugin/pdf_functions.h"

#include "pictures/picture_limits.h"

#include <QBuffer>
#include <QImage>

#include <algorithm>
#include <cmath>
#include <memory>
#include <poppler-qt6.h>

namespace piolo::pictures {

namespace {

constexpr double pointsToAnInch = 72;

Result<std::unique_ptr<Poppler::Document>> opened(const PictureFile& pdf) {
    // Suppresses Poppler's own messages about damaged files; we report one fault instead.
    Poppler::setDebugErrorFunction([](const QString&, const QVariant&) {}, {});
    auto document = Poppler::Document::loadFromData(
        QByteArray::fromRawData(pdf.bytes.data(), static_cast<qsizetype>(pdf.bytes.size())));
    if (!document) return Fault{FaultNumber::brokenPicture, {pdf.path}, {}};
    if (document->isLocked()) return Fault{FaultNumber::pdfLocked, {pdf.path}, {}};
    if (document->numPages() < 1) return Fault{FaultNumber::brokenPicture, {pdf.path}, {"no pages"}};
    document->setRenderHint(Poppler::Document::Antialiasing);
    document->setRenderHint(Poppler::Document::TextAntialiasing);
    return document;
}

/// Pixels per inch; 0 for a page without a size.
double resolution(QSizeF points) {
    const double shorter = std::min(points.width(), points.height());
    const double longer = std::max(points.width(), points.height());
    if (!(shorter > 0) || !std::isfinite(longer)) return 0;
    return pointsToAnInch * std::min(pageShortSide / shorter, pageLongSide / longer);
}

std::string pngOf(const QImage& page) {
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    const bool grey = page.allGray();
    if (!page.convertToFormat(grey ? QImage::Format_Grayscale8 : QImage::Format_RGB888).save(&buffer, "png"))
        return {};
    return bytes.toStdString();
}

} // namespace

Result<int> countPages(const PictureFile& pdf) {
    auto document = opened(pdf);
    if (!document) return document.fault();
    return document.value()->numPages();
}

Result<PictureFile> drawPage(const PictureFile& pdf, int page) {
    auto document = opened(pdf);
    if (!document) return document.fault();
    const int count = document.value()->numPages();
    if (page < 1 || page > count)
        return Fault{FaultNumber::noSuchPage, {pdf.path}, {std::to_string(page), std::to_string(count)}};
    const std::unique_ptr<Poppler::Page> sheet = document.value()->page(page - 1);
    const double dpi = sheet ? resolution(sheet->pageSizeF()) : 0;
    if (!(dpi > 0)) return Fault{FaultNumber::brokenPicture, {pdf.path}, {}};
    const QImage drawn = sheet->renderToImage(dpi, dpi);
    PictureFile picture{pdf.path, drawn.isNull() ? std::string() : pngOf(drawn), PictureKind::png};
    if (picture.bytes.empty()) return Fault{FaultNumber::brokenPicture, {pdf.path}, {}};
    return picture;
}

} // namespace piolo::pictures

// SPDX-License-Identifier: GPL-3.0-or-later
#include "pictures/picture_file.h"

#include "files/descriptor.h"
#include "files/file_fault.h"
#include "files/whole_file.h"
#include "pictures/picture_child.h"
#include "pictures/picture_limits.h"

#include <QBuffer>
#include <QFileInfo>
#include <QImageReader>

#include <array>
#include <cerrno>
#include <fcntl.h>
#include <optional>
#include <string_view>
#include <sys/stat.h>
#include <unistd.h>

namespace piolo::pictures {

namespace {

using namespace std::string_view_literals;

/// A PDF may have other bytes before its header (Adobe's PDF Reference 1.7, appendix H, note 13; from
/// memory).
constexpr std::size_t pdfHeadWithin = 1024;

std::optional<PictureKind> kindOf(std::string_view bytes) {
    if (bytes.starts_with("\x89PNG\r\n\x1a\n"sv)) return PictureKind::png;
    if (bytes.starts_with("\xff\xd8\xff"sv)) return PictureKind::jpeg;
    if (bytes.substr(0, pdfHeadWithin).find("%PDF-"sv) != std::string_view::npos) return PictureKind::pdf;
    return std::nullopt;
}

/// Qt fills the missing part of a truncated JPEG with grey. Scan data never contains the bytes of a marker,
/// so in a complete file the last end marker comes after the last start-of-scan marker.
bool isCutShort(std::string_view jpeg) {
    const auto end = jpeg.rfind("\xff\xd9"sv);
    const auto scan = jpeg.rfind("\xff\xda"sv);
    return end == std::string_view::npos || scan == std::string_view::npos || end < scan;
}

Fault tooLarge(const std::string& path, const std::string& what) {
    return {FaultNumber::pictureTooLarge, {path}, {what}};
}

Done checkSize(const std::string& path, const QImageReader& reader) {
    const QSize size = reader.size();
    if (size.isEmpty()) return Fault{FaultNumber::brokenPicture, {path}, {}};
    const std::int64_t pixels = static_cast<std::int64_t>(size.width()) * size.height();
    if (pixels > mostPixels)
        return tooLarge(path, std::to_string(size.width()) + " × " + std::to_string(size.height()));
    const int bits = QImage::toPixelFormat(reader.imageFormat()).bitsPerPixel();
    if (pixels * bits / 8 > mostDecoded) return tooLarge(path, std::to_string(bits) + " bits to a pixel");
    return done();
}

} // namespace

Result<PictureFile> readPictureFile(const std::string& path) {
    const QFileInfo info(QString::fromStdString(path));
    if (!info.exists()) return files::readFault(path, ENOENT);
    if (info.isDir()) return files::readFault(path, EISDIR);
    if (!info.isFile()) return files::readFault(path, EINVAL); // reading a pipe or device might never end
    auto bytes = files::wholeFile(path, mostBytes + 1);
    if (!bytes) return bytes.fault();
    if (bytes->size() > mostBytes) return tooLarge(path, "over 64 MiB");
    const auto kind = kindOf(*bytes);
    if (!kind) return Fault{FaultNumber::notAPicture, {path}, {}};
    return PictureFile{path, std::move(bytes).value(), *kind};
}

Done decodePicture(const PictureFile& file) {
    auto bytes = QByteArray::fromRawData(file.bytes.data(), static_cast<qsizetype>(file.bytes.size()));
    QBuffer buffer(&bytes);
    QImageReader reader(&buffer, file.kind == PictureKind::png ? "png" : "jpeg");
    reader.setAutoDetectImageFormat(false);
    if (auto sized = checkSize(file.path, reader); !sized) return sized;
    if (file.kind == PictureKind::jpeg && isCutShort(file.bytes))
        return Fault{FaultNumber::brokenPicture, {file.path}, {}};
    if (reader.read().isNull())
        return Fault{FaultNumber::brokenPicture, {file.path}, {reader.errorString().toStdString()}};
    return done();
}

Done checkPicture(const PictureFile& file, const std::function<bool()>& giveUp) {
    const auto decoded = workInChild(file, file.kind == PictureKind::png ? "png" : "jpeg", 1, giveUp);
    return decoded ? done() : Done(decoded.fault());
}

bool isPictureFile(const std::string& path) {
    const files::Descriptor file(::open(path.c_str(), O_RDONLY | O_CLOEXEC | O_NONBLOCK | O_NOFOLLOW));
    struct stat found {};
    if (!file.isOpen() || ::fstat(file.number(), &found) != 0 || !S_ISREG(found.st_mode)) return false;
    std::array<char, 8> head{};
    const auto count = ::read(file.number(), head.data(), head.size());
    const auto kind = count <= 0 ? std::nullopt : kindOf({head.data(), static_cast<std::size_t>(count)});
    return kind == PictureKind::png || kind == PictureKind::jpeg;
}

} // namespace piolo::pictures

// SPDX-License-Identifier: GPL-3.0-or-later
#include "pictures/kept_picture.h"

#include "core/passage/picture.h"
#include "files/atomic_file.h"
#include "files/whole_file.h"
#include "journal/folder/made_folder.h"

#include <QByteArray>
#include <QCryptographicHash>
#include <QFileInfo>

#include <span>

namespace piolo::pictures {

namespace {

constexpr qsizetype nameDigits = 32;

std::string folderOf(const std::string& folder) { return folder + "/pictures"; }

std::string nameOf(const PictureFile& picture) {
    const auto bytes =
        QByteArray::fromRawData(picture.bytes.data(), static_cast<qsizetype>(picture.bytes.size()));
    const QByteArray sum = QCryptographicHash::hash(bytes, QCryptographicHash::Sha256).toHex();
    return sum.left(nameDigits).toStdString() + (picture.kind == PictureKind::png ? ".png" : ".jpg");
}

bool isThere(const std::string& path, const std::string& bytes) {
    const QFileInfo info(QString::fromStdString(path));
    if (!info.isFile() || static_cast<std::size_t>(info.size()) != bytes.size()) return false;
    const auto kept = files::wholeFile(path, bytes.size());
    return kept && *kept == bytes;
}

} // namespace

std::string picturePath(const std::string& folder, std::string_view name) {
    return isPictureName(name) ? folderOf(folder) + "/" + std::string(name) : std::string();
}

Result<std::string> keepPicture(const std::string& folder, const PictureFile& picture) {
    const std::string name = nameOf(picture);
    const std::string path = picturePath(folder, name);
    if (isThere(path, picture.bytes)) return name;
    if (auto made = journal::makeFolder(folderOf(folder)); !made) return made.fault();
    if (auto done = files::replaceFile(path, std::as_bytes(std::span(picture.bytes))); !done)
        return done.fault();
    return name;
}

} // namespace piolo::pictures

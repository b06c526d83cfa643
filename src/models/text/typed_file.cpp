// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/text/typed_file.h"

#include "files/atomic_file.h"
#include "practice/faults/fault_text.h"

#include <QDir>
#include <QFileInfo>
#include <QUrl>

#include <span>

namespace piolo::models {

QString typedPath(const QString& typed) {
    const QUrl address(typed);
    if (address.isLocalFile()) return address.toLocalFile();
    QString path = typed.trimmed();
    if (path.startsWith(QLatin1String("~/"))) path.replace(0, 1, QDir::homePath());
    return path;
}

QString typedPath(const QString& typed, const QString& ending) {
    const QString path = typedPath(typed);
    return path.isEmpty() || path.endsWith(u'/') || !QFileInfo(path).suffix().isEmpty() ? path
                                                                                        : path + ending;
}

QString saveBytes(const QString& path, const QByteArray& bytes) {
    const Done saved = files::replaceFile(path.toStdString(), std::as_bytes(std::span(bytes)));
    return saved ? QString() : practice::faultSentence(saved.fault());
}

} // namespace piolo::models

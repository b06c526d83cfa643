// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/text/typed_file.h"

#include "practice/faults/fault_text.h"

#include <QDir>
#include <QSaveFile>
#include <QUrl>

namespace piolo::models {

QString typedPath(const QString& typed) {
    const QUrl address(typed);
    if (address.isLocalFile()) return address.toLocalFile();
    QString path = typed.trimmed();
    if (path.startsWith(QLatin1String("~/"))) path.replace(0, 1, QDir::homePath());
    return path;
}

QString saveBytes(const QString& path, const QByteArray& bytes) {
    QSaveFile file(path);
    if (file.open(QIODevice::WriteOnly) && file.write(bytes) == bytes.size() && file.commit()) return {};
    return practice::faultSentence({FaultNumber::cannotWrite, {}, {file.errorString().toStdString()}});
}

} // namespace piolo::models

// SPDX-License-Identifier: GPL-3.0-or-later
// A file by the name that a player types.
#pragma once

#include <QByteArray>
#include <QString>

namespace piolo::models {

/// Without surrounding spaces; "~/" is the home folder. The URL of a dropped file becomes its path.
[[nodiscard]] QString typedPath(const QString& typed);
/// The same for a file to be written: `ending` (".pdf") is added if the name has no ending.
[[nodiscard]] QString typedPath(const QString& typed, const QString& ending);
/// Writes the file, whole or not at all. Returns "" on success, otherwise one sentence.
[[nodiscard]] QString saveBytes(const QString& path, const QByteArray& bytes);

} // namespace piolo::models

// SPDX-License-Identifier: GPL-3.0-or-later
// A file by the name that a player types.
#pragma once

#include <QByteArray>
#include <QString>

namespace piolo::models {

/// Without spaces around it; "~/" is the home folder. A file's address, as it is dropped on the window, is
/// its path.
[[nodiscard]] QString typedPath(const QString& typed);
/// Puts the file there, whole or not at all. "" when it is there, else one plain sentence.
[[nodiscard]] QString saveBytes(const QString& path, const QByteArray& bytes);

} // namespace piolo::models

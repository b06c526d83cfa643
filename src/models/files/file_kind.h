// SPDX-License-Identifier: GPL-3.0-or-later
// The kinds of files that the window opens and saves: the one table of their endings.
#pragma once

#include <QString>
#include <QStringList>

#include <array>
#include <cstdint>
#include <string_view>

namespace piolo::models {

enum class FileKind : std::uint8_t { passages, score, picture, curves, sheet };

struct FileKindRow {
    FileKind kind{};
    std::string_view name;                     ///< as the screens say it
    const char* text;                          ///< id of what the dialog's filter calls it
    std::array<std::string_view, 4> endings{}; ///< the first one is added to a name without an ending
};

inline constexpr std::array<FileKindRow, 5> fileKindTable{{
    {FileKind::passages, "passages", QT_TRID_NOOP("files.kind.passages"), {".piolo.json"}},
    {FileKind::score, "score", QT_TRID_NOOP("files.kind.score"), {".musicxml", ".mxl", ".xml"}},
    {FileKind::picture, "picture", QT_TRID_NOOP("files.kind.picture"), {".pdf", ".png", ".jpg", ".jpeg"}},
    {FileKind::curves, "curves", QT_TRID_NOOP("files.kind.curves"), {".svg", ".png", ".pdf", ".csv"}},
    {FileKind::sheet, "sheet", QT_TRID_NOOP("files.kind.sheet"), {".pdf", ".svg", ".png"}},
}};

/// Null if there is no kind of that name.
[[nodiscard]] const FileKindRow* fileKindNamed(const QString& name);
/// What a name without an ending gets: ".pdf".
[[nodiscard]] QString usualEnding(FileKind kind);
/// The filters of a file dialog: this kind's files and, when one is opened, all files.
[[nodiscard]] QStringList fileFilters(const FileKindRow& row, bool saving);
/// The name that is offered for a file to be saved, in the language of the window: "Sheet.pdf".
[[nodiscard]] QString offeredName(const FileKindRow& row);

} // namespace piolo::models

// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/files/file_kind.h"

#include "models/text/table_text.h"

#include <QCoreApplication>

#include <algorithm>

namespace piolo::models {

namespace {

QString firstEnding(const FileKindRow& row) { return tableText(row.endings.front()); }

} // namespace

const FileKindRow* fileKindNamed(const QString& name) {
    const auto* const found = std::ranges::find_if(
        fileKindTable, [&](const FileKindRow& row) { return tableText(row.name) == name; });
    return found == fileKindTable.end() ? nullptr : found;
}

QString usualEnding(FileKind kind) {
    return firstEnding(*std::ranges::find(fileKindTable, kind, &FileKindRow::kind));
}

QStringList fileFilters(const FileKindRow& row, bool saving) {
    QStringList patterns;
    for (const std::string_view ending : row.endings)
        if (!ending.empty()) patterns << QLatin1Char('*') + tableText(ending);
    QStringList filters{QStringLiteral("%1 (%2)").arg(qtTrId(row.text), patterns.join(QLatin1Char(' ')))};
    if (!saving) filters << QStringLiteral("%1 (*)").arg(qtTrId("files.kind.all"));
    return filters;
}

QString offeredName(const FileKindRow& row) { return qtTrId(row.text) + firstEnding(row); }

} // namespace piolo::models

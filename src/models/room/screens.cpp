// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/room/screens.h"

#include "models/room/screen.h"

#include <QtGlobal>

namespace piolo::models {

namespace {

QString textOf(std::string_view word) {
    return QString::fromLatin1(word.data(), static_cast<qsizetype>(word.size()));
}

} // namespace

QVariantList Screens::all() {
    QVariantList list;
    for (const Screen& screen : screenTable)
        list << QVariantMap{{"name", textOf(screen.name)},
                            {"source", textOf(screen.file) + QStringLiteral(".qml")},
                            {"kept", screen.kept}};
    return list;
}

QVariantList Screens::tabs() {
    QVariantList list;
    for (const Screen& screen : screenTable)
        if (screen.tab != nullptr)
            list << QVariantMap{{"name", textOf(screen.name)}, {"text", qtTrId(screen.tab)}};
    return list;
}

QString Screens::chapterOf(const QString& name) {
    const Screen* const screen = screenNamed(name.toStdString());
    return screen == nullptr ? QString() : textOf(screen->chapter);
}

} // namespace piolo::models

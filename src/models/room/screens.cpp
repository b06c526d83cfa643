// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/room/screens.h"

#include "models/room/screen.h"
#include "models/text/table_text.h"

#include <QtGlobal>

namespace piolo::models {

QVariantList Screens::all() {
    QVariantList list;
    for (const Screen& screen : screenTable)
        list << QVariantMap{{"name", tableText(screen.name)},
                            {"source", tableText(screen.file) + QStringLiteral(".qml")},
                            {"kept", screen.kept}};
    return list;
}

QVariantList Screens::tabs() {
    QVariantList list;
    for (const Screen& screen : screenTable)
        if (screen.tab != nullptr)
            list << QVariantMap{{"name", tableText(screen.name)}, {"text", qtTrId(screen.tab)}};
    return list;
}

} // namespace piolo::models

// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/room/screens.h"

#include "models/room/screen.h"
#include "models/text/table_text.h"

#include <QtGlobal>

namespace piolo::models {

namespace {

QVariantList tabsAt(TabPlace place) {
    QVariantList list;
    for (const Screen& screen : screenTable)
        if (screen.place == place)
            list << QVariantMap{
                {"name", tableText(screen.name)},
                {"text", qtTrId(screen.tab)},
                {"sign", QString::fromUtf8(screen.sign.data(), static_cast<qsizetype>(screen.sign.size()))}};
    return list;
}

} // namespace

QVariantList Screens::all() {
    QVariantList list;
    for (const Screen& screen : screenTable)
        list << QVariantMap{{"name", tableText(screen.name)},
                            {"source", tableText(screen.file) + QStringLiteral(".qml")},
                            {"kept", screen.kept}};
    return list;
}

QVariantList Screens::tabs() { return tabsAt(TabPlace::left); }

QVariantList Screens::smallTabs() { return tabsAt(TabPlace::right); }

} // namespace piolo::models

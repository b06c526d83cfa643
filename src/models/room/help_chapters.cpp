// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/room/help_chapters.h"

#include "models/room/help_chapter.h"
#include "models/text/table_text.h"

namespace piolo::models {

QVariantList HelpChapters::all() {
    QVariantList list;
    for (const HelpChapter& chapter : helpChapterTable)
        list << QVariantMap{{"name", tableText(chapter.name)},
                            {"source", tableText(chapter.file) + QStringLiteral(".qml")},
                            {"title", qtTrId(chapter.title)}};
    return list;
}

QString HelpChapters::openedFrom(const QString& screen, const QString& part) {
    const HelpChapter* const chapter = chapterFor(screen.toStdString(), part.toStdString());
    return tableText((chapter == nullptr ? helpChapterTable.front() : *chapter).name);
}

} // namespace piolo::models

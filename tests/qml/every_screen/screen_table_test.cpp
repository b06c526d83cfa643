// SPDX-License-Identifier: GPL-3.0-or-later
// Compares the table of screens with what is made from it.
#include "../screen_fixture.h"
#include "models/keys/key_action.h"
#include "models/room/help_chapter.h"
#include "models/room/screen.h"

#include <doctest/doctest.h>

#include <QDirIterator>
#include <QFile>
#include <QFileInfo>
#include <QHash>
#include <QRegularExpression>
#include <QSet>
#include <QTest>

using piolo::models::HelpChapter;
using piolo::models::helpChapterTable;
using piolo::models::Screen;
using piolo::models::screenTable;
using piolo::test::ScreenFixture;

namespace {

/// The files of qml/ by name, without ".qml".
QHash<QString, QString> qmlFiles() {
    QHash<QString, QString> texts;
    QDirIterator files(QStringLiteral(PIOLO_QML), {"*.qml"}, QDir::Files, QDirIterator::Subdirectories);
    while (files.hasNext()) {
        QFile file(files.next());
        REQUIRE(file.open(QIODevice::ReadOnly));
        texts.insert(QFileInfo(file).completeBaseName(), QString::fromUtf8(file.readAll()));
    }
    return texts;
}

QSet<QString> filesWith(const QString& word) {
    const auto texts = qmlFiles();
    QSet<QString> found;
    for (auto file = texts.cbegin(); file != texts.cend(); ++file)
        if (file.value().contains(word)) found.insert(file.key());
    return found;
}

QString textOf(std::string_view word) { return QString::fromStdString(std::string(word)); }

/// The files named by the window's own files and by the table: they connect models and screens.
QSet<QString> rootFiles() {
    QSet<QString> roots{"Main", "WindowBody"};
    for (const Screen& screen : screenTable) roots.insert(textOf(screen.file));
    return roots;
}

} // namespace

TEST_CASE("no name, file or text of a screen is another's") {
    QSet<QString> names;
    QSet<QString> files;
    QSet<QString> tabs;
    for (const Screen& screen : screenTable) {
        CAPTURE(screen.name);
        const auto size = names.size();
        names.insert(textOf(screen.name));
        files.insert(textOf(screen.file));
        CHECK(names.size() == size + 1);
        CHECK(files.size() == size + 1);
        if (screen.tab == nullptr) continue;
        CHECK_FALSE(tabs.contains(screen.tab));
        tabs.insert(screen.tab);
    }
}

TEST_CASE("every screen is shown from the file that the table names, and no other is") {
    ScreenFixture fixture;
    for (const Screen& screen : screenTable) {
        CAPTURE(screen.name);
        fixture.open(screen.name);
        CHECK(fixture.room().screen() == textOf(screen.name));
        QStringList shown;
        for (QQuickItem* item : fixture.find("screens")->childItems())
            if (item->inherits("QQuickLoader") && item->isVisible())
                shown << QFileInfo(item->property("source").toUrl().path()).completeBaseName();
        CHECK(shown == QStringList{textOf(screen.file)});
    }
    CHECK(fixture.warnings().join("\n").toStdString() == "");
}

TEST_CASE("the navigation has the tabs of the table, in its order, and each has its place") {
    for (const Screen& screen : screenTable)
        CHECK((screen.tab != nullptr) == (screen.place != piolo::models::TabPlace::none));
    ScreenFixture fixture;
    QStringList wanted;
    for (const Screen& screen : screenTable)
        if (screen.tab != nullptr) wanted << "tab-" + textOf(screen.name);
    QStringList shown;
    for (const QQuickItem* item : fixture.shown())
        if (item->objectName().startsWith("tab-")) shown << item->objectName();
    CHECK(shown == wanted);
}

TEST_CASE("no name, file or title of a chapter of the help is another's, and no two have the same way in") {
    QSet<QString> names, files, titles, ways;
    qsizetype count = 0;
    for (const HelpChapter& chapter : helpChapterTable) {
        CAPTURE(chapter.name);
        names.insert(textOf(chapter.name));
        files.insert(textOf(chapter.file));
        titles.insert(chapter.title);
        ++count;
        CHECK(names.size() == count);
        CHECK(files.size() == count);
        CHECK(titles.size() == count);
        if (chapter.screen.empty()) continue; // only the contents lead to it
        const QString way = textOf(chapter.screen) + '/' + textOf(chapter.part);
        CHECK_FALSE(ways.contains(way));
        ways.insert(way);
    }
}

TEST_CASE("every screen but the help has a chapter in the help, and every chapter's screen exists") {
    for (const Screen& screen : screenTable) {
        CAPTURE(screen.name);
        CHECK((piolo::models::chapterFor(screen.name, "") == nullptr) == (screen.name == "help"));
    }
    for (const HelpChapter& chapter : helpChapterTable) {
        CAPTURE(chapter.name);
        CHECK((chapter.screen.empty() || piolo::models::screenNamed(chapter.screen) != nullptr));
    }
}

TEST_CASE(
    "the contents of the help are the table of chapters in its order, and every file of a chapter is in "
    "it") {
    ScreenFixture fixture;
    fixture.open("help");
    QStringList wanted, shown;
    QSet<QString> files;
    for (const HelpChapter& chapter : helpChapterTable) {
        wanted << "chapter-" + textOf(chapter.name);
        files.insert(textOf(chapter.file));
    }
    for (const QQuickItem* item : fixture.shown())
        if (item->objectName().startsWith("chapter-")) shown << item->objectName();
    CHECK(shown == wanted);
    CHECK((filesWith("\nHelpChapter {") == files));
}

TEST_CASE("each chapter shows its title and the text of its own file") {
    ScreenFixture fixture;
    fixture.open("help");
    QSet<QString> pages;
    for (const HelpChapter& chapter : helpChapterTable) {
        CAPTURE(chapter.name);
        fixture.press("chapter-" + textOf(chapter.name));
        fixture.play(0.1);
        QString page;
        bool titled = false;
        for (const QQuickItem* item : fixture.shown()) {
            if (!item->inherits("QQuickText")) continue;
            const QString text = item->property("text").toString();
            if (text == qtTrId(chapter.title)) titled = true;
            if (text.size() > 40) page += text;
        }
        CHECK(titled);
        CHECK_FALSE(page.isEmpty());
        CHECK_FALSE(pages.contains(page));
        pages.insert(page);
    }
    CHECK(fixture.warnings().join("\n").toStdString() == "");
}

TEST_CASE("each part of a screen that has a chapter opens it by F1") {
    ScreenFixture fixture;
    for (const HelpChapter& chapter : helpChapterTable) {
        if (chapter.part.empty()) continue;
        CAPTURE(chapter.name);
        fixture.open(chapter.screen);
        QQuickItem* shown = nullptr;
        for (QQuickItem* item : fixture.shown())
            if (item->property("view").isValid()) shown = item;
        REQUIRE(shown != nullptr);
        shown->setProperty("view", textOf(chapter.part));
        fixture.play(0.1);
        QTest::keyClick(&fixture.window(), Qt::Key_F1);
        fixture.play(0.1);
        CHECK(fixture.room().screen() == "help");
        CHECK(fixture.find("chapter-" + textOf(chapter.name))->property("here").toBool());
        QTest::keyClick(&fixture.window(), Qt::Key_Escape);
        fixture.play(0.1);
    }
    CHECK(fixture.warnings().join("\n").toStdString() == "");
}

// Properties in, signals out: a part gets what it shows and reports what it wants.
TEST_CASE("only the window and the roots of screens know the practice room") {
    const QSet<QString> found = filesWith("PracticeRoom");
    CHECK(found.contains("WindowBody"));
    CHECK(QStringList((found - rootFiles()).values()).join(", ").toStdString() == "");
}

TEST_CASE("only the window knows the table of screens") {
    QSet<QString> found = filesWith("Screens.");
    CHECK(found.contains("WindowBody"));
    found.remove("WindowBody");
    CHECK(QStringList(found.values()).join(", ").toStdString() == "");
}

TEST_CASE("every key that QML shows is one of the table of key actions") {
    const QRegularExpression use(QStringLiteral("\\bshown\\.(\\w+)"));
    int uses = 0;
    for (const QString& text : qmlFiles())
        for (auto found = use.globalMatch(text); found.hasNext(); ++uses) {
            const std::string name = found.next().captured(1).toStdString();
            CAPTURE(name);
            CHECK(piolo::models::keyActionNamed(name).has_value());
        }
    CHECK(uses > 20);
}

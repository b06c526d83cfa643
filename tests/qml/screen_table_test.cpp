// SPDX-License-Identifier: GPL-3.0-or-later
// Compares the table of screens with what is made from it.
#include "models/keys/key_action.h"
#include "models/room/screen.h"
#include "screen_fixture.h"

#include <doctest/doctest.h>

#include <QDirIterator>
#include <QFile>
#include <QFileInfo>
#include <QHash>
#include <QRegularExpression>
#include <QSet>

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
    ScreenFixture stage;
    for (const Screen& screen : screenTable) {
        CAPTURE(screen.name);
        stage.open(screen.name);
        CHECK(stage.room().screen() == textOf(screen.name));
        QStringList shown;
        for (QQuickItem* item : stage.find("screens")->childItems())
            if (item->inherits("QQuickLoader") && item->isVisible())
                shown << QFileInfo(item->property("source").toUrl().path()).completeBaseName();
        CHECK(shown == QStringList{textOf(screen.file)});
    }
    CHECK(stage.warnings().join("\n").toStdString() == "");
}

TEST_CASE("the navigation has the tabs of the table, in its order") {
    ScreenFixture stage;
    QStringList wanted;
    for (const Screen& screen : screenTable)
        if (screen.tab != nullptr) wanted << "tab-" + textOf(screen.name);
    QStringList shown;
    for (const QQuickItem* item : stage.shown())
        if (item->objectName().startsWith("tab-")) shown << item->objectName();
    CHECK(shown == wanted);
}

TEST_CASE("every screen but the help has a chapter in the help") {
    ScreenFixture stage;
    stage.open("help");
    for (const Screen& screen : screenTable) {
        CAPTURE(screen.name);
        CHECK(screen.chapter.empty() == (screen.name == "help"));
        if (!screen.chapter.empty()) CHECK(stage.find("chapter-" + textOf(screen.chapter)) != nullptr);
    }
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

// SPDX-License-Identifier: GPL-3.0-or-later
// Choosing files in the platform's dialog; here it is the one that Qt draws inside the window.
#include "models/files/file_dialogs.h"
#include "screen_shots.h"

#include <doctest/doctest.h>

#include <QFile>
#include <QSignalSpy>
#include <QTest>

using namespace piolo;
using piolo::models::FileDialogs;
using piolo::test::keepShot;
using piolo::test::ScreenFixture;

namespace {

struct Choosing : ScreenFixture {
    Choosing() {
        REQUIRE(scratch.isValid());
        files().remember(QUrl::fromLocalFile(path("x")));
        room().setScreen("passages");
        play(0.1);
    }
    ~Choosing() { CHECK(warnings().join("\n").toStdString() == ""); }

    static FileDialogs& files() { return *FileDialogs::create(nullptr, nullptr); }
    [[nodiscard]] QString path(const QString& name) const { return scratch.filePath(name); }
    /// Qt's own dialog; null if none was ever opened.
    [[nodiscard]] QObject* dialog() const {
        for (QObject* child : window().children())
            if (child->inherits("QQuickFileDialogImpl")) return child;
        return nullptr;
    }
    [[nodiscard]] bool isOpen() const {
        return dialog() != nullptr && dialog()->property("visible").toBool();
    }
    void settle() { QTest::qWait(50); }
    void write(const QString& name) {
        room().picks()->pickAll(true);
        REQUIRE(room().exchange()->write(path(name)) == "");
    }
    void turnTo(const QString& words) {
        for (QQuickItem* item : shown())
            if (item->inherits("QQuickRadioButton") && item->property("text") == words) {
                QTest::mouseClick(&window(), Qt::LeftButton, Qt::NoModifier,
                                  item->mapToScene({item->width() / 2, item->height() / 2}).toPoint());
                play(0.05);
                return;
            }
        FAIL("no such side");
    }
    void openImport() {
        choose("more", "files");
        turnTo("Import");
    }
    void type(const QString& text) {
        for (const QChar letter : text) QTest::keyClick(&window(), letter.toLatin1());
    }
    void waitForFile() {
        for (int turn = 0; room().exchange()->reading() && turn < 1000; ++turn) QTest::qWait(10);
        play(0.05);
    }
    [[nodiscard]] QString said(const char* name) {
        const QQuickItem* item = find(name);
        return item == nullptr ? QString() : item->property("text").toString();
    }

    QTemporaryDir scratch;
};

} // namespace

TEST_CASE_FIXTURE(Choosing,
                  "the file dialog is loaded by its first press, and is within the window at any size") {
    openImport();
    CHECK(dialog() == nullptr);
    for (const QSize size : {QSize(480, 640), QSize(600, 960), QSize(1280, 800)}) {
        CAPTURE(size.width());
        resize(size.width(), size.height());
        play(0.1);
        click("import-choose");
        settle();
        REQUIRE(isOpen());
        const auto width = dialog()->property("width").toDouble();
        const auto height = dialog()->property("height").toDouble();
        CHECK(dialog()->property("x").toDouble() >= 0);
        CHECK(dialog()->property("y").toDouble() >= 0);
        CHECK(dialog()->property("x").toDouble() + width <= size.width());
        CHECK(dialog()->property("y").toDouble() + height <= size.height());
        keepShot(shot(), QStringLiteral("file-dialog-%1").arg(size.width()));
        QTest::keyClick(&window(), Qt::Key_Escape);
        settle();
        CHECK_FALSE(isOpen());
        CHECK(find("import-choose")->hasActiveFocus());
    }
}

TEST_CASE_FIXTURE(Choosing, "a file chosen in the dialog is read at once, by keys, by mouse and by touch") {
    write("sectional.piolo.json");
    QFile(path("notes.txt")).open(QFile::WriteOnly); // not of this kind
    openImport();
    for (const std::string_view by : {"keys", "mouse", "touch"}) {
        CAPTURE(std::string(by));
        room().exchange()->close();
        if (by == "keys")
            press("import-choose");
        else if (by == "mouse")
            click("import-choose");
        else
            touch(middleOf("import-choose"));
        settle();
        REQUIRE(isOpen());
        CHECK(find("fileDialogDelegate1") == nullptr);
        if (by == "keys")
            QTest::keyClick(&window(), Qt::Key_Return);
        else if (by == "mouse")
            QTest::mouseDClick(&window(), Qt::LeftButton, Qt::NoModifier, middleOf("fileDialogDelegate0"));
        else {
            touch(middleOf("fileDialogDelegate0"));
            touch(middleOf("fileDialogDelegate0"));
        }
        settle();
        waitForFile();
        CHECK_FALSE(isOpen());
        CHECK(room().exchange()->file() == path("sectional.piolo.json"));
        CHECK(find("import-choose")->hasActiveFocus());
    }
}

TEST_CASE_FIXTURE(Choosing,
                  "a file is saved under the name typed in the dialog, and the folder is remembered") {
    choose("more", "files");
    REQUIRE(QDir(scratch.path()).mkdir("band"));
    files().remember(QUrl::fromLocalFile(path("band/x")));
    click("export-choose");
    settle();
    REQUIRE(isOpen());
    QQuickItem* const name = find("fileNameTextField");
    REQUIRE(name != nullptr);
    CHECK(name->property("text").toString() == "Passages.piolo.json");
    name->forceActiveFocus();
    QTest::keyClick(&window(), Qt::Key_A, Qt::ControlModifier);
    type("week");
    keepShot(shot(), QStringLiteral("file-dialog-save"));
    QTest::keyClick(&window(), Qt::Key_Return);
    settle();
    CHECK_FALSE(isOpen());
    CHECK(QFile::exists(path("band/week.piolo.json")));
    CHECK(said("export-said").contains("week"));
    CHECK(files().folder() == QUrl::fromLocalFile(path("band")));
}

TEST_CASE_FIXTURE(Choosing, "a file of the same name is replaced only after a second press") {
    write("week.piolo.json");
    QFile(path("week.piolo.json")).resize(1);
    choose("more", "files");
    QQuickItem* const field = find("export-path");
    QMetaObject::invokeMethod(field, "typed", Q_ARG(QString, path("week")));
    play(0.05);
    click("export-save");
    CHECK(said("export-said").contains("replaces"));
    CHECK(QFile(path("week.piolo.json")).size() == 1);
    click("export-save");
    CHECK(QFile(path("week.piolo.json")).size() > 1);
    click("export-save"); // its own file of a moment ago
    CHECK(said("export-said").contains("saved"));
}

TEST_CASE_FIXTURE(Choosing, "while a dialog is open, the keys of the screen behind it do nothing") {
    room().setScreen("log");
    play(0.1);
    click("saveCurves");
    click("curves-choose");
    settle();
    REQUIRE(isOpen());
    tap(Qt::Key_N);
    CHECK(room().screen() == "log");
    CHECK(isOpen());
    tap(Qt::Key_Escape);
    settle();
    CHECK_FALSE(isOpen());
}

TEST_CASE(
    "the folder of the dialogs is kept with the machine; one that is gone gives way to the home folder") {
    journal::MachineSettings machine;
    FileDialogs files(machine);
    const QUrl home = QUrl::fromLocalFile(QDir::homePath());
    CHECK(files.folder() == home);
    QTemporaryDir scratch;
    QSignalSpy changed(&files, &FileDialogs::folderChanged);
    files.remember(QUrl::fromLocalFile(scratch.filePath("a.pdf")));
    CHECK(machine.folder == scratch.path().toStdString());
    CHECK(files.folder() == QUrl::fromLocalFile(scratch.path()));
    files.remember(QUrl::fromLocalFile(scratch.filePath("b.pdf")));
    CHECK(changed.count() == 1);
    scratch.remove();
    CHECK(files.folder() == home);
    CHECK(FileDialogs::path(QUrl::fromLocalFile(QDir::homePath() + "/a.pdf")) == "~/a.pdf");
    CHECK(FileDialogs::path(QUrl("/band/100 % of ü#1.pdf")) == "/band/100 % of ü#1.pdf");
    CHECK(FileDialogs::filters("picture", false) ==
          QStringList{"Pictures and PDFs (*.pdf *.png *.jpg *.jpeg)", "All files (*)"});
    CHECK(FileDialogs::filters("sheet", true) == QStringList{"Sheet (*.pdf *.svg *.png)"});
    CHECK(FileDialogs::filters("nothing", true).isEmpty());
}

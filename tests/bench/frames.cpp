// SPDX-License-Identifier: GPL-3.0-or-later
// Measures how long the window takes to respond, screen by screen, on a practice folder: frames FOLDER
// [ROUNDS]. Prints "what,median,worst" in milliseconds. A response is a whole frame: events handled and the
// scene drawn (in software).
#include "models/room/practice_room.h"
#include "practice/log/practice_book.h"
#include "text/translation.h"

#include "../practice/virtual_sound.h"

#include <QElapsedTimer>
#include <QGuiApplication>
#include <QImage>
#include <QQmlApplicationEngine>
#include <QQmlExtensionPlugin>
#include <QQuickItem>
#include <QQuickWindow>
#include <QTemporaryDir>

#include <algorithm>
#include <cstdio>
#include <cstdlib>
#include <functional>
#include <memory>
#include <string>
#include <vector>

Q_IMPORT_QML_PLUGIN(PioloPlugin)

namespace {

using piolo::models::PracticeRoom;

constexpr const char* device = "0123456789abcdef0123456789abcdef";

QQuickItem* find(QQuickItem* below, const QString& name) {
    if (below->objectName() == name && below->isVisible()) return below;
    const auto children = below->childItems();
    for (QQuickItem* child : children)
        if (QQuickItem* found = find(child, name)) return found;
    return nullptr;
}

class Desk {
public:
    Desk(const std::string& folder, int rounds) : rounds_(rounds) {
        auto book = piolo::practice::PracticeBook::open(
            {folder, device, scratch_.filePath("state").toStdString()}, {});
        if (!book) throw std::runtime_error("the folder cannot be opened");
        piolo::journal::MachineSettings settings;
        settings.device = device;
        settings.welcomed = true;
        room_ = std::make_unique<PracticeRoom>(std::move(book).value(), sound_, engine_, settings,
                                               scratch_.path().toStdString(),
                                               piolo::practice::DrillSession::Reading::byHand);
        screens_.addImportPath(QStringLiteral("qrc:/qt/qml"));
        screens_.load(QUrl(QStringLiteral("qrc:/qt/qml/Piolo/Main.qml")));
        window_ = qobject_cast<QQuickWindow*>(screens_.rootObjects().value(0));
        if (window_ == nullptr) throw std::runtime_error("the window cannot be made");
        room_->attach(window_);
        frame();
    }

    [[nodiscard]] PracticeRoom& room() { return *room_; }
    [[nodiscard]] QQuickItem* item(const QString& name) const { return find(window_->contentItem(), name); }

    void frame() {
        QCoreApplication::processEvents();
        static_cast<void>(window_->grabWindow());
    }
    void step() {
        sound_.render();
        room_->session().poll();
        room_->drill()->tick();
    }
    /// `ready` runs before each round and is not timed.
    void measure(const std::string& what, const std::function<void()>& ready,
                 const std::function<void(int)>& act) {
        std::vector<double> took;
        for (int round = 0; round < rounds_; ++round) {
            ready();
            frame();
            QElapsedTimer timer;
            timer.start();
            act(round);
            frame();
            took.push_back(static_cast<double>(timer.nsecsElapsed()) / 1e6);
        }
        std::sort(took.begin(), took.end());
        std::printf("%s,%.1f,%.1f\n", what.c_str(), took[took.size() / 2], took.back());
        std::fflush(stdout);
    }

private:
    QTemporaryDir scratch_;
    std::shared_ptr<piolo::engine::DrillEngine> engine_ = std::make_shared<piolo::engine::DrillEngine>();
    piolo::test::VirtualSound sound_{engine_};
    std::unique_ptr<PracticeRoom> room_;
    QQmlApplicationEngine screens_;
    QQuickWindow* window_ = nullptr;
    int rounds_;
};

void openScreens(Desk& desk) {
    for (const char* const screen : {"passages", "drill", "log", "runThrough", "settings", "help"}) {
        const bool isHelp = QLatin1String(screen) == QLatin1String("help");
        desk.measure(
            std::string("open ") + screen, [&] { desk.room().setScreen(isHelp ? "settings" : "help"); },
            [&](int) { desk.room().setScreen(QString::fromLatin1(screen)); });
    }
}

void scroll(QQuickItem& list, int round) {
    list.setProperty("contentY", list.property("contentY").toReal() + (round % 2 == 0 ? 420.0 : -300.0));
}

void useLists(Desk& desk) {
    desk.room().setScreen("passages");
    desk.frame();
    QQuickItem* const search = desk.item("search");
    if (search != nullptr)
        desk.measure(
            "type into the search", [&] { desk.room().passages()->setSearch(QString()); },
            [&](int round) { desk.room().passages()->setSearch(QString(QChar(u'a' + round % 5))); });
    desk.room().passages()->setSearch(QString());
    if (QQuickItem* const list = desk.item("passageList"))
        desk.measure(
            "scroll the passages", [] {}, [&](int round) { scroll(*list, round); });
    desk.room().setScreen("log");
    desk.frame();
    if (QQuickItem* const list = desk.item("logList"))
        desk.measure(
            "scroll the log", [] {}, [&](int round) { scroll(*list, round); });
}

void useLog(Desk& desk) {
    auto& log = *desk.room().log();
    const QVariantList passages = log.passages();
    const QString one = passages.value(1).toMap().value("value").toString();
    desk.measure(
        "choose a passage in the log", [&] { log.setPassage(QString()); }, [&](int) { log.setPassage(one); });
    log.setPassage(QString());
    desk.frame();
    if (QQuickItem* const curves = desk.item("logCurves"))
        desk.measure(
            "zoom the curves", [] {},
            [&](int round) {
                QMetaObject::invokeMethod(curves, "zoom", Q_ARG(double, round % 2 == 0 ? 0.5 : 2.0),
                                          Q_ARG(double, 300.0));
            });
}

/// A block of 10 ms is rendered, read and shown.
void playDrill(Desk& desk) {
    desk.room().setScreen("drill");
    desk.frame();
    desk.room().drill()->start();
    const auto play = [&](int blocks) {
        for (int block = 0; block < blocks; ++block) desk.step();
    };
    play(100);
    // Long enough to contain an audible beat.
    desk.measure(
        "a beat of the running drill", [] {}, [&](int) { play(110); });
    desk.room().drill()->stop();
}

} // namespace

int main(int argc, char** argv) {
    qputenv("QT_QPA_PLATFORM", "offscreen");
    qputenv("QT_QUICK_BACKEND", "software");
    const QGuiApplication application(argc, argv);
    piolo::text::loadEnglish();
    if (argc < 2) return EXIT_FAILURE;
    try {
        Desk desk(argv[1], argc > 2 ? std::max(1, std::atoi(argv[2])) : 9);
        const auto ids = desk.room().book().notebook().passages();
        if (!ids.empty()) desk.room().openDrill(QString::fromStdString(ids.front().text()));
        const auto pieces = desk.room().book().notebook().pieces();
        if (!pieces.empty()) desk.room().openRunThrough(QString::fromStdString(pieces.front().id.text()));
        openScreens(desk);
        useLists(desk);
        useLog(desk);
        playDrill(desk);
    } catch (const std::exception& wrong) {
        std::fprintf(stderr, "frames: %s\n", wrong.what());
        return EXIT_FAILURE;
    }
    return EXIT_SUCCESS;
}

// SPDX-License-Identifier: GPL-3.0-or-later
// Measures how long the window takes to respond, screen by screen, on a practice folder: frames FOLDER
// [ROUNDS]. Prints "what,median,worst" in milliseconds. A response is a whole frame: events handled and the
// scene drawn (in software).
#include "models/room/practice_room.h"
#include "models/room/screen.h"
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

class BenchWindow {
public:
    BenchWindow(const std::string& folder, int rounds) : rounds_(rounds) {
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

void openScreens(BenchWindow& bench) {
    for (const auto& screen : piolo::models::screenTable) {
        const std::string name(screen.name);
        const char* const before = name == "help" ? "settings" : "help";
        bench.measure(
            "open " + name, [&] { bench.room().setScreen(before); },
            [&](int) { bench.room().setScreen(QString::fromStdString(name)); });
    }
}

void scroll(QQuickItem& list, int round) {
    list.setProperty("contentY", list.property("contentY").toReal() + (round % 2 == 0 ? 420.0 : -300.0));
}

void useLists(BenchWindow& bench) {
    bench.room().setScreen("passages");
    bench.frame();
    QQuickItem* const search = bench.item("search");
    if (search != nullptr)
        bench.measure(
            "type into the search", [&] { bench.room().passages()->setSearch(QString()); },
            [&](int round) { bench.room().passages()->setSearch(QString(QChar(u'a' + round % 5))); });
    bench.room().passages()->setSearch(QString());
    if (QQuickItem* const list = bench.item("passageList"))
        bench.measure(
            "scroll the passages", [] {}, [&](int round) { scroll(*list, round); });
    bench.room().setScreen("log");
    bench.frame();
    if (QQuickItem* const list = bench.item("logList"))
        bench.measure(
            "scroll the log", [] {}, [&](int round) { scroll(*list, round); });
}

void useLog(BenchWindow& bench) {
    auto& log = *bench.room().log();
    const QVariantList passages = log.passages();
    const QString one = passages.value(1).toMap().value("value").toString();
    bench.measure(
        "choose a passage in the log", [&] { log.setPassage(QString()); }, [&](int) { log.setPassage(one); });
    log.setPassage(QString());
    bench.frame();
    if (QQuickItem* const curves = bench.item("logCurves"))
        bench.measure(
            "zoom the curves", [] {},
            [&](int round) {
                QMetaObject::invokeMethod(curves, "zoom", Q_ARG(double, round % 2 == 0 ? 0.5 : 2.0),
                                          Q_ARG(double, 300.0));
            });
}

/// A block of 10 ms is rendered, read and shown.
void playDrill(BenchWindow& bench) {
    bench.room().setScreen("drill");
    bench.frame();
    bench.room().drill()->start();
    const auto play = [&](int blocks) {
        for (int block = 0; block < blocks; ++block) bench.step();
    };
    play(100);
    // Long enough to contain an audible beat.
    bench.measure(
        "a beat of the running drill", [] {}, [&](int) { play(110); });
    bench.room().drill()->stop();
}

} // namespace

int main(int argc, char** argv) {
    qputenv("QT_QPA_PLATFORM", "offscreen");
    qputenv("QT_QUICK_BACKEND", "software");
    const QGuiApplication application(argc, argv);
    piolo::text::loadEnglish();
    if (argc < 2) return EXIT_FAILURE;
    try {
        BenchWindow bench(argv[1], argc > 2 ? std::max(1, std::atoi(argv[2])) : 9);
        const auto ids = bench.room().book().notebook().passages();
        if (!ids.empty()) bench.room().openDrill(QString::fromStdString(ids.front().text()));
        const auto pieces = bench.room().book().notebook().pieces();
        if (!pieces.empty()) bench.room().openRunThrough(QString::fromStdString(pieces.front().id.text()));
        openScreens(bench);
        useLists(bench);
        useLog(bench);
        playDrill(bench);
    } catch (const std::exception& wrong) {
        std::fprintf(stderr, "frames: %s\n", wrong.what());
        return EXIT_FAILURE;
    }
    return EXIT_SUCCESS;
}

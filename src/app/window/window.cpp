// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/window/window.h"

#include "app/window/early_exit.h"
#include "app/window/fault_window.h"
#include "app/window/quiet_start.h"
#include "app/window/window_shot.h"
#include "command/output/report.h"
#include "command/verbs/practice_notebook.h"
#include "device/midi/midi_in.h"
#include "device/sound/sound_out.h"
#include "engine/drill/drill_engine.h"
#include "journal/settings/machine_settings.h"
#include "models/room/practice_room.h"
#include "models/settings/language.h"
#include "practice/log/practice_book.h"

#include <QDebug>
#include <QFontDatabase>
#include <QGuiApplication>
#include <QIcon>
#include <QQmlComponent>
#include <QQmlEngine>
#include <QQmlExtensionPlugin>
#include <QQuickWindow>
#include <QThread>
#include <QThreadPool>
#include <QTimer>

#include <chrono>
#include <cstdlib>
#include <future>

Q_IMPORT_QML_PLUGIN(PioloPlugin)

namespace piolo::app {

namespace {

constexpr std::chrono::milliseconds whenAllIsUp{3000};
constexpr int longestSave = 2000; // milliseconds

bool hasDisplay() {
    const auto set = [](const char* name) { return !qEnvironmentVariableIsEmpty(name); };
    return set("DISPLAY") || set("WAYLAND_DISPLAY") || set("QT_QPA_PLATFORM");
}

/// The window's screens: read and compiled at once, made when there is something to show in them.
class Screens {
public:
    Screens() {
        engine_.addImportPath(QStringLiteral("qrc:/qt/qml"));
        main_.loadUrl(QUrl(QStringLiteral("qrc:/qt/qml/Piolo/Main.qml")));
    }

    /// Shows them until the window is closed.
    int show(models::PracticeRoom& room, practice::MidiPort& midi, const WindowOptions& options) {
        const std::unique_ptr<QObject> made(main_.create());
        auto* const window = qobject_cast<QQuickWindow*>(made.get());
        if (window == nullptr) {
            qWarning() << main_.errors();
            return command::exitInput;
        }
        if (!options.shot.empty()) { // a picture opens no sound device
            room.showRest();
            return shootWindow(*window, options);
        }
        if (options.width > 0) window->resize(options.width, options.height);
        room.attach(window);
        QObject::connect(
            window, &QQuickWindow::frameSwapped, &room, [&] { room.plugIn(midi); }, Qt::SingleShotConnection);
        return QGuiApplication::exec();
    }

private:
    QQmlEngine engine_;
    QQmlComponent main_{&engine_};
};

using OpenedBook = Result<std::unique_ptr<practice::PracticeBook>>;

/// Reads the practice log on a thread of its own; the book belongs to this thread.
std::future<OpenedBook> openingBook(journal::JournalLocation place) {
    return std::async(std::launch::async, [place = std::move(place), mine = QThread::currentThread()] {
        OpenedBook book = practice::PracticeBook::open(place);
        if (book) book.value()->moveToThread(mine);
        return book;
    });
}

/// Why there is no window, on standard error and, since a desktop hides that, in a small window.
int refuse(const Fault& fault, const WindowOptions& options) {
    if (!options.shot.empty()) return command::report(fault);
    if (options.language.empty()) models::speak(QStringLiteral("system"));
    return showFault(fault);
}

/// Plugs everything together; all of it is saved and gone again when this returns.
int openWindow(const WindowOptions& options) {
    const auto found = journal::systemDirectories();
    if (!found) return refuse(found.fault(), options);
    const journal::Directories& places = *found;
    Fault damaged;
    auto settings = journal::loadMachineSettings(places.config, *journal::systemRandomness(), &damaged);
    if (!settings) return refuse(settings.fault(), options);
    if (damaged.number != FaultNumber{}) command::report(damaged);

    models::speak(QString::fromStdString(options.language.empty() ? settings->language : options.language));
    const std::string folder = options.folder.empty() ? places.data : options.folder;
    auto opening = openingBook({folder, settings->device, places.state, places.cache});
    Screens screens;
    auto engine = std::make_shared<engine::DrillEngine>();
    device::SoundOut sound(engine);
    device::MidiIn midi(device::systemMidi(), device::monotonicNanos);
    auto book = opening.get();
    if (!book) return refuse(book.fault(), options);
    models::PracticeRoom room(std::move(book).value(), sound, engine, std::move(settings).value(),
                              places.config);
    if (damaged.number != FaultNumber{}) room.settings()->tell(damaged);
    if (!options.passage.empty()) {
        const auto passage = command::passageNamed(room.book().notebook(), options.passage, "--drill");
        if (!passage) return command::report(passage.fault());
        room.openDrill(QString::fromStdString(passage->text()));
    }
    if (!options.screen.empty()) room.setScreen(QString::fromStdString(options.screen));
    QTimer::singleShot(whenAllIsUp, &room.book(), [&] { room.book().keepCheckpoint(); });
    const EarlyExit early([&room] { room.book().flush(longestSave); });
    return screens.show(room, midi, options);
}

/// The system's list of fonts takes a while to read, and the screens need it as soon as they are made.
void readFontsMeanwhile() {
    QThreadPool::globalInstance()->start([] { (void)QFontDatabase::hasFamily(QStringLiteral("Inter")); });
}

} // namespace

int runWindow(int& argc, char** argv, const WindowOptions& options) {
    if (!hasDisplay()) return command::report({FaultNumber::noDisplay, {}, {}});
    // Of the styles of Qt's own file dialog, the one with controls large enough to touch.
    if (qEnvironmentVariableIsEmpty("QT_QUICK_CONTROLS_STYLE")) qputenv("QT_QUICK_CONTROLS_STYLE", "Basic");
    quietStart();
    const QGuiApplication application(argc, argv);
    readFontsMeanwhile();
    QGuiApplication::setApplicationDisplayName(QStringLiteral("Piolo"));
    QGuiApplication::setDesktopFileName(QStringLiteral("piolo"));
    QGuiApplication::setWindowIcon(QIcon(QStringLiteral(":/piolo.svg")));
    const int code = openWindow(options);
    // A sound thread stuck inside Qt would hold up Qt's own clean-up for good.
    device::SoundOut::endThread();
    if (device::SoundOut::threadsLeftBehind()) std::quick_exit(code);
    return code;
}

} // namespace piolo::app

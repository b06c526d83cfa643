// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/window.h"

#include "app/practice_notebook.h"
#include "app/sound_adapter.h"
#include "app/telling.h"
#include "app/window_shot.h"
#include "engine/drill_engine.h"
#include "journal/machine_settings.h"
#include "models/practice_book.h"
#include "models/practice_room.h"

#include <QGuiApplication>
#include <QQmlApplicationEngine>
#include <QQmlExtensionPlugin>
#include <QQuickStyle>
#include <QQuickWindow>

#include <cstdlib>

Q_IMPORT_QML_PLUGIN(PioloPlugin)

namespace piolo::app {

namespace {

constexpr int longestBlock = 16'384;

bool hasDisplay() {
    const auto set = [](const char* name) { return !qEnvironmentVariableIsEmpty(name); };
    return set("DISPLAY") || set("WAYLAND_DISPLAY") || set("QT_QPA_PLATFORM");
}

/// Shows the screens until the window is closed.
int showScreens(models::PracticeRoom& room, const WindowOptions& options) {
    QQmlApplicationEngine screens;
    screens.addImportPath(QStringLiteral("qrc:/qt/qml"));
    screens.load(QUrl(QStringLiteral("qrc:/qt/qml/Piolo/Main.qml")));
    if (screens.rootObjects().isEmpty()) return exitInput;
    auto* window = qobject_cast<QQuickWindow*>(screens.rootObjects().constFirst());
    if (!options.shot.empty()) return shootWindow(*window, options); // a picture opens no sound device
    room.attach(window);
    return QGuiApplication::exec();
}

/// Plugs everything together; all of it is saved and gone again when this returns.
int openWindow(const WindowOptions& options) {
    const auto places = journal::systemDirectories();
    Fault damaged;
    auto settings = journal::loadMachineSettings(places.config, *journal::systemRandomness(), &damaged);
    if (!settings) return tell(settings.fault());
    if (damaged.number != FaultNumber{}) tell(damaged);

    const std::string folder = options.folder.empty() ? places.data : options.folder;
    auto book = models::PracticeBook::open({folder, settings->device, places.state});
    if (!book) return tell(book.fault());

    auto engine = std::make_shared<engine::DrillEngine>();
    engine->prepare({}, longestBlock);
    SoundAdapter sound(engine);
    models::PracticeRoom room(std::move(book).value(), sound, engine, std::move(settings).value(),
                              places.config);
    if (!options.passage.empty()) {
        const auto passage = passageNamed(room.book().notebook(), options.passage, "--drill");
        if (!passage) return tell(passage.fault());
        room.openDrill(QString::fromStdString(passage->text()));
    }
    return showScreens(room, options);
}

} // namespace

int runWindow(int& argc, char** argv, const WindowOptions& options) {
    if (!hasDisplay()) return tell({FaultNumber::noDisplay, {}, {}});
    QQuickStyle::setStyle(QStringLiteral("Basic"));
    const QGuiApplication application(argc, argv);
    QGuiApplication::setApplicationDisplayName(QStringLiteral("Piolo"));
    const int code = openWindow(options);
    // A sound thread stuck inside Qt would hold up Qt's own clean-up for good.
    if (device::SoundOut::threadsLeftBehind()) std::quick_exit(code);
    return code;
}

} // namespace piolo::app

// SPDX-License-Identifier: GPL-3.0-or-later
#include "screen_fixture.h"

#include "../files/kept_files.h"

#include <doctest/doctest.h>

#include <QCoreApplication>
#include <QKeyEvent>
#include <QTest>

#include <functional>

namespace piolo::test {

namespace {

constexpr const char* device = "0123456789abcdef0123456789abcdef";
constexpr std::int64_t dayMillis = 86'400'000;

Passage hardBars() {
    Passage passage;
    passage.title.name = "River Suite, II: the run to the bridge";
    passage.music.subdivision = 4;
    passage.music.firstBar = 41;
    passage.tempi.start = Tempo::bpm(72);
    passage.tempi.rule.floor = Tempo::bpm(60);
    passage.tempi.rule.target = Tempo::bpm(96);
    return passage;
}

QPointingDevice* touchScreen() {
    static QPointingDevice* const screen = QTest::createTouchDevice();
    return screen;
}

} // namespace

ScreenFixture::ScreenFixture(bool emptyFolder) {
    REQUIRE(scratch_.isValid());
    journal::JournalPorts ports;
    ports.clock = clock_;
    auto book = practice::PracticeBook::open(
        {scratch_.filePath("folder").toStdString(), device, scratch_.filePath("state").toStdString()},
        std::move(ports));
    REQUIRE(book);
    if (!emptyFolder) fill(*book.value());
    journal::MachineSettings settings;
    settings.device = device;
    settings.welcomed = !emptyFolder;
    room_ = std::make_unique<models::PracticeRoom>(std::move(book).value(), sound_, engine_, settings,
                                                   scratch_.path().toStdString(),
                                                   practice::DrillSession::Reading::byHand);
    openWindow();
}

void ScreenFixture::openWindow() {
    auto screens = std::make_unique<QQmlApplicationEngine>();
    QObject::connect(screens.get(), &QQmlEngine::warnings, [this](const QList<QQmlError>& warnings) {
        for (const QQmlError& warning : warnings) warnings_.append(warning.toString());
    });
    screens->addImportPath(QStringLiteral("qrc:/qt/qml"));
    screens->load(QUrl(QStringLiteral("qrc:/qt/qml/Piolo/Main.qml")));
    REQUIRE(screens->rootObjects().size() == 1);
    window_ = qobject_cast<QQuickWindow*>(screens->rootObjects().constFirst());
    REQUIRE(window_ != nullptr);
    room_->attach(window_); // releases the previous window, which must still exist
    screens_ = std::move(screens);
    window_->requestActivate();
    QCoreApplication::processEvents();
}

ScreenFixture::~ScreenFixture() {
    screens_.reset();
    keepWritten(scratch_.path().toStdString());
}

void ScreenFixture::fill(practice::PracticeBook& book) {
    const Id piece = book.newId();
    book.record(PieceFact{piece, "River Suite", "Clarinet in B♭", Date{2026, 5, 23}});
    const std::int64_t today = clock_->millis;
    clock_->millis = today - 15 * dayMillis;
    Passage made = hardBars();
    passage_ = book.newId();
    book.record(PassageFact{passage_, Title{made.title.name, piece}, made.music, made.tempi});
    Passage other = hardBars();
    other.music.meter = Meter::parse("7/8", "1/8", "2+2+3").value();
    other.music.subdivision = 2;
    other.music.firstBar = 88;
    book.record(
        PassageFact{book.newId(), Title{"Harbour Dance: the seven-eight", piece}, other.music, other.tempi});
    for (int day = 13; day >= 1; --day) {
        clock_->millis = today - day * dayMillis;
        if (day != 6) practise(book, passage_, day);
    }
    clock_->millis = today;
}

// Some runs per day, about one in thirty missed, always the same.
void ScreenFixture::practise(practice::PracticeBook& book, Id passage, int day) {
    if (const auto opening = book.notebook().opening(passage, book.today()))
        book.record(TempoFact{passage, *opening, Reason::newDay});
    for (int run = 0; run < 18; ++run) {
        RunFact fact;
        fact.passage = passage;
        fact.tempo = book.notebook().passage(passage)->standing.tempo;
        fact.mark = (run * 5 + day * 3) % 29 == 0 ? Mark::missed : Mark::clean;
        fact.millis = 11'000;
        clock_->millis += 20'000;
        book.record(fact);
    }
}

void ScreenFixture::open(std::string_view screen) {
    const auto& notebook = room_->book().notebook();
    if (screen == "drill")
        room_->openDrill(QString::fromStdString(passage_.text()));
    else if (screen == "runThrough" && !notebook.pieces().empty())
        room_->openRunThrough(QString::fromStdString(notebook.pieces().front().id.text()));
    else
        room_->setScreen(QString::fromStdString(std::string(screen)));
    if (screen == "scales") room_->scales()->choices()->setInstrument(QStringLiteral("alto saxophone"));
    play(0.1);
}

void ScreenFixture::play(double seconds) {
    for (int block = 0; block < static_cast<int>(seconds * 100); ++block) {
        sound_.render();
        clock_->millis += 10;
        room_->session().poll();
        room_->drill()->tick();
        room_->click()->tick();
    }
    QCoreApplication::processEvents();
}

void ScreenFixture::tap(int key) {
    moment_ += 1000;
    for (const auto type : {QEvent::KeyPress, QEvent::KeyRelease}) {
        QKeyEvent event(type, key, Qt::NoModifier);
        moment_ += 90;
        event.setTimestamp(moment_);
        QCoreApplication::sendEvent(window_, &event);
    }
    QCoreApplication::processEvents();
}

QQuickItem& ScreenFixture::there(const QString& name) const {
    QQuickItem* const item = find(name);
    CAPTURE(name.toStdString());
    REQUIRE(item != nullptr);
    return *item;
}

QPoint ScreenFixture::middleOf(const QString& name) const {
    const QQuickItem& item = there(name);
    return item.mapToScene({item.width() / 2, item.height() / 2}).toPoint();
}

void ScreenFixture::click(const QString& name) {
    QTest::mouseClick(window_, Qt::LeftButton, Qt::NoModifier, middleOf(name));
    play(0.05);
}

void ScreenFixture::touch(QPoint place, double seconds) {
    QTest::touchEvent(window_, touchScreen()).press(0, place);
    play(seconds);
    QTest::touchEvent(window_, touchScreen()).release(0, place);
    play(0.05);
}

void ScreenFixture::drag(QPoint from, QPoint to) {
    constexpr int moves = 4;
    QTest::touchEvent(window_, touchScreen()).press(0, from);
    for (int move = 1; move <= moves; ++move) {
        play(0.05);
        QTest::touchEvent(window_, touchScreen()).move(0, from + (to - from) * move / moves);
    }
    play(0.3); // held
    QTest::touchEvent(window_, touchScreen()).release(0, to);
}

void ScreenFixture::press(const QString& name, Qt::Key key) {
    there(name).forceActiveFocus(Qt::TabFocusReason);
    QTest::keyClick(window_, key);
    play(0.05);
}

void ScreenFixture::choose(const QString& name, const QVariant& value) {
    QQuickItem& choice = there(name);
    REQUIRE(choice.isVisible());
    QMetaObject::invokeMethod(&choice, "chosen", Q_ARG(QVariant, value));
    play(0.05);
}

void ScreenFixture::resize(int width, int height) {
    window_->resize(width, height);
    QCoreApplication::processEvents();
}

void ScreenFixture::setDark(bool dark) {
    room_->settings()->setTheme(dark ? QStringLiteral("dark") : QStringLiteral("light"));
    QCoreApplication::processEvents();
}

QImage ScreenFixture::shot() {
    for (int pass = 0; pass < 3; ++pass) QCoreApplication::processEvents();
    return window_->grabWindow();
}

QList<QQuickItem*> ScreenFixture::shown() const {
    QList<QQuickItem*> found;
    const std::function<void(QQuickItem*)> walk = [&](QQuickItem* item) {
        if (!item->isVisible()) return;
        found.append(item);
        for (QQuickItem* child : item->childItems()) walk(child);
    };
    walk(window_->contentItem());
    return found;
}

QQuickItem* ScreenFixture::find(const QString& name) const {
    for (QQuickItem* item : shown())
        if (item->objectName() == name) return item;
    return nullptr;
}

} // namespace piolo::test

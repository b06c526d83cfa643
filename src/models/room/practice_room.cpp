// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/room/practice_room.h"

#include "models/room/screen.h"
#include "practice/figures/last_played.h"

#include <QQmlEngine>
#include <QQuickWindow>

namespace piolo::models {

PracticeRoom* PracticeRoom::present_ = nullptr;

PracticeRoom::PracticeRoom(std::unique_ptr<practice::PracticeBook> book, practice::SoundPort& sound,
                           std::shared_ptr<engine::DrillEngine> engine, journal::MachineSettings settings,
                           std::string configDir, practice::DrillSession::Reading reading)
    : book_(std::move(book)), sound_(sound), machine_(std::move(settings)),
      settings_(*book_, sound, machine_, std::move(configDir)), passages_(*book_), editor_(*book_),
      log_(*book_), session_(*book_, sound, std::move(engine), reading), control_(*book_, sound, session_),
      drill_(*book_, control_), runThroughControl_(*book_, sound), runThrough_(*book_, runThroughControl_),
      formPicture_(*book_), drillPicture_(*book_), keys_(
                                                       machine_.keys,
                                                       [this](const KeyBindings::Keys& keys) {
                                                           machine_.keys = keys;
                                                           settings_.saveNow();
                                                       },
                                                       [this] { return sound_.nowNanos(); }),
      dispatch_(control_, *drill_.listening(), runThroughControl_, *log_.figures()),
      pedal_([this] { return sound_.nowNanos(); }, [this] { return dispatch_.marksAtOnce(); }),
      picks_(*book_), sheet_(*book_, picks_), paper_(*book_), exchange_(*book_, picks_), scales_(*book_),
      notice_(*book_, sound, session_, settings_) {
    present_ = this;
    connect(book_.get(), &practice::PracticeBook::savedChanged, this, &PracticeRoom::unsavedChanged);
    connect(&notice_, &RoomNotice::changed, this, &PracticeRoom::noticeChanged);
    connect(book_.get(), &practice::PracticeBook::changed, this, &PracticeRoom::minutesTodayChanged);
    KeyListener* const listener = &keys_.listener();
    connect(listener, &KeyListener::pressed, &dispatch_, &KeyDispatch::act);
    connect(listener, &KeyListener::pedalDown, &pedal_, &OnePedal::down);
    connect(listener, &KeyListener::pedalUp, &pedal_, &OnePedal::up);
    connect(listener, &KeyListener::pedalStillDown, &pedal_, &OnePedal::stillDown);
    connect(listener, &KeyListener::pedalLost, &pedal_, &OnePedal::forget);
    connect(&pedal_, &OnePedal::acted, &dispatch_, &KeyDispatch::actByPedal);
    connect(&dispatch_, &KeyDispatch::nextWanted, this, &PracticeRoom::openNext);
    connect(&dispatch_, &KeyDispatch::formToBeDrilled, this, &PracticeRoom::formToBeDrilled);
    connect(&settings_, &SettingsModel::pedalChanged, this, &PracticeRoom::timePedal);
    connect(&control_, &practice::DrillControl::wantsNext, this, &PracticeRoom::openNext);
    connect(&drill_, &DrillModel::passageChanged, this, &PracticeRoom::hearKeys);
    connect(&drill_, &DrillModel::stateChanged, this, &PracticeRoom::hearKeys);
    connect(&runThroughControl_, &practice::RunThroughControl::stateChanged, this, &PracticeRoom::hearKeys);
    connect(this, &PracticeRoom::screenChanged, this, &PracticeRoom::hearKeys);
    connect(&settings_, &SettingsModel::languageChanged, this, &PracticeRoom::tellAgain);
    connect(settings_.sound(), &SoundSettings::mixChanged, this,
            [this] { session_.setMix(settings_.sound()->mix()); });
    connect(&drill_, &DrillModel::wantsEdit, this, &PracticeRoom::edit);
    const auto showForm = [this] { formPicture_.setPassage(editor_.passage()); };
    const auto showDrill = [this] { drillPicture_.setPassage(drill_.passageText()); };
    connect(&editor_, &PassageEditor::loaded, this, showForm);
    connect(&drill_, &DrillModel::passageChanged, this, showDrill);
    timePedal();
    session_.setMix(settings_.sound()->mix());
    drill_.listening()->setWithClick(machine_.modelClick);
    connect(drill_.listening(), &Listening::withClickChanged, this, [this] {
        machine_.modelClick = drill_.listening()->withClick();
        settings_.saveNow();
    });
    screen_ = book_->notebook().passages().empty() ? QStringLiteral("welcome") : QStringLiteral("passages");
    const Id last = practice::lastPlayed(book_->notebook());
    if (!last.isNone()) control_.open(last);
}

PracticeRoom::~PracticeRoom() {
    if (present_ == this) present_ = nullptr;
}

PracticeRoom* PracticeRoom::create(QQmlEngine*, QJSEngine*) {
    QQmlEngine::setObjectOwnership(present_, QQmlEngine::CppOwnership);
    return present_;
}

// While something is played, the drill's keys take precedence.
void PracticeRoom::hearKeys() {
    dispatch_.setScreen(screenNamed(screen_.toStdString()));
    keys_.listener().setScope(dispatch_.scope());
    keys_.listener().setUrgent(dispatch_.isUrgent());
}

void PracticeRoom::timePedal() {
    constexpr std::int64_t nanosInMilli = 1'000'000;
    keys_.listener().setBounceMillis(machine_.bounceMillis);
    pedal_.setTiming({machine_.holdMillis * nanosInMilli, machine_.twiceMillis * nanosInMilli,
                      machine_.bounceMillis * nanosInMilli});
}

// The models make their texts again, as after a change of the practice folder; the screens are created again.
void PracticeRoom::tellAgain() {
    keys_.reword();
    emit book_->changed({});
    emit noticeChanged();
    emit languageChanged();
}

void PracticeRoom::setScreen(const QString& screen) {
    if (screen == screen_) return;
    if (screen_ == QLatin1String("drill")) control_.stop();
    screen_ = screen;
    emit screenChanged();
}

int PracticeRoom::minutesToday() const {
    const std::int64_t millis = book_->notebook().day(book_->today(), {}).millis;
    return static_cast<int>(millis / 60'000);
}

void PracticeRoom::openDrill(const QString& passage) {
    drill_.open(passage);
    setScreen(QStringLiteral("drill"));
}

void PracticeRoom::drillScale(bool hear) {
    const QString passage = scales_.passageToDrill();
    if (passage.isEmpty()) return;
    openDrill(passage);
    if (hear) drill_.listening()->toggle();
}

void PracticeRoom::openRunThrough(const QString& piece) {
    runThrough_.open(piece);
    setScreen(QStringLiteral("runThrough"));
}

void PracticeRoom::edit(const QString& passage, bool shorter) {
    if (shorter)
        editor_.loadFirstHalf(passage);
    else
        editor_.load(passage);
    setScreen(QStringLiteral("passages"));
    emit formWanted();
}

void PracticeRoom::attach(QQuickWindow* window) {
    keys_.listener().watch(window);
    sound_.setOffsetMillis(machine_.offsetMillis);
    connect(
        window, &QQuickWindow::frameSwapped, this, [this] { sound_.start(machine_.soundDevice); },
        Qt::SingleShotConnection);
}

void PracticeRoom::plugIn(practice::MidiPort& port) {
    midi_ = std::make_unique<MidiSwitches>(port);
    keys_.watch(*midi_);
}

// What follows the current passage: after a scale, the one that the grid suggests; otherwise the next in the
// list. "" if there is no other.
QString PracticeRoom::nextPassage() {
    const PassageRecord* const record = control_.record();
    if (record != nullptr && record->passage.scale) {
        const QString proposed = scales_.proposedPassage();
        if (!proposed.isEmpty() && proposed != drill_.passageText()) return proposed;
    }
    const int rows = passages_.count();
    const int present = passages_.rowOf(drill_.passageText());
    for (int step = 1; step <= rows; ++step) {
        const int row = (present + step) % rows;
        const bool removed = passages_.data(passages_.index(row), PassageListModel::Removed).toBool();
        if (!removed && row != present) return passages_.idAt(row);
    }
    return {};
}

void PracticeRoom::openNext() {
    const QString next = nextPassage();
    if (!next.isEmpty() && control_.state() == practice::DrillControl::State::stopped) openDrill(next);
}

} // namespace piolo::models

// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/room/practice_room.h"

#include "models/room/screen.h"
#include "models/text/id_text.h"
#include "models/text/table_text.h"
#include "practice/drill/next_passage.h"
#include "practice/figures/last_played.h"
#include "practice/figures/practice_minutes.h"

#include <QQmlEngine>
#include <QQuickWindow>

namespace piolo::models {

namespace {
/// As long as closing the window may wait for the disk before it asks.
constexpr int closingMillis = 500;
} // namespace

PracticeRoom* PracticeRoom::present_ = nullptr;

PracticeRoom::PracticeRoom(std::unique_ptr<practice::PracticeBook> book, practice::SoundPort& sound,
                           std::shared_ptr<engine::DrillEngine> engine, journal::MachineSettings settings,
                           std::string configDir, practice::DrillSession::Reading reading)
    : book_(std::move(book)), sound_(sound), machine_(std::move(settings)),
      settings_(*book_, sound, machine_, std::move(configDir)), passages_(*book_), editor_(*book_),
      page_(*book_), log_(*book_), session_(*book_, sound, std::move(engine), reading),
      control_(*book_, sound, session_), testSound_(session_, [this] { return isQuiet(); }),
      drill_(*book_, control_), setControl_(*book_, control_), set_(*book_, setControl_),
      runThroughControl_(*book_, sound), runThrough_(*book_, runThroughControl_),
      clickControl_(sound, session_), click_(clickControl_), formPicture_(*book_), drillPicture_(*book_),
      keys_(
          machine_.keys, [this](const auto& keys) { saveKeys(keys); }, [this] { return sound_.nowNanos(); }),
      dispatch_(control_, *drill_.listening(), runThroughControl_, clickControl_, *log_.figures()),
      pedal_([this] { return sound_.nowNanos(); }, [this] { return dispatch_.marksAtOnce(); }),
      picks_(*book_), sheet_(*book_, picks_), paper_(*book_), exchange_(*book_, picks_), scales_(*book_),
      files_(machine_), notice_(*book_, sound, session_, settings_) {
    present_ = this;
    connectNotices();
    connectKeys();
    connectSettings();
    connectScreens();
    connectClick();
    screen_ = tableText(firstScreen(noPassageYet()));
    page_.setShown(screen_ == QLatin1String("passages"));
    underWay_.setShown(screen_);
    hearKeys();
    const Id last = practice::lastPlayed(book_->notebook());
    if (!last.isNone()) control_.open(last);
}

void PracticeRoom::connectNotices() {
    connect(book_.get(), &practice::PracticeBook::savedChanged, this, &PracticeRoom::unsavedChanged);
    connect(&notice_, &RoomNotice::changed, this, &PracticeRoom::noticeChanged);
    connect(book_.get(), &practice::PracticeBook::changed, this, &PracticeRoom::minutesTodayChanged);
}

void PracticeRoom::connectKeys() {
    KeyListener* const listener = &keys_.listener();
    connect(listener, &KeyListener::pressed, &dispatch_, &KeyDispatch::act);
    connect(listener, &KeyListener::pedalDown, &pedal_, &OnePedal::down);
    connect(listener, &KeyListener::pedalUp, &pedal_, &OnePedal::up);
    connect(listener, &KeyListener::pedalStillDown, &pedal_, &OnePedal::stillDown);
    connect(listener, &KeyListener::pedalLost, &pedal_, &OnePedal::forget);
    connect(&pedal_, &OnePedal::acted, &dispatch_, &KeyDispatch::actByPedal);
    connect(&dispatch_, &KeyDispatch::nextWanted, this, &PracticeRoom::openNext);
    connect(&dispatch_, &KeyDispatch::setWanted, this, &PracticeRoom::startSet);
    connect(&setControl_, &practice::SetControl::ended, this, &PracticeRoom::showSet);
    connect(&dispatch_, &KeyDispatch::formToBeDrilled, this, &PracticeRoom::shownToBeDrilled);
    connect(&dispatch_, &KeyDispatch::nothingToStop, this, &PracticeRoom::nothingToStop);
    connect(&control_, &practice::DrillControl::wantsNext, this, &PracticeRoom::openNext);
    connect(&drill_, &DrillModel::passageChanged, this, &PracticeRoom::hearKeys);
    connect(&drill_, &DrillModel::stateChanged, this, &PracticeRoom::hearKeys);
    connect(&runThroughControl_, &practice::RunThroughControl::stateChanged, this, &PracticeRoom::hearKeys);
    connect(this, &PracticeRoom::screenChanged, this, &PracticeRoom::hearKeys);
}

void PracticeRoom::connectSettings() {
    connect(&settings_, &SettingsModel::pedalChanged, this, &PracticeRoom::timePedal);
    connect(&settings_, &SettingsModel::languageChanged, this, &PracticeRoom::reword);
    const auto mix = [this] { session_.setMix(settings_.sound()->mix()); };
    connect(settings_.sound(), &SoundSettings::mixChanged, this, mix);
    connect(settings_.sound(), &SoundSettings::soundsOtherwise, &testSound_, &practice::TestSound::want);
    connect(&files_, &FileDialogs::folderChanged, &settings_, &SettingsModel::saveNow);
    timePedal();
    mix();
    drill_.listening()->setWithClick(machine_.modelClick);
    connect(drill_.listening(), &Listening::withClickChanged, this, [this] {
        machine_.modelClick = drill_.listening()->withClick();
        settings_.saveNow();
    });
}

void PracticeRoom::connectScreens() {
    connect(&drill_, &DrillModel::wantsEdit, this, &PracticeRoom::edit);
    const auto showForm = [this] {
        formPicture_.setPassage(editor_.passage());
        page_.show(editor_.passage());
    };
    const auto showDrill = [this] { drillPicture_.setPassage(drill_.passageText()); };
    connect(&editor_, &PassageEditor::loaded, this, showForm);
    connect(&drill_, &DrillModel::passageChanged, this, showDrill);
    underWay_.watch(QStringLiteral("runThrough"), [this] {
        return UnderWay::State{runThrough_.nowText(), true};
    });
    underWay_.watch(QStringLiteral("drill"), [this] { return drillUnderWay(); });
    connect(&runThrough_, &RunThroughModel::ticked, &underWay_, &UnderWay::refresh);
    connect(&drill_, &DrillModel::passageChanged, &underWay_, &UnderWay::refresh);
    connect(&drill_, &DrillModel::stateChanged, &underWay_, &UnderWay::refresh);
}

UnderWay::State PracticeRoom::drillUnderWay() {
    if (!drillVisited_) return {};
    const QString title = drill_.text()->title();
    const bool paused = drill_.state() == DrillModel::State::Paused;
    return {paused ? qtTrId("nav.paused").arg(title) : title, paused};
}

PracticeRoom::~PracticeRoom() {
    if (present_ == this) present_ = nullptr;
}

PracticeRoom* PracticeRoom::create(QQmlEngine*, QJSEngine*) {
    QQmlEngine::setObjectOwnership(present_, QQmlEngine::CppOwnership);
    return present_;
}

void PracticeRoom::saveKeys(const KeyBindings::Keys& keys) {
    machine_.keys = keys;
    settings_.saveNow();
}

// While something is played, the drill's keys take precedence.
void PracticeRoom::hearKeys() {
    dispatch_.setScreen(screenNamed(screen_.toStdString()));
    keys_.listener().setScope(dispatch_.scope());
    keys_.listener().setUrgent(dispatch_.isUrgent());
}

void PracticeRoom::timePedal() {
    keys_.listener().setBounceMillis(machine_.bounceMillis);
    pedal_.setTiming(practice::pedalTiming(machine_.holdMillis, machine_.twiceMillis, machine_.bounceMillis));
}

// The models make their texts again, as after a change of the practice folder; the screens are created again.
void PracticeRoom::reword() {
    keys_.reword();
    emit book_->changed({});
    emit noticeChanged();
    emit languageChanged();
}

void PracticeRoom::setScreen(const QString& screen) {
    const bool toPassages = screen == QLatin1String("passages");
    const bool firstForm = toPassages && noPassageYet() && screen_ != QLatin1String("welcome");
    show(firstForm ? QStringLiteral("welcome") : screen);
}

// A pause waits for its answer; anything else in the drill stops.
void PracticeRoom::show(const QString& screen) {
    if (screen == screen_) return;
    if (screen_ == QLatin1String("drill") && screen == QLatin1String("help")) drill_.showLegend();
    if (screen_ == QLatin1String("drill") && drill_.state() != DrillModel::State::Paused) control_.stop();
    screen_ = screen;
    page_.setShown(screen_ == QLatin1String("passages"));
    underWay_.setShown(screen_);
    emit screenChanged();
}

// What could not be read may hold passages.
bool PracticeRoom::noPassageYet() const {
    return book_->notebook().passages().empty() && book_->readFaults().empty();
}

QString PracticeRoom::wayBackText() const {
    if (wayBack_ == QLatin1String("scales")) return qtTrId("scales.grid");
    const Screen* const screen = screenNamed(wayBack_.toStdString());
    return screen == nullptr || screen->tab == nullptr ? QString() : qtTrId(screen->tab);
}

int PracticeRoom::minutesToday() const { return practice::minutesOn(book_->notebook(), book_->today()); }

void PracticeRoom::openDrill(const QString& passage) {
    drill_.open(passage);
    drillVisited_ = true;
    const Screen* const here = screenNamed(screen_.toStdString());
    if (here != nullptr && here->place == TabPlace::left) wayBack_ = screen_;
    show(QStringLiteral("drill"));
}

void PracticeRoom::drillScale(bool hear) {
    const QString passage = scales_.passageToDrill();
    if (passage.isEmpty()) return;
    openDrill(passage);
    if (hear) drill_.listening()->toggle();
}

void PracticeRoom::startSet() {
    if (!set_.start()) return;
    drillVisited_ = true;
    show(QStringLiteral("drill"));
}

// What it made of each passage. A set that ended because another passage was opened leaves that one shown.
void PracticeRoom::showSet() {
    const bool open = setControl_.parts()[setControl_.place()].passage == control_.passage();
    if (screen_ == QLatin1String("drill") && open) show(QStringLiteral("set"));
}

void PracticeRoom::openRunThrough(const QString& piece) {
    runThrough_.open(piece);
    show(QStringLiteral("runThrough"));
}

void PracticeRoom::edit(const QString& passage, bool shorter) {
    if (shorter)
        editor_.loadFirstHalf(passage);
    else
        editor_.load(passage);
    show(QStringLiteral("passages"));
    emit besideWanted(QStringLiteral("form"));
}

bool PracticeRoom::saveAll() { return book_->flush(closingMillis); }

void PracticeRoom::openScore() {
    show(QStringLiteral("passages"));
    emit besideWanted(QStringLiteral("music"));
}

void PracticeRoom::attach(QQuickWindow* window) {
    keys_.listener().watch(window);
    sound_.setOffsetMillis(machine_.offsetMillis);
    connect(window, &QQuickWindow::frameSwapped, this, &PracticeRoom::settle, Qt::SingleShotConnection);
}

void PracticeRoom::settle() {
    showRest();
    sound_.start(machine_.soundDevice);
}

void PracticeRoom::showRest() {
    shown_ = true;
    emit shownChanged();
}

// A run-through has no click, but the player is playing; in a click, the change is heard anyway.
bool PracticeRoom::isQuiet() const {
    return !control_.isBusy() && !clickControl_.sounds() &&
           runThroughControl_.state() != practice::RunThroughControl::State::playing;
}

void PracticeRoom::plugIn(practice::MidiPort& port) {
    midi_ = std::make_unique<MidiSwitches>(port);
    keys_.watch(*midi_);
}

void PracticeRoom::openNext() {
    if (control_.state() != practice::DrillControl::State::stopped) return;
    const PassageRecord* const record = control_.record();
    const bool isScale = record != nullptr && record->passage.scale.has_value();
    const Id next = practice::nextPassage(control_.passage(), isScale, passages_.listed(),
                                          [this] { return scales_.proposedPassage(); });
    if (!next.isNone()) openDrill(idText(next));
}

} // namespace piolo::models

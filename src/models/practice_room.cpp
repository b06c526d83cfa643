// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/practice_room.h"

#include "core/note_stretch.h"
#include "models/fault_text.h"

#include <QQmlEngine>

#include <algorithm>

namespace piolo::models {

namespace {

QString lineOf(const Fault& fault) {
    const QString sentence = faultSentence(fault);
    return sentence.left(1).toUpper() + sentence.mid(1);
}

} // namespace

PracticeRoom* PracticeRoom::present_ = nullptr;

PracticeRoom::PracticeRoom(std::unique_ptr<PracticeBook> book, SoundPort& sound,
                           std::shared_ptr<engine::DrillEngine> engine, journal::MachineSettings settings,
                           std::string configDir, DrillSession::Reading reading)
    : book_(std::move(book)), sound_(sound), machine_(std::move(settings)),
      settings_(*book_, sound, machine_, std::move(configDir)), passages_(*book_), editor_(*book_),
      log_(*book_), session_(*book_, sound, std::move(engine), reading), drill_(*book_, sound, session_),
      runThrough_(*book_, sound), formPicture_(*book_), drillPicture_(*book_),
      keys_(
          machine_.keys,
          [this](const KeyBindings::Keys& keys) {
              machine_.keys = keys;
              settings_.saveNow();
          },
          [this] { return sound_.nowNanos(); }),
      picks_(*book_), sheet_(*book_, picks_), paper_(*book_), exchange_(*book_, picks_), scales_(*book_) {
    present_ = this;
    connect(book_.get(), &PracticeBook::savedChanged, this, &PracticeRoom::unsavedChanged);
    connect(book_.get(), &PracticeBook::troubleChanged, this, &PracticeRoom::noticeChanged);
    connect(book_.get(), &PracticeBook::changed, this, &PracticeRoom::minutesTodayChanged);
    connect(&keys_, &KeyBindings::pressed, this, &PracticeRoom::act);
    connect(&drill_, &DrillModel::changed, this, &PracticeRoom::hearKeys);
    connect(this, &PracticeRoom::screenChanged, this, &PracticeRoom::hearKeys);
    sound_.onChange([this] { emit noticeChanged(); });
    connect(&settings_, &SettingsModel::mixChanged, this, [this] { session_.setMix(settings_.mix()); });
    connect(&session_, &DrillSession::fellBehind, this, &PracticeRoom::noticeChanged);
    connect(&settings_, &SettingsModel::faultChanged, this, &PracticeRoom::noticeChanged);
    connect(&drill_, &DrillModel::wantsEdit, this, &PracticeRoom::edit);
    const auto showForm = [this] { formPicture_.setPassage(editor_.passage()); };
    const auto showDrill = [this] { drillPicture_.setPassage(drill_.passageText()); };
    connect(&editor_, &PassageEditor::loaded, this, showForm);
    connect(&drill_, &DrillModel::changed, this, showDrill);
    session_.setMix(settings_.mix());
    drill_.setModelClick(machine_.modelClick);
    connect(&drill_, &DrillModel::modelClickChanged, this, [this] {
        machine_.modelClick = drill_.modelClick();
        settings_.saveNow();
    });
    screen_ = book_->notebook().passages().empty() ? QStringLiteral("welcome") : QStringLiteral("passages");
    openLast();
}

PracticeRoom::~PracticeRoom() {
    sound_.onChange([] {});
    if (present_ == this) present_ = nullptr;
}

PracticeRoom* PracticeRoom::create(QQmlEngine*, QJSEngine*) {
    QQmlEngine::setObjectOwnership(present_, QQmlEngine::CppOwnership);
    return present_;
}

// The passage played last; where none was, the one made last.
void PracticeRoom::openLast() {
    const auto passages = book_->notebook().passages();
    Id last;
    std::int64_t latest = -1;
    for (const Id& id : passages) {
        const PassageRecord* record = book_->notebook().passage(id);
        const std::int64_t at = record->entries.empty() ? 0 : record->entries.back().at.utcMillis;
        if (at >= latest) {
            latest = at;
            last = id;
        }
    }
    if (!last.isNone()) drill_.open(QString::fromStdString(last.text()));
}

// Only the drill has keys of its own; while the click runs they come before all else.
void PracticeRoom::hearKeys() {
    keys_.setListening(screen_ == QLatin1String("drill") && drill_.isOpen());
    keys_.setUrgent(drill_.state() == DrillModel::State::Playing);
}

QString PracticeRoom::notice() const {
    if (book_->trouble()) return lineOf(*book_->trouble());
    if (!settings_.fault().isEmpty()) return settings_.fault();
    if (sound_.health() == SoundHealth::needsRestart) return lineOf({FaultNumber::soundNeedsRestart, {}, {}});
    if (sound_.health() == SoundHealth::silent) return lineOf({FaultNumber::noSoundDevice, {}, {}});
    if (book_->readOnly()) return lineOf({FaultNumber::folderInUse, {}, {}});
    if (session_.keysThatWaited() + session_.pulsesLeftOut() > 0)
        return lineOf(
            {FaultNumber::fellBehind,
             {},
             {std::to_string(session_.keysThatWaited()), std::to_string(session_.pulsesLeftOut())}});
    if (!book_->readFaults().empty())
        return tr("Some lines of the practice log could not be read and were left as they are: %1")
            .arg(faultLine(book_->readFaults().front()));
    return {};
}

void PracticeRoom::setScreen(const QString& screen) {
    if (screen == screen_) return;
    if (screen_ == QLatin1String("drill")) drill_.stop();
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
    if (hear) drill_.hearFirst();
}

void PracticeRoom::openRunThrough(const QString& piece) {
    runThrough_.open(piece);
    setScreen(QStringLiteral("runThrough"));
}

void PracticeRoom::edit(const QString& passage, bool shorter) {
    if (shorter)
        loadFirstHalf(passage);
    else
        editor_.load(passage);
    setScreen(QStringLiteral("passages"));
    emit formWanted();
}

// The new passage is the player's to name and to cut otherwise; the old one stays as it is.
void PracticeRoom::loadFirstHalf(const QString& passage) {
    editor_.load(passage);
    const QVariantMap whole = editor_.draft();
    const QString piece = editor_.pieceChoice();
    editor_.startNew();
    editor_.setPieceChoice(piece);
    for (auto field = whole.begin(); field != whole.end(); ++field) editor_.set(field.key(), field.value());
    const int bars = whole.value(QStringLiteral("bars")).toString().toInt();
    editor_.set(QStringLiteral("title"), QString());
    const int half = std::max(1, bars / 2);
    editor_.set(QStringLiteral("bars"), QString::number(half));
    const auto id = Id::parse(passage.toStdString());
    const PassageRecord* const known = id ? book_->notebook().passage(*id) : nullptr;
    if (known == nullptr) return;
    const Music& music = known->passage.music;
    const BuildUpPart part{music.firstBar, half};
    editor_.giveNotes(musicOf(part, music), notesOf(part, music, known->passage.notes));
}

void PracticeRoom::attach(QQuickWindow* window) {
    keys_.watch(window);
    sound_.setOffsetMillis(machine_.offsetMillis);
    sound_.start(QString::fromStdString(machine_.soundDevice));
}

void PracticeRoom::act(const QString& action, std::int64_t nanos) {
    if (action == QLatin1String("mark")) return drill_.strike(nanos);
    if (action == QLatin1String("clean")) return drill_.markClean(nanos);
    if (action == QLatin1String("back")) return drill_.takeBack();
    if (action == QLatin1String("faster")) return drill_.faster();
    if (action == QLatin1String("slower")) return drill_.slower();
    if (action == QLatin1String("stop")) return drill_.stop();
    if (action == QLatin1String("try")) return drill_.attempt();
    if (action == QLatin1String("hear")) return drill_.hearFirst();
}

} // namespace piolo::models

// SPDX-License-Identifier: GPL-3.0-or-later
// The drill of one passage as the screen shows it and the keys drive it.
#pragma once

// Qt stands first: moc cannot read the standard headers before it.
#include <QObject>
#include <QString>
#include <QTimer>
#include <QtQml/qqmlregistration.h>

#include "models/drill/beat_view.h"
#include "models/drill/ladder_model.h"
#include "models/drill/played_as.h"
#include "models/drill/stage_figures.h"
#include "models/drill/today_figures.h"
#include "models/staff/staff_view.h"
#include "practice/drill/drill_session.h"
#include "practice/drill/rest_watch.h"
#include "practice/keys/pedal_press.h"
#include "practice/log/practice_book.h"
#include "practice/ports/sound_port.h"

#include "core/rule/tempo_search.h"

#include <cstdint>
#include <deque>
#include <optional>
#include <vector>

namespace piolo::models {

/// Window's thread. What is shown while the click runs is what can be heard now, not what was rendered.
class DrillModel : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("belongs to the practice room")
    Q_PROPERTY(bool open READ isOpen NOTIFY changed)
    Q_PROPERTY(QString passage READ passageText NOTIFY changed)
    Q_PROPERTY(QString title READ title NOTIFY changed)
    /// "4/4 · one bar count-in · a miss drops 4, five clean in a row climb 2"
    Q_PROPERTY(QString about READ about NOTIFY changed)
    Q_PROPERTY(State state READ state NOTIFY changed)
    Q_PROPERTY(QString tempoText READ tempoText NOTIFY changed)
    /// "♩ = 84 · sixteenths"
    Q_PROPERTY(QString tempoLine READ tempoLine NOTIFY changed)
    Q_PROPERTY(QString targetText READ targetText NOTIFY changed)
    Q_PROPERTY(int streak READ streak NOTIFY changed)
    Q_PROPERTY(int cleanRuns READ cleanRuns NOTIFY changed)
    Q_PROPERTY(QString streakText READ streakText NOTIFY changed)
    /// Why the tempo is not where the last run left it; "" when it is.
    Q_PROPERTY(QString openingText READ openingText NOTIFY changed)
    Q_PROPERTY(bool openEnded READ openEnded NOTIFY changed)
    /// "Looking for your tempo: you named 92", "Found today: 84; you named 92"; "" when none was looked for
    /// today.
    Q_PROPERTY(QString searchText READ searchText NOTIFY changed)
    /// The runs move nothing, for they are played for something else than the rule.
    Q_PROPERTY(bool apart READ apart NOTIFY changed)
    /// "a try: moves nothing"; "" for runs that move the rule.
    Q_PROPERTY(QString apartText READ apartText NOTIFY changed)
    /// The passage's notes are known: they can be heard before they are played.
    Q_PROPERTY(bool canHear READ canHear NOTIFY changed)
    /// They are heard now.
    Q_PROPERTY(bool hearing READ hearing NOTIFY changed)
    /// With the click, or with the count-in alone.
    Q_PROPERTY(bool modelClick READ modelClick WRITE setModelClick NOTIFY modelClickChanged)
    Q_PROPERTY(PauseKind pauseKind READ pauseKind NOTIFY changed)
    /// How many runs in a row went by without a key.
    Q_PROPERTY(int unheardRuns READ unheardRuns NOTIFY changed)
    Q_PROPERTY(QString halfTempoText READ halfTempoText NOTIFY changed)
    Q_PROPERTY(Feedback feedback READ feedback NOTIFY feedbackChanged)
    Q_PROPERTY(QString feedbackText READ feedbackText NOTIFY feedbackChanged)
    /// Time to rest ears and lip.
    Q_PROPERTY(bool restDue READ restDue NOTIFY changed)
    Q_PROPERTY(piolo::models::BeatView* beats READ beats CONSTANT)
    Q_PROPERTY(piolo::models::LadderModel* ladder READ ladder CONSTANT)
    Q_PROPERTY(piolo::models::TodayFigures* today READ today CONSTANT)
    Q_PROPERTY(piolo::models::StageFigures* stages READ stages CONSTANT)
    Q_PROPERTY(piolo::models::PlayedAs* playedAs READ playedAs CONSTANT)
    /// The passage's notes, when they are known.
    Q_PROPERTY(piolo::models::StaffView* staff READ staff CONSTANT)
public:
    enum class State { Stopped, Playing, Paused };
    Q_ENUM(State)
    enum class PauseKind { NoKey, ThreeMisses, BelowStart };
    Q_ENUM(PauseKind)
    enum class Feedback { None, Clean, Climbed, Secure, Missed, Found, TakenBack, NothingToTakeBack };
    Q_ENUM(Feedback)

    DrillModel(practice::PracticeBook& book, practice::SoundPort& sound, practice::DrillSession& session,
               QObject* parent = nullptr);

    [[nodiscard]] bool isOpen() const { return record() != nullptr; }
    [[nodiscard]] QString passageText() const;
    [[nodiscard]] QString title() const;
    [[nodiscard]] QString about() const;
    [[nodiscard]] State state() const { return state_; }
    [[nodiscard]] QString tempoText() const;
    [[nodiscard]] QString tempoLine() const;
    [[nodiscard]] QString targetText() const;
    [[nodiscard]] int streak() const { return shown_.streak; }
    [[nodiscard]] int cleanRuns() const;
    [[nodiscard]] QString streakText() const;
    [[nodiscard]] QString openingText() const;
    [[nodiscard]] bool openEnded() const;
    [[nodiscard]] QString searchText() const;
    [[nodiscard]] bool apart() const { return kind_ != RunKind::run; }
    [[nodiscard]] QString apartText() const;
    [[nodiscard]] bool canHear() const;
    [[nodiscard]] bool hearing() const { return model_ != 0; }
    [[nodiscard]] bool modelClick() const { return modelClick_; }
    void setModelClick(bool click);
    [[nodiscard]] PauseKind pauseKind() const { return pauseKind_; }
    [[nodiscard]] int unheardRuns() const { return static_cast<int>(unheard_.size()); }
    [[nodiscard]] QString halfTempoText() const;
    [[nodiscard]] Feedback feedback() const { return feedback_; }
    [[nodiscard]] QString feedbackText() const;
    [[nodiscard]] bool restDue() const;
    [[nodiscard]] BeatView* beats() { return &beats_; }
    [[nodiscard]] LadderModel* ladder() { return &ladder_; }
    [[nodiscard]] TodayFigures* today() { return &today_; }
    [[nodiscard]] StageFigures* stages() { return &stages_; }
    [[nodiscard]] PlayedAs* playedAs() { return &playedAs_; }
    [[nodiscard]] StaffView* staff() { return &staff_; }

    /// What is known of the passage; none when none is open. Good until the notebook changes.
    [[nodiscard]] const PassageRecord* record() const;
    [[nodiscard]] Date date() const { return book_.today(); }

    /// Shows that passage (id of 32 digits); stops what runs.
    Q_INVOKABLE void open(const QString& passage);

    // The keys. `nanos`: when the key was pressed, on the port's monotonic clock.
    /// Starts; a miss while the click runs; in a pause goes on.
    void strike(std::int64_t nanos);
    /// The one pedal: a press starts, marks a miss or goes on; held it stops, and while nothing runs asks for
    /// the next passage; twice it takes back.
    void pedal(const practice::PedalAct& act);
    /// A press would mark a miss now: it cannot wait until it is known what it is.
    [[nodiscard]] bool marksAtOnce() const { return state_ == State::Playing; }
    /// The last strike was no miss: it was held, and the click stops.
    void strikeHeld();
    /// The last strike was no miss: another followed, and what was marked before the two is taken back.
    void strikeTwice();
    /// Clean, in open-ended runs; elsewhere a run is clean by itself.
    void markClean(std::int64_t nanos);
    Q_INVOKABLE void start() { begin(RunKind::run); }
    /// One run at the target that moves nothing.
    Q_INVOKABLE void attempt();
    /// At the target, run after run, all apart from the rule: without the click from the first note on, and
    /// with some bars before and after.
    Q_INVOKABLE void playSilent() { begin(RunKind::silent); }
    Q_INVOKABLE void playInContext() { begin(RunKind::context); }
    /// At half the present tempo, run after run, apart from the rule.
    Q_INVOKABLE void playAtHalf() { begin(RunKind::aside); }
    /// The player names the tempo shown as the one they think they can play: each miss drops, and the first
    /// full row stops the click and has found it.
    Q_INVOKABLE void seek();
    /// Plays the passage's notes once at the present tempo, or stops them: nothing is logged and nothing
    /// moves.
    Q_INVOKABLE void hearFirst();
    /// The player says which stage the passage is in: a place in StageFigures::names.
    Q_INVOKABLE void setStage(int stage);
    /// The mark button: a miss now.
    Q_INVOKABLE void missNow() { strike(sound_.nowNanos()); }
    Q_INVOKABLE void stop();
    Q_INVOKABLE void takeBack();
    /// One BPM or notch, only while stopped. In a pause that offers it, slower() takes the half tempo.
    Q_INVOKABLE void faster();
    Q_INVOKABLE void slower();

    // In a pause.
    /// The runs without a key were clean, or the player does not want what is offered.
    Q_INVOKABLE void goOn();
    /// The runs without a key count for nothing after all.
    Q_INVOKABLE void doubt();
    Q_INVOKABLE void halveTempo();
    Q_INVOKABLE void wantShorter();

    Q_INVOKABLE void dismissRest();

    /// Shows what has become audible. The model's own timer calls it while the click runs.
    void tick();

signals:
    void changed();
    void feedbackChanged();
    void modelClickChanged();
    /// The pedal was held while nothing runs.
    void wantsNext();
    /// The player wants to edit the passage; `shorter`: a copy with fewer bars.
    void wantsEdit(const QString& passage, bool shorter);

private:
    void begin(RunKind kind);
    [[nodiscard]] Standing standingFor(RunKind kind) const;
    [[nodiscard]] std::optional<TempoSearch> search() const;
    [[nodiscard]] Passage played(RunKind kind) const;
    [[nodiscard]] std::vector<RunThrough> runThroughs() const;
    void journalOpening();
    void withdrawn(std::uint64_t press);
    void setHand(Tempo tempo);
    void take(const practice::DrillNote& note);
    void answer(const practice::DrillNote& note);
    void answerRunEnded(const practice::DrillNote& note);
    void sound(const engine::Event& event);
    void soundModel(const engine::Event& event);
    void endModel();
    void soundRunEnded(const engine::Event& event);
    void pause(engine::Pause why);
    void finish();
    void refresh();
    void setFeedback(Feedback feedback);
    [[nodiscard]] Standing natural() const;
    [[nodiscard]] Standing standingToStart() const;
    [[nodiscard]] static Tempo halfOf(Tempo tempo);
    [[nodiscard]] Tempo halfTempo() const { return halfOf(shown_.tempo); }

    practice::PracticeBook& book_;
    practice::SoundPort& sound_;
    practice::DrillSession& session_;
    BeatView beats_;
    LadderModel ladder_;
    TodayFigures today_;
    StageFigures stages_;
    PlayedAs playedAs_;
    StaffView staff_;
    practice::RestWatch rest_;
    QTimer timer_;
    std::deque<engine::Event> coming_; // decided, not audible yet
    Id passage_;
    State state_ = State::Stopped;
    RunKind kind_ = RunKind::run; // of the runs that are played, or were played last
    bool stopAsked_ = false;
    std::uint64_t strike_ = 0;    // the number of the last one that marked
    std::uint64_t backAfter_ = 0; // once that strike is withdrawn, something is taken back
    bool seeking_ = false;        // the first full row ends it
    std::uint64_t model_ = 0;     // the number of the model that is heard; 0: none
    bool modelClick_ = true;
    std::optional<Tempo> hand_; // set by hand while stopped, not journalled yet
    Standing shown_;
    PauseKind pauseKind_ = PauseKind::NoKey;
    Feedback feedback_ = Feedback::None;
    std::int64_t feedbackSince_ = 0;
    std::vector<Id> unheard_; // the runs that ended clean since the last key
};

} // namespace piolo::models

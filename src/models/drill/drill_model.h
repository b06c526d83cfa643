// SPDX-License-Identifier: GPL-3.0-or-later
// The drill of one passage as the screen shows and controls it.
#pragma once

// Qt comes first: moc cannot read the standard headers before it.
#include <QObject>
#include <QString>
#include <QTimer>
#include <QtQml/qqmlregistration.h>

#include "models/drill/beat_view.h"
#include "models/drill/curve_source.h"
#include "models/drill/drill_text.h"
#include "models/drill/ladder_model.h"
#include "models/drill/listening.h"
#include "models/drill/played_as.h"
#include "models/drill/stage_figures.h"
#include "models/staff/staff_view.h"
#include "practice/drill/drill_control.h"

namespace piolo::models {

/// Window thread. While the click runs, it shows what is audible now, not what was rendered. Each signal says
/// what changed: a beat concerns only `beats`, and the end of a run does not affect the staff.
class DrillModel : public piolo::models::CurveSource { // in full, for QML
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("belongs to the practice room")
    Q_PROPERTY(bool open READ isOpen NOTIFY passageChanged)
    Q_PROPERTY(QString passage READ passageText NOTIFY passageChanged)
    Q_PROPERTY(bool isScale READ isScale NOTIFY passageChanged)
    Q_PROPERTY(bool openEnded READ openEnded NOTIFY passageChanged)
    Q_PROPERTY(int cleanRuns READ cleanRuns NOTIFY passageChanged)
    Q_PROPERTY(State state READ state NOTIFY stateChanged)
    /// The runs do not change the standing, because they are played outside the rule.
    Q_PROPERTY(bool apart READ apart NOTIFY stateChanged)
    Q_PROPERTY(PauseKind pauseKind READ pauseKind NOTIFY stateChanged)
    /// How many runs in a row ended without a key press.
    Q_PROPERTY(int unheardRuns READ unheardRuns NOTIFY stateChanged)
    Q_PROPERTY(int streak READ streak NOTIFY standingChanged)
    Q_PROPERTY(Feedback feedback READ feedback NOTIFY feedbackChanged)
    /// The keys are explained: for the first runs, and once the help was asked for.
    Q_PROPERTY(bool legend READ legend NOTIFY passageChanged)
    /// It is time to rest ears and lip.
    Q_PROPERTY(bool restDue READ restDue NOTIFY restChanged)
    Q_PROPERTY(piolo::models::DrillText* text READ text CONSTANT)
    Q_PROPERTY(piolo::models::Listening* listening READ listening CONSTANT)
    Q_PROPERTY(piolo::models::BeatView* beats READ beats CONSTANT)
    Q_PROPERTY(piolo::models::LadderModel* ladder READ ladder CONSTANT)
    Q_PROPERTY(piolo::models::StageFigures* stages READ stages CONSTANT)
    Q_PROPERTY(piolo::models::PlayedAs* playedAs READ playedAs CONSTANT)
    /// The passage's notes, if they are known.
    Q_PROPERTY(piolo::models::StaffView* staff READ staff CONSTANT)
public:
    // In the order of the control's own enumerators.
    enum class State { Stopped, Playing, Paused };
    Q_ENUM(State)
    enum class PauseKind { NoKey, ThreeMisses, BelowStart };
    Q_ENUM(PauseKind)
    enum class Feedback {
        None,
        Clean,
        Climbed,
        Secure,
        Missed,
        Found,
        TakenBack,
        NothingToTakeBack,
        PutBack
    };
    Q_ENUM(Feedback)

    /// Both must outlive this object.
    DrillModel(practice::PracticeBook& book, practice::DrillControl& control, QObject* parent = nullptr);

    [[nodiscard]] bool isOpen() const { return control_.record() != nullptr; }
    [[nodiscard]] QString passageText() const;
    [[nodiscard]] bool isScale() const { return isOpen() && control_.record()->passage.scale.has_value(); }
    [[nodiscard]] bool openEnded() const { return control_.openEnded(); }
    [[nodiscard]] int cleanRuns() const;
    [[nodiscard]] State state() const { return static_cast<State>(control_.state()); }
    [[nodiscard]] bool apart() const { return control_.apart(); }
    [[nodiscard]] PauseKind pauseKind() const { return static_cast<PauseKind>(control_.pauseReason()); }
    [[nodiscard]] int unheardRuns() const { return static_cast<int>(control_.unheardRuns()); }
    [[nodiscard]] int streak() const { return control_.standing().streak; }
    [[nodiscard]] Feedback feedback() const { return static_cast<Feedback>(control_.feedback()); }
    [[nodiscard]] bool legend() const;
    /// The help was asked for.
    void showLegend();
    [[nodiscard]] bool restDue() const { return control_.restDue(); }
    [[nodiscard]] DrillText* text() { return &text_; }
    [[nodiscard]] Listening* listening() { return &listening_; }
    [[nodiscard]] BeatView* beats() { return &beats_; }
    [[nodiscard]] LadderModel* ladder() { return &ladder_; }
    [[nodiscard]] StageFigures* stages() { return &stages_; }
    [[nodiscard]] PlayedAs* playedAs() { return &playedAs_; }
    [[nodiscard]] StaffView* staff() { return &staff_; }

    [[nodiscard]] const PassageRecord* record() const override { return control_.record(); }
    [[nodiscard]] Date date() const override { return book_.today(); }
    [[nodiscard]] bool mayDraw() const override { return state() != State::Playing; }

    /// Shows that passage (id of 32 digits); stops whatever runs.
    Q_INVOKABLE void open(const QString& passage);

    Q_INVOKABLE void start() { control_.begin(RunKind::run); }
    /// One run at the target that does not change the standing.
    Q_INVOKABLE void attempt() { control_.begin(RunKind::attempt); }
    /// Runs at the target, one after the other, outside the rule: without the click from the first note on,
    /// or with a few bars before and after.
    Q_INVOKABLE void playSilent() { control_.begin(RunKind::silent); }
    Q_INVOKABLE void playInContext() { control_.begin(RunKind::context); }
    /// Runs at half the current tempo, one after the other, outside the rule.
    Q_INVOKABLE void playAtHalf() { control_.begin(RunKind::aside); }
    Q_INVOKABLE void seek() { control_.seek(); }
    /// The player chooses the stage of the passage: an index into StageFigures::names.
    Q_INVOKABLE void setStage(int stage);
    /// A miss at the moment of the press. `stamp`: as for eventMoment().
    Q_INVOKABLE void missAt(quint64 stamp);
    Q_INVOKABLE void stop() { control_.stop(); }
    Q_INVOKABLE void takeBack() { control_.takeBack(); }
    /// What DrillText::takenBack names counts again.
    Q_INVOKABLE void putBack() { control_.putBack(); }
    Q_INVOKABLE void faster() { control_.faster(); }
    Q_INVOKABLE void slower() { control_.slower(); }
    /// A tempo as typed, like faster() and slower(). False if it is none; the present one stays.
    Q_INVOKABLE bool typeTempo(const QString& tempo);
    /// A tap of the beat. `stamp`: of the press, as for missAt().
    Q_INVOKABLE void tapAt(quint64 stamp);

    // During a pause.
    Q_INVOKABLE void goOn() { control_.goOn(); }
    Q_INVOKABLE void doubt() { control_.doubt(); }
    Q_INVOKABLE void halveTempo() { control_.halveTempo(); }
    Q_INVOKABLE void wantShorter();

    Q_INVOKABLE void dismissRest() { control_.dismissRest(); }

    /// Shows what has become audible. The model's own timer calls it while something sounds.
    void tick() { control_.tick(); }

signals:
    /// Another passage is open, or its record has changed.
    void passageChanged();
    void stateChanged();
    void standingChanged();
    void feedbackChanged();
    void restChanged();
    /// The player wants to edit the passage; `shorter`: a copy with fewer bars.
    void wantsEdit(const QString& passage, bool shorter);

private:
    void showPassage();
    void showState();
    void showStanding();
    void showBars();

    practice::PracticeBook& book_;
    practice::DrillControl& control_;
    DrillText text_;
    Listening listening_;
    BeatView beats_;
    LadderModel ladder_;
    StageFigures stages_;
    PlayedAs playedAs_;
    StaffView staff_;
    QTimer timer_;
    bool legendAsked_ = false;
};

} // namespace piolo::models

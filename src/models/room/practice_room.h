// SPDX-License-Identifier: GPL-3.0-or-later
// Everything behind the screens of the window.
#pragma once

// Qt comes first: moc cannot read the standard headers before it.
#include <QObject>
#include <QString>
#include <QtQml/qqmlregistration.h>

#include "journal/settings/machine_settings.h"
#include "models/click/click_model.h"
#include "models/drill/drill_model.h"
#include "models/drill/run_through_model.h"
#include "models/files/file_dialogs.h"
#include "models/keys/key_bindings.h"
#include "models/keys/midi_switches.h"
#include "models/keys/one_pedal.h"
#include "models/log/log_model.h"
#include "models/paper/paper_runs.h"
#include "models/paper/practice_sheet.h"
#include "models/passages/passage_editor.h"
#include "models/passages/passage_exchange.h"
#include "models/passages/passage_list_model.h"
#include "models/passages/passage_page.h"
#include "models/passages/passage_picks.h"
#include "models/pictures/music_picture.h"
#include "models/room/key_dispatch.h"
#include "models/room/room_notice.h"
#include "models/room/under_way.h"
#include "models/scales/scale_board.h"
#include "models/set/set_model.h"
#include "models/settings/settings_model.h"
#include "practice/click/click_control.h"
#include "practice/drill/drill_control.h"
#include "practice/drill/test_sound.h"
#include "practice/log/practice_book.h"
#include "practice/ports/sound_port.h"
#include "practice/run_through/run_through_control.h"
#include "practice/set/set_control.h"

#include <memory>
#include <string>

class QJSEngine;
class QQmlEngine;
class QQuickWindow;

namespace piolo::models {

/// Window thread. One at a time; created in C++ before the screens are loaded, and outlives them.
class PracticeRoom : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_SINGLETON
    Q_PROPERTY(piolo::models::DrillModel* drill READ drill CONSTANT)
    Q_PROPERTY(piolo::models::PassageListModel* passages READ passages CONSTANT)
    Q_PROPERTY(piolo::models::PassageEditor* editor READ editor CONSTANT)
    /// Of the passage in the editor.
    Q_PROPERTY(piolo::models::PassagePage* page READ page CONSTANT)
    Q_PROPERTY(piolo::models::SettingsModel* settings READ settings CONSTANT)
    Q_PROPERTY(piolo::models::RunThroughModel* runThrough READ runThrough CONSTANT)
    Q_PROPERTY(piolo::models::ClickModel* click READ click CONSTANT)
    Q_PROPERTY(piolo::models::KeyBindings* keys READ keys CONSTANT)
    Q_PROPERTY(piolo::models::LogModel* log READ log CONSTANT)
    Q_PROPERTY(piolo::models::PassagePicks* picks READ picks CONSTANT)
    Q_PROPERTY(piolo::models::PracticeSheet* sheet READ sheet CONSTANT)
    Q_PROPERTY(piolo::models::PaperRuns* paper READ paper CONSTANT)
    Q_PROPERTY(piolo::models::PassageExchange* exchange READ exchange CONSTANT)
    Q_PROPERTY(piolo::models::ScaleBoard* scales READ scales CONSTANT)
    Q_PROPERTY(piolo::models::SetModel* set READ set CONSTANT)
    /// Of the passage in the editor, and of the one in the drill.
    Q_PROPERTY(piolo::models::MusicPicture* formPicture READ formPicture CONSTANT)
    Q_PROPERTY(piolo::models::MusicPicture* drillPicture READ drillPicture CONSTANT)
    Q_PROPERTY(bool readOnly READ readOnly CONSTANT)
    /// One line; "" if all is well.
    Q_PROPERTY(QString notice READ notice NOTIFY noticeChanged)
    /// The number of marks that are not on disk yet.
    Q_PROPERTY(int unsaved READ unsaved NOTIFY unsavedChanged)
    /// The name of the current screen, one of the table in room/screen.h.
    Q_PROPERTY(QString screen READ screen WRITE setScreen NOTIFY screenChanged)
    Q_PROPERTY(piolo::models::UnderWay* underWay READ underWay CONSTANT)
    /// The screen that led to the drill, and its name in the navigation.
    Q_PROPERTY(QString wayBack READ wayBack NOTIFY screenChanged)
    Q_PROPERTY(QString wayBackText READ wayBackText NOTIFY screenChanged)
    /// The window has shown its first frame.
    Q_PROPERTY(bool shown READ isShown NOTIFY shownChanged)
    Q_PROPERTY(int minutesToday READ minutesToday NOTIFY minutesTodayChanged)
public:
    PracticeRoom(std::unique_ptr<practice::PracticeBook> book, practice::SoundPort& sound,
                 std::shared_ptr<engine::DrillEngine> engine, journal::MachineSettings settings,
                 std::string configDir,
                 practice::DrillSession::Reading reading = practice::DrillSession::Reading::ownThread);
    ~PracticeRoom() override;
    /// For the QML engine: the room that was created in C++.
    static PracticeRoom* create(QQmlEngine* engine, QJSEngine* scripts);

    [[nodiscard]] DrillModel* drill() { return &drill_; }
    [[nodiscard]] PassageListModel* passages() { return &passages_; }
    [[nodiscard]] PassageEditor* editor() { return &editor_; }
    [[nodiscard]] PassagePage* page() { return &page_; }
    [[nodiscard]] SettingsModel* settings() { return &settings_; }
    [[nodiscard]] RunThroughModel* runThrough() { return &runThrough_; }
    [[nodiscard]] ClickModel* click() { return &click_; }
    [[nodiscard]] KeyBindings* keys() { return &keys_; }
    [[nodiscard]] LogModel* log() { return &log_; }
    [[nodiscard]] PassagePicks* picks() { return &picks_; }
    [[nodiscard]] PracticeSheet* sheet() { return &sheet_; }
    [[nodiscard]] PaperRuns* paper() { return &paper_; }
    [[nodiscard]] PassageExchange* exchange() { return &exchange_; }
    [[nodiscard]] MusicPicture* formPicture() { return &formPicture_; }
    [[nodiscard]] MusicPicture* drillPicture() { return &drillPicture_; }
    [[nodiscard]] ScaleBoard* scales() { return &scales_; }
    [[nodiscard]] SetModel* set() { return &set_; }
    [[nodiscard]] practice::PracticeBook& book() { return *book_; }
    [[nodiscard]] practice::DrillSession& session() { return session_; }
    [[nodiscard]] bool readOnly() const { return book_->readOnly(); }
    [[nodiscard]] QString notice() const { return notice_.text(); }
    [[nodiscard]] int unsaved() const { return book_->unsavedCount(); }
    [[nodiscard]] QString screen() const { return screen_; }
    /// Until there is a passage, the way to the passages leads to the form of the first one, and from there
    /// to the list.
    void setScreen(const QString& screen);
    [[nodiscard]] bool isShown() const { return shown_; }
    [[nodiscard]] UnderWay* underWay() { return &underWay_; }
    [[nodiscard]] QString wayBack() const { return wayBack_; }
    [[nodiscard]] QString wayBackText() const;
    [[nodiscard]] int minutesToday() const;

    /// Shows the drill with that passage (id of 32 digits). The way back leads to the present screen if it is
    /// one of the navigation's.
    Q_INVOKABLE void openDrill(const QString& passage);
    /// Shows the drill with the scale chosen in the grid; `hear`: its notes are played first.
    Q_INVOKABLE void drillScale(bool hear);
    /// Starts the chosen set and shows the drill; does nothing if too few passages are chosen.
    Q_INVOKABLE void startSet();
    /// Shows the run-through screen for that piece (id of 32 digits).
    Q_INVOKABLE void openRunThrough(const QString& piece);
    /// Shows just a click; from the drill, with the tempo, meter and subdivision of its passage.
    Q_INVOKABLE void openClick();
    /// Shows the form of a new passage with the tempo, meter and subdivision of the click.
    Q_INVOKABLE void keepClick();
    /// Loads the passage into the editor and shows its form; `shorter`: a new passage from its first half.
    Q_INVOKABLE void edit(const QString& passage, bool shorter);
    /// Handles the keys of the window that shows the screens, and opens the sound device after its first
    /// frame.
    void attach(QQuickWindow* window);
    /// The first frame was shown: what it did not wait for is made now.
    void showRest();
    /// MIDI switches act as keys, too. `port` must outlive this object.
    void plugIn(practice::MidiPort& port);
    /// Waits for the disk, but not for long. True if everything is saved.
    Q_INVOKABLE bool saveAll();
    /// Shows where bars are chosen from a score.
    Q_INVOKABLE void openScore();
    /// Shows the drill with the next passage (practice/drill/next_passage.h). Does nothing while one is being
    /// played.
    Q_INVOKABLE void openNext();

signals:
    void noticeChanged();
    /// Beside the list of passages, that is to be shown: "form", with what is in the editor, or "music".
    void besideWanted(const QString& view);
    /// The key for it was pressed: drill the passage that is shown; a form is saved first.
    void shownToBeDrilled();
    /// The key that stops was pressed, and nothing was playing.
    void nothingToStop();
    void unsavedChanged();
    void screenChanged();
    void shownChanged();
    void minutesTodayChanged();
    /// All models use the new language.
    void languageChanged();

private:
    void connectNotices();
    void connectKeys();
    void connectSettings();
    void connectScreens();
    void connectClick();
    void saveKeys(const KeyBindings::Keys& keys);
    void hearKeys();
    void timePedal();
    void reword();
    void settle();
    void showSet();
    void show(const QString& screen);
    [[nodiscard]] bool noPassageYet() const;
    [[nodiscard]] UnderWay::State drillUnderWay();
    [[nodiscard]] bool isQuiet() const;

    static PracticeRoom* present_;
    std::unique_ptr<practice::PracticeBook> book_;
    practice::SoundPort& sound_;
    journal::MachineSettings machine_;
    SettingsModel settings_;
    PassageListModel passages_;
    PassageEditor editor_;
    PassagePage page_;
    LogModel log_;
    practice::DrillSession session_;
    practice::DrillControl control_;
    practice::TestSound testSound_;
    DrillModel drill_;
    practice::SetControl setControl_;
    SetModel set_;
    practice::RunThroughControl runThroughControl_;
    RunThroughModel runThrough_;
    practice::ClickControl clickControl_;
    ClickModel click_;
    MusicPicture formPicture_;
    MusicPicture drillPicture_;
    KeyBindings keys_;
    KeyDispatch dispatch_;
    OnePedal pedal_;
    std::unique_ptr<MidiSwitches> midi_;
    PassagePicks picks_;
    PracticeSheet sheet_;
    PaperRuns paper_;
    PassageExchange exchange_;
    ScaleBoard scales_;
    FileDialogs files_;
    RoomNotice notice_;
    UnderWay underWay_;
    QString screen_;
    QString wayBack_ = QStringLiteral("passages");
    bool drillVisited_ = false;
    bool shown_ = false;
};

} // namespace piolo::models

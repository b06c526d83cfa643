// SPDX-License-Identifier: GPL-3.0-or-later
// What a beat and the end of a run change, and what they do not.
#include "../practice_fixture.h"
#include "core/time/fraction_sum.h"
#include "models/staff/staff_item.h"

#include <QSignalSpy>

using namespace piolo;
using piolo::models::DrillModel;
using piolo::test::PracticeFixture;
using Kind = engine::Event::Kind;

namespace {

/// The usual passage with notes, and a staff that follows the bar as on the screen.
struct StaffFixture : PracticeFixture {
    StaffFixture() {
        PassageFact fact;
        fact.passage = passageId;
        std::vector<Note> written;
        for (int quarter = 0; quarter < 16; ++quarter) {
            Note note;
            note.onset = *reducedFraction(quarter, 4);
            note.length = {1, 4};
            written.push_back(note);
        }
        fact.notes = written;
        book->record(fact);
        staff.setProperty("span", 800.0);
        staff.setProperty("room", 400.0);
        staff.setView(drill->staff());
        QObject::connect(drill->beats(), &models::BeatView::sounded, &staff,
                         [this] { staff.setProperty("bar", drill->beats()->barNumber()); });
    }
    models::StaffItem staff;
};

/// How often anything but the beat row changed.
struct Changes {
    explicit Changes(StaffFixture& fixture)
        : passage(fixture.drill, &DrillModel::passageChanged),
          state(fixture.drill, &DrillModel::stateChanged),
          standing(fixture.drill, &DrillModel::standingChanged),
          rest(fixture.drill, &DrillModel::restChanged),
          title(fixture.drill->text(), &models::DrillText::passageChanged),
          tempo(fixture.drill->text(), &models::DrillText::standingChanged),
          reason(fixture.drill->text(), &models::DrillText::reasonChanged),
          ladder(fixture.drill->ladder(), &models::LadderModel::climbed),
          stages(fixture.drill->stages(), &models::StageFigures::changed),
          playedAs(fixture.drill->playedAs(), &models::PlayedAs::changed),
          listening(fixture.drill->listening(), &models::Listening::activeChanged),
          music(fixture.drill->staff(), &models::StaffView::changed),
          bar(fixture.drill->beats(), &models::BeatView::barChanged),
          sizes(&fixture.staff, &models::StaffItem::sizesChanged),
          shown(&fixture.staff, &models::StaffItem::shownChanged) {}
    [[nodiscard]] qsizetype all() const {
        return passage.count() + state.count() + standing.count() + rest.count() + title.count() +
               tempo.count() + reason.count() + ladder.count() + stages.count() + playedAs.count() +
               listening.count() + bar.count() + staffRebuilds();
    }
    [[nodiscard]] qsizetype staffRebuilds() const { return music.count() + sizes.count() + shown.count(); }

    QSignalSpy passage, state, standing, rest, title, tempo, reason, ladder, stages, playedAs, listening,
        music, bar, sizes, shown;
};

} // namespace

TEST_CASE("a beat changes the beat row and nothing else: the staff is not laid out again") {
    StaffFixture fixture;
    REQUIRE(fixture.drill->staff()->known());
    REQUIRE(fixture.staff.systems() > 0);
    fixture.press();
    REQUIRE(fixture.playUntil(Kind::runBegan));
    fixture.play(1.2); // longer than the feedback on what came before
    const Changes changes(fixture);
    const QSignalSpy beats(fixture.drill->beats(), &models::BeatView::sounded);
    fixture.play(9); // three bars at 84 BPM
    CHECK(beats.count() > 40);
    CHECK(changes.all() == 0);
}

TEST_CASE("many runs change the figures and leave the staff alone") {
    StaffFixture fixture;
    fixture.press();
    REQUIRE(fixture.playUntil(Kind::runBegan));
    const Changes changes(fixture);
    for (int run = 0; run < 6; ++run) REQUIRE(fixture.playUntil(Kind::runEnded));
    fixture.play(0.2);
    CHECK(fixture.standing() == Standing{Tempo::bpm(86), 1});
    CHECK(changes.standing.count() > 0);
    CHECK(changes.staffRebuilds() == 0);
    CHECK(changes.bar.count() == 0);
}

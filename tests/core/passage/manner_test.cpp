// SPDX-License-Identifier: GPL-3.0-or-later
#include "../scribe.h"

#include <doctest/doctest.h>

using namespace piolo;
using namespace piolo::testing;

namespace {

Manner played(Articulation articulation) {
    Manner manner;
    manner.articulation = articulation;
    return manner;
}

std::optional<Tempo> best(const PassageRecord& record, Articulation articulation) {
    return record.bests[static_cast<std::size_t>(articulation)];
}

} // namespace

TEST_CASE("bests are kept apart by articulation, and the best of all is the highest") {
    Scribe scribe;
    scribe.clean(10);
    scribe.manner(played(Articulation::slurred));
    scribe.clean(5);
    scribe.manner(played(Articulation::staccato));
    scribe.tempo(60);
    scribe.clean(5);
    const PassageRecord record = scribe.record();
    CHECK(best(record, Articulation::written) == Tempo::bpm(82));
    CHECK(best(record, Articulation::slurred) == Tempo::bpm(84));
    CHECK(best(record, Articulation::staccato) == Tempo::bpm(60));
    CHECK_FALSE(best(record, Articulation::tongued));
    CHECK(record.best == Tempo::bpm(84));
    CHECK(record.entries.front().articulation == Articulation::written);
    CHECK(record.entries.back().articulation == Articulation::staccato);
}

TEST_CASE("another articulation, rhythm or group starts the streak at 0; words on fingering do not") {
    Scribe scribe;
    Manner manner;
    const auto streakAfter = [&](const Manner& next) {
        scribe.clean(2);
        scribe.manner(next);
        return scribe.standing().streak;
    };
    manner.fingering = "side B flat";
    CHECK(streakAfter(manner) == 2);
    manner.articulation = Articulation::tongued;
    CHECK(streakAfter(manner) == 0);
    manner.group = 3;
    CHECK(streakAfter(manner) == 2);
    manner.rhythm = Rhythm::groups;
    CHECK(streakAfter(manner) == 0);
    manner.group = 4;
    CHECK(streakAfter(manner) == 0);
}

TEST_CASE("an entry has the passage's manner at the time, and whether it was ticked on paper") {
    Scribe scribe;
    scribe.clean();
    Manner manner = played(Articulation::tongued);
    manner.rhythm = Rhythm::dotted;
    scribe.manner(manner);
    RunFact ticked;
    ticked.passage = scribe.passage;
    ticked.tempo = Tempo::bpm(80);
    ticked.entered = true;
    scribe.add(ticked);
    const auto entries = scribe.record().entries;
    CHECK(entries.front().rhythm == Rhythm::written);
    CHECK_FALSE(entries.front().entered);
    CHECK(entries.back().articulation == Articulation::tongued);
    CHECK(entries.back().rhythm == Rhythm::dotted);
    CHECK(entries.back().entered);
}

TEST_CASE("the newest picture fact counts, even if it removes the picture") {
    Scribe scribe;
    CHECK_FALSE(scribe.record().picture);
    const Picture page{"0123456789abcdef0123456789abcdef.png", 100, 200, 3000, 400};
    scribe.add(PictureFact{scribe.passage, page});
    CHECK(scribe.record().picture == page);
    scribe.add(PictureFact{scribe.passage, std::nullopt});
    CHECK_FALSE(scribe.record().picture);
}

TEST_CASE("every articulation and rhythm has a unique name that is read back as it") {
    for (std::size_t place = 0; place < articulationCount; ++place) {
        const auto articulation = static_cast<Articulation>(place);
        CHECK(articulationNamed(nameOf(articulation)) == articulation);
    }
    for (const Rhythm rhythm : {Rhythm::written, Rhythm::dotted, Rhythm::reversed, Rhythm::groups})
        CHECK(rhythmNamed(nameOf(rhythm)) == rhythm);
    CHECK_FALSE(articulationNamed(""));
    CHECK_FALSE(rhythmNamed("Dotted"));
}

TEST_CASE("a picture's name leads only into the folder, and its frame is inside the picture") {
    const std::string name = "0123456789abcdef0123456789abcdef.png";
    CHECK(isPictureName(name));
    CHECK(isPictureName("0123456789abcdef0123456789abcdef.jpg"));
    for (const char* const wrong :
         {"", "../../../../../../../etc/passwd.png.png", "0123456789ABCDEF0123456789abcdef.png",
          "0123456789abcdef0123456789abcdef.pdf", "0123456789abcdef0123456789abcde/.png"})
        CHECK_FALSE(isPictureName(wrong));
    CHECK(isPicture({name, 0, 0, 10'000, 10'000}));
    CHECK(isPicture({name, 9999, 9999, 1, 1}));
    CHECK_FALSE(isPicture({name, 1, 0, 10'000, 10'000}));
    CHECK_FALSE(isPicture({name, 0, 9999, 1, 2}));
    CHECK_FALSE(isPicture({name, 0, -1, 1, 1}));
    CHECK_FALSE(isPicture({name, 0, 0, 0, 1}));
}

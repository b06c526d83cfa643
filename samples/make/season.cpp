// SPDX-License-Identifier: GPL-3.0-or-later
#include "season.h"

#include "rehearsal.h"
#include "scale_hour.h"
#include "sitting.h"
#include "stage_runs.h"

#include <algorithm>

namespace piolo::samples {

namespace {

constexpr std::int64_t minute = 60'000;
constexpr std::int64_t badDay = -75; // thousandths

bool isIn(const std::vector<Date>& dates, Date date) {
    return std::find(dates.begin(), dates.end(), date) != dates.end();
}

class Season {
public:
    explicit Season(std::uint64_t seed)
        : random_(seed), programme_(springConcert(random_)), diary_(random_.id().text(), random_, clock_),
          scaleChance_(seed + 1), scales_(diary_, clock_, seed + 2) {
        for (const Lot& lot : programme_.lots) learners_.emplace_back(lot.difficulty);
    }

    std::vector<Fact> play() {
        const std::int64_t first = programme_.season.first.daysSince1970();
        for (std::int64_t day = first; day <= programme_.season.last.daysSince1970(); ++day) {
            const Date date = Date::fromDaysSince1970(day);
            if (!isIn(programme_.missedDays, date)) practise(date);
            for (Learner& learner : learners_) learner.slept(date);
            scales_.slept(date);
        }
        return diary_.facts();
    }

private:
    void practise(Date date) {
        // Before lunch on weekends, after supper on other days.
        const bool weekend = (date.daysSince1970() + 4) % 7 == 0 || (date.daysSince1970() + 4) % 7 == 6;
        clock_.turnTo(date, (weekend ? 10 * 60 : 19 * 60) * minute + random_.between(0, 40 * minute));
        if (date == programme_.season.first) writePieces();
        const std::int64_t form = isIn(programme_.badDays, date) ? badDay : random_.between(-14, 14);
        warmUp(date, form);
        for (std::size_t i = 0; i < programme_.lots.size(); ++i) {
            const Lot& lot = programme_.lots[i];
            const std::int64_t age = date.daysSince1970() - lot.begins.daysSince1970();
            if (age < 0 || age % lot.everyDays != 0) continue;
            if (age == 0) writePassage(lot.passage);
            Sitting(lot, learners_[i], diary_, clock_, random_, form).play();
            StageRuns(lot, learners_[i], diary_, clock_, random_, form).play();
            clock_.pass(random_.between(minute / 2, 3 * minute));
        }
        if (isIn(programme_.rehearsals, date)) rehearse(form);
    }

    void warmUp(Date date, std::int64_t form) {
        diary_.drawFrom(scaleChance_);
        if (date == programme_.season.first) scales_.choose();
        scales_.play(form);
        diary_.drawFrom(random_);
    }

    void rehearse(std::int64_t form) {
        const Piece& march = programme_.pieces[1];
        Rehearsal through(march, diary_, clock_, random_);
        for (std::size_t i = 0; i < programme_.lots.size(); ++i) {
            const Lot& lot = programme_.lots[i];
            if (lot.passage.title.piece != march.id) continue;
            const std::int64_t clean = learners_[i].cleanPerMille(lot.passage.tempi.rule.target, form);
            through.mayStop(lot.difficulty.hard.bar, 1'000 - clean);
        }
        through.play(rehearsals_++);
    }

    void writePieces() {
        for (const Piece& piece : programme_.pieces) {
            PieceFact fact{piece.id, piece.name, piece.instrument, piece.due};
            fact.transposition = piece.transposition;
            if (piece.music.tempo) {
                fact.composer = piece.composer;
                fact.bars = piece.bars;
                fact.music = piece.music;
                fact.notes = piece.notes;
            }
            diary_.record(fact);
            clock_.pass(random_.between(8'000, 25'000));
        }
    }

    void writePassage(const Passage& passage) {
        PassageFact fact{passage.id, passage.title, passage.music, passage.tempi};
        if (passage.manner != Manner{}) fact.manner = passage.manner;
        diary_.record(fact);
        clock_.pass(random_.between(20'000, 50'000));
    }

    Seeded random_;
    Programme programme_;
    WallClock clock_;
    Diary diary_;
    std::vector<Learner> learners_;
    Seeded scaleChance_;
    ScaleHour scales_;
    int rehearsals_ = 0;
};

} // namespace

std::vector<Fact> playSeason(std::uint64_t seed) { return Season(seed).play(); }

} // namespace piolo::samples

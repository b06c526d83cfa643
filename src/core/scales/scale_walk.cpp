// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/scales/scale_walk.h"

#include <algorithm>
#include <cstdlib>

namespace piolo {

namespace {

using Figure = std::vector<int>;

/// The notes of a pattern's figure, relative to its first.
Figure figureOf(ScalePattern pattern) {
    switch (pattern) {
    case ScalePattern::thirds:
        return {0, 2};
    case ScalePattern::fourths:
        return {0, 3};
    case ScalePattern::turnsOfThree:
        return {0, 1, 2};
    case ScalePattern::turnsOfFour:
        return {0, 1, 2, 3};
    case ScalePattern::inOrder:
        break;
    }
    return {0};
}

/// From `from` to `to`, both played; a figure begins on each note from which it does not go beyond `to`.
void walk(std::vector<WalkStep>& way, const Figure& figure, int from, int to, Direction direction) {
    const int step = direction == Direction::up ? 1 : -1;
    const bool tooSmall = std::abs(to - from) < figure.back();
    const Figure inOrder{0};
    const Figure& played = tooSmall ? inOrder : figure;
    for (int first = from; first != to - step * played.back() + step; first += step)
        for (const int offset : played) way.push_back({first + step * offset, direction});
}

/// In a pattern, the next stretch begins with the note that ended the previous one; in order, that note is
/// played only once, as it was reached.
void goOn(std::vector<WalkStep>& way, const Figure& figure, int to) {
    const int from = way.back().index;
    if (from == to) return;
    const auto direction = from < to ? Direction::up : Direction::down;
    const int next = direction == Direction::up ? from + 1 : from - 1;
    walk(way, figure, figure.size() == 1 ? next : from, to, direction);
}

void turnAt(std::vector<WalkStep>& way, int tonic, int notes) {
    const int side = notes < 0 ? 1 : -1;
    const int reach = std::abs(notes) / 2;
    for (int away = 1; away <= reach; ++away) way.push_back({tonic + side * away, Direction::up});
    for (int away = reach - 1; away >= 0; --away) way.push_back({tonic + side * away, Direction::up});
}

} // namespace

std::vector<WalkStep> walkOf(ScalePattern pattern, ScaleReach reach) {
    const Figure figure = figureOf(pattern);
    std::vector<WalkStep> way;
    walk(way, figure, 0, reach.top, Direction::up);
    goOn(way, figure, reach.bottom);
    goOn(way, figure, 0);
    return way;
}

ScaleEnding endOnBeat(std::vector<WalkStep>& way, int notesPerBeat, ScalePattern pattern, int lowest) {
    ScaleEnding ending;
    const int over = static_cast<int>(way.size() - 1) % notesPerBeat;
    const int wanting = over == 0 ? 0 : notesPerBeat - over;
    const int turn = wanting / 2 * 2;
    const int tonic = way.back().index;
    if (wanting % 2 != 0 && pattern == ScalePattern::inOrder) {
        const auto top = std::ranges::max_element(way, {}, &WalkStep::index);
        const WalkStep again = *top;
        way.insert(top + 1, again);
        ending.topTwice = true;
    }
    ending.turn = tonic - turn / 2 < lowest ? -turn : turn;
    turnAt(way, tonic, ending.turn);
    if (wanting % 2 != 0 && pattern != ScalePattern::inOrder) {
        way.push_back(way.back());
        ending.tonicTwice = true;
    }
    return ending;
}

} // namespace piolo

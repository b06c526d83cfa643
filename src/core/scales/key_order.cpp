// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/scales/key_order.h"

#include "core/music/key_signature.h"
#include "core/scales/scale_ladder.h"

#include <algorithm>
#include <cstdlib>
#include <random>
#include <utility>

namespace piolo {

namespace {

constexpr int tonicOctave = 4;

/// The number of accidentals of all its notes on the way up.
int accidentals(Tonic tonic, ScaleKind kind) {
    const ScaleLadder ladder(tonic, tonicOctave, kind);
    int count = 0;
    for (int index = 0; index < ladder.size(); ++index)
        count += std::abs(ladder.at(index, Direction::up).alter);
    return count;
}

/// White keys have one name: B sharp and F flat are not used as tonics, but C flat is.
bool isTonic(Tonic tonic) {
    constexpr std::array unused{Tonic{'B', 1}, Tonic{'E', 1}, Tonic{'F', -1}};
    return std::ranges::find(unused, tonic) == unused.end();
}

bool belongsToKey(ScaleKind kind) { return fifthsOf({'G', 0}, kind) != 0 || fifthsOf({'C', 0}, kind) != 0; }

bool isWritten(Tonic tonic, ScaleKind kind) {
    if (!isTonic(tonic)) return false;
    // Kinds without a key have no accidentals to count, and only their black keys have two names.
    if (!belongsToKey(kind)) return tonic != Tonic{'C', -1};
    return fifthsOf(tonic, kind).has_value();
}

} // namespace

std::vector<Tonic> spellingsOf(int key, ScaleKind kind) {
    std::vector<Tonic> found;
    for (const std::int8_t alter : {std::int8_t{-1}, std::int8_t{0}, std::int8_t{1}})
        for (char step = 'A'; step <= 'G'; ++step) {
            const Tonic tonic{step, alter};
            if (pitchClass(tonic) == key && isWritten(tonic, kind)) found.push_back(tonic);
        }
    std::ranges::stable_sort(found, {}, [&](Tonic tonic) { return accidentals(tonic, kind); });
    return found;
}

Tonic SpellingChoice::tonic(int key, ScaleKind kind) const {
    const auto names = spellingsOf(key, kind);
    const bool second = (bits_ >> key & 1U) != 0;
    return names[second && names.size() > 1 ? 1 : 0];
}

std::array<int, keyCount> keysInOrder(KeyOrder order, std::uint32_t seed) {
    constexpr int fourth = 5;
    constexpr int fifth = 7;
    std::array<int, keyCount> keys{};
    const int step = order == KeyOrder::fourths ? fourth : order == KeyOrder::fifths ? fifth : 1;
    for (int place = 0; place < keyCount; ++place)
        keys.at(static_cast<std::size_t>(place)) = place * step % keyCount;
    if (order != KeyOrder::drawn) return keys;
    // The standard specifies the output of this generator, but not that of std::shuffle.
    std::mt19937 lot(seed);
    for (std::uint32_t left = keyCount; left > 1; --left) std::swap(keys.at(left - 1), keys.at(lot() % left));
    return keys;
}

std::string_view nameOf(KeyOrder order) noexcept { return valueName(order); }
std::optional<KeyOrder> keyOrderNamed(std::string_view name) noexcept { return valueNamed<KeyOrder>(name); }

} // namespace piolo

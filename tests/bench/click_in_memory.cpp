// SPDX-License-Identifier: GPL-3.0-or-later
// Makes a click track in memory, block by block, and discards it: `click_in_memory ours|copy|same BARS
// VOICE`. Prints the frames and the nanoseconds they took. `copy` only copies the finished clicks to their
// places and clears the space between them, which no program can avoid. `same` reports whether both make the
// same samples.
#include "engine/click/click_table.h"
#include "engine/click/click_track.h"
#include "stopwatch.h"

#include <algorithm>
#include <cstdlib>
#include <string_view>
#include <vector>

namespace {

using namespace piolo;
using namespace piolo::engine;

constexpr std::size_t blockFrames = 1024;
constexpr SampleRate rate{48'000};

/// Septuplets at 137 BPM in 4/4. No click overlaps the next one.
ClickTrack septuplets(std::int64_t bars, Voice voice) {
    ClickTrack track;
    track.subdivision = 7;
    track.stretches = {{Tempo::bpm(137), bars, false}};
    track.mix.voice = voice;
    track.mix.level = 1.0F;
    return track;
}

Stroke strokeOf(Layer layer) {
    if (layer == Layer::downbeat) return Stroke::downbeat;
    return layer == Layer::subdivision ? Stroke::subdivision : Stroke::beat;
}

/// Every click with the silence up to the next, ready to be copied.
class Copies {
public:
    Copies(const ClickTrack& track, std::uint64_t length) {
        for (int stroke = 0; stroke < strokeCount; ++stroke)
            tables_.push_back(clickTable(track.mix.voice, static_cast<Stroke>(stroke), rate));
        const auto pulses = pulsesOf(track, rate);
        for (std::size_t i = 0; i < pulses.size(); ++i) {
            const auto end = i + 1 < pulses.size() ? pulses[i + 1].sample : length;
            steps_.push_back({static_cast<std::size_t>(strokeOf(pulses[i].layer)), end - pulses[i].sample});
        }
    }
    /// Passes each piece to `take`.
    template <typename Take>
    void each(Take take) {
        std::vector<float> piece;
        for (const auto& step : steps_) {
            const auto& table = tables_[step.stroke];
            piece.resize(step.frames);
            const auto count = std::min(table.size(), piece.size());
            std::copy_n(table.begin(), count, piece.begin());
            std::fill(piece.begin() + static_cast<std::ptrdiff_t>(count), piece.end(), 0.0F);
            take(piece);
        }
    }

private:
    struct Step {
        std::size_t stroke;
        std::uint64_t frames;
    };
    std::vector<std::vector<float>> tables_;
    std::vector<Step> steps_;
};

template <typename Take>
void render(TrackPlayer& player, Take take) {
    std::vector<float> block(blockFrames);
    for (auto left = player.length(); left > 0; left -= block.size()) {
        block.resize(std::min<std::uint64_t>(left, blockFrames));
        player.render(block);
        take(block);
    }
}

/// Keeps the compiler from optimising the work away.
void keep(const std::vector<float>& piece) { asm volatile("" : : "r"(piece.data()) : "memory"); }

int compare(TrackPlayer& player, Copies& copies) {
    std::vector<float> ours;
    std::vector<float> copied;
    render(player, [&](const auto& piece) { ours.insert(ours.end(), piece.begin(), piece.end()); });
    copies.each([&](const auto& piece) { copied.insert(copied.end(), piece.begin(), piece.end()); });
    std::puts(ours == copied ? "same" : "different");
    return ours == copied ? 0 : 1;
}

} // namespace

int main(int argc, char** argv) {
    const auto voice = argc == 4 ? voiceNamed(argv[3]) : std::nullopt;
    if (!voice) return 2;
    const ClickTrack track = septuplets(std::strtoll(argv[2], nullptr, 10), *voice);
    TrackPlayer player(track);
    player.prepare(rate, blockFrames);
    const std::string_view who = argv[1];
    if (who == "ours") {
        bench::timed(player.length(), [&] { render(player, keep); });
        return 0;
    }
    Copies copies(track, player.length());
    if (who == "same") return compare(player, copies);
    bench::timed(player.length(), [&] { copies.each(keep); });
    return 0;
}

// SPDX-License-Identifier: GPL-3.0-or-later
// The options shared by click and track: what is clicked, in which voice, at which rate.
#pragma once

#include "command/options/option_reader.h"
#include "core/passage/click_pattern.h"
#include "engine/click/click_track.h"

namespace piolo::command {

struct ClickOptions {
    Meter meter;
    std::int32_t subdivision = 1;
    engine::SampleRate rate;
    engine::Mix mix;
};

/// The options that readClickOptions() reads.
[[nodiscard]] OptionSpecs clickSpecs();
/// Reads --meter, --beat, --groups, --subdivision, --rate and --voice. Faults are stored in the reader.
[[nodiscard]] ClickOptions readClickOptions(OptionReader& in);

/// The exact length of `times` such stretches of the track, rounded up to whole samples.
[[nodiscard]] unsigned __int128 framesOf(const engine::ClickTrack& track, engine::SampleRate rate,
                                         const engine::Stretch& stretch, std::int64_t times = 1);

/// Fault tooLarge at `path` if that many samples do not fit into a WAV file.
[[nodiscard]] Done fitsWav(const std::string& path, unsigned __int128 frames);

/// A track without stretches.
[[nodiscard]] engine::ClickTrack emptyTrack(const ClickOptions& options, const ClickPattern& pattern);

} // namespace piolo::command

// SPDX-License-Identifier: GPL-3.0-or-later
// The main job without hands, ears or display: a sample passage drilled in virtual time.
#pragma once

#include "core/time/timestamp.h"

#include <string>

namespace piolo::samples {

/// The sample passage that is drilled, by its title.
inline constexpr const char* demonstrationPassage = "Ferrywake Suite, II: bars 41–44";

/// Drills it in a copy of `sampleDir` at outDir/drilled, on the day after the copy's last one. Writes
/// outDir/click.wav (what was played), outDir/curve.png and outDir/passage (the title, for `--drill`); prints
/// a table of the runs, where the files are, and in one line whether engine, log and fold agree. Gives the
/// program's exit code: 1 when they do not agree or on a fault, which goes to standard error. An earlier
/// demonstration in `outDir` is replaced; a folder there that holds any other practice is left alone (fault
/// cannotWrite). Makes a QGuiApplication of its own when there is none.
int runDemonstration(const std::string& sampleDir, const std::string& outDir);
/// The same at a given time of the wall clock.
int runDemonstration(const std::string& sampleDir, const std::string& outDir, Timestamp now);

} // namespace piolo::samples

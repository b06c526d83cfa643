// SPDX-License-Identifier: GPL-3.0-or-later
// The main task without hands, ears or display: a sample passage drilled in virtual time.
#pragma once

#include "core/time/timestamp.h"

#include <string>

namespace piolo::samples {

/// The title of the sample passage that is drilled.
inline constexpr const char* demonstrationPassage = "Ferrywake Suite, II: bars 41–44";

/// Drills it in a copy of `sampleDir` at outDir/drilled, on the day after the copy's last one. Writes
/// outDir/click.wav (what was played), outDir/curve.png and outDir/passage (the title, for `--drill`); prints
/// a table of the runs, the locations of the files, and in one line whether engine, log and fold agree.
/// Returns the program's exit status: 1 if they do not agree or after a fault, which is written to standard
/// error. An earlier demonstration in `outDir` is replaced; a folder there with any other practice is left
/// alone (fault cannotWrite). Creates a QGuiApplication if there is none.
int runDemonstration(const std::string& sampleDir, const std::string& outDir);
/// The same at a given wall-clock time.
int runDemonstration(const std::string& sampleDir, const std::string& outDir, Timestamp now);

} // namespace piolo::samples

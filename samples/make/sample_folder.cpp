// SPDX-License-Identifier: GPL-3.0-or-later
#include "sample_folder.h"

#include "command/output/written_file.h"
#include "files/whole_file.h"
#include "journal/lines/fact_line.h"
#include "season.h"

namespace piolo::samples {

SampleFile sampleFile(std::uint64_t seed) {
    const std::vector<Fact> facts = playSeason(seed);
    SampleFile file{"journal/" + facts.front().device + "-2026.jsonl", {}};
    for (const Fact& fact : facts) file.bytes += journal::toLine(fact) + '\n';
    return file;
}

Done writeSample(const std::string& folder, std::uint64_t seed) {
    const SampleFile file = sampleFile(seed);
    return command::writeInFolder(folder + '/' + file.path, file.bytes);
}

Result<bool> sampleIsAsMade(const std::string& folder, std::uint64_t seed) {
    const SampleFile file = sampleFile(seed);
    const auto there = files::wholeFile(folder + '/' + file.path);
    if (!there) return there.fault();
    return *there == file.bytes;
}

} // namespace piolo::samples

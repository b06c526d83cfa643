// SPDX-License-Identifier: GPL-3.0-or-later
#include "demonstration.h"

#include "command/output/report.h"
#include "command/output/written_file.h"
#include "drawings/curve_picture.h"
#include "drill_table.h"
#include "files/wav.h"
#include "journal/folder/practice_folder.h"
#include "sample_copy.h"

#include <filesystem>
#include <set>
#include <vector>

namespace piolo::samples {

namespace {

// Five clean runs climb; a miss drops; a late miss counts from where its run began; and so on.
constexpr const char* script = "cccccccmcccclcc";
const std::string demonstrationDevice = "d0d0d0d0d0d0d0d0d0d0d0d0d0d0d0d0";
constexpr QSize curveSize(900, 480);

struct OutputPaths {
    std::string folder, state, click, curve, passage;
    explicit OutputPaths(const std::string& out)
        : folder(out + "/drilled"), state(out + "/state"), click(out + "/click.wav"),
          curve(out + "/curve.png"), passage(out + "/passage") {}
};

/// Removes what an earlier demonstration wrote: the files of the sample's devices and its own. If there is
/// anything else, everything is left alone.
Done clearEarlier(const std::string& sampleDir, const std::string& folder) {
    std::set<std::string> devices{demonstrationDevice};
    const auto sample = journal::readFolder(sampleDir, {});
    if (!sample) return sample.fault();
    for (const Fact& fact : sample->facts) devices.insert(fact.device);
    std::vector<std::filesystem::path> earlier;
    std::error_code error;
    for (const auto& file : std::filesystem::directory_iterator(folder + "/journal", error)) {
        const std::string device = file.path().filename().string().substr(0, demonstrationDevice.size());
        if (!devices.contains(device))
            return Fault{FaultNumber::cannotWrite, {folder}, {"it holds other practice"}};
        earlier.push_back(file.path());
    }
    for (const auto& path : earlier) std::filesystem::remove(path, error);
    return done();
}

Done writeClick(const std::string& path, const std::vector<float>& sound) {
    auto file = files::WavWriter::create(path, practice::virtualRate, sound.size());
    if (!file) return file.fault();
    const Done written = file.value().write(sound);
    return written ? file.value().commit() : written;
}

Done writeCurve(const std::string& path, const PassageRecord& record, Date today) {
    const std::string bytes = drawings::curvePng(record, curveSize, {today, 14}, 2);
    if (bytes.empty()) return Fault{FaultNumber::cannotWrite, {path}, {}};
    return command::writeInFolder(path, bytes);
}

Result<Notebook> foldFromDisk(const std::string& folder) {
    auto contents = journal::readFolder(folder, demonstrationDevice);
    if (!contents) return contents.fault();
    if (!contents->faults.empty()) return contents->faults.front();
    return fold(std::move(contents.value().facts));
}

/// Noon of that day: a drill must not run into the next one.
Timestamp noonOf(Timestamp now) {
    constexpr std::int64_t minute = 60'000;
    const std::int64_t noon = now.date().daysSince1970() * 1'440 + 720 - now.offsetMinutes;
    return {noon * minute, now.offsetMinutes};
}

Done writeAll(const OutputPaths& paths, const practice::VirtualDrillResult& drill,
              const PassageRecord& record, Date today) {
    Done written = writeClick(paths.click, drill.sound);
    if (written) written = writeCurve(paths.curve, record, today);
    if (written) written = command::writeInFolder(paths.passage, record.passage.title.name + '\n');
    return written;
}

std::string wordsAbout(const OutputPaths& paths, const practice::VirtualDrillResult& drill,
                       const std::string& differs) {
    std::string words = demonstrationPassage;
    words += "\n\n" + drillTable(drill) + '\n';
    words += "the click that was played: " + paths.click + '\n';
    words += "the tempo curve:           " + paths.curve + '\n';
    words += "the practice folder:       " + paths.folder + "\n\n";
    if (differs.empty()) return words + "engine, practice log and fold agree\n";
    return words + "engine, practice log and fold do not agree: " + differs + '\n';
}

Result<int> demonstrate(const std::string& sampleDir, const std::string& outDir, Timestamp now) {
    const OutputPaths paths(outDir);
    const Date today = now.date();
    const Done cleared = clearEarlier(sampleDir, paths.folder);
    if (!cleared) return cleared.fault();
    const auto copied = copySample(sampleDir, paths.folder, today);
    if (!copied) return copied.fault();
    const journal::JournalLocation location{paths.folder, demonstrationDevice, paths.state};
    const auto drill = practice::drillVirtually(location, demonstrationPassage, script, noonOf(now));
    if (!drill) return drill.fault();
    const auto notebook = foldFromDisk(paths.folder);
    if (!notebook) return notebook.fault();
    const PassageRecord& record = *notebook->passage(notebook->find(demonstrationPassage).front());
    const Done written = writeAll(paths, *drill, record, today);
    if (!written) return written.fault();
    const std::string differs = disagreement(*drill, record, today);
    const Done said = command::say(wordsAbout(paths, *drill, differs));
    if (!said) return said.fault();
    return differs.empty() ? command::exitDone : command::exitInput;
}

} // namespace

int runDemonstration(const std::string& sampleDir, const std::string& outDir, Timestamp now) {
    const auto end = demonstrate(sampleDir, outDir, now);
    return end ? *end : command::report(end.fault());
}

int runDemonstration(const std::string& sampleDir, const std::string& outDir) {
    return runDemonstration(sampleDir, outDir, journal::systemClock()->now());
}

} // namespace piolo::samples

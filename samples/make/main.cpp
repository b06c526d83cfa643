// SPDX-License-Identifier: GPL-3.0-or-later
#include "command/output/report.h"
#include "demonstration.h"
#include "journal/folder/ports.h"
#include "sample_copy.h"
#include "sample_folder.h"
#include "season.h"

#include <string>
#include <vector>

namespace {

using namespace piolo;

constexpr const char* use = "piolo_sample make FOLDER        make the sample practice folder\n"
                            "piolo_sample check FOLDER       is it as it was made, byte for byte?\n"
                            "piolo_sample copy FROM TO       copy it with its dates moved to end yesterday\n"
                            "piolo_sample drill FROM OUT     drill one of its passages in virtual time\n";

int ended(const Done& result) { return result ? command::exitDone : command::report(result.fault()); }

int check(const std::string& folder) {
    const auto same = samples::sampleIsAsMade(folder, samples::sampleSeed);
    if (!same) return command::report(same.fault());
    const Done said =
        command::say(*same ? "as it was made\n" : "not as it was made: run piolo_sample make\n");
    return *same ? ended(said) : command::exitInput;
}

int copy(const std::string& from, const std::string& to) {
    const auto copied = samples::copySample(from, to, journal::systemClock()->now().date());
    if (!copied) return command::report(copied.fault());
    if (copied->made) return command::exitDone;
    return ended(command::say(to + " holds a practice log already and was left as it is\n"));
}

} // namespace

int main(int argc, char** argv) {
    const std::vector<std::string> words(argv + 1, argv + argc);
    const std::string verb = words.empty() ? "" : words[0];
    if (words.size() == 2 && verb == "make")
        return ended(samples::writeSample(words[1], samples::sampleSeed));
    if (words.size() == 2 && verb == "check") return check(words[1]);
    if (words.size() == 3 && verb == "copy") return copy(words[1], words[2]);
    if (words.size() == 3 && verb == "drill") return samples::runDemonstration(words[1], words[2]);
    const Done said = command::say(use);
    return said ? command::exitUse : command::report(said.fault());
}

// SPDX-License-Identifier: GPL-3.0-or-later
#include "journal/settings/machine_settings.h"

#include "files/atomic_file.h"
#include "files/file_fault.h"
#include "files/whole_file.h"
#include "journal/folder/made_folder.h"
#include "journal/settings/settings_json.h"

#include <cerrno>
#include <filesystem>
#include <span>

namespace piolo::journal {

namespace {

namespace fs = std::filesystem;

constexpr int mostSetAside = 1000;

std::string fileOf(const std::string& configDir) { return configDir + "/settings.json"; }

Done writeWhole(const std::string& path, const std::string& text) {
    return files::replaceFile(path, std::as_bytes(std::span(text)));
}

/// Saves a copy under the first free name, so that nothing the player wrote is lost.
Done setAside(const std::string& path, const std::string& text) {
    for (int number = 1; number <= mostSetAside; ++number) {
        const std::string name = path + ".damaged-" + std::to_string(number);
        std::error_code error;
        if (!fs::exists(name, error)) return writeWhole(name, text);
    }
    return Fault{FaultNumber::cannotWrite, {path, 0}, {std::to_string(mostSetAside)}};
}

} // namespace

Result<MachineSettings> loadMachineSettings(const std::string& configDir, Randomness& randomness,
                                            Fault* reported) {
    const std::string path = fileOf(configDir);
    std::error_code error;
    std::string text = "{}";
    if (fs::exists(path, error)) {
        // Nobody waits for a pipe to be written.
        if (!fs::is_regular_file(path, error))
            return Fault{FaultNumber::cannotRead, {path, 0}, {"not a file"}};
        auto read = files::wholeFile(path, largestSettings + 1);
        if (!read) return read.fault();
        if (read->size() > largestSettings) return files::readFault(path, EFBIG);
        text = std::move(read).value();
    }
    FirstFault first{{path, 0}, {}};
    MachineSettings settings = settingsFromJson(text, first);
    if (first.fault) {
        if (auto aside = setAside(path, text); !aside) return aside.fault();
        if (reported) *reported = *first.fault;
    }
    if (!first.fault && !settings.device.empty()) return settings;
    if (settings.device.empty()) settings.device = randomness.id().text();
    if (auto saved = saveMachineSettings(configDir, settings); !saved) return saved.fault();
    return settings;
}

Done saveMachineSettings(const std::string& configDir, const MachineSettings& settings) {
    if (auto made = makeFolder(configDir); !made) return made;
    return writeWhole(fileOf(configDir), settingsToJson(settings));
}

} // namespace piolo::journal

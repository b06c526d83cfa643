// SPDX-License-Identifier: GPL-3.0-or-later
// Settings that belong to this machine, not to the practice folder: device id, sound, keys, appearance. One
// JSON file in the config directory, replaced atomically.
#pragma once

#include "core/base/result.h"
#include "journal/folder/ports.h"

#include <cstddef>
#include <map>
#include <string>

namespace piolo::journal {

/// Whole milliseconds, both limits inclusive.
struct MillisRange {
    int least = 0;
    int most = 0;
};

/// Plain values by name; unknown names are preserved. docs/journal.md lists the names in use.
struct MachineSettings {
    static constexpr MillisRange offsetRange{-500, 1000};
    static constexpr MillisRange holdRange{300, 3000};
    static constexpr MillisRange twiceRange{150, 1000};
    static constexpr MillisRange bounceRange{5, 300};

    std::string device;      ///< this device's id, created at the first start
    std::string soundDevice; ///< "": the default device
    int offsetMillis = 0;    ///< in offsetRange: how much later sound is heard than the system reports
    std::string voice = "wood";
    std::map<std::string, double> levels;    ///< by name of the layer, 0…1
    std::map<std::string, bool> muted;       ///< by name of the layer
    std::map<std::string, std::string> keys; ///< names of actions to their keys and MIDI switches
    int holdMillis = 800;            ///< in holdRange: pressing a single pedal for this long counts as
                                     ///< holding it
    int twiceMillis = 350;           ///< in twiceRange: a second press within this time makes a double press
    int bounceMillis = 30;           ///< in bounceRange: a key that closes again within this time has bounced
    std::string theme = "system";    ///< system, light, dark
    std::string language = "system"; ///< system, or the code of a language
    bool modelClick = true;          ///< the click is played along with the notes of a passage
    std::string folder;              ///< of the file that was chosen last; "": none yet
    bool welcomed = false;           ///< the welcome text was read
    std::string unknown = "{}";      ///< settings that this version does not know, as JSON
};

/// Larger files are not read (cannotRead).
inline constexpr std::size_t largestSettings = 1'048'576;

/// Reads `configDir`/settings.json. If it is missing, creates settings with a new device id and saves them at
/// once. A damaged file is kept under another name, described in `reported`, and replaced.
Result<MachineSettings> loadMachineSettings(const std::string& configDir, Randomness& randomness,
                                            Fault* reported);
Done saveMachineSettings(const std::string& configDir, const MachineSettings& settings);

/// The XDG base directories for config, state and data, each with "piolo" appended.
struct Directories {
    std::string config;
    std::string state;
    std::string data;
    std::string cache;
};
Result<Directories> systemDirectories();

} // namespace piolo::journal

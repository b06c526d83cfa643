// SPDX-License-Identifier: GPL-3.0-or-later
// What belongs to this machine and not to the practice folder: device id, sound, keys, looks. One JSON file
// in the config directory, replaced atomically.
#pragma once

#include "core/base/result.h"
#include "journal/folder/ports.h"

#include <cstddef>
#include <map>
#include <string>

namespace piolo::journal {

/// Whole milliseconds, both ends included.
struct MillisRange {
    int least = 0;
    int most = 0;
};

/// Plain values by name; unknown names are kept as they are. Names in use are listed in docs/journal.md.
struct MachineSettings {
    static constexpr MillisRange offsetRange{-500, 1000};
    static constexpr MillisRange holdRange{300, 3000};
    static constexpr MillisRange twiceRange{150, 1000};
    static constexpr MillisRange bounceRange{5, 300};

    std::string device;      ///< this device's id, made at the first start
    std::string soundDevice; ///< "": the default one
    int offsetMillis = 0;    ///< in offsetRange: how much later sound is heard than the system says
    std::string voice = "wood";
    std::map<std::string, double> levels;    ///< by layer's name, 0…1
    std::map<std::string, bool> muted;       ///< by layer's name
    std::map<std::string, std::string> keys; ///< action's name to its keys and MIDI switches
    int holdMillis = 800;            ///< in holdRange: the one pedal is held when it is down for so long
    int twiceMillis = 350;           ///< in twiceRange: a second press of it comes within this
    int bounceMillis = 30;           ///< in bounceRange: a key that closes again within this has bounced
    std::string theme = "system";    ///< system, light, dark
    std::string language = "system"; ///< system, or a language's code
    bool modelClick = true;          ///< a passage's model is heard with its click
    bool welcomed = false;           ///< the first start's words were read
    std::string unknown = "{}";      ///< what this version does not know, as JSON
};

/// A larger file is not read (cannotRead).
inline constexpr std::size_t largestSettings = 1'048'576;

/// Reads `configDir`/settings.json; a missing file gives fresh settings with a new device id, saved at once.
/// A damaged file is set aside under another name, told by the fault in `told`, and replaced.
Result<MachineSettings> loadMachineSettings(const std::string& configDir, Randomness& randomness,
                                            Fault* told);
Done saveMachineSettings(const std::string& configDir, const MachineSettings& settings);

/// XDG base directories with "piolo" added: config, state and data.
struct Directories {
    std::string config;
    std::string state;
    std::string data;
};
Directories systemDirectories();

} // namespace piolo::journal

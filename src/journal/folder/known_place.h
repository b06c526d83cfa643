// SPDX-License-Identifier: GPL-3.0-or-later
// Recognizes a folder again, so that nothing is written where nobody looks.
#pragma once

#include <string>
#include <sys/types.h>

namespace piolo::journal {

/// A folder as it was when it was learned: its device and inode. A disk that was unmounted may come back
/// under another device number; then the inodes of the folder and of a file in it decide. One thread at a
/// time.
class KnownPlace {
public:
    /// Returns 0 or an errno value.
    [[nodiscard]] int learn(const std::string& folder);
    /// True if its name is that of the same folder now.
    [[nodiscard]] bool isThere();
    /// A file in it, open as `descriptor`, that may be recognized later.
    void rememberFile(const std::string& path, int descriptor);

private:
    [[nodiscard]] bool hasTheFile() const;

    std::string folder_;
    dev_t device_ = 0;
    ino_t inode_ = 0;
    std::string file_;
    ino_t fileInode_ = 0;
};

/// The inode of what has this name, links followed; 0 if there is nothing.
[[nodiscard]] ino_t inodeOf(const std::string& path);

} // namespace piolo::journal

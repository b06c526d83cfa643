// SPDX-License-Identifier: GPL-3.0-or-later
#include "journal/folder/line_source.h"

#include "files/file_fault.h"

#include <algorithm>
#include <cerrno>
#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>
#include <utility>

namespace piolo::journal {

namespace {
constexpr std::size_t blockBytes = 65'536;
}

LineSource::LineSource(std::string path, std::size_t longest, files::Descriptor file)
    : path_(std::move(path)), longest_(longest), file_(std::move(file)) {}

Result<LineSource> LineSource::open(const std::string& path, std::size_t longest) {
    // Without O_NONBLOCK, a named pipe would block the reader until someone writes to it.
    files::Descriptor file(::open(path.c_str(), O_RDONLY | O_CLOEXEC | O_NONBLOCK));
    struct stat found {};
    if (!file.isOpen() || ::fstat(file.number(), &found) != 0) return files::readFault(path, errno);
    if (S_ISDIR(found.st_mode)) return files::readFault(path, EISDIR);
    if (!S_ISREG(found.st_mode)) return files::readFault(path, EINVAL);
    return LineSource(path, longest, std::move(file));
}

bool LineSource::fill(std::size_t most) {
    block_.resize(most);
    at_ = 0;
    ssize_t count = 0;
    do count = ::read(file_.number(), block_.data(), block_.size());
    while (count < 0 && errno == EINTR);
    if (count < 0) fault_ = files::readFault(path_, errno);
    block_.resize(static_cast<std::size_t>(std::max<ssize_t>(count, 0)));
    bytes_ += block_.size();
    sum_.add(block_);
    if (!block_.empty()) closed_ = block_.back() == '\n';
    return !block_.empty();
}

bool LineSource::take(SourceLine& line) {
    const auto end = block_.find('\n', at_);
    const auto piece = (end == std::string::npos ? block_.size() : end) - at_;
    const auto room = longest_ + 1 - std::min(longest_ + 1, line.text.size());
    line.text.append(block_, at_, std::min(piece, room));
    line.tooLong = line.tooLong || piece > room;
    at_ += piece + (end == std::string::npos ? 0 : 1);
    return end != std::string::npos;
}

bool LineSource::skip(const ReadExtent& known) {
    const auto left = [&] { return std::min<std::uint64_t>(known.bytes - bytes_, blockBytes); };
    while (left() > 0 && fill(left())) {
    }
    number_ = known.lines;
    bool same = !fault_ && extent() == known;
    if (same && !closed_) same = !fill(1) && !fault_;
    block_.clear();
    at_ = 0;
    return same;
}

ReadExtent LineSource::extent() const { return {bytes_, number_, closed_, sum_.value()}; }

std::optional<SourceLine> LineSource::next() {
    SourceLine line;
    while (!fault_) {
        if (at_ == block_.size() && !fill(blockBytes)) {
            if (line.text.empty() || fault_) return std::nullopt;
            line.closed = false;
            line.number = number_ + 1;
            break;
        }
        if (!take(line)) continue;
        line.number = ++number_;
        if (line.text.ends_with('\r')) line.text.pop_back();
        if (!line.text.empty()) break;
        line = {};
    }
    if (fault_) return std::nullopt;
    line.tooLong = line.tooLong || line.text.size() > longest_;
    return line;
}

} // namespace piolo::journal

// SPDX-License-Identifier: GPL-3.0-or-later
#include "fakes.h"

namespace piolo::test {

class FakeDisk::File final : public journal::AppendFile {
public:
    File(FakeDisk& disk, std::string path) : disk_(disk), path_(std::move(path)) {}
    long write(std::string_view bytes) override { return disk_.write(path_, bytes); }
    int sync() override { return disk_.sync(path_); }

private:
    FakeDisk& disk_;
    std::string path_;
};

Fate FakeDisk::next(Call call) {
    calls_.push_back(call);
    const Fate decided = fate(call, ++counts_[call]);
    if (decided == Fate::fails) errno = error;
    return decided;
}

std::unique_ptr<journal::AppendFile> FakeDisk::open(const std::string& path) {
    const std::lock_guard lock(mutex_);
    if (next(Call::open) == Fate::fails) return nullptr;
    return std::make_unique<File>(*this, path);
}

long FakeDisk::write(const std::string& path, std::string_view bytes) {
    const std::lock_guard lock(mutex_);
    const Fate decided = next(Call::write);
    const auto taken = decided == Fate::good   ? bytes.size()
                       : decided == Fate::half ? bytes.size() / 2
                                               : bytes.size() / 3;
    files_[path].pending += bytes.substr(0, taken);
    return decided == Fate::fails ? -1 : static_cast<long>(taken);
}

int FakeDisk::sync(const std::string& path) {
    std::unique_lock lock(mutex_);
    held_ = holding_;
    changed_.notify_all();
    changed_.wait(lock, [this] { return !holding_; });
    auto& content = files_[path];
    const bool good = next(Call::sync) == Fate::good;
    content.durable += good ? content.pending : content.pending.substr(0, content.pending.size() / 2);
    content.pending.clear();
    return good ? 0 : -1;
}

std::string FakeDisk::durable(const std::string& path) {
    const std::lock_guard lock(mutex_);
    return files_[path].durable;
}

bool FakeDisk::isDurable(const std::string& text) {
    const std::lock_guard lock(mutex_);
    for (const auto& [path, content] : files_)
        if (content.durable.find(text) != std::string::npos) return true;
    return false;
}

std::vector<Call> FakeDisk::calls() {
    const std::lock_guard lock(mutex_);
    return calls_;
}

void FakeDisk::holdSync() {
    const std::lock_guard lock(mutex_);
    holding_ = true;
}

void FakeDisk::waitUntilHeld() {
    std::unique_lock lock(mutex_);
    changed_.wait(lock, [this] { return held_; });
}

void FakeDisk::releaseSync() {
    const std::lock_guard lock(mutex_);
    holding_ = false;
    changed_.notify_all();
}

} // namespace piolo::test

// SPDX-License-Identifier: GPL-3.0-or-later
#include "journal/folder/fact_writer.h"

#include "files/file_fault.h"
#include "journal/lines/fact_line.h"

#include <algorithm>
#include <cerrno>
#include <chrono>
#include <condition_variable>
#include <mutex>
#include <span>
#include <utility>

namespace piolo::journal {

namespace {
using SteadyTime = std::chrono::steady_clock::time_point;

SteadyTime in(int millis) { return std::chrono::steady_clock::now() + std::chrono::milliseconds(millis); }
} // namespace

class FactWriter::Body {
public:
    Body(FolderLock lock, std::vector<std::string> unclosed, JournalHearer hearer, const JournalPorts& ports)
        : lock_(std::move(lock)), unclosed_(std::move(unclosed)), hearer_(std::move(hearer)),
          opener_(ports.opener), pauses_(ports.pauses) {}

    /// Writer thread.
    void run() {
        writeAll();
        file_.reset();
        const std::lock_guard lock(mutex_);
        finished_ = true;
        changed_.notify_all();
    }

    void add(WaitingLine line) {
        const std::lock_guard lock(mutex_);
        waiting_.push_back(std::move(line));
        ++unsaved_;
        work_.notify_one();
    }

    std::size_t unsaved() const {
        const std::lock_guard lock(mutex_);
        return unsaved_;
    }

    bool flush(int millis) {
        std::unique_lock lock(mutex_);
        return changed_.wait_until(lock, in(millis), [this] { return unsaved_ == 0 && unclosed_.empty(); });
    }

    /// True if the thread ended in time.
    bool end() {
        std::unique_lock lock(mutex_);
        ending_ = true;
        deadline_ = in(pauses_.farewell);
        work_.notify_one();
        return changed_.wait_until(lock, deadline_, [this] { return finished_; });
    }

    void hush() {
        const std::lock_guard lock(hearing_);
        hearer_ = {};
    }

private:
    void writeAll() {
        if (!closeTornLines()) return;
        for (auto batch = nextBatch(); !batch.empty(); batch = nextBatch())
            for (std::span<const WaitingLine> rest = batch; !rest.empty();) {
                const auto year = sameFile(rest);
                if (!writeUntilSaved(year.front().path, joined(year))) return;
                tellSaved(year);
                rest = rest.subspan(year.size());
            }
    }

    bool closeTornLines() {
        const auto files = unclosed_; // only this thread changes it
        for (const auto& path : files) {
            if (!writeUntilSaved(path, "\n")) return false;
            const std::lock_guard lock(mutex_);
            unclosed_.erase(unclosed_.begin());
            changed_.notify_all();
        }
        return true;
    }

    /// All waiting lines; empty if the journal is being closed and nothing is left.
    std::vector<WaitingLine> nextBatch() {
        std::unique_lock lock(mutex_);
        work_.wait(lock, [this] { return ending_ || !waiting_.empty(); });
        return std::exchange(waiting_, {});
    }

    /// The leading lines that go to the same file.
    static std::span<const WaitingLine> sameFile(std::span<const WaitingLine> lines) {
        const auto other = std::find_if(lines.begin(), lines.end(), [&lines](const WaitingLine& line) {
            return line.path != lines.front().path;
        });
        return lines.first(static_cast<std::size_t>(other - lines.begin()));
    }

    static std::string joined(std::span<const WaitingLine> lines) {
        std::string text;
        for (const auto& line : lines) text += line.text;
        return text;
    }

    /// False if the journal is being closed and its time is up.
    bool writeUntilSaved(const std::string& path, const std::string& text) {
        bool again = false;
        for (int pause = pauses_.firstRetry;; pause = std::min(2 * pause, pauses_.longestRetry)) {
            const int error = attempt(path, again ? "\n" + text : text);
            if (error == 0) return true;
            file_.reset();
            if (!again) report(files::writeFault(path, error));
            again = true;
            if (!waitFor(pause)) return false;
        }
    }

    int attempt(const std::string& path, const std::string& text) {
        if (!file_ || path != openPath_) {
            file_ = opener_->open(path);
            openPath_ = path;
        }
        if (!file_) return errno;
        const long taken = file_->write(text);
        if (taken < 0) return errno;
        // A short write to a regular file means that the disk or a quota is full.
        if (static_cast<std::size_t>(taken) < text.size()) return ENOSPC;
        return file_->sync() == 0 ? 0 : errno;
    }

    bool waitFor(int pause) {
        std::unique_lock lock(mutex_);
        if (ending_ && std::chrono::steady_clock::now() >= deadline_) return false;
        const bool wasEnding = ending_;
        const auto until = ending_ ? std::min(in(pause), deadline_) : in(pause);
        work_.wait_until(lock, until, [this, wasEnding] { return ending_ != wasEnding; });
        return true;
    }

    void report(const Fault& fault) {
        const std::lock_guard lock(hearing_);
        if (hearer_.trouble) hearer_.trouble(fault);
    }

    void tellSaved(std::span<const WaitingLine> lines) {
        for (const auto& line : lines) {
            if (line.text.size() > longestLine + 1) report({FaultNumber::lineTooLong, {line.path, 0}, {}});
            const std::lock_guard lock(hearing_);
            if (hearer_.saved) hearer_.saved(line.id);
        }
        const std::lock_guard lock(mutex_);
        unsaved_ -= lines.size();
        changed_.notify_all();
    }

    // Guarded by mutex_.
    mutable std::mutex mutex_;
    std::condition_variable work_;    ///< for the thread
    std::condition_variable changed_; ///< for callers that wait for a change
    std::vector<WaitingLine> waiting_;
    std::size_t unsaved_ = 0;
    bool ending_ = false;
    bool finished_ = false;
    SteadyTime deadline_;

    // Used only by the thread.
    FolderLock lock_;
    std::vector<std::string> unclosed_; ///< written under mutex_, so that others may read it
    std::unique_ptr<AppendFile> file_;
    std::string openPath_;

    std::mutex hearing_;
    JournalHearer hearer_; ///< guarded by hearing_

    std::shared_ptr<AppendOpener> opener_;
    Pauses pauses_;
};

FactWriter::FactWriter(FolderLock lock, std::vector<std::string> unclosed, JournalHearer hearer,
                       const JournalPorts& ports)
    : body_(std::make_shared<Body>(std::move(lock), std::move(unclosed), std::move(hearer), ports)),
      thread_([body = body_] { body->run(); }) {}

FactWriter::~FactWriter() {
    if (body_->end()) {
        thread_.join();
    } else {
        body_->hush();
        thread_.detach();
    }
}

void FactWriter::add(WaitingLine line) { body_->add(std::move(line)); }
std::size_t FactWriter::unsaved() const { return body_->unsaved(); }
bool FactWriter::flush(int millis) { return body_->flush(millis); }

} // namespace piolo::journal

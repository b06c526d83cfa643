// SPDX-License-Identifier: GPL-3.0-or-later
#include "journal/folder/fact_writer.h"

#include "journal/folder/write_trouble.h"
#include "journal/lines/fact_line.h"

#include <algorithm>
#include <chrono>
#include <mutex>
#include <optional>
#include <span>
#include <utility>

namespace piolo::journal {

namespace {
using SteadyTime = std::chrono::steady_clock::time_point;

/// After so many syncs in a row that failed, later lines do not wait any longer.
constexpr int mostSyncs = 4;

SteadyTime in(int millis) { return std::chrono::steady_clock::now() + std::chrono::milliseconds(millis); }
} // namespace

class FactWriter::Body {
public:
    Body(FolderLock lock, const std::vector<std::string>& unclosed, JournalHearer hearer,
         const JournalPorts& ports)
        : lock_(std::move(lock)), hearer_(std::move(hearer)), opener_(ports.opener), pauses_(ports.pauses) {
        for (const auto& path : unclosed) lines_.add({{}, path, "\n"});
    }

    /// Writer thread.
    void run() {
        writeAll();
        file_.reset();
        lines_.finish();
    }

    [[nodiscard]] LineQueue& lines() { return lines_; }

    /// True if the thread ended in time.
    bool end() {
        lines_.end(in(pauses_.farewell));
        return lines_.waitUntilFinished();
    }

    void hush() {
        const std::lock_guard lock(hearing_);
        hearer_ = {};
    }

private:
    enum class Outcome : std::uint8_t { saved, unconfirmed, timeIsUp };

    void writeAll() {
        for (auto batch = nextBatch(); batch; batch = nextBatch()) {
            for (std::span<const WaitingLine> rest = *batch; !rest.empty();) {
                const auto year = sameFile(rest);
                if (!writeYear(year)) return;
                rest = rest.subspan(year.size());
            }
            confirm();
        }
    }

    /// The lines that were not written yet; none if only a sync is to be tried again. Nothing if the journal
    /// is being closed and all is saved or the time is up.
    std::optional<std::vector<WaitingLine>> nextBatch() {
        if (unconfirmed_ == 0) {
            if (!lines_.waitForMore(0)) return std::nullopt;
        } else {
            lines_.waitForMore(unconfirmed_, syncAgain_);
            if (lines_.size() == unconfirmed_ && isTimeUp()) return std::nullopt;
        }
        return lines_.from(unconfirmed_);
    }

    [[nodiscard]] bool isTimeUp() const { return lines_.isOver(std::chrono::steady_clock::now()); }

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
    bool writeYear(std::span<const WaitingLine> year) {
        const Outcome outcome = write(year.front().path, joined(year));
        if (outcome == Outcome::timeIsUp) return false;
        if (outcome == Outcome::saved && unconfirmed_ == 0)
            tellSaved(year);
        else
            leaveUnconfirmed(year.size());
        return true;
    }

    /// Tries again until it is on disk. If it is written but not synced, gives up on the sync after a while,
    /// or at once while earlier lines are not confirmed either.
    Outcome write(const std::string& path, const std::string& text) {
        bool again = false;
        int syncs = 0;
        for (int pause = pauses_.firstRetry;; pause = std::min(2 * pause, pauses_.longestRetry)) {
            const Attempt made = attempt(path, again ? "\n" + text : text);
            if (made.error == 0) return Outcome::saved;
            if (made.written && (unconfirmed_ > 0 || ++syncs == mostSyncs)) return Outcome::unconfirmed;
            file_.reset();
            if (!again) report(writeTrouble(path, made.error));
            again = true;
            if (isTimeUp()) return Outcome::timeIsUp;
            lines_.pause(in(pause));
        }
    }

    Attempt attempt(const std::string& path, const std::string& text) {
        if (!file_ || path != openPath_) {
            file_ = opener_->open(path);
            openPath_ = path;
        }
        return append(file_.get(), text);
    }

    void leaveUnconfirmed(std::size_t count) {
        if (unconfirmed_ == 0) {
            report({FaultNumber::notConfirmed, {openPath_, 0}, {}});
            syncPause_ = pauses_.firstRetry;
            syncAgain_ = in(syncPause_);
        }
        unconfirmed_ += count;
    }

    /// After a sync that failed, the system may have dropped what was written before it. So once a sync
    /// works, all that is not confirmed is written again; until then nothing is, so that the file does not
    /// grow.
    void confirm() {
        if (unconfirmed_ == 0 || std::chrono::steady_clock::now() < syncAgain_) return;
        syncPause_ = std::min(2 * syncPause_, pauses_.longestRetry);
        syncAgain_ = in(syncPause_);
        if (!file_) file_ = opener_->open(openPath_);
        if (!file_ || file_->sync() != 0) return;
        const auto lines = lines_.from(0, unconfirmed_);
        for (std::span<const WaitingLine> rest = lines; !rest.empty();) {
            const auto year = sameFile(rest);
            if (attempt(year.front().path, "\n" + joined(year)).error != 0) return;
            rest = rest.subspan(year.size());
        }
        unconfirmed_ = 0;
        tellSaved(lines);
    }

    void report(const Fault& fault) {
        const std::lock_guard lock(hearing_);
        if (hearer_.trouble) hearer_.trouble(fault);
    }

    /// These are the first lines of all.
    void tellSaved(std::span<const WaitingLine> lines) {
        for (const auto& line : lines) {
            if (line.text.size() > longestLine + 1) report({FaultNumber::lineTooLong, {line.path, 0}, {}});
            const std::lock_guard lock(hearing_);
            if (hearer_.saved && !line.id.isNone()) hearer_.saved(line.id);
        }
        lines_.remove(lines.size());
    }

    LineQueue lines_; ///< all that are not saved

    // Used only by the thread.
    FolderLock lock_;
    std::unique_ptr<AppendFile> file_;
    std::string openPath_;
    std::size_t unconfirmed_ = 0; ///< so many of the first lines are written, but not synced
    SteadyTime syncAgain_;        ///< when the sync is tried again
    int syncPause_ = 0;           ///< milliseconds

    std::mutex hearing_;
    JournalHearer hearer_; ///< guarded by hearing_

    std::shared_ptr<AppendOpener> opener_;
    Pauses pauses_;
};

FactWriter::FactWriter(FolderLock lock, const std::vector<std::string>& unclosed, JournalHearer hearer,
                       const JournalPorts& ports)
    : body_(std::make_shared<Body>(std::move(lock), unclosed, std::move(hearer), ports)),
      thread_([body = body_] { body->run(); }) {}

FactWriter::~FactWriter() {
    if (!ended_) end();
}

void FactWriter::add(WaitingLine line) { body_->lines().add(std::move(line)); }
std::size_t FactWriter::unsaved() const { return body_->lines().size(); }
bool FactWriter::flush(int millis) { return body_->lines().waitUntilEmpty(in(millis)); }

std::vector<WaitingLine> FactWriter::end() {
    ended_ = true;
    if (body_->end()) {
        thread_.join();
    } else {
        body_->hush();
        thread_.detach();
    }
    auto left = body_->lines().from(0);
    std::erase_if(left, [](const WaitingLine& line) { return line.id.isNone(); });
    return left;
}

} // namespace piolo::journal

// SPDX-License-Identifier: GPL-3.0-or-later
#include "practice/log/practice_book.h"

#include <QMetaObject>

#include <algorithm>
#include <future>
#include <thread>

namespace piolo::practice {

namespace {

/// From this many facts on, folding is shared among the cores.
constexpr std::size_t manyFacts = 20'000;
constexpr unsigned mostFolders = 8;

Notebook folded(const std::shared_ptr<const StoredHistory>& stored, std::vector<Fact>&& facts) {
    const bool many = facts.size() >= manyFacts;
    Notebook notebook(stored);
    notebook.addAll(std::move(facts));
    if (!many) return notebook;
    const unsigned threads = std::clamp(std::thread::hardware_concurrency(), 1U, mostFolders);
    std::vector<std::future<std::size_t>> others;
    for (unsigned part = 1; part < threads; ++part)
        others.push_back(std::async(std::launch::async, &Notebook::foldAhead, &notebook, part, threads));
    notebook.foldAhead(0, threads);
    for (auto& other : others) other.get();
    return notebook;
}

} // namespace

PracticeBook::PracticeBook() = default;
PracticeBook::~PracticeBook() = default;

Result<std::unique_ptr<PracticeBook>> PracticeBook::open(journal::JournalLocation location,
                                                         journal::JournalPorts ports) {
    std::unique_ptr<PracticeBook> book(new PracticeBook);
    auto* self = book.get();
    book->randomness_ = ports.randomness;
    book->folder_ = location.folder;
    // The writer thread notifies the window thread by queued calls; they are dropped when the book is
    // destroyed.
    journal::JournalHearer hearer{
        [self](Id fact) {
            QMetaObject::invokeMethod(
                self, [self, fact] { self->heardSaved(fact); }, Qt::QueuedConnection);
        },
        [self](const Fault& fault) {
            QMetaObject::invokeMethod(
                self, [self, fault] { self->heardTrouble(fault); }, Qt::QueuedConnection);
        }};
    auto opened = journal::Journal::open(std::move(location), std::move(hearer), std::move(ports));
    if (!opened) return opened.fault();
    book->journal_ = std::move(opened).value();
    book->notebook_ = folded(book->journal_->contents().stored, book->journal_->takeFacts());
    return book;
}

const std::string& PracticeBook::device() const { return journal_->device(); }
bool PracticeBook::readOnly() const { return journal_->readOnly(); }
const Fault& PracticeBook::readOnlyReason() const { return journal_->readOnlyReason(); }
const std::vector<Fault>& PracticeBook::readFaults() const { return journal_->contents().faults; }
Date PracticeBook::today() const { return journal_->now().date(); }
void PracticeBook::keepCheckpoint() { journal_->keepCheckpoint(); }
Id PracticeBook::newId() const { return randomness_->id(); }
bool PracticeBook::flush(int millis) { return journal_->flush(millis); }

Fact PracticeBook::record(FactBody body) {
    Fact fact = write(std::move(body));
    if (!readOnly()) adopt(fact);
    return fact;
}

Fact PracticeBook::write(FactBody body) { return journal_->record(std::move(body)); }

std::vector<Id> PracticeBook::recordAll(Date day, std::vector<FactBody> bodies) {
    std::vector<Id> ids;
    if (readOnly() || bodies.empty()) return ids;
    for (FactBody& body : bodies) {
        const Fact fact = journal_->recordOn(day, std::move(body));
        fold(fact);
        ids.push_back(fact.id);
    }
    emit changed(QString());
    emit savedChanged();
    return ids;
}

void PracticeBook::fold(const Fact& fact) {
    if (savedEarly_.erase(fact.id) == 0) waiting_.insert(fact.id);
    notebook_.add(fact);
}

void PracticeBook::adopt(const Fact& fact) {
    fold(fact);
    const Id passage = passageOf(fact.body);
    emit changed(passage.isNone() ? QString() : QString::fromStdString(passage.text()));
    emit savedChanged();
}

void PracticeBook::heardSaved(Id fact) {
    if (waiting_.erase(fact) == 0) savedEarly_.insert(fact);
    if (trouble_) {
        trouble_.reset();
        emit troubleChanged();
    }
    emit savedChanged();
}

void PracticeBook::heardTrouble(const Fault& fault) {
    trouble_ = fault;
    emit troubleChanged();
}

} // namespace piolo::practice

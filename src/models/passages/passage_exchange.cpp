// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/passages/passage_exchange.h"

#include "journal/passage_file/passage_file.h"
#include "models/text/difference_words.h"
#include "models/text/typed_file.h"
#include "practice/faults/fault_text.h"
#include "text/one_line.h"

#include <QFileInfo>
#include <QStringList>

#include <algorithm>

namespace piolo::models {

namespace {

bool isAsked(const ImportItem& item) {
    return item.state == ImportState::differs || item.state == ImportState::removedHere;
}

/// Reading a pipe or device might never end.
Result<PassageSet> setIn(const QString& path) {
    const QFileInfo info(path);
    if (info.exists() && !info.isFile()) return Fault{FaultNumber::notAPassageFile, {path.toStdString()}, {}};
    return journal::readPassageFile(path.toStdString());
}

QString changesOf(const ImportItem& item) {
    QStringList changes;
    for (const Difference& difference : item.differences) changes << differenceWords(difference);
    return changes.join(QStringLiteral("\n"));
}

} // namespace

PassageExchange::PassageExchange(practice::PracticeBook& book, PassagePicks& picks, QObject* parent)
    : QAbstractListModel(parent), book_(book), picks_(picks) {
    connect(&book, &practice::PracticeBook::changed, this, [this] {
        if (!file_.isEmpty() && done_.isEmpty()) plan();
    });
}

PassageExchange::~PassageExchange() {
    if (reader_.valid()) reader_.wait();
}

int PassageExchange::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(plan_.size());
}

QVariant PassageExchange::data(const QModelIndex& index, int role) const {
    if (!checkIndex(index, CheckIndexOption::IndexIsValid | CheckIndexOption::ParentIsInvalid)) return {};
    const ImportItem& item = plan_[static_cast<std::size_t>(index.row())];
    switch (role) {
    case Qt::DisplayRole:
    case NameRole:
        return text::onOneLine(item.name);
    case PieceRole:
        return item.isPiece;
    case StateRole:
        return stateWords(item.state);
    case ChangesRole:
        return changesOf(item);
    case EditedRole:
        return item.editedHere;
    case AskedRole:
        return isAsked(item);
    case TickedRole:
        return ticked_.contains(item.id);
    default:
        return {};
    }
}

QHash<int, QByteArray> PassageExchange::roleNames() const {
    return {{NameRole, "name"},     {PieceRole, "piece"},    {StateRole, "state"},  {ChangesRole, "changes"},
            {EditedRole, "edited"}, {AskedRole, "askedFor"}, {TickedRole, "ticked"}};
}

int PassageExchange::countOf(ImportState state) const {
    return static_cast<int>(std::ranges::count(plan_, state, &ImportItem::state));
}

int PassageExchange::asked() const { return static_cast<int>(std::ranges::count_if(plan_, isAsked)); }
int PassageExchange::ticked() const { return static_cast<int>(ticked_.size()); }

bool PassageExchange::takesRow(const ImportItem& item) const {
    return takes(item, ticked_.contains(item.id) ? Differing::replace : Differing::leave);
}

bool PassageExchange::canTake() const {
    return !book_.readOnly() && done_.isEmpty() &&
           std::ranges::any_of(plan_, [this](const ImportItem& item) { return takesRow(item); });
}

QString PassageExchange::summary() const {
    if (file_.isEmpty() || !done_.isEmpty()) return done_;
    const int fresh = countOf(ImportState::added);
    const int same = countOf(ImportState::same);
    if (plan_.empty()) return qtTrId("files.empty");
    if (fresh + asked() == 0) return qtTrId("files.unchanged");
    return qtTrId("files.figures").arg(fresh).arg(same).arg(asked());
}

QString PassageExchange::write(const QString& typed) const {
    const std::string path = typedPath(typed).toStdString();
    if (picks_.picked() == 0) return qtTrId("files.export.tick");
    if (!journal::isPassageFile(path))
        return practice::faultSentence(
            {FaultNumber::badFileKind, {}, {path, std::string(journal::passageFileEnding)}});
    const Notebook& notebook = book_.notebook();
    const auto set =
        picks_.picked() == picks_.count() ? wholeSet(notebook) : chosenSet(notebook, picks_.ids());
    if (!set) return practice::faultSentence(set.fault());
    const Done written = journal::writePassageFile(path, *set);
    return written ? QString() : practice::faultSentence(written.fault());
}

void PassageExchange::read(const QString& pathOrAddress) {
    const QString path = typedPath(pathOrAddress);
    if (reading_ || path.isEmpty()) return;
    close();
    reading_ = true;
    emit changed();
    reader_ = std::async(std::launch::async, [this, path] {
        auto set = std::make_shared<Result<PassageSet>>(setIn(path));
        QMetaObject::invokeMethod(
            this, [this, path, set] { heard(path, *set); }, Qt::QueuedConnection);
    });
}

void PassageExchange::heard(const QString& path, const Result<PassageSet>& set) {
    reading_ = false;
    if (set) {
        file_ = path;
        set_ = *set;
        plan();
    } else {
        fault_ = practice::faultLine(set.fault());
        emit changed();
    }
}

void PassageExchange::plan() {
    beginResetModel();
    plan_ = importPlan(set_, book_.notebook());
    std::erase_if(ticked_, [this](Id id) {
        const auto item = std::ranges::find(plan_, id, &ImportItem::id);
        return item == plan_.end() || !isAsked(*item);
    });
    endResetModel();
    emit changed();
}

void PassageExchange::close() {
    beginResetModel();
    file_.clear();
    fault_.clear();
    done_.clear();
    set_ = {};
    plan_.clear();
    ticked_.clear();
    endResetModel();
    emit changed();
}

void PassageExchange::tick(int row, bool on) {
    if (row < 0 || row >= rowCount() || !isAsked(plan_[static_cast<std::size_t>(row)])) return;
    const Id id = plan_[static_cast<std::size_t>(row)].id;
    if (on)
        ticked_.insert(id);
    else
        ticked_.erase(id);
    emit dataChanged(index(row), index(row), {TickedRole});
    emit changed();
}

void PassageExchange::tickAll(bool on) {
    for (int row = 0; row < rowCount(); ++row) tick(row, on);
}

void PassageExchange::take() {
    if (!canTake()) return;
    std::vector<FactBody> facts;
    for (const ImportItem& item : plan_)
        if (takesRow(item)) facts.insert(facts.end(), item.facts.begin(), item.facts.end());
    done_ = qtTrId("files.taken").arg(countOf(ImportState::added)).arg(ticked()).arg(asked() - ticked());
    beginResetModel();
    plan_.clear();
    ticked_.clear();
    endResetModel();
    book_.recordAll(book_.today(), std::move(facts));
    emit changed();
}

} // namespace piolo::models

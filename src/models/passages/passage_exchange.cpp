// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/passages/passage_exchange.h"

#include "journal/passage_file/passage_file.h"
#include "models/files/file_kind.h"
#include "models/text/difference_words.h"
#include "models/text/typed_file.h"
#include "practice/faults/fault_text.h"
#include "text/one_line.h"

#include <QFileInfo>
#include <QStringList>

namespace piolo::models {

namespace {

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
    return parent.isValid() ? 0 : static_cast<int>(review_.items().size());
}

QVariant PassageExchange::data(const QModelIndex& index, int role) const {
    if (!checkIndex(index, CheckIndexOption::IndexIsValid | CheckIndexOption::ParentIsInvalid)) return {};
    const ImportItem& item = review_.items()[static_cast<std::size_t>(index.row())];
    switch (role) {
    case Qt::DisplayRole:
    case NameRole:
        return text::nameShown(item.name);
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
        return review_.isTicked(item);
    default:
        return {};
    }
}

QHash<int, QByteArray> PassageExchange::roleNames() const {
    return {{NameRole, "name"},     {PieceRole, "piece"},    {StateRole, "state"},  {ChangesRole, "changes"},
            {EditedRole, "edited"}, {AskedRole, "askedFor"}, {TickedRole, "ticked"}};
}

int PassageExchange::asked() const { return static_cast<int>(review_.asked()); }
int PassageExchange::ticked() const { return static_cast<int>(review_.ticked()); }

bool PassageExchange::canTake() const { return !book_.readOnly() && done_.isEmpty() && review_.takesAny(); }

QString PassageExchange::summary() const {
    if (file_.isEmpty() || !done_.isEmpty()) return done_;
    const auto fresh = static_cast<int>(review_.count(ImportState::added));
    const auto same = static_cast<int>(review_.count(ImportState::same));
    if (review_.items().empty()) return qtTrId("files.empty");
    if (fresh + asked() == 0) return qtTrId("files.unchanged");
    return qtTrId("files.figures").arg(fresh).arg(same).arg(asked());
}

QString PassageExchange::write(const QString& typed) const {
    const std::string path = typedPath(typed, usualEnding(FileKind::passages)).toStdString();
    if (picks_.picked() == 0) return qtTrId("files.export.tick");
    if (!journal::isPassageFile(path))
        return practice::faultSentence(
            {FaultNumber::badFileKind, {}, {path, std::string(journal::passageFileEnding)}});
    const Notebook& notebook = book_.notebook();
    const bool all = picks_.picked() == picks_.count();
    auto set = all ? wholeSet(notebook) : chosenSet(notebook, picks_.ids());
    if (set && all && !picks_.withScales())
        std::erase_if(set.value().passages, [](const Passage& passage) { return passage.scale.has_value(); });
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
    review_.use(importPlan(set_, book_.notebook()));
    endResetModel();
    emit changed();
}

void PassageExchange::close() {
    beginResetModel();
    file_.clear();
    fault_.clear();
    done_.clear();
    set_ = {};
    review_.clear();
    endResetModel();
    emit changed();
}

void PassageExchange::tick(int row, bool on) {
    if (row < 0 || !review_.tick(static_cast<std::size_t>(row), on)) return;
    emit dataChanged(index(row), index(row), {TickedRole});
    emit changed();
}

void PassageExchange::tickAll(bool on) {
    for (int row = 0; row < rowCount(); ++row) tick(row, on);
}

void PassageExchange::take() {
    if (!canTake()) return;
    std::vector<FactBody> facts = review_.facts();
    done_ =
        qtTrId("files.taken").arg(review_.count(ImportState::added)).arg(ticked()).arg(asked() - ticked());
    beginResetModel();
    review_.clear();
    endResetModel();
    book_.recordAll(book_.today(), std::move(facts));
    emit changed();
}

} // namespace piolo::models

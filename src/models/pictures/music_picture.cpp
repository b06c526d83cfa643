// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/pictures/music_picture.h"

#include "models/settings/setting_choices.h"
#include "models/text/id_text.h"
#include "pictures/kept_picture.h"
#include "practice/log/practice_book.h"
#include "text/passage_title.h"

#include <QFileInfo>

namespace piolo::models {

MusicPicture::MusicPicture(practice::PracticeBook& book, QObject* parent)
    : QObject(parent), book_(book), taking_(book.readOnly() ? std::string() : book.folder()) {
    connect(&book_, &practice::PracticeBook::changed, this, [this](const QString& passage) {
        if (passage.isEmpty() || passage.toStdString() == passage_.text()) follow();
        emit offersChanged();
    });
    connect(&taking_, &PictureTaking::taken, this, [this](const QString& name) { take(name.toStdString()); });
}

QUrl MusicPicture::url() const {
    if (!picture_) return {};
    const std::string path = pictures::picturePath(book_.folder(), picture_->file);
    // Whatever else has the name is not opened: it counts as missing.
    if (!pictures::isPictureFile(path)) return {QStringLiteral("qrc:/no-picture")};
    return QUrl::fromLocalFile(QFileInfo(QString::fromStdString(path)).absoluteFilePath());
}

bool MusicPicture::isOpen() const { return !readOnly() && book_.notebook().passage(passage_) != nullptr; }

bool MusicPicture::readOnly() const { return book_.readOnly(); }

// One line for each page, named after the first passage that has it.
QVariantList MusicPicture::offers() const {
    QVariantList list;
    const PassageRecord* own = book_.notebook().passage(passage_);
    if (own == nullptr || own->passage.title.piece.isNone()) return list;
    for (const Id& id : book_.notebook().passages()) {
        const PassageRecord* other = book_.notebook().passage(id);
        if (id == passage_ || other->removed || !other->picture) continue;
        if (other->passage.title.piece != own->passage.title.piece) continue;
        const QString name = QString::fromStdString(other->picture->file);
        if (!hasChoice(list, name))
            list << choice(name, qtTrId("picture.of-passage").arg(text::passageTitle(other->passage)));
    }
    return list;
}

void MusicPicture::setPassage(const QString& passage) {
    const Id id = idOf(passage);
    if (id == passage_) return;
    passage_ = id;
    taking_.close();
    picture_.reset();
    removed_.reset();
    follow();
    emit changed();
    emit offersChanged();
}

void MusicPicture::follow() {
    const PassageRecord* record = book_.notebook().passage(passage_);
    const std::optional<Picture> now = record != nullptr ? record->picture : std::nullopt;
    if (now == picture_) return;
    picture_ = now;
    frame_.show(now.value_or(Picture{}));
    emit changed();
}

void MusicPicture::takeOffered(const QString& name) {
    if (hasChoice(offers(), name)) take(name.toStdString());
}

// If it is the same page, it keeps its frame.
void MusicPicture::take(const std::string& name) {
    if (picture_ && picture_->file == name) return;
    record(Picture{name});
}

void MusicPicture::keepFrame() {
    if (picture_ && frame_.moved()) record(frame_.cropped(*picture_));
}

void MusicPicture::remove() {
    if (!picture_) return;
    removed_ = picture_;
    record(std::nullopt);
}

void MusicPicture::restore() {
    if (removedNow()) record(removed_);
}

void MusicPicture::record(std::optional<Picture> picture) {
    if (isOpen()) book_.record(PictureFact{passage_, std::move(picture)});
}

} // namespace piolo::models

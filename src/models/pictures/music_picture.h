// SPDX-License-Identifier: GPL-3.0-or-later
// The picture of one passage's music: where it is, which part of it shows the passage, and how it comes
// there.
#pragma once

// Qt stands first: moc cannot read the standard headers before it.
#include <QObject>
#include <QString>
#include <QUrl>
#include <QVariantList>
#include <QtQml/qqmlregistration.h>

#include "models/pictures/picture_frame.h"
#include "models/pictures/picture_taking.h"

#include <optional>

namespace piolo::practice {
class PracticeBook;
} // namespace piolo::practice

namespace piolo::models {

/// Window's thread; reads no file itself. What is recorded goes into the practice log at once.
class MusicPicture : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by PracticeRoom")
    /// The passage has a picture.
    Q_PROPERTY(bool known READ known NOTIFY changed)
    /// The whole page, as a file's address; empty when there is none.
    Q_PROPERTY(QUrl url READ url NOTIFY changed)
    /// The part that shows the passage, in parts of the page.
    Q_PROPERTY(double left READ left NOTIFY changed)
    Q_PROPERTY(double top READ top NOTIFY changed)
    Q_PROPERTY(double width READ width NOTIFY changed)
    Q_PROPERTY(double height READ height NOTIFY changed)
    /// Its picture was removed a moment ago and can be had back.
    Q_PROPERTY(bool removedNow READ removedNow NOTIFY changed)
    /// The passage is recorded and the folder can be written: a picture can be taken, cropped and removed.
    Q_PROPERTY(bool open READ isOpen NOTIFY changed)
    /// The pages that other passages of the same piece have: a list of {value, text}.
    Q_PROPERTY(QVariantList offers READ offers NOTIFY offersChanged)
    Q_PROPERTY(piolo::models::PictureFrame* frame READ frame CONSTANT)
    Q_PROPERTY(piolo::models::PictureTaking* taking READ taking CONSTANT)
public:
    explicit MusicPicture(practice::PracticeBook& book, QObject* parent = nullptr);

    [[nodiscard]] bool known() const { return picture_.has_value(); }
    [[nodiscard]] QUrl url() const;
    [[nodiscard]] double left() const { return part(picture_ ? picture_->left : 0); }
    [[nodiscard]] double top() const { return part(picture_ ? picture_->top : 0); }
    [[nodiscard]] double width() const { return part(picture_ ? picture_->width : Picture::whole); }
    [[nodiscard]] double height() const { return part(picture_ ? picture_->height : Picture::whole); }
    [[nodiscard]] bool removedNow() const { return !picture_ && removed_; }
    [[nodiscard]] bool isOpen() const;
    [[nodiscard]] QVariantList offers() const;
    [[nodiscard]] PictureFrame* frame() { return &frame_; }
    [[nodiscard]] PictureTaking* taking() { return &taking_; }

    /// Shows that passage's picture (id of 32 digits). A frame that was moved and not kept is forgotten, and
    /// what is being taken for another passage is given up.
    void setPassage(const QString& passage);

    /// Takes a page that is offered, whole. Nothing for another name.
    Q_INVOKABLE void takeOffered(const QString& name);
    /// Records the frame as the passage's part of the page.
    Q_INVOKABLE void keepFrame();
    /// The passage has no picture any more; the file stays for other passages and older facts.
    Q_INVOKABLE void remove();
    /// The picture that was removed last while the passage is shown, cropped as it was.
    Q_INVOKABLE void restore();

signals:
    void changed();
    void offersChanged();

private:
    static double part(int places) { return places / static_cast<double>(Picture::whole); }
    void follow();
    void record(std::optional<Picture> picture);
    void take(const std::string& name);

    practice::PracticeBook& book_;
    PictureFrame frame_;
    PictureTaking taking_;
    Id passage_;
    std::optional<Picture> picture_;
    std::optional<Picture> removed_;
};

} // namespace piolo::models

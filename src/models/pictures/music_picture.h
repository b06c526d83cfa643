// SPDX-License-Identifier: GPL-3.0-or-later
// The picture of one passage's music: where it is, which part of it shows the passage, and how it is added.
#pragma once

// Qt comes first: moc cannot read the standard headers before it.
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

/// Window thread; reads no files itself. Changes are recorded in the practice log at once.
class MusicPicture : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by PracticeRoom")
    /// True if the passage has a picture.
    Q_PROPERTY(bool known READ known NOTIFY changed)
    /// The whole page as a URL; empty if there is none.
    Q_PROPERTY(QUrl url READ url NOTIFY changed)
    /// The part that shows the passage, as fractions of the page.
    Q_PROPERTY(double left READ left NOTIFY changed)
    Q_PROPERTY(double top READ top NOTIFY changed)
    Q_PROPERTY(double width READ width NOTIFY changed)
    Q_PROPERTY(double height READ height NOTIFY changed)
    /// True if its picture was just removed and can be restored.
    Q_PROPERTY(bool removedNow READ removedNow NOTIFY changed)
    /// True if the passage is recorded and the folder is writable: a picture can be added, cropped and
    /// removed.
    Q_PROPERTY(bool open READ isOpen NOTIFY changed)
    Q_PROPERTY(bool readOnly READ readOnly CONSTANT)
    /// The pages of other passages of the same piece: a list of {value, text}.
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
    [[nodiscard]] bool readOnly() const;
    [[nodiscard]] QVariantList offers() const;
    [[nodiscard]] PictureFrame* frame() { return &frame_; }
    [[nodiscard]] PictureTaking* taking() { return &taking_; }

    /// Shows the picture of that passage (id of 32 digits). Discards a frame that was moved but not saved,
    /// and cancels adding a picture to another passage.
    void setPassage(const QString& passage);

    /// Uses an offered page in full. Ignores any other name.
    Q_INVOKABLE void takeOffered(const QString& name);
    /// Records the frame as the passage's part of the page.
    Q_INVOKABLE void keepFrame();
    /// Removes the picture from the passage; the file stays for other passages and older facts.
    Q_INVOKABLE void remove();
    /// Restores the picture that was removed since the passage was shown, with its frame.
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

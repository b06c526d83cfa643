// SPDX-License-Identifier: GPL-3.0-or-later
// Adds a picture of music to the practice folder: read, checked and saved on another thread.
#pragma once

// Qt comes first: moc cannot read the standard headers before it.
#include <QObject>
#include <QString>
#include <QtQml/qqmlregistration.h>

#include "core/base/fault.h"
#include "pictures/picture_file.h"

#include <atomic>
#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <thread>

namespace piolo::models {

/// Window thread, which waits only in the destructor, where a page that is being drawn is cancelled.
class PictureTaking : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("belongs to the picture of a passage")
    /// True while reading, drawing or writing.
    Q_PROPERTY(bool busy READ busy NOTIFY changed)
    /// The number of pages to choose from, 0 while there is no choice; the chosen page, counted from 1.
    Q_PROPERTY(int pages READ pages NOTIFY changed)
    Q_PROPERTY(int page READ page WRITE setPage NOTIFY changed)
    /// One line; "" if all is well.
    Q_PROPERTY(QString fault READ fault NOTIFY changed)
public:
    /// Adds pictures to that practice folder; ignores everything if the name is empty.
    explicit PictureTaking(std::string folder, QObject* parent = nullptr);
    ~PictureTaking() override;

    [[nodiscard]] bool busy() const { return busy_; }
    [[nodiscard]] int pages() const { return pdf_ ? pages_ : 0; }
    [[nodiscard]] int page() const { return page_; }
    [[nodiscard]] QString fault() const { return fault_; }
    /// Clamped to the existing pages.
    void setPage(int page);

    /// Reads the picture with that path or, when dropped on the window, that URL. A PDF with more than one
    /// page waits for takePage(). Does nothing while busy.
    Q_INVOKABLE void read(const QString& pathOrAddress);
    /// Adds the chosen page. Does nothing while busy or without pages.
    Q_INVOKABLE void takePage();
    /// Forgets the file and cancels what is in progress.
    Q_INVOKABLE void close();

signals:
    void changed();
    /// It is in the folder, with that name.
    void taken(const QString& name);

private:
    struct Outcome {
        std::string name; ///< of the picture that was saved; "" if pages must be chosen, or after a fault
        std::shared_ptr<const pictures::PictureFile> pdf{};
        int pages = 0;
        std::optional<Fault> fault{};
    };
    using Dropped = std::shared_ptr<std::atomic<bool>>;
    using Pdf = std::shared_ptr<const pictures::PictureFile>;
    static Outcome readIn(const std::string& folder, const std::string& path, const Dropped& dropped);
    static Outcome pageIn(const std::string& folder, const Pdf& pdf, int page, const Dropped& dropped);
    void work(std::function<Outcome(const Dropped&)> task);
    void finish(const Outcome& outcome, bool dropped);

    std::string folder_;
    Pdf pdf_;
    int pages_ = 0;
    int page_ = 1;
    QString fault_;
    bool busy_ = false;
    Dropped dropped_ = std::make_shared<std::atomic<bool>>(false);
    std::thread worker_;
};

} // namespace piolo::models

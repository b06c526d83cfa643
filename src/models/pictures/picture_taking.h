// SPDX-License-Identifier: GPL-3.0-or-later
// A picture of music taken into the practice folder: read, checked and kept on a thread of its own.
#pragma once

// Qt stands first: moc cannot read the standard headers before it.
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

/// Window's thread, which never waits here but for the end: a page that is being drawn is given up then.
class PictureTaking : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("belongs to the picture of a passage")
    /// Reading, drawing or writing.
    Q_PROPERTY(bool busy READ busy NOTIFY changed)
    /// The pages there are to choose from, 0 while there is no choice; the one that is chosen, from 1.
    Q_PROPERTY(int pages READ pages NOTIFY changed)
    Q_PROPERTY(int page READ page WRITE setPage NOTIFY changed)
    /// One plain line; "" when all is well.
    Q_PROPERTY(QString fault READ fault NOTIFY changed)
public:
    /// Into that practice folder; an empty name takes nothing.
    explicit PictureTaking(std::string folder, QObject* parent = nullptr);
    ~PictureTaking() override;

    [[nodiscard]] bool busy() const { return busy_; }
    [[nodiscard]] int pages() const { return pdf_ ? pages_ : 0; }
    [[nodiscard]] int page() const { return page_; }
    [[nodiscard]] QString fault() const { return fault_; }
    /// Clamped to the pages there are.
    void setPage(int page);

    /// Takes the picture of that path, or of a file's address as it is dropped on the window. A PDF of more
    /// than one page waits for takePage(). Nothing while busy.
    Q_INVOKABLE void read(const QString& pathOrAddress);
    /// Takes the page that is chosen. Nothing while busy, or without pages.
    Q_INVOKABLE void takePage();
    /// Forgets the file and gives up what is being done.
    Q_INVOKABLE void close();

signals:
    void changed();
    /// It is in the folder, under that name.
    void taken(const QString& name);

private:
    struct Outcome {
        std::string name; ///< of what was taken; "" when pages are to be chosen from, or at a fault
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

// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/pictures/picture_taking.h"

#include "models/text/typed_file.h"
#include "pictures/kept_picture.h"
#include "pictures/pdf_pages.h"
#include "practice/faults/fault_text.h"

#include <QMetaObject>

#include <algorithm>

namespace piolo::models {

PictureTaking::PictureTaking(std::string folder, QObject* parent)
    : QObject(parent), folder_(std::move(folder)) {}

PictureTaking::~PictureTaking() {
    dropped_->store(true);
    if (worker_.joinable()) worker_.join();
}

void PictureTaking::setPage(int page) {
    page = std::clamp(page, 1, std::max(1, pages_));
    if (page == page_) return;
    page_ = page;
    emit changed();
}

PictureTaking::Outcome PictureTaking::readIn(const std::string& folder, const std::string& path,
                                             const Dropped& dropped) {
    auto file = pictures::readPictureFile(path);
    if (!file) return {{}, {}, 0, file.fault()};
    if (file->kind == pictures::PictureKind::pdf) {
        auto pdf = std::make_shared<const pictures::PictureFile>(std::move(file).value());
        const auto pages = pictures::pageCount(*pdf, [&dropped] { return dropped->load(); });
        if (!pages) return {{}, {}, 0, pages.fault()};
        if (*pages == 1) return pageIn(folder, pdf, 1, dropped);
        return {{}, std::move(pdf), *pages, {}};
    }
    if (auto checked = pictures::checkPicture(*file, [&dropped] { return dropped->load(); }); !checked)
        return {{}, {}, 0, checked.fault()};
    auto kept = pictures::keepPicture(folder, *file);
    return kept ? Outcome{*kept} : Outcome{{}, {}, 0, kept.fault()};
}

PictureTaking::Outcome PictureTaking::pageIn(const std::string& folder, const Pdf& pdf, int page,
                                             const Dropped& dropped) {
    const auto drawn = pictures::pageAsPicture(*pdf, page, [&dropped] { return dropped->load(); });
    if (!drawn) return {{}, {}, 0, drawn.fault()};
    auto kept = pictures::keepPicture(folder, *drawn);
    return kept ? Outcome{*kept} : Outcome{{}, {}, 0, kept.fault()};
}

void PictureTaking::work(std::function<Outcome(const Dropped&)> task) {
    if (worker_.joinable()) worker_.join(); // it has already passed on its result
    busy_ = true;
    fault_.clear();
    dropped_ = std::make_shared<std::atomic<bool>>(false);
    worker_ = std::thread([this, task = std::move(task), dropped = dropped_] {
        const Outcome outcome = task(dropped);
        QMetaObject::invokeMethod(
            this, [this, outcome, dropped] { finish(outcome, dropped->load()); }, Qt::QueuedConnection);
    });
    emit changed();
}

void PictureTaking::finish(const Outcome& outcome, bool dropped) {
    busy_ = false;
    if (dropped) {
        emit changed();
        return;
    }
    if (outcome.pdf) {
        pdf_ = outcome.pdf;
        pages_ = outcome.pages;
        page_ = 1;
    }
    if (outcome.fault) fault_ = practice::faultLine(*outcome.fault);
    emit changed();
    if (!outcome.name.empty()) emit taken(QString::fromStdString(outcome.name));
}

void PictureTaking::read(const QString& pathOrAddress) {
    const QString path = typedPath(pathOrAddress);
    if (busy_ || path.isEmpty() || folder_.empty()) return;
    close();
    work([folder = folder_, path = path.toStdString()](const Dropped& dropped) {
        return readIn(folder, path, dropped);
    });
}

void PictureTaking::takePage() {
    if (busy_ || !pdf_) return;
    work([folder = folder_, pdf = pdf_, page = page_](const Dropped& dropped) {
        return pageIn(folder, pdf, page, dropped);
    });
}

void PictureTaking::close() {
    dropped_->store(true);
    pdf_.reset();
    pages_ = 0;
    page_ = 1;
    fault_.clear();
    emit changed();
}

} // namespace piolo::models

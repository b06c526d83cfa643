// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/pictures/picture_frame.h"

#include <QLocale>

#include <algorithm>

namespace piolo::models {

namespace {

constexpr int perCent = Picture::whole / 100;

QString inPerCent(int place) { return QLocale().toString(place / static_cast<double>(perCent), 'f', 1); }

void shift(int& from, int& to, int by) {
    by = std::clamp(by, -from, Picture::whole - to);
    from += by;
    to += by;
}

void pullStart(int& from, int to, int by) {
    from = std::clamp(from + by, 0, std::max(0, to - PictureFrame::least));
}

void pullEnd(int from, int& to, int by) {
    to = std::clamp(to + by, std::min(from + PictureFrame::least, Picture::whole), Picture::whole);
}

} // namespace

QString PictureFrame::sentence() const {
    return qtTrId("picture.frame.spoken")
        .arg(inPerCent(now_.left), inPerCent(now_.right), inPerCent(now_.top), inPerCent(now_.bottom));
}

void PictureFrame::show(const Picture& picture) {
    shown_ = {picture.left, picture.top, picture.left + picture.width, picture.top + picture.height};
    held_ = shown_;
    now_ = shown_;
    emit changed();
}

Picture PictureFrame::cropped(Picture picture) const {
    picture.left = now_.left;
    picture.top = now_.top;
    picture.width = now_.right - now_.left;
    picture.height = now_.bottom - now_.top;
    return picture;
}

PictureFrame::Sides PictureFrame::moved(Sides from, int edges, int across, int down) {
    across = std::clamp(across, -Picture::whole, Picture::whole);
    down = std::clamp(down, -Picture::whole, Picture::whole);
    if (edges == All) {
        shift(from.left, from.right, across);
        shift(from.top, from.bottom, down);
        return from;
    }
    if ((edges & Left) != 0) pullStart(from.left, from.right, across);
    if ((edges & Right) != 0) pullEnd(from.left, from.right, across);
    if ((edges & Top) != 0) pullStart(from.top, from.bottom, down);
    if ((edges & Bottom) != 0) pullEnd(from.top, from.bottom, down);
    return from;
}

void PictureFrame::stand(const Sides& sides) {
    if (sides == now_) return;
    now_ = sides;
    emit changed();
}

void PictureFrame::move(int edges, int across, int down) { stand(moved(now_, edges, across, down)); }
void PictureFrame::dragTo(int edges, int across, int down) { stand(moved(held_, edges, across, down)); }
void PictureFrame::widen() { stand({}); }
void PictureFrame::revert() { stand(shown_); }

} // namespace piolo::models

// SPDX-License-Identifier: GPL-3.0-or-later
#include "journal/lines/sequence.h"

#include "journal/folder/practice_folder.h"
#include "journal/lines/line_head.h"

#include <algorithm>

namespace piolo::journal {

Sequence::Sequence(const FolderContents& contents) noexcept
    : seq_(contents.highest.ownSeq), order_(contents.highest.order) {}

Sequence::Numbers Sequence::next(std::int64_t nowMillis) noexcept {
    seq_ = std::min(seq_ + 1, static_cast<std::uint64_t>(exactCount.most));
    order_ = std::min(std::max(nowMillis, order_ + 1), mostOrder);
    return {seq_, order_};
}

} // namespace piolo::journal

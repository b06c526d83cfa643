// SPDX-License-Identifier: GPL-3.0-or-later
#include "text/passage_title.h"

#include "text/one_line.h"
#include "text/scale_words.h"

namespace piolo::text {

QString passageTitle(const Passage& passage) {
    const bool ownName = !passage.scale || passage.title.name != textOf(*passage.scale);
    return ownName ? nameShown(passage.title.name) : scaleTitle(*passage.scale);
}

} // namespace piolo::text

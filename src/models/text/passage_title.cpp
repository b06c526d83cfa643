// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/text/passage_title.h"

#include "models/text/scale_words.h"

namespace piolo::models {

QString passageTitle(const Passage& passage) {
    const bool ownName = !passage.scale || passage.title.name != textOf(*passage.scale);
    return ownName ? QString::fromStdString(passage.title.name) : scaleTitle(*passage.scale);
}

} // namespace piolo::models

// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/click/mix.h"

#include <algorithm>

namespace piolo::engine {

float Mix::gainOf(Layer layer) const noexcept {
    const auto index = static_cast<std::size_t>(layer);
    if (muted[index]) return 0.0F;
    return std::clamp(level, 0.0F, 1.0F) * std::clamp(layerLevel[index], 0.0F, 1.0F);
}

} // namespace piolo::engine

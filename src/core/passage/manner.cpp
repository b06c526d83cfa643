// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/passage/manner.h"

namespace piolo {

std::string_view nameOf(Articulation articulation) noexcept { return valueName(articulation); }

std::optional<Articulation> articulationNamed(std::string_view name) noexcept {
    return valueNamed<Articulation>(name);
}

std::string_view nameOf(Rhythm rhythm) noexcept { return valueName(rhythm); }

std::optional<Rhythm> rhythmNamed(std::string_view name) noexcept { return valueNamed<Rhythm>(name); }

} // namespace piolo

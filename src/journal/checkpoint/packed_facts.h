// SPDX-License-Identifier: GPL-3.0-or-later
// A history packed into one piece of memory, from which each passage's facts are taken when they are needed.
#pragma once

#include "core/history/stored_history.h"

#include <memory>
#include <optional>
#include <stop_token>
#include <string>
#include <string_view>

namespace piolo::journal {

/// Packs what is known of these facts, of which those that bear a known id are left out. Nothing when one of
/// them would not come back as it is, or when asked to stop.
[[nodiscard]] std::optional<std::string> packedFacts(const std::vector<Fact>& facts,
                                                     const std::stop_token& stop = {});
/// The same history again. `bytes` begins with what packedFacts() gave, at `from`. Nothing when it does not.
[[nodiscard]] std::shared_ptr<const StoredHistory> unpackedFacts(std::string bytes, std::size_t from);

} // namespace piolo::journal

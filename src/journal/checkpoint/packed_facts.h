// SPDX-License-Identifier: GPL-3.0-or-later
// A history packed into one block of memory, from which each passage's facts are read when they are needed.
#pragma once

#include "core/history/stored_history.h"

#include <memory>
#include <optional>
#include <stop_token>
#include <string>
#include <string_view>

namespace piolo::journal {

/// Packs these facts, leaving out those with a known id. Nothing if one of them would not be read back
/// unchanged, or if stopped on request.
[[nodiscard]] std::optional<std::string> packedFacts(const std::vector<Fact>& facts,
                                                     const std::stop_token& stop = {});
/// The same history again. `bytes` contains the result of packedFacts() at `from`. Nothing if it does not.
[[nodiscard]] std::shared_ptr<const StoredHistory> unpackedFacts(std::string bytes, std::size_t from);

} // namespace piolo::journal

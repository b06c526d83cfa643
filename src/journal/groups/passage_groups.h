// SPDX-License-Identifier: GPL-3.0-or-later
// Reads, checks and writes the groups of a passage: the same in the journal and in passage files.
#pragma once

#include "core/passage/passage.h"
#include "journal/json/json_object.h"

namespace piolo::journal {

/// The object stores the fault for an invalid value.
[[nodiscard]] PieceMusic pieceMusicOf(JsonObject group);
/// The keys "transposition", "bars" and "notes" of a piece.
[[nodiscard]] std::int32_t transpositionOf(JsonObject& piece);
[[nodiscard]] std::int32_t pieceBarsOf(JsonObject& piece);
[[nodiscard]] std::string notesOf(JsonObject& piece);
[[nodiscard]] Title titleOf(JsonObject group);
[[nodiscard]] Music musicOf(JsonObject group);
[[nodiscard]] Tempi tempiOf(JsonObject group);
[[nodiscard]] Manner mannerOf(JsonObject group);

/// Keys in a fixed order; optional ones are left out if they have their default value.
[[nodiscard]] nlohmann::ordered_json groupOf(const PieceMusic& music);
[[nodiscard]] nlohmann::ordered_json groupOf(const Title& title);
[[nodiscard]] nlohmann::ordered_json groupOf(const Music& music);
[[nodiscard]] nlohmann::ordered_json groupOf(const Tempi& tempi);
[[nodiscard]] nlohmann::ordered_json groupOf(const Manner& manner);

} // namespace piolo::journal

// SPDX-License-Identifier: GPL-3.0-or-later
// The groups of a passage, read and checked, and written: the same in the journal and in passage files.
#pragma once

#include "core/passage/passage.h"
#include "journal/json/json_object.h"

namespace piolo::journal {

/// A value that cannot be used is told where the object keeps its faults.
[[nodiscard]] PieceMusic pieceMusicOf(JsonObject group);
/// Of a piece: its keys "transposition", "bars" and "notes".
[[nodiscard]] std::int32_t transpositionOf(JsonObject& piece);
[[nodiscard]] std::int32_t pieceBarsOf(JsonObject& piece);
[[nodiscard]] std::string notesOf(JsonObject& piece);
[[nodiscard]] Title titleOf(JsonObject group);
[[nodiscard]] Music musicOf(JsonObject group);
[[nodiscard]] Tempi tempiOf(JsonObject group);
[[nodiscard]] Manner mannerOf(JsonObject group);

/// Keys in a fixed order; those that may be missing are, when they say nothing.
[[nodiscard]] nlohmann::ordered_json groupOf(const PieceMusic& music);
[[nodiscard]] nlohmann::ordered_json groupOf(const Title& title);
[[nodiscard]] nlohmann::ordered_json groupOf(const Music& music);
[[nodiscard]] nlohmann::ordered_json groupOf(const Tempi& tempi);
[[nodiscard]] nlohmann::ordered_json groupOf(const Manner& manner);

} // namespace piolo::journal

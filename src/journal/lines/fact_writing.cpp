// SPDX-License-Identifier: GPL-3.0-or-later
#include "journal/json/json_writing.h"
#include "journal/lines/fact_line.h"
#include "journal/lines/line_sum.h"

namespace piolo::journal {

std::string toLine(const Fact& fact) {
    JsonWriting::Json line;
    line["v"] = formatVersion;
    line["id"] = fact.id.text();
    line["device"] = fact.device;
    line["seq"] = fact.seq;
    line["order"] = fact.order;
    line["at"] = fact.at.text();
    line["kind"] = kindOf(fact.body);
    std::visit([&line](const auto& body) { write(line, body); }, fact.body);
    return withSum(line.dump(-1, ' ', false, JsonWriting::Json::error_handler_t::replace));
}

} // namespace piolo::journal

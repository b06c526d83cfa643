// SPDX-License-Identifier: GPL-3.0-or-later
#include "target.h"

#include "journal/lines/fact_line.h"
#include "journal/lines/line_head.h"

namespace piolo::fuzz {

void runLine(std::string_view bytes) {
    journal::LineHead head;
    const auto fact = journal::readLine(bytes, {"a.jsonl", 1}, head);
    hold(head.order >= 0 && head.order <= journal::mostOrder, "an order is in its range or 0");
    hold(head.device.empty() || Id::parse(head.device), "a device is an id or nothing");
    if (!fact) {
        hold(fact.fault().location == FaultLocation{"a.jsonl", 1}, "a fault names its place");
        return;
    }
    const auto again = journal::fromLine(journal::toLine(*fact), {"a.jsonl", 1});
    hold(again && *again == *fact, "what was read is written so that it is read again");
}

} // namespace piolo::fuzz

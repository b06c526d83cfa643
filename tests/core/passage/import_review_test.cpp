// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/passage/import_review.h"

#include <doctest/doctest.h>

#include <cstdint>
#include <vector>

using namespace piolo;
using enum ImportState;

namespace {

/// A piece whose one fact names it.
ImportItem item(std::uint64_t number, ImportState state) {
    ImportItem made;
    made.isPiece = true;
    made.id = Id{1, number};
    made.state = state;
    if (state != same) made.facts.push_back(PieceFact{made.id, "from the set", {}, {}});
    return made;
}

std::vector<ImportItem> oneOfEach() {
    return {item(1, added), item(2, same), item(3, differs), item(4, removedHere)};
}

/// The pieces that would be recorded, by the number of the item.
std::vector<std::uint64_t> taken(const ImportReview& review) {
    std::vector<std::uint64_t> numbers;
    for (const FactBody& fact : review.facts()) numbers.push_back(std::get<PieceFact>(fact).piece.low);
    return numbers;
}

} // namespace

TEST_CASE("without a tick, an import takes what is new and nothing else") {
    ImportReview review;
    CHECK_FALSE(review.takesAny());
    review.use(oneOfEach());
    CHECK(review.asked() == 2);
    CHECK(review.ticked() == 0);
    CHECK(review.count(added) == 1);
    CHECK(review.count(same) == 1);
    CHECK(review.takesAny());
    CHECK(taken(review) == std::vector<std::uint64_t>{1});
}

TEST_CASE("a ticked item is taken too, in the order of the plan, until it is unticked") {
    ImportReview review;
    review.use(oneOfEach());
    CHECK(review.tick(3, true));
    CHECK(review.tick(2, true));
    CHECK(review.tick(2, true)); // again: no difference
    CHECK(review.ticked() == 2);
    CHECK(review.isTicked(review.items()[2]));
    CHECK(taken(review) == std::vector<std::uint64_t>{1, 3, 4});
    CHECK(review.tick(2, false));
    CHECK(review.ticked() == 1);
    CHECK(taken(review) == std::vector<std::uint64_t>{1, 4});
}

TEST_CASE("only an item that differs or was removed here can be ticked") {
    ImportReview review;
    review.use(oneOfEach());
    CHECK_FALSE(review.tick(0, true));
    CHECK_FALSE(review.tick(1, true));
    CHECK_FALSE(review.tick(4, true));
    CHECK(review.ticked() == 0);
}

TEST_CASE("nothing is taken where all items are the same, or differ and are not ticked") {
    ImportReview review;
    review.use({item(2, same), item(3, differs)});
    CHECK_FALSE(review.takesAny());
    CHECK(review.facts().empty());
    CHECK(review.tick(1, true));
    CHECK(review.takesAny());
}

TEST_CASE("another plan keeps the ticks of the items that it still asks about") {
    ImportReview review;
    review.use(oneOfEach());
    CHECK(review.tick(2, true));
    CHECK(review.tick(3, true));
    review.use({item(3, same), item(4, removedHere)});
    CHECK(review.ticked() == 1);
    CHECK(taken(review) == std::vector<std::uint64_t>{4});
    review.use(oneOfEach());
    CHECK(review.ticked() == 1);
    review.clear();
    CHECK(review.items().empty());
    CHECK(review.ticked() == 0);
}

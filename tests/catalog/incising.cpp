// Which pieces of a detail count as incised where the file does not say. The species are those the publisher of the NDS
// names (awc.org): Southern Pine and Ponderosa Pine need none, Douglas fir, Hem-Fir and Spruce-Pine-Fir do.
#include "catalog/catalog.h"
#include "catalog/resolve.h"
#include "support/example_detail.h"
#include "support/shipped.h"

#include <catch2/catch.hpp>

using namespace toehold;
using catalog::IncisedBy;

namespace {

IncisedBy of_blocks(const std::string& species, bool treated) {
    model::BaseDetail detail = test::example_detail();
    for (model::Block& block : detail.framing.blocks) block.species = species;
    detail.framing.preservative_treated = treated;
    const catalog::Resolution resolution = catalog::resolve(detail, test::shipped_catalog());
    INFO(species);
    REQUIRE(resolution.resolved);
    return resolution.resolved->blocks.at(1).grade.incising;
}

}  // namespace

TEST_CASE("treated lumber counts as incised unless its species takes preservative without", "[published][B4]") {
    CHECK(of_blocks("southern-pine", true) == IncisedBy::species_needs_none);
    CHECK(of_blocks("douglas-fir-larch", true) == IncisedBy::assumed);
    CHECK(of_blocks("hem-fir", true) == IncisedBy::assumed);
    CHECK(of_blocks("spruce-pine-fir", true) == IncisedBy::assumed);
}

TEST_CASE("untreated lumber is not incised", "[unit][B4]") {
    CHECK(of_blocks("southern-pine", false) == IncisedBy::untreated);
    CHECK(of_blocks("douglas-fir-larch", false) == IncisedBy::untreated);
}

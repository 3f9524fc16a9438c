// What is from memory is said where this detail rests on it, and nowhere else.
#include "review/memory/used.h"

#include "support/example.h"

#include "review/memory/values.h"
#include "review/review.h"

#include <catch2/catch.hpp>

#include <algorithm>

using namespace toehold;

namespace {

bool names(const review::Review& review, const std::string& words) {
    const std::vector<format::Phrase> all = review::from_memory(review);
    return std::any_of(all.begin(), all.end(), [&](const format::Phrase& one) {
        return format::english(one).find(words) != std::string::npos;
    });
}

}  // namespace

TEST_CASE("aluminum's values from memory are named for an aluminum plate and not for a steel one", "[unit]") {
    const catalog::Resolved steel = test::example_resolved();
    CHECK_FALSE(names(review::evaluate(steel, ""), "holes in aluminum"));
    catalog::Resolved aluminum = steel;
    on_deck(aluminum).plate_metal.kind = catalog::MetalKind::aluminum;
    CHECK(names(review::evaluate(aluminum, ""), "holes in aluminum"));
}

TEST_CASE("a row of a catalog is named by its evidence, once however often it is used", "[unit]") {
    catalog::Resolved resolved = test::example_resolved();
    for (catalog::MemberMaterial& block : resolved.blocks) {
        block.species.name = "Some pine";
        block.species.source = {catalog::Evidence::published, "read"};
    }
    CHECK_FALSE(names(review::evaluate(resolved, ""), "Some pine"));
    for (catalog::MemberMaterial& block : resolved.blocks)
        block.species.source.evidence = catalog::Evidence::from_memory;
    const review::Review review = review::evaluate(resolved, "");
    const std::vector<format::Phrase> all = review::from_memory(review);
    CHECK(std::count_if(all.begin(), all.end(), [](const format::Phrase& one) {
              return format::english(one) == "catalog values of Some pine";
          }) == 1);
    CHECK(format::english(review::memory_caution(review)).find("Some pine") != std::string::npos);
}

TEST_CASE("the table names a file, a value and a source in every row", "[unit]") {
    CHECK(review::from_memory().size() > 20);
    for (const review::FromMemory& one : review::from_memory()) {
        CHECK(one.file.find('/') != std::string_view::npos);
        CHECK_FALSE(one.value.empty());
        CHECK_FALSE(one.source.empty());
    }
}

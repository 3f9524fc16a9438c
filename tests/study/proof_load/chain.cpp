// The chain of a base against figures by hand, and what it leaves out or refuses.
#include "resistance/ultimate/withdrawal.h"
#include "study/proof_load/proof_load.h"
#include "study/proof_load/two_screws.h"
#include "support/compare.h"
#include "support/contains.h"

#include <algorithm>
#include <cmath>
#include <stdexcept>
#include <utility>

using namespace toehold;
using study::TestedLink;

namespace {

study::TestChainOutcome chain_of(const model::BaseDetail& detail, model::Moisture moisture) {
    const catalog::Resolved resolved = test::resolved_by_shipped(detail);
    const study::TestedBaseOutcome base = study::test_base(resolved, study::test_push_lb);
    if (!base.base) return {std::nullopt, base.failure};
    return study::test_chain(resolved, *base.base, moisture);
}

study::TestChain sound(study::TestChainOutcome outcome) {
    if (!outcome.chain) throw std::runtime_error(format::english(outcome.failure));
    return std::move(*outcome.chain);
}

/// Solved once for every case of this file.
const study::TestChain& two_screws_chain(model::Moisture moisture) {
    static const study::TestChain wet = sound(chain_of(test::two_screws(), model::Moisture::wet));
    static const study::TestChain dry = sound(chain_of(test::two_screws(), model::Moisture::dry));
    return moisture == model::Moisture::wet ? wet : dry;
}

const TestedLink& link(const study::TestChain& chain, const std::string& check, const std::string& part) {
    const auto found = std::find_if(chain.links.begin(), chain.links.end(), [&](const TestedLink& one) {
        return one.check == check && model::key(one.part) == part;
    });
    REQUIRE(found != chain.links.end());
    return *found;
}

bool leaves_out(const study::TestChain& chain, const std::string& check) {
    return std::any_of(chain.left_out.begin(), chain.left_out.end(),
                       [&check](const study::LeftOutLink& one) { return one.check == check; });
}

std::string refusal(const model::BaseDetail& detail) {
    const study::TestChainOutcome outcome = chain_of(detail, model::Moisture::wet);
    CHECK_FALSE(outcome.chain);
    return format::english(outcome.failure);
}

}  // namespace

TEST_CASE("Two lag screws: the mean is p L, a pound of push pulls h/(2 d) on each", "[closed-form]") {
    const study::TestChain& chain = two_screws_chain(model::Moisture::dry);
    // 8100 (0.95 x 0.55)^1.5 0.375^0.75 = 1,466 lb/in, times 3.28125 in: 4,810 lb
    const double mean_lb =
        8100.0 * std::pow(0.95 * test::screw_gravity, 1.5) * std::pow(test::screw_in, 0.75) * test::screw_thread_in;
    const double per_lb = test::lever_in() / (2.0 * test::screw_arm_in);
    for (const char* const anchor : {"anchor A", "anchor B"}) {
        const TestedLink& screw = link(chain, "anchor-withdrawal", anchor);
        CHECK(screw.mean == Approx(mean_lb).epsilon(0.003));  // 0.95 is a rounded ratio
        CHECK(screw.demand_per_lb == Approx(per_lb).epsilon(0.01));
        CHECK(screw.constant_demand == 0.0);
        CHECK(screw.breaks_at_lb == Approx(screw.mean / screw.demand_per_lb));
        CHECK_FALSE(screw.yields());
    }
    // Wet in service: C_M 0.7 of NDS 2018 Table 11.3.3.
    CHECK(link(two_screws_chain(model::Moisture::wet), "anchor-withdrawal", "anchor A").mean ==
          Approx(0.7 * link(chain, "anchor-withdrawal", "anchor A").mean));
}

TEST_CASE("Steel's means by hand: the screw's root at 77 ksi, the post at 1.3 Fy Z", "[closed-form]") {
    const study::TestChain& chain = two_screws_chain(model::Moisture::wet);
    // ASME B18.2.1 root of a 3/8 in lag screw 0.265 in: 77,000 x pi/4 x 0.265^2 = 4,247 lb
    CHECK(link(chain, "anchor-steel-tension", "anchor A").mean == Approx(4247.0).epsilon(0.002));
    // 3 x 3 x 0.25, wall 0.2325 by B4.2, Z about 2.48 in3 of a 3 x 3 x 1/4 tube (AISC manual); 1.3 x 46 ksi
    const TestedLink& post = link(chain, "post-bending", "post");
    CHECK(post.mean == Approx(1.3 * 46000.0 * 2.48).epsilon(0.01));
    CHECK(post.demand_per_lb == Approx(test::lever_in()));
    CHECK(post.yields());
}

TEST_CASE("The weakest link comes first, and the screws share the density of their block", "[property]") {
    const study::TestChain& chain = two_screws_chain(model::Moisture::wet);
    CHECK(std::is_sorted(chain.links.begin(), chain.links.end(), [](const TestedLink& one, const TestedLink& other) {
        return one.breaks_at_lb < other.breaks_at_lb;
    }));
    const auto breaks =
        std::find_if(chain.links.begin(), chain.links.end(), [](const TestedLink& one) { return !one.yields(); });
    CHECK(breaks->check == "anchor-withdrawal");
    const auto densities = std::count_if(chain.common.begin(), chain.common.end(), [](const study::CommonScatter& one) {
        return one.cause == study::CommonCause::density;
    });
    CHECK(densities == 1);
    CHECK(chain.chain.links.size() <= chain.links.size());
    CHECK(chain.chain.factors.size() == chain.common.size());
}

TEST_CASE("Links without a published mean are named, never given a number", "[property]") {
    const study::TestChain& chain = two_screws_chain(model::Moisture::wet);
    for (const char* const check : {"member-end-connection", "bearing-framing", "anchor-steel-shear"}) {
        INFO(check);
        CHECK(leaves_out(chain, check));
        CHECK(std::none_of(chain.links.begin(), chain.links.end(),
                           [check](const TestedLink& one) { return one.check == check; }));
    }
    // What other links stand for, and dimensions, are neither.
    for (const char* const check : {"anchor-combined", "anchor-spacing", "guard-deflection", "member-shear"})
        CHECK_FALSE(leaves_out(chain, check));
}

TEST_CASE("Stainless steel has no published mean here and is left out", "[property]") {
    model::BaseDetail detail = test::two_screws();
    on_deck(detail).plate.metal = "stainless-304";
    on_deck(detail).weld->filler = "e308l";
    const study::TestChainOutcome outcome = chain_of(detail, model::Moisture::wet);
    REQUIRE(outcome.chain);
    CHECK(leaves_out(*outcome.chain, "plate-bending"));
}

TEST_CASE("A base whose load does not grow in proportion, or ends somewhere, gets a sentence", "[bad-input]") {
    model::BaseDetail tight = test::two_screws();
    on_deck(tight).anchors.front().preload_lb = 500.0;
    CHECK(test::contains(refusal(tight), "stated preload"));

    model::BaseDetail loose = test::two_screws();
    loose.framing.blocks.front().to_end.connection = std::monostate{};
    CHECK(test::contains(refusal(loose), "nothing there has a strength"));

    model::BaseDetail weak = test::two_screws();
    std::get<model::ReportedConnector>(weak.framing.blocks.front().to_end.connection).uplift_lb = 300.0;
    CHECK(test::contains(refusal(weak), "must be expected to break first"));

    model::BaseDetail open = test::two_screws();
    on_deck(open).weld.reset();
    CHECK(test::contains(refusal(open), "not specified in the file"));

    model::BaseDetail over = test::two_screws();
    on_deck(over).plate.holes.clear();
    CHECK_FALSE(refusal(over).empty());
}

#include "editing/sizes/ranges_form.h"

#include "editing/samples.h"
#include "support/shipped.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <string>
#include <vector>

using namespace toehold;
using editing::RangesForm;

namespace {

const char* const sound = "heron-landing-lags-in-deep-blocks";

template <class Value>
bool same_set(std::vector<Value> one, const std::vector<Value>& other) {
    if (one.size() != other.size()) return false;
    return std::all_of(other.begin(), other.end(), [&](const Value& value) {
        const auto found = std::find(one.begin(), one.end(), value);
        if (found == one.end()) return false;
        one.erase(found);
        return true;
    });
}

std::size_t row_of(const RangesForm& form, const std::string& key) {
    const auto& rows = form.rows();
    const auto found = std::find_if(rows.begin(), rows.end(), [&](const auto& row) { return row.key == key; });
    REQUIRE(found != rows.end());
    return static_cast<std::size_t>(found - rows.begin());
}

void tick_only(RangesForm& form, const std::string& key, const std::vector<std::string>& words) {
    const std::size_t row = row_of(form, key);
    form.tick_all(row, false);
    for (std::size_t at = 0; at < form.rows()[row].ticks.size(); ++at) {
        const std::string& own = form.rows()[row].ticks[at].words;
        if (std::find(words.begin(), words.end(), own) != words.end()) form.tick(row, at, true);
    }
}

}  // namespace

TEST_CASE("ranges put into the form come out of it again", "[property]") {
    for (const char* name : {sound, "heron-landing-through-bolts"}) {
        INFO(name);
        const search::Ranges start = search::default_ranges(test::shipped_detail(name), test::shipped_catalog());
        for (const units::System system : {units::System::us, units::System::si}) {
            const RangesForm form(test::shipped_catalog(), start, system);
            REQUIRE(form.ranges());
            CHECK(same_set(form.ranges()->plates, start.plates));
            CHECK(same_set(form.ranges()->thicknesses_in, start.thicknesses_in));
            CHECK(same_set(form.ranges()->metals, start.metals));
            CHECK(same_set(form.ranges()->anchors, start.anchors));
            CHECK(same_set(form.ranges()->lengths_in, start.lengths_in));
            CHECK(same_set(form.ranges()->washers, start.washers));
            CHECK(same_set(form.ranges()->backings, start.backings));
            CHECK(same_set(form.ranges()->blocks, start.blocks));
            CHECK(same_set(form.ranges()->block_sizes, start.block_sizes));
            CHECK(same_set(form.ranges()->ends, start.ends));
            CHECK(form.ranges()->patterns.size() == start.patterns.size());
        }
    }
}

TEST_CASE("a run of sizes is every one from the first to the last by the step", "[unit]") {
    RangesForm form(test::shipped_catalog(), {}, units::System::us);
    const std::size_t row = row_of(form, "plate");
    CHECK(form.argument(row).empty());
    CHECK(format::english(form.summary(row)) == "as in the detail");
    form.tick(row, form.rows()[row].ticks.size() - 1, true);
    for (const auto& [entry, text] :
         std::vector<std::pair<std::size_t, std::string>>{{0, "5 in"}, {1, "6"}, {2, "7"}, {3, "8 in"}, {4, "1"}})
        form.type(row, entry, text);
    CHECK(form.argument(row) == "plate=5x7..6x8/1");
    REQUIRE(form.ranges());
    const std::vector<search::PlateChoice> expected{search::PlateSize{5, 7}, search::PlateSize{5, 8},
                                                    search::PlateSize{6, 7}, search::PlateSize{6, 8}};
    CHECK(same_set(form.ranges()->plates, expected));
}

TEST_CASE("each pattern goes with each edge distance", "[unit]") {
    RangesForm form(test::shipped_catalog(), {}, units::System::us);
    const std::size_t row = row_of(form, "pattern");
    tick_only(form, "pattern", {"2x2", "3x2"});
    form.type(row, 0, "1");
    form.type(row, 1, "1 1/2 in");
    form.type(row, 2, "1/4");
    REQUIRE(form.ranges());
    CHECK(form.ranges()->patterns.size() == 6);
    CHECK(form.ranges()->patterns.front().edge_in == 1.0);
    CHECK(form.ranges()->patterns.back().edge_in == 1.5);
}

TEST_CASE("what cannot be read is refused in its row, and then nothing can be looked for", "[bad-input]") {
    RangesForm form(test::shipped_catalog(), {}, units::System::us);
    const std::size_t row = row_of(form, "pattern");
    tick_only(form, "pattern", {"2x2"});
    form.type(row, 0, "wide");
    CHECK_FALSE(form.ranges());
    CHECK_FALSE(form.refusal(row).empty());
    CHECK(form.refusal(row_of(form, "plate")).empty());
    form.type(row, 0, "2");
    form.type(row, 1, "1");
    form.type(row, 2, "1/2");
    CHECK_FALSE(form.ranges());  // the last before the first
    form.type(row, 1, "2");
    form.type(row, 2, "0");
    CHECK_FALSE(form.ranges());
    form.type(row, 2, "1/2");
    CHECK(form.ranges());
}

TEST_CASE("ranges of a post on the side have rows of their own, and come out of the form as they went in",
          "[property]") {
    const model::BaseDetail detail = test::post_on_side();
    const catalog::Resolution resolution = catalog::resolve(detail, test::shipped_catalog());
    REQUIRE(resolution.resolved);
    const search::Ranges start = search::default_ranges(*resolution.resolved, test::shipped_catalog());
    for (const units::System system : {units::System::us, units::System::si}) {
        const RangesForm form(test::shipped_catalog(), start, system);
        REQUIRE(form.ranges());
        CHECK(same_set(form.ranges()->anchors, start.anchors));
        CHECK(same_set(form.ranges()->backings, start.backings));
        CHECK(same_set(form.ranges()->side.plies, start.side.plies));
        CHECK(same_set(form.ranges()->side.behind, start.side.behind));
        CHECK(same_set(form.ranges()->side.rim_ends_lb, start.side.rim_ends_lb));
        CHECK(same_set(form.ranges()->side.post_sizes, start.side.post_sizes));
        CHECK(same_set(form.ranges()->side.post_bottoms_in, start.side.post_bottoms_in));
        CHECK(same_set(form.ranges()->side.heights, start.side.heights));
        CHECK(same_set(form.ranges()->side.heads, start.side.heads));
        CHECK(same_set(form.ranges()->side.ties_lb, start.side.ties_lb));
        CHECK(form.ranges()->plates.empty());
    }
    RangesForm form(test::shipped_catalog(), start, units::System::us);
    tick_only(form, "heights", {"2:7"});
    tick_only(form, "ties", {"hardware"});
    REQUIRE(form.ranges());
    CHECK(form.ranges()->side.heights == std::vector<search::RowHeights>{{2.0, 7.0}});
    CHECK(form.argument(row_of(form, "heights")) == "heights=2:7");
    CHECK(form.argument(row_of(form, "ties")) == "ties=hardware 1000,hardware 1500,hardware 2000");
}

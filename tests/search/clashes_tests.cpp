// Which choices do not go together, why, and how many candidates they cost.
#include "search/run/clashes.h"

#include "search/ranges/ranges.h"
#include "search/run/run.h"
#include "small_space.h"
#include "support/shipped.h"

#include <catch2/catch.hpp>

#include <algorithm>

using namespace toehold;
using search::Applied;
using search::Candidate;
using search::Choice;
using search::Clash;
using search::Judged;
using search::Judgement;
using search::Space;

namespace {

/// Options that change nothing, beside those given.
search::Axis axis(std::string id, std::vector<search::Option> options) {
    return {id, format::verbatim(id), std::move(options)};
}
search::Option plain(std::string label) {
    return {std::move(label), [](model::BaseDetail&) { return Applied{}; }};
}
search::Option thickness(double in) {
    return {std::to_string(in), [in](model::BaseDetail& detail) {
                on_deck(detail).plate.thickness_in = in;
                return Applied{};
            }};
}

/// 2 x 3 x 2 candidates: `thin` goes with the thick plate alone, `none` with none, and the last makes no detail.
Space clashing_space() {
    search::Option thin{"thin", [](model::BaseDetail& detail) {
                            if (on_deck(detail).plate.thickness_in > 0.4) return Applied{};
                            return search::refused(format::verbatim("the plate is thin"));
                        }};
    search::Option none{"none", [](model::BaseDetail&) { return search::meaningless(format::verbatim("no sense")); }};
    search::Option low{"low", [](model::BaseDetail& detail) {
                           detail.guard.height_in = -1.0;
                           return Applied{};
                       }};
    Space space = test::hopeless_space();
    space.axes = {axis("thickness", {thickness(0.375), thickness(0.5)}), axis("choice", {plain("any"), thin, none}),
                  axis("height", {plain("as it is"), low})};
    return space;
}

/// As a search knows them without judging: details are whatever `check` would take.
std::vector<Judgement> details_among(const Space& space, Candidate end, Judged& judged) {
    for (Candidate candidate = 0; candidate < end; ++candidate) {
        const auto detail = search::detail_of(space, candidate);
        const bool sound = detail && search::sound(*detail, test::shipped_catalog());
        judged.add({candidate, sound ? search::Stage::whole : search::Stage::choice});
    }
    return judged.sorted();
}

std::vector<Clash> clashes_among(const Space& space, Candidate end) {
    Judged judged(search::size(space));
    const std::vector<Judgement> details = details_among(space, end, judged);
    return search::clashes(space, test::shipped_catalog(), judged, details);
}

}  // namespace

TEST_CASE("each clash has its option, what it depends on, its reason and its candidates", "[closed-form]") {
    const std::vector<Clash> all = clashes_among(clashing_space(), 12);
    REQUIRE(all.size() == 3);
    // Of the six that apply, 2 thick ones with `thin` and 4 with `any`, half are low: 3 details are none.
    CHECK_FALSE(all[0].choice.has_value());
    CHECK(all[0].candidates == 3);
    CHECK(all[0].with == std::vector<Choice>{{2, 1}});
    CHECK(format::english(all[0].why) == "height (in) is out of range");
    // `thin` on the thin plate, both heights.
    CHECK(all[1].choice == Choice{1, 1});
    CHECK(all[1].with == std::vector<Choice>{{0, 0}});
    CHECK(format::english(all[1].why) == "the plate is thin");
    CHECK(all[1].candidates == 2);
    // Whatever is chosen before: it depends on nothing. What means nothing stands last, however many they are.
    CHECK(all[2].choice == Choice{1, 2});
    CHECK(all[2].with.empty());
    CHECK(all[2].meaningless);
    CHECK(all[2].candidates == 4);
}

TEST_CASE("only candidates judged so far are counted", "[closed-form]") {
    // 0 any, 1 any and low, 2 and 3 thin: of the first three one is low and one refused.
    const std::vector<Clash> all = clashes_among(clashing_space(), 3);
    REQUIRE(all.size() == 2);
    CHECK(all[0].candidates == 1);
    CHECK(all[1].candidates == 1);
    CHECK(clashes_among(clashing_space(), 1).empty());
}

TEST_CASE("the reasons of shipped ranges account for every candidate that is no detail", "[property]") {
    search::Ranges ranges;
    for (const char* text : {"plate=1 1/2x6,5x5,plate-6x8-1/2", "thickness=3/8", "anchor=lag-3/8,bolt-1/2",
                             "length=6,8", "pattern=2x2@1 1/8,2x2@3", "backing=washer,3x1/4",
                             "blocks=as-is,upright,flat,next-bay", "block-size=4x8,4x12", "ends=as-is,angles"})
        REQUIRE(search::parse_range(text, test::shipped_catalog(), ranges).empty());
    const Space space =
        search::make_space(test::shipped_detail("heron-landing-lags-in-deep-blocks"), ranges, test::shipped_catalog());
    Judged judged(search::size(space));
    const std::vector<Judgement> details = details_among(space, search::size(space), judged);
    Candidate stopped = 0;
    std::vector<std::string> reasons;
    for (const Clash& clash : search::clashes(space, test::shipped_catalog(), judged, details)) {
        stopped += clash.candidates;
        reasons.push_back(format::english(clash.why));
    }
    CHECK(stopped == judged.counts().by_stage[0]);
    const auto told = [&](const char* why) { return std::find(reasons.begin(), reasons.end(), why) != reasons.end(); };
    CHECK(told("the post's foot hangs over the plate's edge"));  // a 2 in tube on 1 1/2 in
    CHECK(told("the stock plate has another thickness"));        // 1/2 in, where 3/8 in is asked for
    CHECK(told("the block would be deeper than the joists"));    // a 4x12 between 2x10
    CHECK(told("the plate is too small for holes at that distance from its edges"));  // 3 in, on 5 x 5
    CHECK(told("only bolts have a nut below the framing"));
    CHECK(told("only screws are tried in several lengths"));
}

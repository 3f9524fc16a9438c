// What is built every day can be built: the rules of this folder are silent on every demo and every stock plate.
#include "checks/findings/buildable/plates.h"
#include "checks/run_check.h"
#include "support/compare.h"
#include "support/shipped.h"
#include "xml/detail/plates_file.h"

#include <filesystem>

using namespace toehold;

namespace {

constexpr const char* rules[] = {"anchor-inside-post", "head-on-weld",     "hole-in-post",
                                 "hole-oversize",      "holes-too-close",  "washer-off-plate",
                                 "washers-overlap",    "wrench-clearance", "weld-larger-than-wall"};

std::string said_of(const catalog::Resolved& resolved) {
    std::string all;
    for (const char* rule : rules) {
        for (const checks::Finding& finding : test::run_finding(rule, resolved))
            all += std::string(rule) + ": " + format::english(finding.message) + "\n";
    }
    return all;
}

void check_silent(const catalog::Resolved& resolved) {
    const std::string said = said_of(resolved);
    INFO(said);
    CHECK(said.empty());
}

/// The lag screw a stock plate's hole is for, 1/16 in thinner than the hole, with a wide washer by choice.
catalog::Anchor lag_in(const model::Hole& hole, bool washer) {
    const double hole_in = std::get<model::RoundHole>(hole.shape).diameter_in;
    const std::string size = hole_in < 0.5 ? "3/8" : "1/2";
    const catalog::LagScrewSize& lag = test::row(test::shipped_catalog().lag_screws, "lag-" + size);
    catalog::Anchor anchor = test::example_resolved().anchors.at(0);
    anchor.id = hole.id;
    anchor.diameter_in = lag.diameter_in;
    anchor.head_width_in = lag.head_width_in;
    anchor.hole_diameter_in = hole_in;
    if (washer) anchor.washer = test::row(test::shipped_catalog().washers, "washer-wide-" + size);
    return anchor;
}

/// On it a post of 2 in, 1 1/2 in on the smallest plates, in a 3/16 in fillet.
catalog::Resolved built_on(const model::Plate& plate, bool washer) {
    catalog::Resolved resolved = test::example_resolved();
    const double post_in = model::extent_in(plate.outline, model::PlanAxis::x) < 4.5 ? 1.5 : 2.0;
    resolved.detail.post = model::RectangularTube{post_in, post_in, 0.125, "steel-a500-b"};
    on_deck(resolved.detail).plate = plate;
    resolved.anchors.clear();
    for (const model::Hole& hole : plate.holes) resolved.anchors.push_back(lag_in(hole, washer));
    return resolved;
}

}  // namespace

TEST_CASE("Every demo can be built", "[unit]") {
    const std::vector<std::string> names = test::demo_names();
    REQUIRE(names.size() > 10);
    for (const std::string& name : names) {
        INFO(name);
        check_silent(test::shipped_detail(name));
    }
}

TEST_CASE("Every stock plate can be built with the lag screws its holes are for", "[unit]") {
    std::size_t plates = 0;
    for (const char* file : {"steel.xml", "aluminum.xml"}) {
        for (const model::Plate& plate :
             xml::read_plates(std::filesystem::path(TOEHOLD_DATA_FOLDER) / "plates" / file).plates) {
            INFO(plate.id);
            ++plates;
            check_silent(built_on(plate, false));
            check_silent(built_on(plate, true));
        }
    }
    CHECK(plates >= 14);
}

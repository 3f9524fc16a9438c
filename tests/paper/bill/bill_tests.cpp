// The bill of materials of the shipped project, counted by hand from its file.
#include "paper/bill/bill.h"

#include "support/contains.h"
#include "support/three_posts.h"

#include <catch2/catch.hpp>

#include <algorithm>

using namespace toehold;
using paper::BillItem;
using paper::BillKind;
using test::contains;

namespace {

paper::Bill bill_of(const model::Project& project, units::System system = units::System::us) {
    const auto posts = test::resolved_posts(project);
    return paper::bill_of_materials(posts.project, posts.posts, system);
}

std::vector<BillItem> of_kind(const paper::Bill& bill, BillKind kind) {
    std::vector<BillItem> items;
    std::copy_if(bill.items.begin(), bill.items.end(), std::back_inserter(items),
                 [kind](const BillItem& item) { return item.kind == kind; });
    return items;
}

const BillItem& only(const std::vector<BillItem>& items) {
    REQUIRE(items.size() == 1);
    return items.front();
}

const BillItem& named(const std::vector<BillItem>& items, const std::string& words) {
    const auto found = std::find_if(items.begin(), items.end(), [&words](const BillItem& item) {
        return contains(format::english(item.name), words);
    });
    REQUIRE(found != items.end());
    return *found;
}

}  // namespace

TEST_CASE("Three posts: their plates, screws, washers and lengths", "[closed-form]") {
    const paper::Bill bill = bill_of(test::three_posts());
    const auto posts = of_kind(bill, BillKind::post);
    CHECK(only(posts).quantity == 3);
    // The guard is 42 in over the boards, on which the plate of 5/8 in stands.
    CHECK(posts.front().length_in == 42.0 - 0.625);
    CHECK(format::english(posts.front().name).rfind("Tube 2 x 2 x 3/16 wall", 0) == 0);
    const auto plates = of_kind(bill, BillKind::plate);
    CHECK(only(plates).quantity == 3);
    CHECK(contains(format::english(plates.front().name), "HL-95: 9 1/2 x 9 1/2 x 5/8 in"));
    CHECK(plates.front().where == std::vector<std::string>{"P1", "P2", "P3"});
    const auto anchors = of_kind(bill, BillKind::anchor);
    CHECK(only(anchors).quantity == 12);
    CHECK(anchors.front().length_in == 8.0);
    CHECK(contains(format::english(anchors.front().material), "ASTM A153"));
    CHECK(only(of_kind(bill, BillKind::washer)).quantity == 12);
    CHECK(bill.plate_weight_lb() == Approx(3.0 * plates.front().weight_lb.value()));
}

TEST_CASE("Blocks and connectors are counted once for the project, not once a post", "[closed-form]") {
    const paper::Bill bill = bill_of(test::three_posts());
    const auto blocks = of_kind(bill, BillKind::block);
    CHECK(only(blocks).quantity == 6);
    CHECK(blocks.front().length_in == 14.5);
    CHECK(format::english(blocks.front().name) == "Block 4x8");
    const auto connectors = of_kind(bill, BillKind::connector);
    // Both ends of six blocks; ten joists at rim, ledger and beam.
    CHECK(named(connectors, "both sides of the block").quantity == 12);
    CHECK(named(connectors, "both sides of the joist, report").quantity >= 10);
    CHECK(named(connectors, "joist hanger").quantity == 10);
    CHECK(named(connectors, "joist hanger").where == std::vector<std::string>{"S1"});
}

TEST_CASE("Angles, nails and toe-nails at block ends come with what fastens them", "[closed-form]") {
    model::Project project = test::three_posts();
    model::SideAngles angles;
    angles.thickness_in = 0.25;
    angles.metal = "steel-a36";
    angles.kind = model::SideAngles::Kind::lag_screw;
    angles.diameter_in = 0.25;
    angles.length_in = 2.0;
    angles.per_leg = 2;
    angles.spacing_in = 2.0;
    angles.gauge_in = 1.0;
    model::EndGrainFasteners nails;
    nails.diameter_in = 0.162;
    nails.length_in = 3.5;
    nails.count = 3;
    for (model::Block& block : project.framing.blocks) {
        block.from_end.connection = angles;
        block.to_end.connection = nails;
    }
    project.framing.blocks.front().to_end.connection = {};
    const paper::Bill bill = bill_of(project);
    // Two angles at one end of each of six blocks, two lag screws in each of two legs.
    CHECK(named(of_kind(bill, BillKind::connector), "Steel angle 1/4 in thick").quantity == 12);
    const auto fasteners = of_kind(bill, BillKind::fastener);
    CHECK(named(fasteners, "Lag screw 1/4 in").quantity == 48);
    CHECK(named(fasteners, "16d common").quantity == 15);
    CHECK(contains(format::english(bill.notes.front()), "the connections of 1 member ends"));
}

TEST_CASE("A bolt without a length reaches through to the next half inch; its washers and plates are counted",
          "[closed-form]") {
    model::Project project = test::three_posts();
    model::AnchorGroup& group = std::get<model::PlateOnDeck>(project.mounts.front().mount).anchors.front();
    model::ThroughBolt bolt{"bolt-3/8", "a307", model::BackingPlate{3.0, 3.0, 0.25, "steel-a36"}};
    group.fastener = bolt;
    const paper::Bill bill = bill_of(project);
    const auto anchors = of_kind(bill, BillKind::anchor);
    // Washer 0.083, plate 5/8, boards 1, block 7 1/4, backing 1/4, nut 3/8: 9.58 in.
    CHECK(only(anchors).length_in == 10.0);
    CHECK(contains(format::english(anchors.front().name), "with nut"));
    const auto backing = of_kind(bill, BillKind::backing);
    CHECK(only(backing).quantity == 12);
    CHECK(format::english(backing.front().name) == "Backing plate 3 x 3 x 1/4 in");
}

TEST_CASE("A bill as a table fits a terminal, and as a table for a spreadsheet has a row an item", "[unit]") {
    const paper::Bill bill = bill_of(test::three_posts());
    const std::string text = paper::bill_text(bill, {});
    CHECK(contains(text, "BASE PLATES"));
    CHECK(contains(text, "P1 to P3"));
    CHECK(contains(text, "47.5 lb"));  // three of 15.8
    std::size_t longest = 0;
    for (std::size_t at = 0, end = 0; (end = text.find('\n', at)) != std::string::npos; at = end + 1)
        longest = std::max(longest, end - at);
    CHECK(longest <= 104);  // bytes: a fraction's sign may take more than one column
    const std::string csv = paper::bill_csv(bill);
    CHECK(static_cast<std::size_t>(std::count(csv.begin(), csv.end(), '\n')) == bill.items.size() + 1);
    CHECK(contains(csv, ",base_plate,3,"));
    CHECK(contains(paper::bill_text(bill_of(test::three_posts(), units::System::si), {units::System::si}), "7.2 kg"));
}

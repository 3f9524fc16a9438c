// Where a new detail of a post on the side begins: an ordinary deck's edge in round numbers, none of them anybody's
// decision yet.
#include "editing/edits.h"
#include "editing/edits/starting_wood.h"
#include "editing/fields/choices.h"
#include "model/side_geometry.h"

namespace toehold::editing {
namespace {

using catalog::Catalog;
using model::BaseDetail;

constexpr double example_guard_in = 36.0;
constexpr double example_post_in = 3.5;
constexpr double lumber_in = 1.5, lumber_depth_in = 9.25;
constexpr int rim_plies = 2;
constexpr double bay_in = 16.0;
constexpr double example_span_in = 96.0;
constexpr double block_length_in = 10.25, block_from_post_axis_in = 2.5;
constexpr double beam_from_rim_in = 24.0, beam_bearing_in = 3.0;
/// 2 in from the top edge and from the bottom edge of the member (common practice).
constexpr double bolt_from_edge_in = 2.0;

model::WoodPost example_post(const StartingWood& wood) {
    model::WoodPost post;
    post.width_in = post.depth_in = example_post_in;
    post.species = wood.species;
    post.grade = wood.grade;
    post.size = "4x4";
    return post;
}

/// What the report of hardware to be chosen must give at least, on both sides of the member.
model::ReportedConnector to_be_chosen(const std::string& name, double force_lb, double pull_lb) {
    model::ReportedConnector connector;
    connector.name = name;
    connector.uplift_lb = connector.down_lb = connector.lateral_lb = force_lb;
    connector.pull_lb = pull_lb;
    connector.couple_arm_in = lumber_in;
    connector.height_in = 7.0;
    connector.from_top_in = connector.from_bottom_in = 1.0;
    connector.chosen = false;
    return connector;
}

model::AnchorGroup example_bolts(const Catalog& catalog) {
    const std::string washer = id_or_first(catalog.washers, "washer-plate-1/2-3");
    model::AnchorGroup group;
    group.fastener = model::ThroughBolt{id_or_first(catalog.bolts, "bolt-1/2"),
                                        id_or_first(catalog.bolt_grades, "a307"), model::Washer{washer}};
    group.washer = model::Washer{washer};
    group.corrosion_protection = "hot-dip galvanized, ASTM A153";
    return group;
}

model::SideFastened example_mount(const Catalog& catalog) {
    model::SideFastened mount;
    mount.member = "R1";
    mount.post_bottom_below_top_in = lumber_depth_in;
    mount.places = {{"A", 0.0, bolt_from_edge_in}, {"B", 0.0, lumber_depth_in - bolt_from_edge_in}};
    mount.anchors = {example_bolts(catalog)};
    mount.decking = model::Decking{id_or_first(catalog.decking, "wood-southern-pine"), 1.0, {}, std::nullopt};
    mount.decking->fastening = model::DeckingFastening{0.164, 2.5, 2, 5.5, 0.0, {}};  // No. 8 screws, the smallest
    return mount;
}

model::Joists example_joists(const StartingWood& wood, double rim_inside_in) {
    model::Joists joists;
    joists.width_in = lumber_in;
    joists.depth_in = lumber_depth_in;
    joists.species = wood.species;
    joists.grade = wood.grade;
    for (const double bays : {-1.5, -0.5, 0.5, 1.5})
        joists.members.push_back({"J" + std::to_string(joists.members.size() + 1), bays * bay_in});
    joists.from_in = rim_inside_in - example_span_in;
    joists.to_in = rim_inside_in;
    return joists;
}

model::Rim example_rim(const StartingWood& wood, double center_in) {
    const double half_in = 1.5 * bay_in + 0.5 * lumber_in;
    model::Rim rim;
    rim.id = "R1";
    rim.at_in = center_in;
    rim.from_in = -half_in;
    rim.to_in = half_in;
    rim.width_in = lumber_in;
    rim.depth_in = lumber_depth_in;
    rim.species = wood.species;
    rim.grade = wood.grade;
    rim.plies = rim_plies;
    rim.connection = to_be_chosen("angle on both sides of the joist", 900.0, 1200.0);
    return rim;
}

model::Block example_block(const StartingWood& wood, const std::string& id, model::PlanAxis along) {
    model::Block block;
    block.id = id;
    block.along = along;
    block.width_in = lumber_in;
    block.depth_in = lumber_depth_in;
    block.species = wood.species;
    block.grade = wood.grade;
    return block;
}

/// One on each side of the post from the rim back to a third between the joists, which keep the rim from turning.
std::vector<model::Block> example_blocks(const StartingWood& wood, double rim_inside_in) {
    const model::EndConnection ends = to_be_chosen("angle on both sides of the block", 900.0, 900.0);
    const double back_in = rim_inside_in - block_length_in;
    model::Block across = example_block(wood, "B3", model::PlanAxis::x);
    across.from_in = -0.5 * (bay_in - lumber_in);
    across.to_in = -across.from_in;
    across.across_in = back_in - 0.5 * lumber_in;
    across.from_end = {"J2", ends};
    across.to_end = {"J3", ends};
    std::vector<model::Block> blocks;
    for (const double side : {-1.0, 1.0}) {
        model::Block block = example_block(wood, side < 0.0 ? "B1" : "B2", model::PlanAxis::y);
        block.from_in = back_in;
        block.to_in = rim_inside_in;
        block.across_in = side * block_from_post_axis_in;
        block.from_end = {across.id, ends};
        block.to_end = {"R1", ends};
        blocks.push_back(block);
    }
    blocks.push_back(across);
    return blocks;
}

std::vector<model::JoistSupport> example_supports(const model::Joists& joists) {
    model::JoistSupport ledger, beam;
    ledger.id = "S1";
    ledger.kind = model::JoistSupport::Kind::ledger;
    ledger.at_in = *joists.from_in;
    ledger.connection = to_be_chosen("joist hanger", 400.0, 300.0);
    beam.id = "S2";
    beam.kind = model::JoistSupport::Kind::beam;
    beam.at_in = *joists.to_in - beam_from_rim_in;
    beam.bearing_in = beam_bearing_in;
    beam.connection = to_be_chosen("tie on both sides of the joist", 800.0, 400.0);
    return {ledger, beam};
}

}  // namespace

BaseDetail starting_side_detail(const Catalog& catalog) {
    const StartingWood wood = starting_wood(catalog, lumber_in, {lumber_depth_in});
    BaseDetail detail;
    detail.name = "New post on the side";
    detail.note = "Example to start from; every value to be checked";
    detail.guard.height_in = example_guard_in;
    detail.guard.occupancy = model::Occupancy::one_and_two_family;
    detail.post = example_post(wood);
    detail.mount = example_mount(catalog);
    const double rim_center_in = model::member_center_in(model::side_joint(detail), rim_plies * lumber_in);
    const double rim_inside_in = rim_center_in - 0.5 * rim_plies * lumber_in;
    detail.framing.joists = example_joists(wood, rim_inside_in);
    detail.framing.rims = {example_rim(wood, rim_center_in)};
    detail.framing.blocks = example_blocks(wood, rim_inside_in);
    detail.framing.supports = example_supports(*detail.framing.joists);
    return detail;
}

}  // namespace toehold::editing

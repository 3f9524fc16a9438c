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
constexpr double beam_from_rim_in = 12.0, beam_bearing_in = 3.0;
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

/// Two 3/8 in bolts in each leg, on both sides.
model::SideAngles example_angles(const Catalog& catalog) {
    model::SideAngles angles;
    angles.thickness_in = 0.25;
    angles.metal = id_or_first(catalog.metals, "steel-a36");
    angles.kind = model::SideAngles::Kind::bolt;
    angles.diameter_in = 0.375;
    angles.per_leg = 2;
    angles.spacing_in = 4.0;
    angles.gauge_in = 1.5;
    return angles;
}

model::AnchorGroup example_bolts(const Catalog& catalog, const std::string& into) {
    const std::string washer = id_or_first(catalog.washers, "washer-wide-1/2");
    model::AnchorGroup group;
    group.fastener = model::ThroughBolt{id_or_first(catalog.bolts, "bolt-1/2"),
                                        id_or_first(catalog.bolt_grades, "a307"), model::Washer{washer}};
    group.washer = model::Washer{washer};
    group.corrosion_protection = "hot-dip galvanized, ASTM A153";
    group.into = into;
    return group;
}

model::SideFastened example_mount(const Catalog& catalog) {
    model::SideFastened mount;
    mount.member = "R1";
    mount.post_bottom_below_top_in = lumber_depth_in;
    mount.places = {{"A", 0.0, bolt_from_edge_in}, {"B", 0.0, lumber_depth_in - bolt_from_edge_in}};
    mount.anchors = {example_bolts(catalog, "B1")};
    mount.decking = model::Decking{id_or_first(catalog.decking, "wood-southern-pine"), 1.0, {}, std::nullopt};
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

model::Rim example_rim(const StartingWood& wood, double center_in, const Catalog& catalog) {
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
    rim.connection = example_angles(catalog);
    return rim;
}

/// Against the rim's inside, between the joists on either side of the post.
model::Block example_block(const StartingWood& wood, double rim_inside_in, const Catalog& catalog) {
    model::Block block;
    block.id = "B1";
    block.from_in = -0.5 * (bay_in - lumber_in);
    block.to_in = -block.from_in;
    block.across_in = rim_inside_in - 0.5 * lumber_in;
    block.width_in = lumber_in;
    block.depth_in = lumber_depth_in;
    block.species = wood.species;
    block.grade = wood.grade;
    block.from_end = {"J2", example_angles(catalog)};
    block.to_end = {"J3", example_angles(catalog)};
    return block;
}

std::vector<model::JoistSupport> example_supports(const model::Joists& joists, const Catalog& catalog) {
    model::JoistSupport ledger, beam;
    ledger.id = "S1";
    ledger.kind = model::JoistSupport::Kind::ledger;
    ledger.at_in = *joists.from_in;
    ledger.connection = example_angles(catalog);
    beam.id = "S2";
    beam.kind = model::JoistSupport::Kind::beam;
    beam.at_in = *joists.to_in - beam_from_rim_in;
    beam.bearing_in = beam_bearing_in;
    beam.connection = model::ToeNails{0.148, 3.0, 4, 1.5};
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
    detail.framing.rims = {example_rim(wood, rim_center_in, catalog)};
    detail.framing.blocks = {example_block(wood, rim_inside_in, catalog)};
    detail.framing.supports = example_supports(*detail.framing.joists, catalog);
    return detail;
}

}  // namespace toehold::editing

#include "support/side_detail.h"

namespace toehold::test {
namespace {

constexpr double rim_width_in = 3.0;
constexpr double member_depth_in = 9.25;

model::ReportedConnector connector(const char* name, double pull_lb, double height_in) {
    model::ReportedConnector connector{name, "test value", 900.0, 1500.0, 600.0, 1.5, pull_lb, height_in};
    connector.from_top_in = 1.0;
    connector.from_bottom_in = 1.0;
    return connector;
}

/// Joists run from `from` to the rim's near face, on the post's inward side.
model::Framing framing(double rim_at_in, double from_in, double to_in) {
    model::Framing framing;
    model::Joists joists{model::PlanAxis::y, 1.5, member_depth_in, "southern-pine", "no-2", {}};
    for (int i = 0; i < 5; ++i) joists.members.push_back({"J" + std::to_string(i + 1), -40.0 + 16.0 * i + 16.0});
    joists.from_in = from_in;
    joists.to_in = to_in;
    framing.joists = joists;
    model::Rim rim;
    rim.id = "R1";
    rim.at_in = rim_at_in;
    rim.from_in = -24.75;
    rim.to_in = 40.75;
    rim.width_in = 0.5 * rim_width_in;
    rim.depth_in = member_depth_in;
    rim.species = "southern-pine";
    rim.grade = "no-2";
    rim.plies = 2;
    rim.connection = connector("angle on both sides of the joist", 2400.0, 7.0);
    framing.rims.push_back(rim);
    const bool rim_above = rim_at_in > from_in;
    const double ledger_in = rim_above ? from_in : to_in, beam_in = rim_above ? to_in - 18.0 : from_in + 18.0;
    framing.supports = {
        {"S1", model::JoistSupport::Kind::ledger, ledger_in, 0.0, connector("joist hanger", 600.0, 6.0)},
        {"S2", model::JoistSupport::Kind::beam, beam_in, 3.0, connector("tie on both sides", 0.0, 0.0)}};
    return framing;
}

}  // namespace

model::BaseDetail side_detail() {
    model::BaseDetail detail;
    detail.name = "post on a side, for tests";
    detail.guard.height_in = 36.0;
    detail.guard.occupancy = model::Occupancy::one_and_two_family;
    model::WoodPost post;
    post.width_in = post.depth_in = 3.5;
    post.species = "southern-pine";
    post.grade = "no-2";
    detail.post = post;
    model::SideFastened mount;
    mount.member = "R1";
    mount.post_bottom_below_top_in = 9.0;
    mount.places = {{"U", 0.0, 2.0}, {"L", 0.0, 7.0}};
    model::AnchorGroup bolts;
    bolts.fastener = model::ThroughBolt{"bolt-1/2", "a307", model::BackingPlate{3.0, 3.0, 0.25, "steel-a36"}};
    bolts.head_plate = model::BackingPlate{3.0, 3.0, 0.25, "steel-a36"};
    bolts.corrosion_protection = "hot-dip galvanized, ASTM A153";
    mount.anchors = {bolts};
    mount.decking = model::Decking{"wood-southern-pine", 1.0, ""};
    detail.mount = mount;
    const double rim_at_in = -0.5 * post.depth_in - 0.5 * rim_width_in;
    detail.framing = framing(rim_at_in, -96.0, rim_at_in - 0.5 * rim_width_in);
    detail.loads.concentrated = model::ConcentratedLoad{};
    detail.loads.stated = true;
    return detail;
}

model::BaseDetail inside_detail() {
    model::BaseDetail detail = side_detail();
    on_side(detail).face = model::MemberFace::inside;
    const double rim_at_in = 0.5 * 3.5 + 0.5 * rim_width_in;
    detail.framing = framing(rim_at_in, -96.0, rim_at_in - 0.5 * rim_width_in);
    return detail;
}

model::BaseDetail bracket_detail() {
    model::BaseDetail detail = side_detail();
    detail.post = model::RectangularTube{2.0, 2.0, 0.1875, "steel-a500-b"};
    model::SideFastened& mount = on_side(detail);
    model::BracketPlate bracket;
    bracket.width_in = 5.0;
    bracket.height_in = 8.0;
    bracket.from_top_in = 0.5;
    bracket.thickness_in = 0.375;
    bracket.metal = "steel-a36";
    bracket.weld_leg_in = 0.1875;
    bracket.filler = "e70";
    mount.bracket = bracket;
    mount.places = {{"A", -1.75, 2.0}, {"B", 1.75, 2.0}, {"C", -1.75, 7.0}, {"D", 1.75, 7.0}};
    mount.anchors.front().head_plate.reset();
    const double rim_at_in = -1.0 - bracket.thickness_in - 0.5 * rim_width_in;
    detail.framing = framing(rim_at_in, -96.0, rim_at_in - 0.5 * rim_width_in);
    return detail;
}

void add_ties(model::BaseDetail& detail) {
    model::TensionTie tie;
    tie.name = "tension tie";
    tie.report = "test value";
    tie.x_in = 2.5;
    tie.tension_lb = 1800.0;
    tie.deflection_in = 0.125;
    tie.into = "J3";
    tie.eccentricity_in = 1.5;
    for (const model::SidePlace& place : on_side(detail).places) {
        tie.id = "T" + place.id;
        tie.below_top_in = place.below_top_in;
        on_side(detail).ties.push_back(tie);
    }
}

}  // namespace toehold::test

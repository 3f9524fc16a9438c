// What only a detail made by a program can get wrong: a file's reader stops it before the model sees it.
#include "model/validate_framing.h"

#include "model/member.h"
#include "model/validate_connection.h"
#include "support/problems.h"

#include <algorithm>
#include <limits>

namespace {

using namespace toehold::model;
using toehold::test::tells;

constexpr double nan_in = std::numeric_limits<double>::quiet_NaN();

Problems problems_of(const EndConnection& connection, double depth_in = 9.25) {
    ProblemList problems;
    check_connection(problems.at("end"), connection, depth_in);
    return problems.take();
}

Problems problems_of(const Framing& framing) {
    ProblemList problems;
    check_framing(problems, framing);
    return problems.take();
}

/// Two joists 16 in apart, 11 ft long, on a ledger and a beam.
Framing sound_framing() {
    Framing framing;
    framing.joists = Joists{PlanAxis::y, 1.5, 9.25, "southern-pine", "no-2", {{"J1", -8.0}, {"J2", 8.0}}, -120.0, 12.0};
    framing.supports = {{"S1", JoistSupport::Kind::ledger, -120.0, 0.0, {}},
                        {"S2", JoistSupport::Kind::beam, 0.0, 3.5, {}}};
    return framing;
}

/// Across the joists' upper ends.
Rim rim(std::string id, double from_in, double to_in) {
    Rim result;
    result.id = std::move(id);
    result.at_in = 12.75;
    result.from_in = from_in;
    result.to_in = to_in;
    result.width_in = 1.5;
    result.depth_in = 9.25;
    return result;
}

}  // namespace

TEST_CASE("a connection nobody described has no problems", "[unit]") { CHECK(problems_of(EndConnection{}).empty()); }

TEST_CASE("a connection of nothing but zeros, or of NaN, is refused", "[bad-input]") {
    CHECK(tells(problems_of(ToeNails{}), "count"));
    const Problems angles = problems_of(SideAngles{});
    CHECK(tells(angles, "thickness"));
    CHECK(tells(angles, "diameter"));
    CHECK(tells(angles, "length"));
    CHECK(tells(angles, "fasteners per leg"));
    CHECK(tells(angles, "gauge"));
    CHECK(tells(problems_of(ToeNails{0.131, 2.5, 2, nan_in}), "spread"));
    ReportedConnector connector;
    connector.name = "hanger";
    CHECK(problems_of(connector).empty());
    connector.pull_lb = -1.0;
    connector.stiffness_lb_per_in = 0.0;
    CHECK(problems_of(connector).size() == 2);
}

TEST_CASE("a bolt through the wood has no length of its own", "[bad-input]") {
    SideAngles angles{2, 0.125, "steel-a36", SideAngles::Kind::bolt, 0.375, 0.0, 1, 0.0, 1.5};
    CHECK(problems_of(angles).empty());
    angles.length_in = 3.0;
    CHECK(tells(problems_of(angles), "a bolt through the wood"));
}

TEST_CASE("threads are stated of bolts and lag screws, and hardware's fasteners stand in the member", "[bad-input]") {
    SideAngles angles{2, 0.125, "steel-a36", SideAngles::Kind::bolt, 0.375, 0.0, 1, 0.0, 1.5};
    angles.threads = Threads::excluded;
    CHECK(problems_of(angles).empty());
    angles.kind = SideAngles::Kind::wood_screw;
    angles.length_in = 1.5;
    CHECK(tells(problems_of(angles), "a wood screw is threaded where it holds"));
    ReportedConnector connector;
    connector.name = "hanger";
    connector.from_top_in = 1.0;
    connector.from_bottom_in = 0.0;
    CHECK(problems_of(connector).empty());
    connector.from_top_in = 100.0;
    connector.from_bottom_in = -0.5;
    CHECK(problems_of(connector).size() == 2);
}

TEST_CASE("a line of fasteners is shorter than the member is deep", "[bad-input]") {
    const SideAngles angles{2, 0.125, "steel-a36", SideAngles::Kind::wood_screw, 0.19, 1.5, 4, 2.0, 1.0};
    CHECK(problems_of(angles, 6.25).empty());
    CHECK(tells(problems_of(angles, 6.0), "reach beyond"));
}

TEST_CASE("supports and rims of sound joists have no problems, one support among them", "[unit]") {
    Framing framing = sound_framing();
    CHECK(problems_of(framing).empty());
    framing.supports.pop_back();  // what one support cannot hold is for the engine to say
    CHECK(problems_of(framing).empty());
}

TEST_CASE("two rims may meet on a joist's centre line", "[unit]") {
    Framing framing = sound_framing();
    framing.rims = {rim("R1", -12.0, 8.0), rim("R2", 8.0, 24.0)};
    CHECK(problems_of(framing).empty());
    framing.rims[1].from_in = 8.5;
    CHECK(tells(problems_of(framing), "the rim ends short of the middle of joist J2"));
}

TEST_CASE("a block beside a joist touches it without a problem", "[unit]") {
    Framing framing = sound_framing();
    Block block;
    block.id = "B1";
    block.along = PlanAxis::y;
    block.from_in = -6.0;
    block.to_in = 12.0;
    block.across_in = -6.5;
    block.width_in = 1.5;
    block.depth_in = 9.25;
    framing.rims = {rim("R1", -12.0, 12.0)};
    block.to_end.joist = "R1";
    framing.blocks = {block};
    CHECK(problems_of(framing).empty());
    framing.blocks[0].across_in = -6.6;
    CHECK(tells(problems_of(framing), "the block overlaps joist J1 in plan"));
}

TEST_CASE("a pair of blocks that overlap is told how to be one doubled block", "[bad-input]") {
    // Two 2x blocks under a row 3 1/2 in wide: 1 1/2 in pieces 1 in apart.
    Framing framing = sound_framing();
    Block block;
    block.id = "B1";
    block.from_in = -7.25;
    block.to_in = 7.25;
    block.across_in = -0.5;
    block.width_in = 1.5;
    block.depth_in = 7.25;
    block.from_end.joist = "J1";
    framing.blocks = {block, block};
    framing.blocks[1].id = "B2";
    framing.blocks[1].across_in = 0.5;
    const Problems problems = problems_of(framing);
    CHECK(tells(problems, "the block overlaps block B1 in plan"));
    CHECK(tells(problems, "one block with plies=\"2\" whose joint is not under a row of holes"));
    CHECK(tells(problems, "blocks at least 1.5 in apart"));
}

TEST_CASE("solid infill is one block of many pieces, a stack one of several layers", "[unit]") {
    Framing framing = sound_framing();
    Block block;
    block.id = "B1";
    block.from_in = -7.25;
    block.to_in = 7.25;
    block.width_in = 1.5;
    block.depth_in = 1.5;
    block.from_end.joist = "J1";
    block.plies = 8;
    framing.blocks = {block};
    CHECK(problems_of(framing).empty());
    framing.blocks[0].plies = 13;
    CHECK(tells(problems_of(framing), "plies is out of range"));
    framing.blocks[0] = block;
    framing.blocks[0].stack = 2;
    framing.blocks[0].stack_fastened = true;
    CHECK(problems_of(framing).empty());
    CHECK(member(framing, 0).depth_in == 3.0);
    CHECK(piece_depth_in(member(framing, 0)) == 1.5);
    framing.blocks[0].stack = 1;
    CHECK(tells(problems_of(framing), "one piece is not fastened to another"));
    framing.blocks[0].stack = 5;
    CHECK(tells(problems_of(framing), "stack is out of range"));
}

TEST_CASE("a material of one's own needs its source and values", "[bad-input]") {
    Framing framing = sound_framing();
    OwnWood lvl;
    lvl.id = "LVL";
    framing.materials = {lvl, lvl};
    const Problems problems = problems_of(framing);
    CHECK(tells(problems, "the values of a material of your own need their source"));
    CHECK(tells(problems, "bending (psi)"));
    CHECK(tells(problems, "specific gravity"));
    CHECK(tells(problems, "two materials have this id"));
}

TEST_CASE("structural screws are 1/4 in and more and name their report", "[bad-input]") {
    EndGrainFasteners screws{EndGrainFasteners::Kind::structural_screw, 0.19, 4.0, 2, 3.0};
    CHECK(tells(problems_of(EndConnection{screws}), "a screw this thin is no structural screw"));
    CHECK(tells(problems_of(EndConnection{screws}), "need their source"));
    screws.diameter_in = 0.25;
    screws.reported = {200.0, 150.0, "invented report", "dry, C_D 1.6"};
    CHECK(problems_of(EndConnection{screws}).empty());
}

TEST_CASE("too many members are told of at once, and not compared with each other", "[bad-input]") {
    Framing framing = sound_framing();
    framing.joists->members.assign(100000, {"J1", 0.0});
    framing.rims.assign(51, rim("R1", -1.0, 1.0));
    const Problems problems = problems_of(framing);
    CHECK(problems.size() == 2);
    CHECK(tells(problems, "too many joists"));
    CHECK(tells(problems, "too many rims"));
}

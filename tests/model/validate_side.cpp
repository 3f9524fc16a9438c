// What is refused of a post fastened to the side of a member, each rule by itself: the mount against its member and the
// framing behind it.
#include "model/post_beside_rim.h"
#include "model/project.h"
#include "model/side_geometry.h"
#include "support/compare.h"
#include "support/side_detail.h"

#include <limits>

namespace {

using namespace toehold;
using namespace toehold::model;
using test::post_beside_rim;
using test::says;
using test::tells_at;
using test::tie_to_joist;
using test::told;
using test::tube_on_bracket;

template <class Change>
std::string told_of_post(Change&& change) {
    return test::told_of(test::post_beside_rim(), std::forward<Change>(change));
}

}  // namespace

TEST_CASE("sound posts on a member's side have no problems", "[unit]") {
    CHECK(told(post_beside_rim()).empty());
    CHECK(told(tube_on_bracket()).empty());
    CHECK(told(test::side_detail()).empty());
    CHECK(told(test::inside_detail()).empty());
    CHECK(told(test::bracket_detail()).empty());
    BaseDetail with_ties = test::side_detail();
    test::add_ties(with_ties);
    CHECK(told(with_ties).empty());
    BaseDetail by_ties = post_beside_rim();
    on_side(by_ties).places.clear();
    on_side(by_ties).anchors.clear();
    on_side(by_ties).ties = {tie_to_joist()};
    CHECK(told(by_ties).empty());
}

TEST_CASE("the joint's distances are those of post, notch, bracket and layers", "[closed-form]") {
    BaseDetail detail = post_beside_rim();
    CHECK(side_joint(detail).to_post_face_in == 1.75);
    CHECK(side_joint(detail).to_member_face_in == 1.75);
    on_side(detail).notch = PostNotch{1.0, 0.0};
    on_side(detail).layers = {{"wood-hard", 0.5}, {"metal", 0.25}};
    CHECK(side_joint(detail).to_post_face_in == 0.75);
    CHECK(side_joint(detail).to_member_face_in == 1.5);
    CHECK(post_depth_in(detail) == 2.5);
    CHECK(member_center_in(side_joint(detail), 3.0) == -3.0);
    on_side(detail).face = MemberFace::inside;
    CHECK(member_center_in(side_joint(detail), 3.0) == 3.0);
    CHECK(side_joint(tube_on_bracket()).to_member_face_in == 1.75);
    // 30 degrees: 4 in down plumb and 2 in up the rail's run is 4 cos 30 + 2 sin 30 square to the slope.
    on_side(detail).stringer = StringerSlope{30.0, 5.0};
    CHECK_CLOSE(from_top_edge_in(on_side(detail), 2.0, 4.0), 4.0 * 0.8660254037844386 + 1.0, 1e-14, 0.0);
}

TEST_CASE("the member is there, runs along the rail and lies against the post", "[bad-input]") {
    const auto of = [](const char* member) {
        return told_of_post([&](BaseDetail&, SideFastened& mount) { mount.member = member; });
    };
    CHECK(says(of("R9"), "side-fastened: no joist, rim or block has this id (found \"R9\"; accepted: B1, R1)"));
    CHECK(says(of("J1"), "joist J1 does not run along the rail"));
    const auto rim_at = [](double at_in) {
        return told_of_post([&](BaseDetail& detail, SideFastened&) {
            detail.framing.blocks.clear();
            detail.framing.rims[0].at_in = at_in;
        });
    };
    const std::string apart = rim_at(-3.35);
    CHECK(says(apart, "rim R1 does not lie against the post"));
    CHECK(says(apart, "-3.25 in from the post's axis"));
    CHECK(rim_at(-3.3).empty());
    CHECK(rim_at(-3.2).empty());
    BaseDetail short_of_it = post_beside_rim();
    short_of_it.framing.rims[0].to_in = -1.0;
    short_of_it.framing.joists->members.pop_back();
    short_of_it.framing.blocks[0].to_end = {};
    const Problems problems = validate(short_of_it);
    CHECK(tells_at(problems, "side-fastened", "the post stands beyond the end of rim R1"));
    CHECK(tells_at(problems, "side-fastened/place[U]", "the place is beyond the end of rim R1"));
    BaseDetail on_joist = post_beside_rim();
    on_joist.framing = {};
    on_joist.framing.joists = Joists{PlanAxis::x, 1.5, 9.25, "southern-pine", "no-2", {{"J1", -2.5}}};
    on_side(on_joist).member = "J1";
    CHECK(says(told(on_joist), "where joist J1 ends is not described"));
    on_joist.framing.joists->from_in = -60.0;
    on_joist.framing.joists->to_in = 60.0;
    CHECK(told(on_joist).empty());
}

TEST_CASE("a place is on the post and in the member, with an id of its own", "[bad-input]") {
    const auto of = [](SidePlace place) {
        return told_of_post([&](BaseDetail&, SideFastened& mount) { mount.places[1] = std::move(place); });
    };
    CHECK(says(of({"U", 0.0, 6.5}), "place[U]: the id is used twice"));
    CHECK(says(of({"", 0.0, 6.5}), "the id is empty"));
    CHECK(says(of({"L", 2.0, 6.5}), "x (in) is out of range"));
    CHECK(says(of({"L", std::numeric_limits<double>::quiet_NaN(), 6.5}), "x (in) is out of range"));
    CHECK(says(of({"L", 0.0, 0.0}), "height (in) below the member's top is out of range"));
    CHECK(says(of({"L", 0.0, -1.0}), "height (in) below the member's top is out of range"));
    const auto below = [](double bottom_in, double place_in) {
        return told_of_post([&](BaseDetail&, SideFastened& mount) {
            mount.post_bottom_below_top_in = bottom_in;
            mount.places[1].below_top_in = place_in;
        });
    };
    CHECK(says(below(8.0, 8.5), "the place is below the post's bottom"));
    CHECK(says(below(14.0, 9.5), "the place is not in rim R1: an anchor here holds nothing"));
    CHECK(below(14.0, 9.0).empty());
    CHECK(says(told_of_post([](BaseDetail& detail, SideFastened& mount) {
                   detail.framing.rims[0].to_in = 1.0;
                   detail.framing.joists->members.pop_back();
                   detail.framing.blocks[0].to_end = {};
                   mount.places[1].x_in = 1.5;
               }),
               "the place is beyond the end of rim R1"));
}

TEST_CASE("something fastens the post, and anchors stand in places", "[bad-input]") {
    CHECK(says(told_of_post([](BaseDetail&, SideFastened& mount) { mount.anchors.clear(); }),
               "no anchors are described"));
    CHECK(says(told_of_post([](BaseDetail&, SideFastened& mount) {
                   mount.anchors.clear();
                   mount.places.clear();
               }),
               "nothing fastens the post to the member"));
    CHECK(says(told_of_post([](BaseDetail&, SideFastened& mount) {
                   mount.anchors[0].holes = {"U", "Z"};
               }),
               "an anchor without a place"));
    CHECK(says(told_of_post([](BaseDetail&, SideFastened& mount) {
                   mount.anchors[0].holes = {"U"};
                   mount.anchors.push_back(mount.anchors[0]);
               }),
               "two anchors at one place"));
    CHECK(says(told_of_post([](BaseDetail&, SideFastened& mount) { mount.anchors.push_back(mount.anchors[0]); }),
               "two anchors elements name no places"));
}

TEST_CASE("an anchor goes into a member behind the post's own, parallel to it", "[bad-input]") {
    const auto into = [](const char* member) {
        return told_of_post([&](BaseDetail&, SideFastened& mount) { mount.anchors[0].into = member; });
    };
    CHECK(into("B1").empty());
    CHECK(says(into("R1"), "the post lies against this member itself"));
    CHECK(says(into("J1"), "joist J1 does not run along the rail"));
    CHECK(says(into("B9"), "no joist, rim or block has this id"));
    CHECK(says(told_of_post([](BaseDetail&, SideFastened& mount) {
                   mount.anchors[0].into = "B1";
                   mount.places[1].below_top_in = 8.0;
               }),
               "the place is not in block B1"));
    BaseDetail before_it = post_beside_rim();
    before_it.framing.blocks[0].across_in = 6.5;
    on_side(before_it).anchors[0].into = "B1";
    CHECK(tells_at(validate(before_it), "anchors[1]", "block B1 is not behind rim R1"));
}

TEST_CASE("what only one kind of mount has is refused on the other", "[bad-input]") {
    CHECK(says(told_of_post([](BaseDetail&, SideFastened& mount) { mount.anchors[0].preload_lb = 500.0; }),
               "no preload is counted on a post's side"));
    CHECK(says(told_of_post([](BaseDetail&, SideFastened& mount) {
                   std::get<ThroughBolt>(mount.anchors[0].fastener).below =
                       LowerPlate{LowerShape::plate, {}, 4.0, 4.0, 0.25, 0.0, "steel-a36"};
               }),
               "a lower plate lies under the framing"));
    CHECK(says(told_of_post([](BaseDetail&, SideFastened& mount) {
                   mount.anchors[0].head_plate = BackingPlate{3.0, 3.0, 0.25, "steel-a36"};
                   mount.anchors[0].washer = Washer{"washer-1/2"};
               }),
               "a plate or a washer under it, not both"));
    BaseDetail on_plate;
    on_plate.guard.height_in = 42.0;
    on_plate.post = WoodPost{3.5, 3.5, "southern-pine", "no-2", false, {}};
    Plate& plate = on_deck(on_plate).plate;
    plate.thickness_in = 0.375;
    plate.outline = RectangleOutline{8.0, 8.0, 0.25, {}};
    plate.holes = {{"A", {-3.0, -3.0}, RoundHole{0.5}}};
    AnchorGroup group{{}, LagScrew{"lag-3/8", 6.0, {}}, {}, ""};
    group.into = "B1";
    group.head_plate = BackingPlate{3.0, 3.0, 0.25, "steel-a36"};
    on_deck(on_plate).anchors = {group};
    const Problems problems = validate(on_plate);
    CHECK(problems.size() == 3);
    CHECK(tells_at(problems, "post/shoe", "a wood post on a plate needs a shoe"));
    CHECK(tells_at(problems, "anchors[1]", "a head plate belongs to a post fastened by its side"));
    CHECK(tells_at(problems, "anchors[1]", "goes into the member under its hole"));
}

TEST_CASE("a bolt hangs one tie, at its own place", "[bad-input]") {
    BaseDetail detail = test::side_detail();
    test::add_ties(detail);
    for (TensionTie& tie : on_side(detail).ties) {
        tie.bolt = tie.id == "TU" ? "U" : "L";
        tie.x_in = 0.0;
    }
    CHECK(told(detail).empty());
    on_side(detail).ties[0].x_in = 1.0;
    CHECK(says(told(detail), "the tie is not at its bolt"));
    on_side(detail).ties[0].x_in = 0.0;
    on_side(detail).ties[1] = on_side(detail).ties[0];
    on_side(detail).ties[1].id = "T2";
    CHECK(says(told(detail), "the bolt hangs two ties"));
    on_side(detail).ties.pop_back();
    on_side(detail).anchors.front().fastener = LagScrew{"lag-1/2", 6.0, std::nullopt};
    on_side(detail).anchors.front().head_plate.reset();
    CHECK(says(told(detail), "no bolt of the mount hangs the tie"));
}

TEST_CASE("a tie has a report, a place on the post and a member that holds it", "[bad-input]") {
    const auto of = [](auto&& change) {
        return told_of_post([&](BaseDetail&, SideFastened& mount) {
            TensionTie tie = tie_to_joist();
            change(tie);
            mount.ties = {tie};
        });
    };
    CHECK(of([](TensionTie&) {}).empty());
    CHECK(of([](TensionTie& tie) { tie.into = "B1"; }).empty());
    CHECK(of([](TensionTie& tie) { tie.below_top_in = -2.0; }).empty());
    CHECK(says(of([](TensionTie& tie) { tie.id = "U"; }), "tie[U]: the id is used twice"));
    CHECK(says(of([](TensionTie& tie) { tie.report.clear(); }), "the tie's values need their source"));
    CHECK(says(of([](TensionTie& tie) { tie.name.clear(); }), "the tie has no name"));
    CHECK(says(of([](TensionTie& tie) { tie.into = "J9"; }), "no joist, rim or block has this id"));
    CHECK(says(of([](TensionTie& tie) { tie.into = "R1"; }), "rim R1 runs along the rail"));
    CHECK(says(of([](TensionTie& tie) { tie.bolt = "V"; }), "no bolt of the mount hangs the tie"));
    CHECK(says(of([](TensionTie& tie) { tie.below_top_in = 9.5; }), "the tie is below the post's bottom"));
    CHECK(says(of([](TensionTie& tie) { tie.tension_lb = 0.0; }), "tension (lb) is out of range"));
    CHECK(says(of([](TensionTie& tie) { tie.deflection_in = 0.0; }), "deflection (in) is out of range"));
    CHECK(says(of([](TensionTie& tie) { tie.eccentricity_in = -1.0; }), "eccentricity (in) is out of range"));
}

TEST_CASE("in a project a post that faces another way finds its member on that side", "[unit]") {
    BaseDetail detail = post_beside_rim();
    // The deck's other rim, where a post faces -y: outside of it the framing lies at larger y in the project.
    Rim far = detail.framing.rims[0];
    far.id = "R2";
    far.at_in = -97.5;
    detail.framing.rims.push_back(far);
    Project project = project_of(detail);
    on_side(detail).member = "R2";
    project.mounts.push_back({"M2", detail.post, detail.mount});
    PlacedPost other{"P2", {0.0, -97.5 - 3.25}, "M2"};
    other.facing = PostFacing::minus_y;
    project.posts.push_back(other);
    CHECK(test::sentences(validate(project)).empty());
    project.posts[1].at.y_in += 1.0;
    CHECK(tells_at(validate(project), "side-fastened", "rim R2 does not lie against the post"));
}

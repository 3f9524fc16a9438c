// Fields of a post on a member's side, and what follows a change of them.
#include "editing/edits.h"
#include "editing/fields.h"
#include "editing/fields/variants.h"
#include "editing/samples.h"
#include "model/follow_joint.h"
#include "model/validate.h"
#include "support/problems.h"

#include <catch2/catch.hpp>

#include <algorithm>

using namespace toehold;
using test::value_at;
using test::with;

namespace {

const model::Rim& rim(const model::BaseDetail& detail) { return detail.framing.rims.front(); }

/// The member's near face, where a post of that depth and such layers touch it.
double near_face_in(const model::BaseDetail& detail) {
    const double half_in = 0.5 * rim(detail).width_in * rim(detail).plies;
    return on_side(detail).face == model::MemberFace::outside ? rim(detail).at_in + half_in
                                                              : rim(detail).at_in - half_in;
}

std::vector<std::string> paths(const model::BaseDetail& detail) {
    std::vector<std::string> all;
    for (const editing::Field& field : editing::fields(detail, test::field_catalog(), units::System::us))
        all.push_back(field.path);
    return all;
}

bool has(const std::vector<std::string>& paths, const std::string& path) {
    return std::find(paths.begin(), paths.end(), path) != paths.end();
}

}  // namespace

TEST_CASE("the example of a post on the side is whole, valid and said to be an example", "[unit]") {
    const model::BaseDetail detail = test::post_on_side();
    const model::Problems problems = model::validate(detail);
    INFO(test::sentences(problems));
    CHECK(problems.empty());
    const catalog::Resolution resolution = catalog::resolve(detail, test::field_catalog());
    INFO(test::sentences(resolution.problems));
    REQUIRE(resolution.resolved);
    CHECK(resolution.resolved->anchors.size() == 2);
    CHECK(detail.note.find("Example") == 0);
    CHECK(model::validate(test::tube_on_side()).empty());
}

TEST_CASE("fields of a plate are not shown for a post on the side, nor the other way about", "[unit]") {
    const std::vector<std::string> side = paths(test::post_on_side());
    for (const char* const path : {"guard/plate-below-surface", "plate/thickness", "weld/given", "post/shoe/wall",
                                   "post/notched", "layers/shim-count", "anchors[1]/preload"}) {
        INFO(path);
        CHECK_FALSE(has(side, path));
    }
    const std::vector<std::string> tube = paths(with(test::post_on_side(), "post/shape", "square-tube"));
    CHECK_FALSE(has(tube, "post/on-stub"));
    CHECK(has(tube, "side/bracket-given"));
    CHECK_FALSE(has(tube, "side/notch-given"));
    const std::vector<std::string> plate = paths(test::square_base());
    for (const char* const path : {"side/member", "anchors[1]/into", "anchors[1]/head-plate-given"})
        CHECK_FALSE(has(plate, path));
}

TEST_CASE("the framing goes with the post's face, so that the member keeps touching it", "[unit]") {
    const model::BaseDetail base = test::post_on_side();
    CHECK(near_face_in(base) == -1.75);
    // 5 1/2 in deep: half of that; a 1/2 in layer: as much more.
    const model::BaseDetail deep = with(base, "post/depth", "5 1/2");
    CHECK(near_face_in(deep) == -2.75);
    CHECK(*deep.framing.joists->to_in == *base.framing.joists->to_in - 1.0);
    CHECK(deep.framing.blocks.front().to_in == base.framing.blocks.front().to_in - 1.0);
    CHECK(deep.framing.blocks.back().across_in == base.framing.blocks.back().across_in - 1.0);
    CHECK(deep.framing.supports.back().at_in == base.framing.supports.back().at_in - 1.0);
    const model::BaseDetail packed = with(with(base, "side/layer-count", "1"), "side/layer[1]/thickness", "1/2");
    CHECK(near_face_in(packed) == -2.25);
    const model::BaseDetail notched = with(base, "side/notch-given", "yes");
    CHECK(near_face_in(notched) == -0.25);
    CHECK(std::get<model::WoodPost>(notched.post).notched);
    for (const model::BaseDetail& detail : {deep, packed, notched}) {
        INFO(test::sentences(model::validate(detail)));
        CHECK(model::validate(detail).empty());
    }
    CHECK(with(packed, "side/layer-count", "0") == base);
    CHECK(with(notched, "side/notch-given", "no") == base);
}

TEST_CASE("the other face turns the member to the post's other side", "[unit]") {
    const model::BaseDetail inside = with(test::post_on_side(), "side/face", "inside");
    CHECK(near_face_in(inside) == 1.75);
    CHECK(with(inside, "side/face", "outside") == test::post_on_side());
}

TEST_CASE("a change of the framing itself moves nothing else", "[unit]") {
    const model::BaseDetail base = test::post_on_side();
    const model::BaseDetail moved = with(base, "framing/rim[R1]/at", "-4");
    CHECK(rim(moved).at_in == -4.0);
    CHECK(moved.framing.joists == base.framing.joists);
}

TEST_CASE("what the mount names follows a member's new id and forgets one that is gone", "[unit]") {
    const model::BaseDetail base = test::post_on_side();
    CHECK(on_side(with(base, "framing/rim[R1]/id", "edge")).member == "edge");
    const model::BaseDetail deep = with(base, "anchors[1]/into", "B3");
    CHECK(on_side(with(deep, "framing/block[B3]/id", "back")).anchors.front().into == "back");
    CHECK(on_side(with(deep, "framing/block-count", "2")).anchors.front().into.empty());
    const model::BaseDetail tied = with(base, "side/tie-count", "1");
    CHECK(on_side(tied).ties.front().into == "B1");
    CHECK(on_side(with(with(tied, "side/tie[T1]/into", "J2"), "framing/joist[J2]/id", "J9")).ties.front().into == "J9");
}

TEST_CASE("a post of metal has no notch, one of wood no bracket, shoe or stub", "[unit]") {
    const model::BaseDetail notched = with(test::post_on_side(), "side/notch-given", "yes");
    const model::BaseDetail tube = with(notched, "post/shape", "square-tube");
    CHECK_FALSE(on_side(tube).notch);
    const model::BaseDetail wood = with(with(tube, "side/bracket-given", "yes"), "post/shape", "wood");
    CHECK_FALSE(on_side(wood).bracket);
    CHECK_FALSE(model::is_described(std::get<model::WoodPost>(wood.post).shoe));
    INFO(test::sentences(model::validate(wood)));
    CHECK(model::validate(wood).empty());
}

TEST_CASE("places and ties grow and shrink, and their ids stay apart", "[unit]") {
    const model::BaseDetail base = test::post_on_side();
    const model::BaseDetail more = with(base, "side/place-count", "4");
    // As far below B as that is below A: 5 1/4 in.
    CHECK(on_side(more).places[2] == model::SidePlace{"C", 0.0, 12.5});
    CHECK(with(more, "side/place-count", "2") == base);
    const model::BaseDetail tied = with(base, "side/tie-count", "2");
    CHECK(on_side(tied).ties[1].id == "T2");
    CHECK(with(tied, "side/tie-count", "0") == base);
    const editing::FieldEdit taken =
        editing::set_field(tied, test::field_catalog(), units::System::us, "side/tie[T1]/id", "A");
    CHECK(format::english(taken.refusal) == "Id A is taken: it must differ from every other.");
    const model::BaseDetail split = with(base, "anchor-group-count", "2");
    CHECK(on_side(split).anchors[1].holes == std::vector<std::string>{"B"});
    CHECK(on_side(with(split, "side/place[B]/id", "Z")).anchors[1].holes == std::vector<std::string>{"Z"});
    const editing::FieldEdit none =
        editing::set_field(base, test::field_catalog(), units::System::us, "anchors[1]/holes", "A Q");
    CHECK(format::english(none.refusal) == "Places takes ids of the post's places with blanks between; Q is none.");
}

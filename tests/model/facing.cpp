// Framing turned by quarters: a rigid turn of every member, its two ends with it, and of a whole project.
#include "model/facing.h"

#include "model/line_geometry.h"
#include "model/lopsided_framing.h"
#include "model/member.h"
#include "model/placement.h"
#include "model/project.h"
#include "support/compare.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <array>
#include <cmath>

using namespace toehold;
using model::PlanAxis;
using model::PostFacing;

namespace {

constexpr std::array<PostFacing, 4> facings{PostFacing::plus_y, PostFacing::minus_y, PostFacing::plus_x,
                                            PostFacing::minus_x};

/// As the post sees a place: how far to its right, and how far outward.
model::Position seen(model::Position place, PostFacing facing) {
    const model::Position out = model::outward(facing);
    return {place.x_in * out.y_in - place.y_in * out.x_in, place.x_in * out.x_in + place.y_in * out.y_in};
}

struct Rectangle {
    double left, right, near, far;
};
Rectangle rectangle(const model::Member& member) {
    const double half = 0.5 * member.width_in;
    if (member.along == PlanAxis::x)
        return {member.from_in, member.to_in, member.across_in - half, member.across_in + half};
    return {member.across_in - half, member.across_in + half, member.from_in, member.to_in};
}

/// The project of the framing with posts that face all four ways.
model::Project project() {
    model::Project all;
    all.name = "turned";
    all.guard.height_in = 42.0;
    all.framing = test::lopsided_framing();
    all.mounts = {{"M", model::RectangularTube{2.0, 2.0, 0.125, "steel-a500-b"}, {}}};
    all.posts = {
        {"P1", {1.0, 2.0}, "M"}, {"P2", {4.0, -8.0}, "M"}, {"P3", {-5.0, -16.0}, "M"}, {"P4", {6.0, -32.0}, "M"}};
    for (std::size_t post = 0; post < facings.size(); ++post) all.posts[post].facing = facings[post];
    return all;
}

/// The same project drawn on a sheet that is turned: all that stands on it is as a post that faced so would see it.
model::Project drawn_turned(const model::Project& project, PostFacing sheet) {
    model::Project drawn = project;
    drawn.framing = model::turned(project.framing, sheet);
    for (model::PlacedPost& post : drawn.posts) {
        const model::Position out = seen(model::outward(post.facing), sheet);
        post.at = seen(post.at, sheet);
        post.facing =
            *std::find_if(facings.begin(), facings.end(), [&](PostFacing one) { return model::outward(one) == out; });
    }
    return drawn;
}

}  // namespace

TEST_CASE("Framing turns as a rigid body, each member where the post sees it", "[property]") {
    const std::vector<model::Member> before = model::members(test::lopsided_framing());
    for (const PostFacing facing : facings) {
        CAPTURE(model::word(facing));
        const std::vector<model::Member> after = model::members(model::turned(test::lopsided_framing(), facing));
        REQUIRE(before.size() == after.size());
        for (std::size_t i = 0; i < before.size(); ++i) {
            CHECK(after[i].id == before[i].id);
            const Rectangle from = rectangle(before[i]), to = rectangle(after[i]);
            const model::Position one = seen({from.left, from.near}, facing),
                                  two = seen({from.right, from.far}, facing);
            CHECK_CLOSE(to.left, std::min(one.x_in, two.x_in), 0.0, 1e-12);
            CHECK_CLOSE(to.right, std::max(one.x_in, two.x_in), 0.0, 1e-12);
            CHECK_CLOSE(to.near, std::min(one.y_in, two.y_in), 0.0, 1e-12);
            CHECK_CLOSE(to.far, std::max(one.y_in, two.y_in), 0.0, 1e-12);
        }
    }
}

TEST_CASE("A block's ends stay at the members they meet", "[property]") {
    for (const PostFacing facing : facings) {
        CAPTURE(model::word(facing));
        const model::Framing framing = model::turned(test::lopsided_framing(), facing);
        const std::vector<model::Member> members = model::members(framing);
        for (std::size_t block = 0; block < framing.blocks.size(); ++block) {
            for (const bool upper : {false, true}) {
                const model::BlockEnd& end = upper ? framing.blocks[block].to_end : framing.blocks[block].from_end;
                const model::Member& holder = members.at(model::find_member(framing, end.joist).value());
                const double end_in = upper ? members[block].to_in : members[block].from_in;
                CHECK(model::meets(members[block], end_in, upper, holder));
                const bool nailed = std::holds_alternative<model::ToeNails>(end.connection);
                CHECK(nailed == (end.joist == "J1"));
            }
        }
    }
    // By hand: facing -y, B1 from -6 1/4 to 8 1/4 lies from -8 1/4 to 6 1/4 at -2, and ends at J2 first.
    const model::Block block = model::turned(test::lopsided_framing(), PostFacing::minus_y).blocks.front();
    CHECK(block.from_in == -8.25);
    CHECK(block.to_in == 6.25);
    CHECK(block.across_in == -2.0);
    CHECK(block.from_end.joist == "J2");
    // Facing +x, its right is the project's -y and its outward the project's x.
    const model::Block quarter = model::turned(test::lopsided_framing(), PostFacing::plus_x).blocks.front();
    CHECK(quarter.along == PlanAxis::y);
    CHECK(quarter.from_in == -6.25);
    CHECK(quarter.across_in == -2.0);
    CHECK(quarter.from_end.joist == "J1");
}

TEST_CASE("Two quarters are a half and four are none", "[property]") {
    const model::Framing framing = test::lopsided_framing();
    const auto quarter = [](const model::Framing& one) { return model::turned(one, PostFacing::minus_x); };
    CHECK(quarter(quarter(framing)) == model::turned(framing, PostFacing::minus_y));
    CHECK(quarter(quarter(quarter(framing))) == model::turned(framing, PostFacing::plus_x));
    CHECK(quarter(quarter(quarter(quarter(framing)))) == framing);
    CHECK(model::turned(framing, PostFacing::plus_y) == framing);
}

TEST_CASE("Joists with one end not described keep it at its side", "[unit]") {
    model::Framing framing = test::lopsided_framing();
    framing.joists->to_in.reset();
    const model::Joists joists = model::turned(framing, PostFacing::minus_y).joists.value();
    CHECK_FALSE(joists.from_in);
    CHECK(joists.to_in == 96.0);
}

TEST_CASE("A post's detail does not know how the project's sheet is turned", "[property]") {
    const model::Project as_drawn = project();
    for (const PostFacing sheet : facings) {
        const model::Project turned = drawn_turned(as_drawn, sheet);
        for (std::size_t post = 0; post < as_drawn.posts.size(); ++post) {
            CAPTURE(model::word(sheet), as_drawn.posts[post].id);
            CHECK(model::detail_of(turned, turned.posts[post]) == model::detail_of(as_drawn, as_drawn.posts[post]));
        }
    }
}

TEST_CASE("A direction turns with its post", "[unit]") {
    for (const PostFacing facing : facings) {
        const double outward_rad = 0.5 * std::acos(-1.0) + model::turn_rad(facing);
        CHECK_CLOSE(std::cos(outward_rad), model::outward(facing).x_in, 0.0, 1e-12);
        CHECK_CLOSE(std::sin(outward_rad), model::outward(facing).y_in, 0.0, 1e-12);
    }
}

// What is refused of a post fastened to the side of a member, each rule by itself: what the mount is made of.
#include "model/post_beside_rim.h"

namespace {

using namespace toehold;
using namespace toehold::model;
using test::post_beside_rim;
using test::says;
using test::tells_at;
using test::tie_to_joist;
using test::tube_on_bracket;

template <class Change>
std::string told_of_post(Change&& change) {
    return test::told_of(post_beside_rim(), std::forward<Change>(change));
}

template <class Change>
std::string told_of_bracket(Change&& change) {
    return test::told_of(tube_on_bracket(), std::forward<Change>(change));
}

}  // namespace

TEST_CASE("posts that cannot be fastened by their side are refused", "[bad-input]") {
    const auto with = [](Post post) {
        return told_of_bracket([&](BaseDetail& detail, SideFastened&) { detail.post = std::move(post); });
    };
    CHECK(with(RoundTube{2.0, 0.25, "steel-a500-b-round"}).empty());
    CHECK(with(SolidBar{2.0, 2.0, false, "steel-a36"}).empty());
    CHECK(with(SolidBar{2.0, 2.0, true, "steel-a36"}).empty());
    CHECK(says(with(TwinBars{0.5, 2.0, 0.5, PlanAxis::x, "steel-a36"}), "twin bars are not fastened by their side"));
    RectangularTube over_stub{2.0, 2.0, 0.125, "steel-a500-b"};
    over_stub.stub = Stub{1.6, 1.6, 0.0, 6.0, "steel-a36"};
    CHECK(says(with(over_stub), "a stub stands on a plate"));
    const auto round = [](Post post) {
        return told_of_post([&](BaseDetail& detail, SideFastened&) { detail.post = std::move(post); });
    };
    CHECK(says(round(RoundTube{3.5, 0.25, "steel-a500-b-round"}), "a round post does not bear on a flat face"));
    CHECK(says(round(SolidBar{3.5, 3.5, true, "steel-a36"}), "a round post does not bear on a flat face"));
    WoodPost shod{3.5, 3.5, "southern-pine", "no-2", false, {}};
    shod.shoe = Shoe{ShoeAttachment::welded, 4.0, 4.0, 0.125, 6.0, "steel-a36", {}, ""};
    CHECK(says(round(shod), "a shoe stands on a plate"));
}

TEST_CASE("a notch is of a wood post and leaves some of it", "[bad-input]") {
    const auto notched = [](double depth_in, bool said) {
        return told_of_post([&](BaseDetail& detail, SideFastened& mount) {
            std::get<WoodPost>(detail.post).notched = said;
            mount.notch = PostNotch{depth_in, 0.0};
            detail.framing.rims[0].at_in = -(1.75 - depth_in + 1.5);
            detail.framing.joists->to_in = -(1.75 - depth_in + 3.0);
            detail.framing.blocks[0].across_in = -6.5;
        });
    };
    CHECK(notched(1.5, true).empty());
    CHECK(says(notched(1.5, false), "said not to be notched, and its notch is described"));
    CHECK(says(notched(3.5, true), "the notch cuts the post through"));
    CHECK(says(notched(4.0, true), "depth (in) is out of range"));
    CHECK(says(told_of_post([](BaseDetail& detail, SideFastened&) { std::get<WoodPost>(detail.post).notched = true; }),
               "the post is notched, and its notch is not described"));
    BaseDetail tube = tube_on_bracket();
    on_side(tube).notch = PostNotch{0.25, 0.0};
    CHECK(tells_at(validate(tube), "side-fastened/notch", "only a wood post is notched"));
}

TEST_CASE("a bracket is of a metal post, as wide as it and no longer than its welds", "[bad-input]") {
    const auto with = [](auto&& change) {
        return told_of_bracket([&](BaseDetail&, SideFastened& mount) { change(*mount.bracket, mount); });
    };
    CHECK(says(with([](BracketPlate& bracket, SideFastened& mount) {
                   bracket.width_in = 1.5;
                   mount.places.clear();
                   mount.anchors.clear();
                   mount.ties = {tie_to_joist()};
               }),
               "the bracket is narrower than the post"));
    CHECK(says(with([](BracketPlate&, SideFastened& mount) { mount.places[0].x_in = 0.5; }),
               "the place is behind the post"));
    CHECK(says(with([](BracketPlate&, SideFastened& mount) { mount.places[0].below_top_in = 0.75; }),
               "the place is above the bracket's upper edge"));
    CHECK(says(with([](BracketPlate&, SideFastened& mount) { mount.places[0].below_top_in = 8.5; }),
               "the place is below the bracket's lower edge"));
    CHECK(says(with([](BracketPlate&, SideFastened& mount) { mount.post_bottom_below_top_in = 7.5; }),
               "the post ends above the bracket's lower edge"));
    CHECK(says(with([](BracketPlate& bracket, SideFastened&) { bracket.weld_leg_in = 0.0; }),
               "weld leg (in) is out of range"));
    BaseDetail wood = post_beside_rim();
    on_side(wood).bracket = on_side(tube_on_bracket()).bracket;
    CHECK(tells_at(validate(wood), "side-fastened/bracket", "a bracket is welded to a metal post"));
}

TEST_CASE("layers, boards and a stringer's slope are in order", "[bad-input]") {
    const auto layer = [](SideLayer one) {
        return told_of_post([&](BaseDetail& detail, SideFastened& mount) {
            mount.layers = {std::move(one)};
            detail.framing.blocks.clear();
            detail.framing.rims[0].at_in = -3.75;
            detail.framing.joists->to_in = -5.25;
        });
    };
    CHECK(layer({"wood-hard", 0.5}).empty());
    CHECK(layer({"wood-hard", 0.5, 1.0, 4.0}).empty());
    CHECK(says(layer({"wood-hard", 0.5, 4.0, 1.0}), "the layer ends above where it begins"));
    CHECK(says(layer({"wood-hard", 0.5, -1.0, 4.0}), "from (in) below the member's top is out of range"));
    const auto boards = [](std::optional<Decking> decking) {
        return told_of_post([&](BaseDetail&, SideFastened& mount) {
            mount.decking = std::move(decking);
            mount.boards_brace_member = true;
        });
    };
    Decking decking{"wood-southern-pine", 1.0, ""};
    CHECK(says(boards({}), "boards brace the member only by their fasteners"));
    CHECK(says(boards(decking), "boards brace the member only by their fasteners"));
    decking.fastening = DeckingFastening{0.19, 3.0, 2, 5.5, 0.0, ""};
    CHECK(boards(decking).empty());
    decking.fastening->per_crossing = 0;
    CHECK(says(boards(decking), "side-fastened/decking/fasteners: fasteners per crossing is out of range"));
    const auto stringer = [](double angle_deg, double effective_in) {
        return told_of_post([&](BaseDetail&, SideFastened& mount) {
            mount.stringer = StringerSlope{angle_deg, effective_in};
        });
    };
    CHECK(stringer(35.0, 6.0).empty());
    CHECK(says(stringer(61.0, 6.0), "angle (deg) is out of range"));
    CHECK(says(stringer(35.0, 9.5), "effective depth (in) is out of range"));
    // 6.5 in down plumb is 6.5 cos 35 = 5.32 in square to the slope.
    CHECK(says(stringer(35.0, 5.3), "the place is not in rim R1"));
    CHECK(stringer(35.0, 5.4).empty());
}

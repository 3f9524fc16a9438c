// The mark of an anchor says what the review says of that anchor, whatever its hole is called.
#include "drawing/annotation/anchor_marks.h"

#include "drawing/marked_parts.h"
#include "review/review.h"
#include "support/compare.h"
#include "support/shipped.h"

#include <algorithm>
#include <cmath>

using namespace toehold;

namespace {

review::Review reviewed(const model::BaseDetail& detail) {
    return review::evaluate(test::resolved_by_shipped(detail), "");
}

std::vector<std::string> hole_names(const model::BaseDetail& detail) {
    std::vector<std::string> names;
    for (const model::Hole& hole : on_deck(detail).plate.holes) names.push_back(hole.id);
    return names;
}

void rename_holes(model::BaseDetail& detail, const std::vector<std::string>& names) {
    const std::vector<std::string> before = hole_names(detail);
    REQUIRE(before.size() == names.size());
    for (std::size_t i = 0; i < names.size(); ++i) {
        on_deck(detail).plate.holes[i].id = names[i];
        for (model::AnchorGroup& group : on_deck(detail).anchors)
            std::replace(group.holes.begin(), group.holes.end(), before[i], names[i]);
    }
}

}  // namespace

TEST_CASE("A hole may be called like another part and loses no check on its mark", "[unit][A16]") {
    const model::BaseDetail detail = test::demo_detail("heron-landing-short-lags-in-flat-block");
    const std::vector<std::string> plain = hole_names(detail);
    const std::vector<std::string> odd = {"plate", "anchor A", "B1, upper end", "post"};
    model::BaseDetail renamed = detail;
    rename_holes(renamed, odd);
    const review::Review first = reviewed(detail), second = reviewed(renamed);
    for (std::size_t i = 0; i < odd.size(); ++i) {
        INFO(odd[i]);
        const drawing::AnchorMark one = drawing::anchor_mark(plain[i], {}, &first);
        const drawing::AnchorMark other = drawing::anchor_mark(odd[i], {}, &second);
        REQUIRE(one.status);
        CHECK(other.status == one.status);
        CHECK(other.worst_check == one.worst_check);
        REQUIRE(other.ratio.has_value() == one.ratio.has_value());
        if (one.ratio && std::isfinite(*one.ratio)) CHECK_CLOSE(*other.ratio, *one.ratio, 1e-9, 0.0);
        if (one.ratio) CHECK(std::isfinite(*other.ratio) == std::isfinite(*one.ratio));
        REQUIRE(other.capacity_lb.has_value() == one.capacity_lb.has_value());
        if (one.capacity_lb) CHECK_CLOSE(*other.capacity_lb, *one.capacity_lb, 1e-9, 0.0);
    }
}

TEST_CASE("Without a review, or with none of its checks about it, an anchor's mark has no status") {
    const review::Review review = reviewed(test::demo_detail("heron-landing-short-lags-in-flat-block"));
    for (const drawing::AnchorMark& mark :
         {drawing::anchor_mark("A", {}, nullptr), drawing::anchor_mark("nobody", {}, &review)}) {
        CHECK_FALSE(mark.status);
        CHECK_FALSE(mark.ratio);
        CHECK(mark.worst_check.empty());
    }
}

TEST_CASE("What a result is about is marked with the parts a detail lists") {
    using model::PartKind;
    using Parts = std::vector<model::PartId>;
    model::BaseDetail detail = test::demo_detail("heron-landing-short-lags-in-flat-block");
    detail.framing.blocks.resize(1);
    detail.framing.blocks[0].id = "B1";
    detail.framing.joists->members = {{"J1", 0.0, 1}, {"J2", 16.0, 1}};
    detail.framing.rims.assign(1, {});
    detail.framing.rims[0].id = "R1";
    rename_holes(detail, {"A", "B", "C", "plate"});
    const Parts anchors = {model::anchor_part("A"), model::anchor_part("B"), model::anchor_part("C"),
                           model::anchor_part("plate")};
    const model::PartId block{PartKind::block, "B1"}, joist{PartKind::joist, "J2"}, rim{PartKind::rim, "R1"};
    const auto of = [&detail](const model::PartId& part) { return drawing::marked_parts(part, detail); };
    CHECK(of(model::anchor_part("A")) == Parts{anchors[0]});
    CHECK(of(model::hole_part("plate")) == Parts{anchors[3]});
    CHECK(of({PartKind::plate}) == Parts{{PartKind::plate}});
    CHECK(of({PartKind::base}) == Parts{{PartKind::plate}});
    CHECK(of({PartKind::shoe}) == Parts{{PartKind::post}});
    CHECK(of({PartKind::anchor}) == anchors);
    CHECK(of({PartKind::block, "B1", model::PartPiece::upper_end}) == Parts{block});
    CHECK(of(model::held_at(block, joist)) == Parts{block, joist});
    CHECK(of({PartKind::joist}) == Parts{{PartKind::joist, "J1"}, joist});
    CHECK(of({PartKind::rim, "R1", model::PartPiece::supports}) == Parts{{PartKind::joist, "J1"}, joist, rim});
    CHECK(of({PartKind::framing}) == Parts{block, {PartKind::joist, "J1"}, joist, rim});
    CHECK(of({PartKind::plug_in, "joist J2"}) == Parts{joist});
    for (const model::PartId& nothing : {model::PartId{}, model::anchor_part("Z"), model::PartId{PartKind::stiffness},
                                         model::PartId{PartKind::plug_in, "the weather"}})
        CHECK(of(nothing).empty());
}

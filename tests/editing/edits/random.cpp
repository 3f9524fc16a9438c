// Whatever is done by hand, in whatever order: ids differ, numbers are numbers, and what is refused changes nothing.
#include "editing/edits.h"
#include "editing/handles.h"
#include "editing/samples.h"
#include "support/compare.h"
#include "support/parts.h"

#include <cmath>
#include <random>

using namespace toehold;
namespace parts = toehold::test::parts;
using editing::Edit;

namespace {

/// Draws from a fixed seed, so that a failure comes back.
class Hand {
  public:
    explicit Hand(unsigned seed) : random_(seed) {}
    double place() { return std::uniform_real_distribution<>(-14.0, 14.0)(random_); }
    int up_to(int most) { return std::uniform_int_distribution<>(0, most)(random_); }
    std::vector<model::PartId> some(const std::vector<model::PartId>& all) {
        std::vector<model::PartId> chosen;
        for (const model::PartId& one : all) {
            if (up_to(4) == 0) chosen.push_back(one);
        }
        return chosen;
    }

  private:
    std::mt19937 random_;
};

Edit any_edit(Hand& hand, const model::BaseDetail& detail) {
    const std::vector<model::PartId> some = hand.some(model::parts(detail));
    const auto line = hand.up_to(1) == 0 ? editing::MirrorLine::x_axis : editing::MirrorLine::y_axis;
    const model::Position at{hand.place(), hand.place()};
    switch (hand.up_to(13)) {
        case 0:
            return editing::add_hole(detail, at);
        case 1:
            return editing::add_corner(detail, at);
        case 2:
            return editing::add_block(detail, at);
        case 3:
            return editing::erase(detail, some);
        case 4:
            return editing::duplicate(detail, some, at);
        case 5:
            return editing::mirror(detail, some, line, hand.up_to(1) == 0);
        case 6:
            return editing::array(detail, some, hand.up_to(3), hand.up_to(3), hand.place(), hand.place());
        case 7:
            return editing::array_round(detail, some, hand.up_to(7));
        case 8:
            return editing::nudge(detail, some, at.x_in, at.y_in);
        case 9:
            return editing::place_at(detail, some.empty() ? parts::corner(1) : some.front(), at);
        case 10:
            return editing::to_slot(detail, some, hand.place(), 100.0 * hand.place());
        case 11:
            return editing::to_round(detail, some);
        case 12:
            return editing::to_polygon(detail);
        default:
            return editing::paste_holes(detail, editing::copy_holes(detail, some));
    }
}

model::BaseDetail any_drag(Hand& hand, const model::BaseDetail& detail) {
    const editing::Sheet sheets[] = {editing::Sheet::plan, editing::Sheet::section, editing::Sheet::elevation};
    const auto along = hand.up_to(1) == 0 ? model::PlanAxis::x : model::PlanAxis::y;
    const editing::SheetPlace place{sheets[hand.up_to(2)], {along, hand.up_to(2) * 2.0 - 4.0}};
    const std::vector<editing::Handle> handles = editing::handles(detail, place);
    if (handles.empty()) return detail;
    const editing::Handle& handle = handles[static_cast<std::size_t>(hand.up_to(static_cast<int>(handles.size()) - 1))];
    const double far = hand.up_to(30) == 0 ? 1e9 : 1.0;
    const editing::SnapRules rules{hand.up_to(1) == 0, hand.up_to(1) * 0.125, 0.1};
    const editing::Moved moved = editing::drag(detail, place, handle, {far * hand.place(), far * hand.place()}, rules);
    REQUIRE(std::isfinite(moved.at.x));
    REQUIRE(std::isfinite(moved.at.y));
    return moved.detail;
}

}  // namespace

TEST_CASE("any row of edits and drags keeps every demo detail whole, on a plate and on a side", "[property]") {
    unsigned seed = 1;
    std::vector<model::BaseDetail> details = test::demo_details();
    details.push_back(test::post_on_side());
    details.push_back(test::tube_on_side());
    for (const model::BaseDetail& demo : details) {
        Hand hand(seed++);
        for (int run = 0; run < 10; ++run) {
            model::BaseDetail detail = demo;
            for (int step = 0; step < 60; ++step) {
                INFO(demo.name << ", seed " << seed - 1 << ", run " << run << ", step " << step);
                if (hand.up_to(1) == 0) {
                    const Edit edit = any_edit(hand, detail);
                    INFO(format::english(edit.step) << format::english(edit.refusal));
                    REQUIRE(edit.step.empty() != edit.refusal.empty());
                    if (edit.step.empty()) REQUIRE(edit.detail == detail);
                    REQUIRE(test::whats_broken(edit.detail) == "");
                    detail = edit.detail;
                } else {
                    detail = any_drag(hand, detail);
                    REQUIRE(test::whats_broken(detail) == "");
                }
            }
        }
    }
}

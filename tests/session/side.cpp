// A session with a post on a member's side: what the drawings say of it, by statics.
#include "editing/edits.h"
#include "session/session.h"
#include "session/where_it_holds.h"
#include "solving/solve_service.h"
#include "support/compare.h"
#include "support/parts.h"
#include "support/shipped.h"

#include <numbers>

using namespace toehold;
namespace parts = toehold::test::parts;
using session::Session;

namespace {

constexpr double outward = 0.5 * std::numbers::pi;

/// 4x4 outside a doubled 2x10 rim, bolts A and B 2 and 7 1/4 in below its top.
model::BaseDetail example() { return editing::starting_side_detail(test::shipped_catalog()); }

/// A session that answers at once what is asked of it, at nominal stiffness.
struct SideWorkplace {
    std::vector<solving::Request> requests;
    Session session;
    explicit SideWorkplace(model::BaseDetail detail)
        : session(test::shipped_catalog(), std::move(detail),
                  [this](solving::Request request) { requests.push_back(std::move(request)); }) {}
    void answer() { session.receive(solving::solve_quick(requests.back(), test::shipped_catalog())); }
};

double pull_of_anchors(const drawing::Overlay& overlay) {
    double sum_lb = 0.0;
    for (const drawing::AnchorMark& mark : overlay.anchors) sum_lb += mark.tension_lb.value_or(0.0);
    return sum_lb;
}

double bearing(const drawing::Overlay& overlay) {
    double sum_lb = 0.0;
    for (const drawing::FaceBearing& one : overlay.bearings) sum_lb += one.force_lb;
    return sum_lb;
}

}  // namespace

TEST_CASE("under an outward push the fasteners pull what the push and the bearing push", "[closed-form]") {
    SideWorkplace place(example());
    place.session.turn_push(outward);
    place.answer();
    INFO(format::english(place.session.failure()));
    const drawing::Overlay overlay = place.session.overlay();
    REQUIRE(overlay.push);
    REQUIRE(overlay.anchors.size() == 2);
    REQUIRE_FALSE(overlay.bearings.empty());
    // Forces along y: pull inward, push and bearing outward.
    CHECK_CLOSE(pull_of_anchors(overlay), overlay.push->push_lb + bearing(overlay), 1e-3, 0.5);
    // The lever arm, 36 in of guard and 1 in of boards, over the overlap: many times the push.
    CHECK(pull_of_anchors(overlay) > 4.0 * overlay.push->push_lb);
    CHECK(overlay.anchors[0].tension_lb > overlay.anchors[1].tension_lb);
    CHECK_FALSE(place.session.polar_curves().empty());
}

TEST_CASE("the bearing is shown by the method the checks use, and ties show their pull", "[unit]") {
    model::BaseDetail tied = example();
    model::TensionTie tie;
    tie.id = "T1";
    tie.name = "tie";
    tie.report = "invented for tests";
    tie.below_top_in = 2.0;
    tie.tension_lb = 1800.0;
    tie.deflection_in = 0.125;
    tie.into = "J2";
    on_side(tied).ties = {tie};
    SideWorkplace place(tied);
    place.session.turn_push(outward);
    place.answer();
    REQUIRE(place.session.overlay().ties_lb.size() == 1);
    CHECK(place.session.overlay().ties_lb[0] > 0.0);
    session::Display display = place.session.display();
    display.method = drawing::Method::hand;
    place.session.show(display);
    CHECK(place.session.overlay().bearings.empty());
    REQUIRE(place.session.overlay().anchors[0].tension_lb);
    CHECK(*place.session.overlay().anchors[0].tension_lb > 0.0);
}

TEST_CASE("a fastener moved, copied and erased is asked about anew, and each is one step", "[unit]") {
    SideWorkplace place(example());
    INFO(format::english(place.session.failure()));
    CHECK(place.session.problems().empty());
    Session& session = place.session;
    const std::size_t asked = place.requests.size();
    REQUIRE(session.apply(editing::nudge(session.detail(), {parts::anchor("A")}, model::Place{0.0, 0.0, -0.5})));
    REQUIRE(session.apply(
        editing::mirror(editing::nudge(session.detail(), {parts::anchor("A")}, model::Place{1.0, 0.0, 0.0}).detail,
                        {parts::anchor("A")}, editing::MirrorLine::y_axis, true)));
    REQUIRE(session.apply(editing::erase(session.detail(), {parts::anchor("C")})));
    CHECK(place.requests.size() == asked + 3);
    CHECK(format::english(session.history().undo_name()) == "Erase fastener C");
    session.undo();
    session.undo();
    session.undo();
    CHECK(session.detail() == example());
}

TEST_CASE("no region is asked for on a post's side", "[unit]") {
    Session session(test::shipped_catalog(), example(), [](const solving::Request&) {});
    int begun = 0;
    session::WhereItHolds holds(session,
                                {[&begun](const model::BaseDetail&, const editing::Dragged&) {
                                     ++begun;
                                     return std::uint64_t{1};
                                 },
                                 [] {}},
                                [] {});
    session::Display display = session.display();
    display.holds = true;
    session.show(display);
    session.select({parts::anchor("A")});
    for (const editing::Handle& handle : editing::handles(session.detail(), {editing::Sheet::plan, {}}))
        holds.take(handle);
    CHECK(begun == 0);
    CHECK(holds.words().empty());
}

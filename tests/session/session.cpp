#include "session/session.h"

#include "demand/preview.h"
#include "editing/edits.h"
#include "review/shipped_reviews.h"
#include "solving/solve_service.h"
#include "support/compare.h"
#include "support/parts.h"

#include <algorithm>
#include <numbers>

using namespace toehold;
namespace parts = toehold::test::parts;
using session::Change;
using session::Freshness;
using session::Session;

namespace {

const char* const sound = "heron-landing-lags-in-deep-blocks";
const char* const unsound = "heron-landing-heel-block-only";

/// A session whose requests are kept, and answered when the test says so.
struct Workplace {
    std::vector<solving::Request> requests;
    std::vector<Change> changes;
    Session session;

    explicit Workplace(const char* name)
        : session(test::shipped_catalog(), test::shipped_detail(name).detail,
                  [this](solving::Request request) { requests.push_back(std::move(request)); }) {
        session.listen([this](Change change) { changes.push_back(change); });
    }
    void answer_quickly() { session.receive(solving::solve_quick(requests.back(), test::shipped_catalog())); }
    void review() { session.receive(solving::solve_review(requests.back(), test::shipped_catalog())); }
    void move_hole(double x_in, bool moving = false) {
        model::BaseDetail moved = session.detail();
        on_deck(moved).plate.holes.front().center.x_in += x_in;
        session.change(format::verbatim("Move hole A"), std::move(moved), "drag", moving);
    }
    [[nodiscard]] bool told(Change change) const {
        return std::find(changes.begin(), changes.end(), change) != changes.end();
    }
};

}  // namespace

TEST_CASE("a detail laid on the session is resolved at once and asked about", "[unit]") {
    Workplace place(sound);
    REQUIRE(place.requests.size() == 1);
    CHECK_FALSE(place.requests[0].moving);
    CHECK_FALSE(place.requests[0].direction_rad);
    CHECK(place.session.resolved() != nullptr);
    CHECK(place.session.problems().empty());
    CHECK(place.session.freshness() == Freshness::none);
    CHECK_FALSE(place.session.overlay().push);
    CHECK(place.session.polar_curves().empty());
}

TEST_CASE("answers grow fresh and an edit makes them stale", "[unit]") {
    Workplace place(sound);
    place.answer_quickly();
    CHECK(place.session.freshness() == Freshness::quick);
    place.review();
    CHECK(place.session.freshness() == Freshness::current);
    CHECK(place.session.review_is_complete());
    place.move_hole(0.125);
    CHECK(place.session.freshness() == Freshness::stale);
    CHECK(place.session.overlay().stale);
    CHECK(place.session.review() != nullptr);
    place.answer_quickly();
    CHECK(place.session.freshness() == Freshness::quick);
    CHECK_FALSE(place.session.overlay().stale);
    // Checks of an earlier state say nothing at the anchors.
    for (const drawing::AnchorMark& mark : place.session.overlay().anchors) {
        CHECK_FALSE(mark.ratio);
        CHECK_FALSE(mark.capacity_lb);
    }
}

TEST_CASE("forces close behind a moving hand are not marked stale, and are when it rests", "[unit]") {
    Workplace place(sound);
    place.answer_quickly();
    place.move_hole(0.01, true);
    CHECK(place.requests.back().moving);
    CHECK(place.session.freshness() == Freshness::stale);
    CHECK_FALSE(place.session.overlay().stale);
    for (int i = 0; i < 5; ++i) place.move_hole(0.01, true);
    CHECK(place.session.overlay().stale);
    place.answer_quickly();
    place.move_hole(0.01, true);
    CHECK_FALSE(place.session.overlay().stale);
    place.session.rest();
    CHECK(place.session.overlay().stale);
    CHECK_FALSE(place.requests.back().moving);
    // One drag is one step.
    place.session.undo();
    CHECK_FALSE(place.session.history().can_undo());
    CHECK(place.session.detail() == test::shipped_detail(sound).detail);
}

TEST_CASE("answers that come late change nothing newer, and none outlives the detail it is of", "[unit]") {
    Workplace place(sound);
    const solving::Result early = solving::solve_quick(place.requests.back(), test::shipped_catalog());
    place.move_hole(0.125);
    place.answer_quickly();
    const solving::Quick* newest = place.session.quick();
    place.session.receive(early);
    CHECK(place.session.quick() == newest);
    place.session.replace(test::shipped_detail(unsound).detail);
    CHECK(place.session.quick() == nullptr);
    place.session.receive(early);
    CHECK(place.session.quick() == nullptr);
    CHECK_FALSE(place.session.history().can_undo());
    CHECK(place.told(Change::file));
}

TEST_CASE("marks at the anchors are the review's", "[unit]") {
    Workplace place(unsound);
    place.answer_quickly();
    place.review();
    const review::Review& review = *place.session.review();
    const drawing::Overlay overlay = place.session.overlay();
    REQUIRE(overlay.anchors.size() == review.resolved.anchors.size());
    for (std::size_t i = 0; i < overlay.anchors.size(); ++i) {
        const drawing::AnchorMark& mark = overlay.anchors[i];
        CHECK(mark.part == parts::anchor(review.resolved.anchors[i].id));
        CHECK(mark.largest_tension_lb == review.demand->anchors[i].tension_lb);
        double worst = 0.0;
        for (const checks::CheckResult& check : review.checks) {
            const bool its_own = check.part == mark.part || check.part == model::hole_part(mark.part.id);
            if (!its_own || check.status == checks::Status::missing_evidence) continue;
            // A least distance that is kept measures nothing of the anchor's work.
            const bool kept_distance = check.unit == "in" && check.status == checks::Status::holds;
            if (!kept_distance) worst = std::max(worst, check.ratio);
            // Of the checks of tension none leaves less of the capacity.
            const bool of_tension = check.id == "anchor-withdrawal" || check.id == "anchor-steel-tension";
            if (of_tension) {
                REQUIRE(mark.capacity_lb);
                CHECK(*mark.capacity_lb <= check.capacity);
            }
        }
        CHECK(mark.ratio.value() == worst);
        CHECK_FALSE(mark.worst_check.empty());
    }
}

TEST_CASE("each method shows its own forces", "[unit]") {
    Workplace place(sound);
    session::Display display = place.session.display();
    display.direction_rad = 0.5 * std::numbers::pi;
    place.session.show(display);
    place.answer_quickly();
    const demand::PushResult& push = place.session.quick()->push;
    const auto tension_by = [&](drawing::Method method) {
        display.method = method;
        place.session.show(display);
        return place.session.overlay().anchors[0].tension_lb.value();
    };
    CHECK(tension_by(drawing::Method::rigid) == push.rigid[0].tension_lb);
    CHECK(place.session.overlay().field->nodes.size() == push.rigid_field.nodes.size());
    CHECK(place.session.polar_curves()[0].tension_lb == place.session.quick()->polar.rigid_lb[0]);
    CHECK(tension_by(drawing::Method::flexible) == push.flexible[0].tension_lb);
    CHECK(place.session.overlay().field->nodes.size() == push.flexible_field->nodes.size());
    CHECK(tension_by(drawing::Method::hand) == push.hand_lb[0].value());
    CHECK_FALSE(place.session.overlay().field);
    CHECK(place.session.polar_curves().empty());
    // 200 lb over four anchors, along the push.
    CHECK_CLOSE(place.session.overlay().anchors[0].shear_lb, 50.0, 1e-9, 0.0);
    CHECK_CLOSE(place.session.overlay().anchors[0].shear_direction_rad, 0.5 * std::numbers::pi, 1e-9, 0.0);
    // Aslant there is no hand value, and the push says so by being absent.
    place.session.turn_push(1.0);
    place.answer_quickly();
    CHECK_FALSE(place.session.overlay().anchors[0].tension_lb);
}

TEST_CASE("the push shown is the governing one until another is asked for", "[unit]") {
    Workplace place(sound);
    place.answer_quickly();
    REQUIRE(place.session.overlay().push);
    CHECK(place.session.overlay().push->governing);
    CHECK(place.session.overlay().push->push_lb == 200.0);
    const std::size_t before = place.requests.size();
    place.session.turn_push(1.0);
    REQUIRE(place.requests.size() == before + 1);
    CHECK(place.requests.back().direction_rad == 1.0);
    CHECK(place.requests.back().revision == place.requests.front().revision);
    place.answer_quickly();
    CHECK(place.session.overlay().push->direction_rad == 1.0);
    CHECK_FALSE(place.session.overlay().push->governing);
    CHECK(place.told(Change::display));
}

TEST_CASE("a review whose governing push is another one has that one shown", "[unit]") {
    Workplace place(sound);
    place.answer_quickly();
    solving::Result result = solving::solve_review(place.requests.back(), test::shipped_catalog());
    review::Review other = *result.review;
    for (demand::AnchorEnvelope& anchor : other.demand->anchors) anchor.direction_rad = 2.5;
    result.review = std::make_shared<const review::Review>(other);
    const std::size_t before = place.requests.size();
    place.session.receive(result);
    REQUIRE(place.requests.size() == before + 1);
    CHECK(place.requests.back().direction_rad == 2.5);
    place.answer_quickly();
    CHECK(place.session.overlay().push->direction_rad == 2.5);
    CHECK(place.session.overlay().push->governing);
    // Once it is shown nobody asks again.
    place.session.receive(result);
    CHECK(place.requests.size() == before + 1);
}

TEST_CASE("a detail that cannot be solved keeps its last answers, marked, and says why", "[bad-input]") {
    Workplace place(sound);
    place.answer_quickly();
    model::BaseDetail broken = place.session.detail();
    on_deck(broken).plate.thickness_in = -1.0;
    place.session.change(format::verbatim("Change plate thickness"), broken);
    CHECK(place.session.resolved() == nullptr);
    CHECK_FALSE(place.session.problems().empty());
    CHECK(place.session.freshness() == Freshness::none);
    CHECK(place.session.overlay().stale);
    place.answer_quickly();
    CHECK(place.session.quick() != nullptr);
    place.session.undo();
    CHECK(place.session.problems().empty());
    CHECK(place.session.resolved() != nullptr);
}

TEST_CASE("a remedy is one step that can be taken back; one of an earlier detail is refused", "[unit]") {
    Workplace place(unsound);
    place.answer_quickly();
    place.review();
    REQUIRE_FALSE(place.session.review()->remedies.empty());
    const review::Remedy remedy = place.session.review()->remedies.front();
    place.session.apply_remedy(remedy);
    CHECK(place.session.detail() == remedy.detail);
    CHECK(format::english(place.session.history().undo_name()).find("Apply remedy: ") == 0);
    CHECK(format::english(place.session.history().undo_name()).size() < 64);
    place.session.undo();
    CHECK(place.session.detail() == test::shipped_detail(unsound).detail);
    place.move_hole(0.125);
    place.session.apply_remedy(remedy);
    CHECK(place.session.detail() != remedy.detail);
    CHECK_FALSE(place.session.message().empty());
}

TEST_CASE("an edit that is refused says so and changes nothing", "[unit]") {
    Workplace place(sound);
    const std::size_t before = place.requests.size();
    CHECK_FALSE(place.session.apply({place.session.detail(), {}, {}, format::phrase("There is no hole to mirror.")}));
    CHECK(format::english(place.session.message()) == "There is no hole to mirror.");
    CHECK(place.requests.size() == before);
    model::BaseDetail renamed = place.session.detail();
    renamed.name = "Heron Landing, changed";
    CHECK(place.session.apply({renamed, format::verbatim("Change name"), {parts::plate}, {}}));
    CHECK(place.session.selection() == std::vector<model::PartId>{parts::plate});
    CHECK(place.session.message().empty());
    CHECK(place.session.history().changed());
    place.session.mark_saved();
    CHECK_FALSE(place.session.history().changed());
}

TEST_CASE("the selection keeps its order and loses what is no longer there", "[unit]") {
    Workplace place(sound);
    place.session.select({parts::anchor("A"), parts::plate, parts::anchor("A")});
    CHECK(place.session.selection() == std::vector<model::PartId>{parts::anchor("A"), parts::plate});
    place.session.toggle(parts::post);
    place.session.toggle(parts::plate);
    CHECK(place.session.selection() == std::vector<model::PartId>{parts::anchor("A"), parts::post});
    model::BaseDetail without = place.session.detail();
    on_deck(without).plate.holes.erase(on_deck(without).plate.holes.begin());
    place.session.change(format::verbatim("Erase hole A"), without);
    CHECK(place.session.selection() == std::vector<model::PartId>{parts::post});
}

TEST_CASE("who listens may stop while being told", "[unit]") {
    Workplace place(sound);
    int told = 0, second = 0;
    const int first = place.session.listen([&](Change) {
        ++told;
        place.session.stop_listening(second);
    });
    second = place.session.listen([&](Change) { told += 100; });
    place.session.say(format::verbatim("a word"));
    CHECK(told == 1);
    place.session.stop_listening(first);
    place.session.say(format::verbatim("another"));
    CHECK(told == 1);
}

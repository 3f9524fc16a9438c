#include "desk/desk.h"

#include "review/shipped_reviews.h"
#include "support/compare.h"

#include <algorithm>
#include <numbers>

using namespace toehold;
using desk::Change;
using desk::Desk;
using desk::Freshness;

namespace {

const char* const sound = "heron-landing-lags-in-deep-blocks";
const char* const unsound = "heron-landing-heel-block-only";

/// A desk whose requests are kept, and answered when the test says so.
struct Workplace {
    std::vector<solving::Request> requests;
    std::vector<Change> changes;
    Desk desk;

    explicit Workplace(const char* name)
        : desk(test::catalogs(), test::shipped_detail(name).detail,
               [this](solving::Request request) { requests.push_back(std::move(request)); }) {
        desk.listen([this](Change change) { changes.push_back(change); });
    }
    void answer_quickly() { desk.receive(solving::solve_quick(requests.back(), test::catalogs())); }
    void review() { desk.receive(solving::solve_review(requests.back(), test::catalogs())); }
    void move_hole(double x_in, bool moving = false) {
        model::BaseDetail moved = desk.detail();
        moved.plate.holes.front().center.x_in += x_in;
        desk.change("Move hole A", std::move(moved), "drag", moving);
    }
    [[nodiscard]] bool told(Change change) const {
        return std::find(changes.begin(), changes.end(), change) != changes.end();
    }
};

}  // namespace

TEST_CASE("a detail laid on the desk is resolved at once and asked about", "[unit]") {
    Workplace place(sound);
    REQUIRE(place.requests.size() == 1);
    CHECK_FALSE(place.requests[0].moving);
    CHECK_FALSE(place.requests[0].direction_rad);
    CHECK(place.desk.resolved() != nullptr);
    CHECK(place.desk.problems().empty());
    CHECK(place.desk.freshness() == Freshness::none);
    CHECK_FALSE(place.desk.overlay().push);
    CHECK(place.desk.petals().empty());
}

TEST_CASE("answers grow fresh and an edit makes them stale", "[unit]") {
    Workplace place(sound);
    place.answer_quickly();
    CHECK(place.desk.freshness() == Freshness::quick);
    place.review();
    CHECK(place.desk.freshness() == Freshness::current);
    CHECK(place.desk.review_is_complete());
    place.move_hole(0.125);
    CHECK(place.desk.freshness() == Freshness::stale);
    CHECK(place.desk.overlay().stale);
    CHECK(place.desk.review() != nullptr);
    place.answer_quickly();
    CHECK(place.desk.freshness() == Freshness::quick);
    CHECK_FALSE(place.desk.overlay().stale);
    // Checks of an earlier state say nothing at the anchors.
    for (const drawing::AnchorMark& mark : place.desk.overlay().anchors) {
        CHECK_FALSE(mark.ratio);
        CHECK_FALSE(mark.capacity_lb);
    }
}

TEST_CASE("forces close behind a moving hand are not marked stale, and are when it rests", "[unit]") {
    Workplace place(sound);
    place.answer_quickly();
    place.move_hole(0.01, true);
    CHECK(place.requests.back().moving);
    CHECK(place.desk.freshness() == Freshness::stale);
    CHECK_FALSE(place.desk.overlay().stale);
    for (int i = 0; i < 5; ++i) place.move_hole(0.01, true);
    CHECK(place.desk.overlay().stale);
    place.answer_quickly();
    place.move_hole(0.01, true);
    CHECK_FALSE(place.desk.overlay().stale);
    place.desk.rest();
    CHECK(place.desk.overlay().stale);
    CHECK_FALSE(place.requests.back().moving);
    // One drag is one step.
    place.desk.undo();
    CHECK_FALSE(place.desk.history().can_undo());
    CHECK(place.desk.detail() == test::shipped_detail(sound).detail);
}

TEST_CASE("answers that come late change nothing newer, and none outlives the detail it is of", "[unit]") {
    Workplace place(sound);
    const solving::Result early = solving::solve_quick(place.requests.back(), test::catalogs());
    place.move_hole(0.125);
    place.answer_quickly();
    const solving::Quick* newest = place.desk.quick();
    place.desk.receive(early);
    CHECK(place.desk.quick() == newest);
    place.desk.replace(test::shipped_detail(unsound).detail);
    CHECK(place.desk.quick() == nullptr);
    place.desk.receive(early);
    CHECK(place.desk.quick() == nullptr);
    CHECK_FALSE(place.desk.history().can_undo());
    CHECK(place.told(Change::file));
}

TEST_CASE("marks at the anchors are the review's", "[unit]") {
    Workplace place(unsound);
    place.answer_quickly();
    place.review();
    const review::Review& review = *place.desk.review();
    const drawing::Overlay overlay = place.desk.overlay();
    REQUIRE(overlay.anchors.size() == review.resolved.anchors.size());
    for (std::size_t i = 0; i < overlay.anchors.size(); ++i) {
        const drawing::AnchorMark& mark = overlay.anchors[i];
        CHECK(mark.id == review.resolved.anchors[i].id);
        CHECK(mark.largest_tension_lb == review.demand->anchors[i].tension_lb);
        const std::string subject = "anchor " + mark.id;
        double worst = 0.0;
        for (const checks::CheckResult& check : review.checks) {
            const bool its_own = check.subject == subject || check.subject == "hole " + mark.id;
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
    desk::Display display = place.desk.display();
    display.direction_rad = 0.5 * std::numbers::pi;
    place.desk.show(display);
    place.answer_quickly();
    const demand::PushResult& push = place.desk.quick()->push;
    const auto tension_by = [&](drawing::Method method) {
        display.method = method;
        place.desk.show(display);
        return place.desk.overlay().anchors[0].tension_lb.value();
    };
    CHECK(tension_by(drawing::Method::rigid) == push.rigid[0].tension_lb);
    CHECK(place.desk.overlay().field->nodes.size() == push.rigid_field.nodes.size());
    CHECK(place.desk.petals()[0].tension_lb == place.desk.quick()->petals.rigid_lb[0]);
    CHECK(tension_by(drawing::Method::flexible) == push.flexible[0].tension_lb);
    CHECK(place.desk.overlay().field->nodes.size() == push.flexible_field->nodes.size());
    CHECK(tension_by(drawing::Method::hand) == push.hand_lb[0].value());
    CHECK_FALSE(place.desk.overlay().field);
    CHECK(place.desk.petals().empty());
    // 200 lb over four anchors, along the push.
    CHECK_CLOSE(place.desk.overlay().anchors[0].shear_lb, 50.0, 1e-9, 0.0);
    CHECK_CLOSE(place.desk.overlay().anchors[0].shear_direction_rad, 0.5 * std::numbers::pi, 1e-9, 0.0);
    // Aslant there is no hand value, and the push says so by being absent.
    place.desk.turn_push(1.0);
    place.answer_quickly();
    CHECK_FALSE(place.desk.overlay().anchors[0].tension_lb);
}

TEST_CASE("the push shown is the governing one until another is asked for", "[unit]") {
    Workplace place(sound);
    place.answer_quickly();
    REQUIRE(place.desk.overlay().push);
    CHECK(place.desk.overlay().push->governing);
    CHECK(place.desk.overlay().push->push_lb == 200.0);
    const std::size_t before = place.requests.size();
    place.desk.turn_push(1.0);
    REQUIRE(place.requests.size() == before + 1);
    CHECK(place.requests.back().direction_rad == 1.0);
    CHECK(place.requests.back().edition == place.requests.front().edition);
    place.answer_quickly();
    CHECK(place.desk.overlay().push->direction_rad == 1.0);
    CHECK_FALSE(place.desk.overlay().push->governing);
    CHECK(place.told(Change::display));
}

TEST_CASE("a review whose governing push is another one has that one shown", "[unit]") {
    Workplace place(sound);
    place.answer_quickly();
    solving::Result result = solving::solve_review(place.requests.back(), test::catalogs());
    review::Review other = *result.review;
    for (demand::AnchorEnvelope& anchor : other.demand->anchors) anchor.direction_rad = 2.5;
    result.review = std::make_shared<const review::Review>(other);
    const std::size_t before = place.requests.size();
    place.desk.receive(result);
    REQUIRE(place.requests.size() == before + 1);
    CHECK(place.requests.back().direction_rad == 2.5);
    place.answer_quickly();
    CHECK(place.desk.overlay().push->direction_rad == 2.5);
    CHECK(place.desk.overlay().push->governing);
    // Once it is shown nobody asks again.
    place.desk.receive(result);
    CHECK(place.requests.size() == before + 1);
}

TEST_CASE("a detail that cannot be solved keeps its last answers, marked, and says why", "[bad-input]") {
    Workplace place(sound);
    place.answer_quickly();
    model::BaseDetail broken = place.desk.detail();
    broken.plate.thickness_in = -1.0;
    place.desk.change("Change plate thickness", broken);
    CHECK(place.desk.resolved() == nullptr);
    CHECK_FALSE(place.desk.problems().empty());
    CHECK(place.desk.freshness() == Freshness::none);
    CHECK(place.desk.overlay().stale);
    place.answer_quickly();
    CHECK(place.desk.quick() != nullptr);
    place.desk.undo();
    CHECK(place.desk.problems().empty());
    CHECK(place.desk.resolved() != nullptr);
}

TEST_CASE("a remedy is one step that can be taken back; one of an earlier detail is refused", "[unit]") {
    Workplace place(unsound);
    place.answer_quickly();
    place.review();
    REQUIRE_FALSE(place.desk.review()->remedies.empty());
    const review::Remedy remedy = place.desk.review()->remedies.front();
    place.desk.apply_remedy(remedy);
    CHECK(place.desk.detail() == remedy.detail);
    CHECK(place.desk.history().undo_name().find("Apply remedy: ") == 0);
    CHECK(place.desk.history().undo_name().size() < 64);
    place.desk.undo();
    CHECK(place.desk.detail() == test::shipped_detail(unsound).detail);
    place.move_hole(0.125);
    place.desk.apply_remedy(remedy);
    CHECK(place.desk.detail() != remedy.detail);
    CHECK_FALSE(place.desk.message().empty());
}

TEST_CASE("an edit that is refused says so and changes nothing", "[unit]") {
    Workplace place(sound);
    const std::size_t before = place.requests.size();
    CHECK_FALSE(place.desk.apply({place.desk.detail(), "", {}, "There is no hole to mirror."}));
    CHECK(place.desk.message() == "There is no hole to mirror.");
    CHECK(place.requests.size() == before);
    model::BaseDetail renamed = place.desk.detail();
    renamed.name = "Heron Landing, changed";
    CHECK(place.desk.apply({renamed, "Change name", {"plate"}, ""}));
    CHECK(place.desk.selection() == std::vector<std::string>{"plate"});
    CHECK(place.desk.message().empty());
    CHECK(place.desk.history().changed());
    place.desk.mark_saved();
    CHECK_FALSE(place.desk.history().changed());
}

TEST_CASE("the selection keeps its order and loses what is no longer there", "[unit]") {
    Workplace place(sound);
    place.desk.select({"anchor A", "plate", "anchor A"});
    CHECK(place.desk.selection() == std::vector<std::string>{"anchor A", "plate"});
    place.desk.toggle("post");
    place.desk.toggle("plate");
    CHECK(place.desk.selection() == std::vector<std::string>{"anchor A", "post"});
    model::BaseDetail without = place.desk.detail();
    without.plate.holes.erase(without.plate.holes.begin());
    place.desk.change("Erase hole A", without);
    CHECK(place.desk.selection() == std::vector<std::string>{"post"});
}

TEST_CASE("who listens may stop while being told", "[unit]") {
    Workplace place(sound);
    int told = 0, second = 0;
    const int first = place.desk.listen([&](Change) {
        ++told;
        place.desk.stop_listening(second);
    });
    second = place.desk.listen([&](Change) { told += 100; });
    place.desk.say("a word");
    CHECK(told == 1);
    place.desk.stop_listening(first);
    place.desk.say("another");
    CHECK(told == 1);
}

// What the report's figures show, held against the demand's own states and envelopes.
#include "paper/report/overlay.h"

#include "paper/report/report_sample.h"
#include "review/shipped_reviews.h"
#include "support/compare.h"
#include "support/example_detail.h"

#include <algorithm>
#include <numbers>

using namespace toehold;
using namespace toehold::paper;

TEST_CASE("The polar envelope has the tensions at the stiffness as computed", "[unit]") {
    const review::Review& review = test::reported("lags-in-deep-blocks");
    const std::vector<drawing::PolarCurve> curves = report::polar_curves(review);
    REQUIRE(curves.size() == review.resolved.anchors.size());
    for (std::size_t anchor = 0; anchor < curves.size(); ++anchor) {
        CHECK(curves[anchor].part.id == review.resolved.anchors[anchor].id);
        REQUIRE(curves[anchor].tension_lb.size() == 72);
        // The envelope at nominal stiffness is taken over the same directions, and between them.
        const double largest = *std::max_element(curves[anchor].tension_lb.begin(), curves[anchor].tension_lb.end());
        CHECK_CLOSE(largest, review.demand->anchors[anchor].flexible_tension_lb.value(), 2e-3, 0.0);
    }
    // A and C stand opposite each other about the post: a push and its opposite change their parts.
    for (std::size_t step = 0; step < 72; ++step)
        CHECK_CLOSE(curves[0].tension_lb[step], curves[2].tension_lb[(step + 36) % 72], 5e-3, 0.5);
}

TEST_CASE("Where loads push outward alone the other curves are empty", "[unit]") {
    catalog::Resolved resolved = test::shipped_detail("heron-landing-decking-only");
    test::push_outward_alone(resolved.detail);
    const review::Review review = review::evaluate(resolved, "");
    REQUIRE(review.demand);
    for (const drawing::PolarCurve& curve : report::polar_curves(review)) {
        for (std::size_t step = 0; step < curve.tension_lb.size(); ++step) {
            if (step != 18) CHECK(curve.tension_lb[step] == 0.0);
        }
    }
    // The push is outward; A and B stand inward of the post and are pulled.
    CHECK(report::polar_curves(review)[0].tension_lb[18] > 100.0);
    CHECK_CLOSE(report::overlay(review, {}).push->direction_rad, 0.5 * std::numbers::pi, 0.0, 1e-9);
}

TEST_CASE("Marks stand for the state with the largest pull of all", "[unit]") {
    for (const char* name : {"lags-in-deep-blocks", "decking-only", "short-lags-in-flat-block"}) {
        const review::Review& review = test::reported(name);
        const drawing::Overlay overlay = report::overlay(review, {});
        double largest = 0.0;
        for (const demand::AnchorEnvelope& anchor : review.demand->anchors)
            largest = std::max(largest, anchor.tension_lb);
        double shown = 0.0;
        for (const drawing::AnchorMark& mark : overlay.anchors) shown = std::max(shown, mark.tension_lb.value());
        CHECK(shown == largest);
        REQUIRE(overlay.push);
        CHECK(overlay.push->governing);
        CHECK(overlay.push->push_lb == 200.0);
        // The field is drawn under the very push whose marks stand beside it.
        REQUIRE(overlay.field);
        CHECK_CLOSE(overlay.field->direction_rad, overlay.push->direction_rad, 0.0, 1e-9);
    }
}

TEST_CASE("A mark's status is that of the worst check of its anchor", "[unit]") {
    const review::Review& review = test::reported("short-lags-in-flat-block");
    for (const drawing::AnchorMark& mark : report::overlay(review, {}).anchors) {
        const auto worst =
            std::find_if(review.checks.begin(), review.checks.end(),
                         [&mark](const checks::CheckResult& result) { return result.part == mark.part; });
        REQUIRE(worst != review.checks.end());
        CHECK(mark.status == worst->status);
        CHECK(mark.status == checks::Status::no_path);
    }
}

TEST_CASE("Without a demand nothing is marked", "[bad-input]") {
    review::Review review = test::reported("decking-only");
    review.demand.reset();
    CHECK(report::polar_curves(review).empty());
    CHECK(report::governing_state(review) == nullptr);
    CHECK_FALSE(report::overlay(review, {}).push);
}

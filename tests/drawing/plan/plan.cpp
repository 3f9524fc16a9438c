#include "drawing/annotation/overlay.h"
#include "drawing/drawings.h"
#include "drawing/scene_reading.h"
#include "support/compare.h"
#include "support/example.h"
#include "support/parts.h"

#include <algorithm>
#include <numbers>

using namespace toehold;
namespace parts = toehold::test::parts;

namespace {

constexpr double right_angle = 0.5 * std::numbers::pi;

drawing::Overlay overlay_of_four() {
    drawing::Overlay overlay;
    overlay.push = drawing::PushShown{right_angle, 200.0, 0.0, 42.0, true};
    for (const char* id : {"A", "B", "C", "D"}) {
        drawing::AnchorMark mark;
        mark.part = parts::anchor(id);
        mark.tension_lb = 800.0;
        mark.shear_lb = 50.0;
        mark.shear_direction_rad = right_angle;
        mark.largest_tension_lb = 1600.0;
        mark.capacity_lb = 1200.0;
        mark.ratio = 0.83;
        mark.status = checks::Status::holds;
        overlay.anchors.push_back(mark);
    }
    demand::DeflectedShape field;
    field.nodes = {{{-2.0, 0.0}, 0.01, 0.0}, {{2.0, 0.0}, 0.01, 0.0}, {{0.0, 3.0}, -0.002, 900.0}};
    field.triangles = {{0, 1, 2}};
    overlay.field = field;
    return overlay;
}

drawing::Scene plan_of(const catalog::Resolved& resolved, const drawing::Overlay* overlay = nullptr,
                       const drawing::PlanOptions& options = {}) {
    return drawing::plan({resolved.detail, &resolved, overlay, units::System::us}, options);
}

}  // namespace

TEST_CASE("Holes of the plan stand where the plate has them, in their size, as anchors", "[drawing][plan]") {
    const catalog::Resolved resolved = test::example_resolved();
    const drawing::Scene scene = plan_of(resolved);
    for (const model::Hole& hole : on_deck(resolved.detail).plate.holes) {
        const auto circles = test::circles(scene, parts::anchor(hole.id));
        const auto drawn = std::find_if(circles.begin(), circles.end(),
                                        [](const drawing::Circle& one) { return one.pen == drawing::Pen::outline; });
        REQUIRE(drawn != circles.end());
        CHECK(drawn->center.at == drawing::Point{hole.center.x_in, hole.center.y_in});
        CHECK(drawn->center.paper_mm == drawing::Point{});
        CHECK(drawn->radius_in == 0.21875);  // 7/16 in over 2
        CHECK(test::says(scene, hole.id));
    }
}

TEST_CASE("A slot is as long and as wide as the plate says, along its angle", "[drawing][plan]") {
    catalog::Resolved resolved = test::example_resolved();
    on_deck(resolved.detail).plate.holes[0].shape = model::Slot{1.0, 0.5, 90.0};
    const auto paths = test::paths(plan_of(resolved), parts::anchor("A"));
    const auto slot = std::find_if(paths.begin(), paths.end(), [](const drawing::Path& one) {
        return one.closed && one.pen == drawing::Pen::outline;
    });
    REQUIRE(slot != paths.end());
    const drawing::Box box = test::box(*slot);
    CHECK_CLOSE(box.high.x - box.low.x, 0.5, 0.0, 1e-9);
    CHECK_CLOSE(box.high.y - box.low.y, 1.0, 0.0, 1e-9);
    CHECK_CLOSE(0.5 * (box.low.x + box.high.x), -2.0, 0.0, 1e-9);
    CHECK_CLOSE(0.5 * (box.low.y + box.high.y), -2.5, 0.0, 1e-9);
}

// The plate is 5 1/2 by 7 with holes at +-2, +-2 1/2: by hand 3/4 + 4 + 3/4 = 5 1/2 and 1 + 5 + 1 = 7.
TEST_CASE("Dimensions of the plan are the plate's, by hand", "[drawing][plan]") {
    const catalog::Resolved resolved = test::example_resolved();
    const drawing::Scene scene = plan_of(resolved);
    CHECK(test::times_said(scene, "3/4") == 2);
    CHECK(test::times_said(scene, "4") == 1);
    CHECK(test::times_said(scene, "5 1/2") == 1);
    CHECK(test::times_said(scene, "1") == 2);
    CHECK(test::times_said(scene, "5") == 1);
    CHECK(test::times_said(scene, "7") == 1);
    CHECK(test::says(scene, "Dimensions in inches"));
    const drawing::Scene metric = drawing::plan({resolved.detail, &resolved, nullptr, units::System::si}, {});
    CHECK(test::says(metric, "139.7"));  // 5.5 x 25.4
    CHECK(test::says(metric, "19.1"));   // 0.75 x 25.4 = 19.05
    CHECK(test::says(metric, "Dimensions in mm"));
}

// Hole A at (-2, -2 1/2), 7/16 wide: to the left edge 3/4 from its centre, 3/4 - 7/32 = 17/32 from its edge; to
// the lower edge 1 and 25/32.
TEST_CASE("A measured hole shows its distances to the nearest edges", "[drawing][plan]") {
    const catalog::Resolved resolved = test::example_resolved();
    drawing::PlanOptions options;
    options.dimensions = false;
    options.measured = {parts::anchor("A"), parts::anchor("nobody"), parts::plate};
    const drawing::Scene scene = plan_of(resolved, nullptr, options);
    CHECK(test::says(scene, "x 3/4, clear 17/32"));
    CHECK(test::says(scene, "y 1, clear 25/32"));
}

TEST_CASE("The plan draws only parts that the detail has, and all that lie in it", "[drawing][plan]") {
    const catalog::Resolved resolved = test::example_resolved();
    const drawing::Overlay overlay = overlay_of_four();
    const std::set<model::PartId> drawn = test::parts_drawn(plan_of(resolved, &overlay));
    const std::vector<model::PartId> known = model::parts(resolved.detail);
    for (const model::PartId& part : drawn) {
        INFO(model::key(part));
        CHECK(std::find(known.begin(), known.end(), part) != known.end());
    }
    for (const model::PartId& part :
         {parts::plate, parts::post, parts::weld, parts::push, parts::anchor("A"), parts::anchor("D"),
          parts::block("B1"), parts::block("B2"), parts::joist("J1"), parts::joist("J2")}) {
        INFO(model::key(part));
        CHECK(drawn.count(part) == 1);
    }
}

// Bars: the longest pull is 1600 lb and 16 mm long, so 1200 lb of capacity are 12 mm and 800 lb of demand 8 mm.
TEST_CASE("A bar of demand is read against the length of its capacity", "[drawing][plan]") {
    const catalog::Resolved resolved = test::example_resolved();
    const drawing::Overlay overlay = overlay_of_four();
    bool demand = false, capacity = false;
    for (const drawing::Path& path : test::paths(plan_of(resolved, &overlay), parts::anchor("B"))) {
        if (!path.closed || path.contours.front().size() != 4) continue;
        const double length = std::abs(path.contours.front()[1].paper_mm.x - path.contours.front()[0].paper_mm.x);
        if (path.fill == drawing::Fill::demand && std::abs(length - 8.0) < 1e-9) demand = true;
        if (path.pen == drawing::Pen::capacity && std::abs(length - 12.0) < 1e-9) capacity = true;
    }
    CHECK(demand);
    CHECK(capacity);
}

TEST_CASE("A status is the frame around an anchor's letter; a stale one has none", "[drawing][plan]") {
    const catalog::Resolved resolved = test::example_resolved();
    drawing::Overlay overlay = overlay_of_four();
    const auto framed = [&](drawing::Pen pen) {
        const auto paths = test::paths(plan_of(resolved, &overlay), parts::anchor("C"));
        return std::any_of(paths.begin(), paths.end(), [pen](const drawing::Path& path) { return path.pen == pen; });
    };
    const std::pair<checks::Status, drawing::Pen> frames[] = {
        {checks::Status::fails, drawing::Pen::fails},
        {checks::Status::no_path, drawing::Pen::no_path},
        {checks::Status::missing_evidence, drawing::Pen::missing},
    };
    for (const auto& [status, pen] : frames) {
        CHECK_FALSE(framed(pen));
        overlay.anchors[2].status = status;
        CHECK(framed(pen));
    }
    CHECK(test::says(plan_of(resolved, &overlay), "0.83"));
    overlay.stale = true;
    CHECK_FALSE(framed(drawing::Pen::missing));
    CHECK(test::says(plan_of(resolved, &overlay), "(0.83)"));
    CHECK(test::says(plan_of(resolved, &overlay), "(800 lb)"));
}

TEST_CASE("Where nothing resists, an anchor's mark says so in place of a ratio", "[drawing][plan][A16]") {
    const catalog::Resolved resolved = test::example_resolved();
    drawing::Overlay overlay = overlay_of_four();
    CHECK_FALSE(test::says(plan_of(resolved, &overlay), "no load path"));
    overlay.anchors[2].status = checks::Status::no_path;
    for (const std::optional<double> ratio :
         {std::optional<double>(), std::optional(std::numeric_limits<double>::infinity())}) {
        overlay.anchors[2].ratio = ratio;
        CHECK(test::says(plan_of(resolved, &overlay), "no load path"));
        CHECK_FALSE(test::says(plan_of(resolved, &overlay), "?"));
    }
}

TEST_CASE("A mark that nothing checked does not say that it passes", "[drawing][plan]") {
    const catalog::Resolved resolved = test::example_resolved();
    drawing::Overlay overlay = overlay_of_four();
    CHECK_FALSE(drawing::AnchorMark{}.status);
    const auto holding = [&] {
        const auto paths = test::paths(plan_of(resolved, &overlay), parts::anchor("C"));
        return std::count_if(paths.begin(), paths.end(),
                             [](const drawing::Path& path) { return path.pen == drawing::Pen::holds && path.closed; });
    };
    CHECK(holding() == 1);
    overlay.anchors[2].status.reset();
    CHECK(holding() == 0);
    CHECK(test::times_said(plan_of(resolved, &overlay), "0.83") == 3);  // of A, B and D; the letter C still stands
    CHECK(test::says(plan_of(resolved, &overlay), "C"));
}

// The post is 2 in square: an outward push meets its near face at y = -1.
TEST_CASE("The push comes from outside to the face of the post", "[drawing][plan]") {
    const catalog::Resolved resolved = test::example_resolved();
    const drawing::Overlay overlay = overlay_of_four();
    const auto paths = test::paths(plan_of(resolved, &overlay), parts::push);
    const auto head = std::find_if(paths.begin(), paths.end(), [](const drawing::Path& one) {
        return one.closed && one.fill == drawing::Fill::demand;
    });
    REQUIRE(head != paths.end());
    CHECK_CLOSE(head->contours[0][0].at.x, 0.0, 0.0, 1e-9);
    CHECK_CLOSE(head->contours[0][0].at.y, -1.0, 0.0, 1e-9);
    CHECK(test::says(plan_of(resolved, &overlay), "200 lb at 42 in"));
    CHECK(test::says(plan_of(resolved, &overlay), "toward 90\u00b0"));
}

TEST_CASE("The bed's pressure is shaded against its largest, with a scale that says it", "[drawing][plan]") {
    const catalog::Resolved resolved = test::example_resolved();
    const drawing::Overlay overlay = overlay_of_four();
    const drawing::Scene scene = plan_of(resolved, &overlay);
    const auto shading = std::find_if(scene.items.begin(), scene.items.end(), [](const drawing::Item& item) {
        return std::holds_alternative<drawing::Shading>(item);
    });
    REQUIRE(shading != scene.items.end());
    CHECK(std::get<drawing::Shading>(*shading).level == std::vector<double>{0.0, 0.0, 1.0});
    CHECK(test::says(scene, "900 psi"));
}

TEST_CASE("The plan shows packing and the lower plate as hidden edges", "[drawing][plan]") {
    catalog::Resolved resolved = test::example_resolved();
    on_deck(resolved.detail).layers.packing =
        model::Packing{model::PackingShape::rectangle, 2.0, 1.5, "packing-steel", 0.0, {}};
    on_deck(resolved.detail).anchors = {model::AnchorGroup{
        {},
        model::ThroughBolt{"bolt-3/8", "a307",
                           model::LowerPlate{model::LowerShape::plate, {0.0, 0.5}, 5.0, 8.0, 0.25, 0.0, "steel-a36"}},
        {},
        "hot-dip galvanized"}};
    const drawing::Scene scene = plan_of(resolved);
    const auto packing = test::paths(scene, {model::PartKind::packing});
    REQUIRE(packing.size() == 4);
    CHECK(packing[0].pen == drawing::Pen::hidden);
    const drawing::Box first = test::box(packing[0]);
    CHECK(first.low == drawing::Point{-3.0, -3.25});  // 2 x 1.5 about (-2, -2.5)
    CHECK(first.high == drawing::Point{-1.0, -1.75});
    const auto lower = test::paths(scene, {model::PartKind::lower_plate, "A B C D"});
    REQUIRE(lower.size() == 1);
    CHECK(test::box(lower[0]).low == drawing::Point{-2.5, -3.5});
}

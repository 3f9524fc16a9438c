#include "drawing/annotation/overlay.h"
#include "drawing/annotation/plate_field.h"
#include "drawing/drawings.h"
#include "drawing/scene_reading.h"
#include "support/compare.h"
#include "support/example.h"
#include "support/parts.h"

#include <algorithm>
#include <limits>

using namespace toehold;
namespace parts = toehold::test::parts;

namespace {

drawing::Scene section_of(const catalog::Resolved& resolved, const drawing::Overlay* overlay = nullptr) {
    return drawing::section({resolved.detail, &resolved, overlay, units::System::us},
                            drawing::section_plane(resolved.detail, parts::anchor("A")));
}

/// The lowest point of all closed pieces of a part.
double lowest(const drawing::Scene& scene, const model::PartId& part) {
    double low = std::numeric_limits<double>::infinity();
    for (const drawing::Path& path : test::paths(scene, part)) {
        if (path.closed) low = std::min(low, test::box(path).low.y);
    }
    return low;
}

bool has_rectangle(const drawing::Scene& scene, const model::PartId& part, const drawing::Box& wanted) {
    const auto paths = test::paths(scene, part);
    return std::any_of(paths.begin(), paths.end(), [&](const drawing::Path& path) {
        const drawing::Box box = test::box(path);
        return path.closed && test::close(box.low.x, wanted.low.x, 0.0, 1e-9) &&
               test::close(box.low.y, wanted.low.y, 0.0, 1e-9) && test::close(box.high.x, wanted.high.x, 0.0, 1e-9) &&
               test::close(box.high.y, wanted.high.y, 0.0, 1e-9);
    });
}

}  // namespace

TEST_CASE("The section goes through the part's row, across the block under it", "[drawing][section]") {
    model::BaseDetail detail = test::example_resolved().detail;
    const drawing::SectionPlane through_a = drawing::section_plane(detail, parts::anchor("A"));
    CHECK(through_a.along == model::PlanAxis::y);
    CHECK(through_a.at_in == -2.0);
    CHECK(drawing::section_plane(detail, parts::anchor("C")).at_in == 2.0);
    CHECK(drawing::section_plane(detail, parts::anchor("nobody")).at_in == -2.0);
    for (model::Block& block : detail.framing.blocks) block.along = model::PlanAxis::y;
    const drawing::SectionPlane turned = drawing::section_plane(detail, parts::anchor("C"));
    CHECK(turned.along == model::PlanAxis::x);
    CHECK(turned.at_in == 2.5);
    on_deck(detail).plate.holes.clear();
    CHECK(drawing::section_plane(detail, parts::anchor("A")).at_in == 0.0);
}

// By hand: plate 3/8, no washer, so the head stands at 0.375; the screw is 6 long: its tip at 0.375 - 6 = -5.625. The
// block's top lies 1 in of decking below the plate, at -1; so 4.625 in of the screw are in the block, as resolved. The
// thread that holds ends 7/32 of tip above the tip: 3.5 - 0.21875 = 3.281, in a block of 5 1/2.
TEST_CASE("An anchor's tip and its thread stand where a hand puts them", "[drawing][section]") {
    const catalog::Resolved resolved = test::example_resolved();
    const drawing::Scene scene = section_of(resolved);
    CHECK_CLOSE(lowest(scene, parts::anchor("A")), -5.625, 0.0, 1e-9);
    CHECK_CLOSE(-1.0 - lowest(scene, parts::anchor("A")), resolved.anchors[0].embedment_in, 0.0, 1e-9);
    CHECK(test::says(scene, "thread in block 3 9/32 of 5 1/2"));
}

TEST_CASE("Blocks, decking and plate are cut where they are", "[drawing][section]") {
    const catalog::Resolved resolved = test::example_resolved();
    const drawing::Scene scene = section_of(resolved);
    CHECK(has_rectangle(scene, parts::block("B1"),
                        {{-4.25, -6.5}, {-0.75, -1.0}}));  // 3.5 wide about -2.5, 5.5 deep below -1
    CHECK(has_rectangle(scene, parts::block("B2"), {{0.75, -6.5}, {4.25, -1.0}}));
    CHECK(has_rectangle(scene, parts::decking, {{scene.bounds.low.x, -1.0}, {scene.bounds.high.x, 0.0}}));
    // The plate from its edge at -3.5 to the hole's near side, -2.5 - 0.21875, and between the holes.
    CHECK(has_rectangle(scene, parts::plate, {{-3.5, 0.0}, {-2.71875, 0.375}}));
    CHECK(has_rectangle(scene, parts::plate, {{-2.28125, 0.0}, {2.28125, 0.375}}));
    CHECK(test::says(scene, "block B1, 3 1/2 \u00d7 5 1/2"));
}

// Below the block: backing plate 1/4, nut 0.87 D, and what stands out of it.
TEST_CASE("A through-bolt goes through the block, and its backing lies against it from below", "[drawing][section]") {
    catalog::Resolved resolved = test::example_resolved();
    for (catalog::Anchor& anchor : resolved.anchors) {
        anchor.kind = catalog::FastenerKind::through_bolt;
        anchor.length_in = anchor.thread_length_in = 0.0;
        anchor.embedment_in = 5.5;
        anchor.backing = model::BackingPlate{2.0, 3.0, 0.25, "steel-a36"};
    }
    const drawing::Scene scene = section_of(resolved);
    CHECK(has_rectangle(scene, parts::anchor("A"), {{-4.0, -6.75}, {-1.0, -6.5}}));  // 3 in along y, under -6.5
    CHECK(lowest(scene, parts::anchor("A")) < -6.75 - 0.87 * 0.375);
    CHECK(test::says(scene, "through block 5 1/2"));
}

TEST_CASE("Without framing the section shows the screw in the air, and says so", "[drawing][section]") {
    catalog::Resolved resolved = test::example_resolved();
    resolved.detail.framing = {};
    for (catalog::Anchor& anchor : resolved.anchors) anchor.seat.reset();
    const drawing::Scene scene = section_of(resolved);
    CHECK(test::says(scene, "no framing under A, D"));
    CHECK(lowest(scene, parts::anchor("A")) < lowest(scene, parts::decking));
    CHECK(scene.bounds.low.y < -5.625);
}

TEST_CASE("Forces of the section: pulls up at the row, bearing under the toe, the plate bent", "[drawing][section]") {
    const catalog::Resolved resolved = test::example_resolved();
    drawing::Overlay overlay;
    drawing::AnchorMark pulled;
    pulled.part = parts::anchor("A");
    pulled.tension_lb = 812.0;
    pulled.largest_tension_lb = 1624.0;
    overlay.anchors = {pulled};
    demand::DeflectedShape field;
    field.nodes = {{{-2.75, -3.5}, 0.01, 0.0},
                   {{2.75, -3.5}, 0.01, 0.0},
                   {{2.75, 3.5}, -0.004, 600.0},
                   {{-2.75, 3.5}, -0.004, 600.0}};
    field.triangles = {{0, 1, 2}, {0, 2, 3}};
    overlay.field = field;
    overlay.bent = true;
    const drawing::Scene scene = section_of(resolved, &overlay);
    CHECK(test::says(scene, "812 lb"));
    CHECK(test::says(scene, "600 psi"));
    // A tenth of the 7 in side over 0.01 in of lift is 70; the round factor below is 50.
    CHECK(drawing::exaggeration(field) == 50.0);
    CHECK(test::says(scene, "plate's deflection \u00d7 50"));
    double highest = 0.0;
    for (const drawing::Path& path : test::paths(scene, parts::plate)) {
        if (path.pen == drawing::Pen::demand) highest = std::max(highest, test::box(path).high.y);
    }
    CHECK_CLOSE(highest, 0.375 + 50.0 * 0.01, 0.0, 1e-9);
}

TEST_CASE("A field at rest is not exaggerated", "[drawing][section]") {
    demand::DeflectedShape field;
    CHECK(drawing::exaggeration(field) == 1.0);
    field.nodes = {{{0.0, 0.0}, 0.0, 0.0}, {{5.0, 0.0}, 0.0, 0.0}};
    CHECK(drawing::exaggeration(field) == 1.0);
}

TEST_CASE("The section draws only parts that the detail has", "[drawing][section]") {
    const catalog::Resolved resolved = test::example_resolved();
    const std::vector<model::PartId> known = model::parts(resolved.detail);
    const std::set<model::PartId> drawn = test::parts_drawn(section_of(resolved));
    for (const model::PartId& part : drawn) {
        INFO(model::key(part));
        CHECK(std::find(known.begin(), known.end(), part) != known.end());
    }
    for (const model::PartId& part : {parts::plate, parts::post, parts::weld, parts::anchor("A"), parts::anchor("D"),
                                      parts::decking, parts::block("B1"), parts::joist("J1")}) {
        INFO(model::key(part));
        CHECK(drawn.count(part) == 1);
    }
    CHECK(drawn.count(parts::anchor("B")) == 0);
}

TEST_CASE("Packing fills the boards about an anchor, and one plate lies below both bolts", "[drawing][section]") {
    catalog::Resolved resolved = test::example_resolved();
    on_deck(resolved.detail).layers.packing =
        model::Packing{model::PackingShape::rectangle, 2.0, 1.5, "packing-steel", 0.0, {}};
    const model::LowerPlate plate{model::LowerShape::plate, {0.0, 0.0}, 5.0, 8.0, 0.25, 0.0, "steel-a36"};
    on_deck(resolved.detail).anchors = {
        model::AnchorGroup{{}, model::ThroughBolt{"bolt-3/8", "a307", plate}, {}, "hot-dip galvanized"}};
    for (catalog::Anchor& anchor : resolved.anchors) {
        anchor.kind = catalog::FastenerKind::through_bolt;
        anchor.length_in = anchor.thread_length_in = 0.0;
        anchor.embedment_in = 5.5;
        anchor.lower = plate;
    }
    const drawing::Scene scene = section_of(resolved);
    CHECK(
        has_rectangle(scene, {model::PartKind::packing}, {{-3.25, -1.0}, {-1.75, 0.0}}));  // 1.5 in along y about -2.5
    CHECK(has_rectangle(scene, {model::PartKind::lower_plate, "A B C D"}, {{-4.0, -6.75}, {4.0, -6.5}}));
    CHECK(lowest(scene, parts::anchor("A")) < -6.75 - 0.87 * 0.375);
}

// Bars 2 1/2 x 1/2 in with 1 in between along y: the pieces lie from 1/2 to 1 in on both sides of the axis. A stub 1
// 1/2 in square, 2 in high, in a 2 in tube: the stub from the plate's top at 3/8 in to 2 in; the tube from the weld's
// top on.
TEST_CASE("The section shows both twin bars, and the stub within its post", "[drawing][section]") {
    auto resolved = test::example_resolved();
    const model::PartId post{model::PartKind::post};
    const auto spans = [&](double low_in, double high_in) {
        std::vector<drawing::Box> found;
        for (const drawing::Path& path : test::paths(section_of(resolved), post)) {
            const drawing::Box box = test::box(path);
            if (path.closed && test::close(box.low.x, low_in, 0.0, 1e-9) && test::close(box.high.x, high_in, 0.0, 1e-9))
                found.push_back(box);
        }
        return found;
    };
    resolved.detail.post = model::TwinBars{2.5, 0.5, 1.0, model::PlanAxis::y, "steel"};
    CHECK(spans(0.5, 1.0).size() == 1);
    CHECK(spans(-1.0, -0.5).size() == 1);
    CHECK(test::sound(section_of(resolved)));
    model::RectangularTube tube{2.0, 2.0, 0.1875, "steel"};
    tube.stub = model::Stub{1.5, 1.5, 0.0, 2.0, "steel"};
    resolved.detail.post = tube;
    on_deck(resolved.detail).weld->leg_in = 0.1875;
    REQUIRE(spans(-0.75, 0.75).size() == 1);
    CHECK_CLOSE(spans(-0.75, 0.75)[0].low.y, 0.375, 0.0, 1e-9);
    CHECK_CLOSE(spans(-0.75, 0.75)[0].high.y, 2.0, 0.0, 1e-9);
    REQUIRE(spans(-1.0, 1.0).size() == 1);
    CHECK_CLOSE(spans(-1.0, 1.0)[0].low.y, 0.5625, 0.0, 1e-9);
}

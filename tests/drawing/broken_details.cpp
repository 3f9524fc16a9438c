// Whatever stands in a detail under an edit, the three drawings come, and nothing in them is not finite.
#include "drawing/annotation/overlay.h"
#include "drawing/drawings.h"
#include "drawing/scene_reading.h"
#include "support/compare.h"
#include "support/example.h"
#include "support/parts.h"

#include <random>

using namespace toehold;
namespace parts = toehold::test::parts;

namespace {

class Nonsense {
  public:
    explicit Nonsense(unsigned seed) : random_(seed) {}
    bool chance(double share) { return std::uniform_real_distribution<double>(0.0, 1.0)(random_) < share; }
    int up_to(int most) { return std::uniform_int_distribution<int>(0, most)(random_); }
    /// Now and then no size at all, the wrong sign, or larger than any deck.
    double length(double usual) {
        const double values[] = {0.0, -usual, 1e-12, 1e8, -1e155, 1e300, 1e308, -1.7e308};
        return chance(0.25) ? values[static_cast<std::size_t>(up_to(7))] : usual;
    }

  private:
    std::mt19937 random_;
};

void break_plate(model::Plate& plate, Nonsense& pick) {
    plate.thickness_in = pick.length(plate.thickness_in);
    switch (pick.up_to(3)) {
        case 0: {
            model::PolygonOutline outline;
            for (int corner = pick.up_to(5); corner > 0; --corner)
                outline.corners.push_back({pick.length(2.0 * pick.up_to(3)), pick.length(1.5 * pick.up_to(3))});
            plate.outline = outline;
            break;
        }
        case 1:
            plate.outline = model::CircleOutline{pick.length(8.0), {pick.length(0.5), 0.0}};
            break;
        default:
            plate.outline = model::RectangleOutline{pick.length(5.5), pick.length(7.0), pick.length(0.5), {}};
    }
    for (model::Hole& hole : plate.holes) {
        hole.center = {pick.length(hole.center.x_in), pick.length(hole.center.y_in)};
        if (pick.chance(0.3)) hole.shape = model::Slot{pick.length(1.0), pick.length(0.5), pick.length(30.0)};
        if (pick.chance(0.3)) hole.shape = model::RoundHole{pick.length(0.5)};
    }
    if (pick.chance(0.2)) plate.holes.clear();
    if (pick.chance(0.2)) plate.holes.push_back({"", {}, model::RoundHole{0.0}});
}

void break_post(model::BaseDetail& detail, Nonsense& pick) {
    switch (pick.up_to(2)) {
        case 0:
            detail.post = model::RoundTube{pick.length(2.0), pick.length(0.2), ""};
            break;
        case 1:
            detail.post = model::WoodPost{pick.length(3.5),
                                          pick.length(3.5),
                                          "",
                                          "",
                                          false,
                                          {model::ShoeAttachment::welded,
                                           pick.length(3.7),
                                           pick.length(3.7),
                                           pick.length(0.1),
                                           pick.length(4.0),
                                           "",
                                           {},
                                           ""}};
            break;
        default:
            detail.post = model::RectangularTube{pick.length(2.0), pick.length(2.0), pick.length(0.2), ""};
    }
    if (on_deck(detail).weld) on_deck(detail).weld->leg_in = pick.length(0.2);
    detail.guard = {pick.length(42.0), model::Occupancy::other};
    on_deck(detail).plate_below_surface_in = pick.length(0.5);
}

void break_framing(model::BaseDetail& detail, Nonsense& pick) {
    if (on_deck(detail).layers.decking) on_deck(detail).layers.decking->thickness_in = pick.length(1.0);
    if (pick.chance(0.3)) on_deck(detail).layers.shims.push_back({"", pick.length(0.25)});
    for (model::Block& block : detail.framing.blocks) {
        if (pick.chance(0.3)) block.along = model::PlanAxis::y;
        block.from_in = pick.length(block.from_in);
        block.across_in = pick.length(block.across_in);
        block.width_in = pick.length(block.width_in);
        block.depth_in = pick.length(block.depth_in);
        block.plies = pick.chance(0.2) ? pick.up_to(1000000) - 10 : 1;
    }
    if (pick.chance(0.2)) detail.framing.joists.reset();
    if (detail.framing.joists) {
        detail.framing.joists->depth_in = pick.length(9.25);
        detail.framing.joists->to_in = pick.length(9.0);
        for (model::Joist& joist : detail.framing.joists->members) joist.plies = pick.up_to(2);
    }
    if (pick.chance(0.5))
        detail.framing.rims.push_back({"R1", pick.length(9.75), pick.length(-9.0), 9.0, 1.5, 9.25, "", "", 1, {}});
    if (pick.chance(0.5))
        detail.framing.supports.push_back(
            {"S1",
             pick.chance(0.5) ? model::JoistSupport::Kind::beam : model::JoistSupport::Kind::ledger,
             pick.length(-12.0),
             pick.length(3.0),
             {}});
}

drawing::Overlay broken_overlay(Nonsense& pick) {
    drawing::Overlay overlay;
    overlay.push = drawing::PushShown{pick.length(1.0), pick.length(200.0), pick.length(0.0), pick.length(42.0), true};
    for (const char* id : {"A", "B", "C", "nobody"}) {
        drawing::AnchorMark mark;
        mark.part = parts::anchor(id);
        if (pick.chance(0.7)) mark.tension_lb = pick.length(800.0);
        if (pick.chance(0.7)) mark.capacity_lb = pick.length(900.0);
        if (pick.chance(0.7)) mark.ratio = pick.length(0.8);
        mark.shear_lb = pick.length(50.0);
        mark.largest_tension_lb = pick.length(900.0);
        overlay.anchors.push_back(mark);
    }
    demand::DeflectedShape field;
    field.nodes = {{{pick.length(-2.0), -3.0}, pick.length(0.01), 0.0},
                   {{2.0, pick.length(-3.0)}, 0.01, pick.length(10.0)},
                   {{2.0, 3.0}, pick.length(-0.004), pick.length(600.0)}};
    field.triangles = {{0, 1, 2}, {0, 1, 7}, {-1, 1, 2}};
    overlay.field = field;
    overlay.bent = true;
    overlay.stale = pick.chance(0.3);
    return overlay;
}

void check_drawings(const catalog::Resolved& resolved, const drawing::Overlay* overlay, bool with_anchors) {
    const drawing::Subject subject{resolved.detail, with_anchors ? &resolved : nullptr, overlay, {}};
    CHECK(test::sound(drawing::plan(subject, {true, true, {parts::anchor("A"), parts::anchor("B"), parts::plate}})));
    CHECK(test::sound(drawing::plan(subject, {false, false, {}})));
    for (const model::PartId& part : {parts::anchor("A"), parts::block("B2"), parts::plate})
        CHECK(test::sound(drawing::section(subject, drawing::section_plane(resolved.detail, part))));
    CHECK(test::sound(drawing::section(subject, {model::PlanAxis::x, 1e300})));
    CHECK(test::sound(drawing::elevation(subject)));
}

}  // namespace

TEST_CASE("Nonsense details are drawn without fault", "[drawing]") {
    for (unsigned seed = 0; seed < 400; ++seed) {
        INFO("seed " << seed);
        Nonsense pick(seed);
        catalog::Resolved resolved = test::example_resolved();
        break_plate(on_deck(resolved.detail).plate, pick);
        break_post(resolved.detail, pick);
        break_framing(resolved.detail, pick);
        for (catalog::Anchor& anchor : resolved.anchors) {
            anchor.length_in = pick.length(6.0);
            anchor.diameter_in = pick.length(0.375);
            if (pick.chance(0.2)) anchor.kind = catalog::FastenerKind::through_bolt;
            if (pick.chance(0.2)) anchor.seat = model::Seat{1000, 0.0, 0.0};
        }
        const drawing::Overlay overlay = broken_overlay(pick);
        check_drawings(resolved, pick.chance(0.7) ? &overlay : nullptr, pick.chance(0.7));
    }
}

TEST_CASE("An empty detail is drawn", "[drawing]") {
    const catalog::Resolved nothing;
    check_drawings(nothing, nullptr, false);
    check_drawings(nothing, nullptr, true);
}

#include "shop_samples.h"
#include "catalog/catalog.h"
#include "paper/issue.h"

#include "support/compare.h"
#include "support/shipped.h"

#include <cmath>
#include <numbers>

namespace toehold::test::shop {
namespace {

using namespace model;

constexpr const char* usual = "heron-landing-corner";

Plate plate_of(Outline outline, std::vector<Hole> holes) {
    Plate plate = on_deck(demo_detail(usual)).plate;
    plate.name = "Plate of an uncommon shape, invented";
    plate.outline = std::move(outline);
    plate.holes = std::move(holes);
    return plate;
}

Plate l_plate() {
    return plate_of(PolygonOutline{{{-3, -3}, {6, -3}, {6, 2}, {2.5, 2}, {2.5, 6}, {-3, 6}}},
                    {{"A", {-2, -2}, RoundHole{0.5}},
                     {"B", {5, -2}, RoundHole{0.5}},
                     {"C", {5, 1}, RoundHole{0.4375}},
                     {"D", {-2, 5}, Slot{1.5, 0.5, 30}},
                     {"E", {1.5, 5}, RoundHole{0.5}}});
}

Plate many_sided_plate() {
    PolygonOutline outline;
    constexpr int sides = 14;
    for (int index = 0; index < sides; ++index) {
        const double turn = 2.0 * std::numbers::pi * (index + 0.3) / sides;
        outline.corners.push_back({4.5 * std::cos(turn), 4.0 * std::sin(turn)});
    }
    return plate_of(outline, {{"A", {-2.5, -2}, RoundHole{0.5}}, {"B", {2.5, 2}, RoundHole{0.5}}});
}

Plate slotted_plate() {
    return plate_of(RectangleOutline{6, 8, 0.75, {0.25, -0.5}}, {{"A", {-2, -3.5}, Slot{1.25, 0.5625, 0}},
                                                                 {"B", {-2, -0.5}, RoundHole{0.5625}},
                                                                 {"C", {-2, 2.5}, Slot{1.25, 0.5625, 90}},
                                                                 {"D", {2.25, 2.5}, Slot{1.25, 0.5625, 45}},
                                                                 {"E", {2.25, -0.5}, RoundHole{0.5625}},
                                                                 {"F", {2.25, -3.5}, RoundHole{0.4375}},
                                                                 {"G", {0.2, -3.75}, RoundHole{0.4375}},
                                                                 {"H", {0.5, 2.75}, RoundHole{0.46}}});
}

Plate crowded_plate() {
    std::vector<Hole> holes;
    for (int row = 0; row < 2; ++row) {
        for (int column = 0; column < 14; ++column)
            holes.push_back({std::string(row == 0 ? "N" : "S") + std::to_string(column + 1),
                             {-6.5 + column, row == 0 ? -3.0 : 3.0},
                             RoundHole{0.4375}});
    }
    return plate_of(RectangleOutline{15, 8, 0.0, {}}, std::move(holes));
}

BaseDetail with_wood_post() {
    BaseDetail detail = demo_detail(usual);
    WoodPost post;
    post.width_in = post.depth_in = 3.5;
    post.species = "southern-pine";
    post.grade = "no-2";
    post.shoe = {ShoeAttachment::bolted, 4.0, 4.0, 0.1875, 3.0, "steel-a36", {}, {}};
    detail.post = post;
    on_deck(detail).weld.reset();
    return detail;
}

BaseDetail with_long_names() {
    BaseDetail detail = demo_detail(usual);
    detail.project = "Landing of many flights behind the third house from the corner, invented, second phase";
    detail.name = "Base at the far corner beside the doubled rim, where nothing that is short would say it";
    on_deck(detail).plate.name = "Plate with a name that goes on beyond the field it is written in, and then some more";
    return detail;
}

paper::Issue issue_in(units::System system) {
    const bool si = system == units::System::si;
    return {"",
            "2026-11-25",
            "heron-landing.xml",
            "Toehold 0.5.0",
            {system},
            si ? paper::PaperSize::a4 : paper::PaperSize::letter};
}

}  // namespace

catalog::Resolved shipped(const std::string& name) { return shipped_detail(name); }

catalog::Resolved shipped_with(const std::string& name, Plate plate) {
    BaseDetail detail = demo_detail(name);
    on_deck(detail).plate = std::move(plate);
    return resolved_by_shipped(detail);
}

std::vector<ShopSample> all_shipped() {
    std::vector<ShopSample> samples;
    for (const std::string& name : demo_names()) samples.push_back({name, shipped(name)});
    return samples;
}

std::vector<ShopSample> plates_of_all_shapes() {
    std::vector<ShopSample> samples;
    for (const Plate& plate : shipped_catalog().stock_plates) samples.push_back({plate.id, shipped_with(usual, plate)});
    samples.push_back({"L", shipped_with(usual, l_plate())});
    samples.push_back({"many-sided", shipped_with(usual, many_sided_plate())});
    samples.push_back({"slots", shipped_with(usual, slotted_plate())});
    samples.push_back({"round with two holes",
                       shipped_with(usual, plate_of(CircleOutline{8, {}}, {{"A", {0, -3}, RoundHole{0.5625}},
                                                                           {"B", {0, 3}, RoundHole{0.5625}}}))});
    samples.push_back({"long", shipped_with(usual, plate_of(RectangleOutline{14, 3.5, 0.25, {}},
                                                            {{"A", {-6, -1}, RoundHole{0.5625}},
                                                             {"B", {-6, 1}, RoundHole{0.5625}},
                                                             {"C", {6, 1}, RoundHole{0.5625}},
                                                             {"D", {6, -1}, RoundHole{0.5625}}}))});
    samples.push_back({"crowded", shipped_with(usual, crowded_plate())});
    samples.push_back({"wood post", resolved_by_shipped(with_wood_post())});
    samples.push_back({"long names", resolved_by_shipped(with_long_names())});
    return samples;
}

paper::Sheet drawn(const catalog::Resolved& resolved, units::System system) {
    return paper::shop_drawing(resolved, "60f0664738b9253cba5ceae692718e8607014a2253e6819cd521d5223c276265",
                               issue_in(system));
}

}  // namespace toehold::test::shop

#include "job/mount.h"

#include "units/quantity.h"

#include <algorithm>
#include <array>
#include <utility>

namespace toehold::job {
namespace {

using units::fraction_in;

constexpr double clearance_in = 0.0625;  // of a hole over its anchor

model::Plate plate_of(const Design& design) {
    const double width_in = 2.0 * (design.row_x_in + plate_edge_in), depth_in = 2.0 * (design.row_y_in + plate_edge_in);
    model::Plate plate;
    plate.id = "P1";
    plate.name = fraction_in(width_in) + " x " + fraction_in(depth_in) + " plate, " + fraction_in(design.thickness_in) +
                 " thick";
    plate.metal = design.plate_metal;
    plate.thickness_in = design.thickness_in;
    plate.outline = model::RectangleOutline{width_in, depth_in, 0.0, {}};
    // Clockwise in plan from the left of the side that lifts under an outward push.
    const std::array<std::pair<const char*, model::Position>, 4> corners = {
        {{"A", {-1, -1}}, {"B", {-1, 1}}, {"C", {1, 1}}, {"D", {1, -1}}}};
    for (const auto& [id, side] : corners) {
        plate.holes.push_back({id,
                               {side.x_in * design.row_x_in, side.y_in * design.row_y_in},
                               model::RoundHole{anchor_in + clearance_in}});
    }
    return plate;
}

/// A sixteenth over the wall fills the corner of a tube; a bar takes what one pass lays (common practice).
model::Weld weld_of(const Design& design) {
    constexpr double one_pass_in = 0.3125, over_the_wall_in = 0.0625;
    const model::Footprint foot = model::footprint(design.post);
    const double leg_in = model::is_solid(foot) ? one_pass_in : std::min(one_pass_in, foot.wall_in + over_the_wall_in);
    return {leg_in, design.filler};
}

model::AnchorGroup anchors_of(const Design& design) {
    model::AnchorGroup group;
    group.washer = model::Washer{washer_size};
    group.corrosion_protection = design.stainless && design.bolts ? "stainless steel" : "hot-dip galvanized, ASTM A153";
    if (design.bolts) {
        constexpr double side_in = 3.0, thickness_in = 0.25;
        group.fastener = model::ThroughBolt{bolt_size, design.bolt_grade,
                                            model::BackingPlate{side_in, side_in, thickness_in, design.backing_metal}};
    } else {
        group.fastener = model::LagScrew{lag_size, design.screw_length_in, std::nullopt};
    }
    return group;
}

/// No. 12 screws of 3 in in wood; in composite boards No. 10, to which no standard gives a value.
model::DeckingFastening board_screws(bool wood) {
    constexpr double board_in = 5.5;
    if (wood) return {0.216, 3.0, 2, board_in, 0.0, {}};
    return {0.19, 2.5, 2, board_in, 0.0, {}};
}

model::Layers layers_of(const Job& job, const Design& design) {
    const bool wood = design.packing.empty();
    model::Layers layers;
    layers.decking = boards_of(job, design);
    if (!wood) {
        constexpr double side_in = 2.0 * plate_edge_in;
        layers.packing =
            model::Packing{model::PackingShape::rectangle, side_in, side_in, design.packing, anchor_in + clearance_in};
    }
    return layers;
}

}  // namespace

model::Decking boards_of(const Job& job, const Design& design) {
    return {job.decking, design.decking_in, {}, board_screws(design.wood_boards), design.decking_size};
}

model::PlateOnDeck mount_of(const Job& job, const Design& design) {
    model::PlateOnDeck mount;
    mount.plate = plate_of(design);
    mount.weld = weld_of(design);
    mount.anchors = {anchors_of(design)};
    mount.layers = layers_of(job, design);
    return mount;
}

}  // namespace toehold::job

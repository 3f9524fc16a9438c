#include "demand/plate_on_deck/mesh_input.h"

#include "mechanics/plane/area_moments.h"
#include "model/placement.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <variant>

namespace toehold::demand {
namespace {

// Common values for the metals; the plate's stiffness hardly depends on them.
constexpr double steel_poisson = 0.3;
constexpr double aluminum_poisson = 0.33;

/// The post's (or the shoe's) outside at the plate. A round one becomes a 72-sided polygon.
model::Outline foot_outline(const model::Post& post, double inset_in) {
    const model::Footprint foot = model::footprint(post);
    if (foot.round) return model::CircleOutline{foot.width_in - 2.0 * inset_in, {}};
    return model::RectangleOutline{foot.width_in - 2.0 * inset_in, foot.depth_in - 2.0 * inset_in, 0.0, {}};
}

mechanics::Polygon ring_polygon(const model::Outline& outline) {
    const std::vector<model::Position> corners = model::polygon(outline);
    const std::size_t step = corners.size() > 72 ? corners.size() / 72 : 1;
    mechanics::Polygon ring;
    for (std::size_t i = 0; i < corners.size(); i += step) ring.push_back({corners[i].x_in, corners[i].y_in});
    return ring;
}

/// The foot's outline, drawn in where it comes too near the plate's edge for elements between the two.
mechanics::Polygon post_ring(const model::BaseDetail& detail) {
    constexpr double least_clear_in = 0.1;
    double inset = 0.0;
    for (int round = 0; round < 8; ++round) {
        mechanics::Polygon ring = ring_polygon(foot_outline(detail.post, inset));
        double clear = std::numeric_limits<double>::infinity();
        for (const mechanics::Point corner : ring) {
            clear = std::min(clear, model::edge_distance_in(on_deck(detail).plate.outline, {corner.x, corner.y}));
        }
        if (clear >= 0.99 * least_clear_in) return ring;
        inset += least_clear_in - clear;
    }
    throw UnfitForMesh(format::phrase("the post's foot leaves no plate around it"));
}

/// A piece of packing is a rectangle, and so is the part of it over a member.
mechanics::BedRectangle around(const Support& support) {
    const model::Position first = support.outline.at(0);
    mechanics::BedRectangle box{first.x_in, first.x_in, first.y_in, first.y_in, support.stiffness_psi_per_in};
    for (const model::Position corner : support.outline) {
        box.x_min = std::min(box.x_min, corner.x_in);
        box.x_max = std::max(box.x_max, corner.x_in);
        box.y_min = std::min(box.y_min, corner.y_in);
        box.y_max = std::max(box.y_max, corner.y_in);
    }
    return box;
}

mechanics::BedRectangle rectangle_of(const catalog::Resolved& resolved, const Support& support) {
    constexpr double far = model::beyond_any_plate_in;
    if (support.kind != SupportKind::member) return {-far, far, -far, far, support.stiffness_psi_per_in};
    if (support.packing) return around(support);
    const model::PlanRectangle place = model::plan(model::member(resolved.detail.framing, support.member));
    return {place.x_min_in, place.x_max_in, place.y_min_in, place.y_max_in, support.stiffness_psi_per_in};
}

double distance_in(const Support& support, const catalog::Anchor& anchor) {
    const mechanics::BedRectangle box = around(support);
    return std::hypot(0.5 * (box.x_min + box.x_max) - anchor.at.x_in, 0.5 * (box.y_min + box.y_max) - anchor.at.y_in);
}

/// The support of the bed that is the anchor's own member; of several pieces of packing on it, the nearest.
std::optional<std::size_t> support_of(const catalog::Anchor& anchor, const Bed& bed) {
    std::optional<std::size_t> nearest;
    for (std::size_t i = 0; i < bed.supports.size(); ++i) {
        const Support& support = bed.supports[i];
        if (!anchor.seat || support.kind != SupportKind::member || support.member != anchor.seat->member) continue;
        if (!support.packing) return i;
        if (!nearest || distance_in(support, anchor) < distance_in(bed.supports[*nearest], anchor)) nearest = i;
    }
    return nearest;
}

mechanics::Footprint footprint(const catalog::Anchor& anchor) {
    return {{anchor.at.x_in, anchor.at.y_in}, catalog::footprint_radius_in(anchor)};
}

void require_sound(const mechanics::PlateMesh& mesh, const mechanics::Polygon& plate) {
    constexpr double tolerance = 0.01;
    double covered = 0.0;
    for (const mechanics::Triangle& triangle : mesh.triangles) {
        mechanics::Polygon corners;
        for (const int node : triangle) corners.push_back(mesh.nodes[static_cast<std::size_t>(node)]);
        covered += mechanics::moments(corners).area;
    }
    const double whole = mechanics::moments(plate).area;
    // Written so that an area that is not a number fails too.
    if (!(std::abs(covered - whole) <= tolerance * whole))
        throw UnfitForMesh(format::phrase("the plate's outline could not be meshed"));
}

}  // namespace

std::vector<mechanics::BedRectangle> bed_rectangles(const catalog::Resolved& resolved, const Bed& bed) {
    std::vector<mechanics::BedRectangle> rectangles;
    for (const Support& support : bed.supports) rectangles.push_back(rectangle_of(resolved, support));
    return rectangles;
}

double bed_stiffness_at(const std::vector<mechanics::BedRectangle>& bed, mechanics::Point at) {
    for (const mechanics::BedRectangle& r : bed) {
        if (at.x >= r.x_min && at.x <= r.x_max && at.y >= r.y_min && at.y <= r.y_max) return r.stiffness_psi_per_in;
    }
    return 0.0;
}

std::vector<mechanics::Footprint> footprints(const catalog::Resolved& resolved) {
    std::vector<mechanics::Footprint> all;
    for (const catalog::Anchor& anchor : resolved.anchors) all.push_back(footprint(anchor));
    return all;
}

MeshedPlate meshed_plate(const catalog::Resolved& resolved, double fineness) {
    const mechanics::Polygon plate = outline(on_deck(resolved.detail).plate);
    MeshedPlate meshed{{}, post_ring(resolved.detail)};
    meshed.mesh = mechanics::mesh_plate(plate, meshed.foot, footprints(resolved), fineness);
    require_sound(meshed.mesh, plate);
    return meshed;
}

mechanics::FlexiblePlateInput plate_input(const catalog::Resolved& resolved, const Bed& bed,
                                          const std::vector<Stiffness>& anchors, double fineness) {
    return plate_input(resolved, bed, anchors, meshed_plate(resolved, fineness));
}

mechanics::FlexiblePlateInput plate_input(const catalog::Resolved& resolved, const Bed& bed,
                                          const std::vector<Stiffness>& anchors, const MeshedPlate& meshed) {
    mechanics::FlexiblePlateInput input;
    for (std::size_t i = 0; i < anchors.size(); ++i) {
        const catalog::Anchor& anchor = resolved.anchors[i];
        const double preload = anchor_groups(resolved.detail).at(anchor.group).preload_lb.value_or(0.0);
        input.anchors.push_back({footprint(anchor), anchors[i].value, preload});
    }
    for (std::size_t i = 0; i < anchors.size(); ++i) {
        input.anchors[i].support = support_of(resolved.anchors[i], bed);
    }
    input.mesh = meshed.mesh;
    const bool aluminum = on_deck(resolved).plate_metal.kind == catalog::MetalKind::aluminum;
    input.poisson = aluminum ? aluminum_poisson : steel_poisson;
    input.modulus_psi = on_deck(resolved).plate_metal.modulus_psi;
    input.thickness_in = on_deck(resolved.detail).plate.thickness_in;
    input.bed = bed_rectangles(resolved, bed);
    return input;
}

}  // namespace toehold::demand

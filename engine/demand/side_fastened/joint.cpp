#include "demand/side_fastened/joint.h"

#include "catalog/fastened.h"
#include "catalog/resolve_side.h"
#include "model/member.h"
#include "resistance/wood/member_strength.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace toehold::demand {
namespace {

using format::Dimension;
using format::phrase;
using format::Quantity;

// Shear over bending modulus: sawn lumber one sixteenth (common practice), metals by Poisson's ratio of 0.3.
constexpr double wood_shear_over_modulus = 1.0 / 16.0;
constexpr double metal_shear_over_modulus = 1.0 / 2.6;
constexpr double solid_shear_part = 5.0 / 6.0;

/// Second moments and areas of a post's section; lengths in in.
struct SectionShape {
    double inertia_x_in4 = 0.0, inertia_y_in4 = 0.0, torsion_in4 = 0.0;
    double area_in2 = 0.0, shear_x_in2 = 0.0, shear_y_in2 = 0.0;
};

double square(double value) { return value * value; }
double box_inertia_in4(double width_in, double depth_in) { return width_in * depth_in * square(depth_in) / 12.0; }

SectionShape solid_rectangle(double width_in, double depth_in) {
    SectionShape shape;
    shape.inertia_x_in4 = box_inertia_in4(width_in, depth_in);
    shape.inertia_y_in4 = box_inertia_in4(depth_in, width_in);
    shape.torsion_in4 = resistance::torsion_constant_in4(width_in, depth_in);
    shape.area_in2 = width_in * depth_in;
    shape.shear_x_in2 = shape.shear_y_in2 = solid_shear_part * shape.area_in2;
    return shape;
}

SectionShape rectangular_tube(double width_in, double depth_in, double wall_in) {
    const double inside_width_in = width_in - 2.0 * wall_in, inside_depth_in = depth_in - 2.0 * wall_in;
    const double middle_width_in = width_in - wall_in, middle_depth_in = depth_in - wall_in;
    SectionShape shape;
    shape.inertia_x_in4 = box_inertia_in4(width_in, depth_in) - box_inertia_in4(inside_width_in, inside_depth_in);
    shape.inertia_y_in4 = box_inertia_in4(depth_in, width_in) - box_inertia_in4(inside_depth_in, inside_width_in);
    // Bredt's thin tube: 4 A^2 over the sum of length by wall.
    shape.torsion_in4 = 2.0 * wall_in * square(middle_width_in * middle_depth_in) / (middle_width_in + middle_depth_in);
    shape.area_in2 = width_in * depth_in - inside_width_in * inside_depth_in;
    shape.shear_x_in2 = 2.0 * wall_in * width_in;
    shape.shear_y_in2 = 2.0 * wall_in * depth_in;
    return shape;
}

SectionShape round_section(double diameter_in, double wall_in) {
    const double inside_in = std::max(0.0, diameter_in - 2.0 * wall_in);
    const double polar_in4 = std::numbers::pi / 32.0 * (square(square(diameter_in)) - square(square(inside_in)));
    SectionShape shape;
    shape.inertia_x_in4 = shape.inertia_y_in4 = 0.5 * polar_in4;
    shape.torsion_in4 = polar_in4;
    shape.area_in2 = 0.25 * std::numbers::pi * (square(diameter_in) - square(inside_in));
    // 0.9 of a solid circle, half of a thin ring.
    shape.shear_x_in2 = shape.shear_y_in2 = (inside_in > 0.0 ? 0.5 : 0.9) * shape.area_in2;
    return shape;
}

SectionShape section_shape(const model::BaseDetail& detail) {
    const model::Footprint shaft = model::shaft(detail.post);
    const double depth_in = catalog::post_depth_in(detail);
    if (shaft.round) return round_section(shaft.width_in, shaft.wall_in > 0.0 ? shaft.wall_in : 0.5 * shaft.width_in);
    if (shaft.wall_in > 0.0 && !model::is_solid(shaft))
        return rectangular_tube(shaft.width_in, depth_in, shaft.wall_in);
    return solid_rectangle(shaft.width_in, depth_in);
}

/// Of the member's face that a post with this half width can lie on, upward.
ContactStretch face_of_member(const model::SideFastened& mount, const model::Member& member, double half_width_in) {
    if (!mount.stringer) return {-member.depth_in, 0.0};
    const double angle = mount.stringer->angle_deg * std::numbers::pi / 180.0;
    const double lost_in = half_width_in * std::tan(angle);
    return {-mount.stringer->effective_depth_in / std::cos(angle) + lost_in, -lost_in};
}

/// The parts of a stretch that every layer covers.
std::vector<ContactStretch> covered(ContactStretch whole, const std::vector<model::SideLayer>& layers) {
    for (const model::SideLayer& layer : layers) {
        if (layer.from_below_top_in) whole.to_z_in = std::min(whole.to_z_in, -*layer.from_below_top_in);
        if (layer.to_below_top_in) whole.from_z_in = std::max(whole.from_z_in, -*layer.to_below_top_in);
    }
    if (!(whole.to_z_in > whole.from_z_in)) return {};
    return {whole};
}

Stiffness face_stiffness(const catalog::Resolved& resolved, const model::Member& member, std::size_t index) {
    const double across = across_over_along(RangeEnd::central);
    double flexibility = 0.0;
    format::Listed of;
    const auto add = [&](double thickness_in, double modulus_psi, format::Phrase name) {
        flexibility += thickness_in / modulus_psi;
        of.items.push_back(
            phrase("{} {} at {}", std::move(name), Dimension{thickness_in}, Quantity{modulus_psi, "psi"}));
    };
    if (resolved.post_grade)
        add(0.5 * catalog::post_depth_in(resolved.detail), across * resolved.post_grade->modulus_psi, phrase("post"));
    const auto& layers = on_side(resolved.detail).layers;
    for (std::size_t layer = 0; layer < layers.size(); ++layer) {
        const catalog::DeckingMaterial& material = on_side(resolved).layers.at(layer);
        add(layers[layer].thickness_in, material.modulus_perp_psi, phrase("layer"));
    }
    add(0.5 * member.width_in, across * catalog::wood(resolved, index).grade.modulus_psi, phrase("member"));
    return {1.0 / flexibility, phrase("{}: half the depth of what is of wood, in series, no spread", std::move(of))};
}

}  // namespace

SideContact side_contact(const catalog::Resolved& resolved) {
    const model::SideFastened& mount = on_side(resolved.detail);
    const std::optional<std::size_t> index = model::find_member(resolved.detail.framing, mount.member);
    SideContact contact;
    contact.width_in = mount.bracket ? mount.bracket->width_in : model::shaft(resolved.detail.post).width_in;
    if (!index) return contact;
    const model::Member member = model::member(resolved.detail.framing, *index);
    ContactStretch overlap = face_of_member(mount, member, 0.5 * contact.width_in);
    if (mount.bracket) {
        overlap.to_z_in = std::min(overlap.to_z_in, -mount.bracket->from_top_in);
        overlap.from_z_in = std::max(overlap.from_z_in, -mount.bracket->from_top_in - mount.bracket->height_in);
    } else {
        overlap.from_z_in = std::max(overlap.from_z_in, -mount.post_bottom_below_top_in);
    }
    contact.stretches = covered(overlap, mount.layers);
    contact.stiffness = face_stiffness(resolved, member, *index);
    if (const auto& fixed = resolved.detail.basis.stiffness)
        contact.stiffness = {fixed->bed_psi_per_in, phrase("fixed by the user: {}", fixed->reason)};
    return contact;
}

std::optional<std::size_t> carried_by(const catalog::Resolved& resolved, const SideContact& contact) {
    constexpr double tight_in = 0.0625;
    const model::BaseDetail& detail = resolved.detail;
    const auto face = model::side_member(detail);
    std::optional<std::size_t> behind;
    for (const catalog::Anchor& anchor : resolved.anchors) {
        if (!anchor.seat || !anchor.crossed || anchor.tie) return std::nullopt;
        if (behind && *behind != anchor.seat->member) return std::nullopt;
        behind = anchor.seat->member;
    }
    if (!behind || !face || contact.stretches.empty()) return std::nullopt;
    const model::Member block = model::member(detail.framing, *behind);
    const catalog::SideJoint joint = catalog::side_joint(detail);
    const double open_in = model::to_near_face_in(joint, block) - model::to_near_face_in(joint, *face) - face->width_in;
    const bool as_low = block.depth_in >= -contact.stretches.front().from_z_in;
    return open_in <= tight_in && as_low ? behind : std::nullopt;
}

mechanics::PostSection post_section(const catalog::Resolved& resolved) {
    const SectionShape shape = section_shape(resolved.detail);
    const bool wood = resolved.post_grade.has_value();
    const double modulus_psi = wood ? resolved.post_grade->modulus_psi : resolved.post_metal.modulus_psi;
    const double shear_psi = (wood ? wood_shear_over_modulus : metal_shear_over_modulus) * modulus_psi;
    return {modulus_psi * shape.inertia_x_in4, modulus_psi * shape.inertia_y_in4, shear_psi * shape.torsion_in4,
            modulus_psi * shape.area_in2,      shear_psi * shape.shear_x_in2,     shear_psi * shape.shear_y_in2};
}

Stiffness fastener_slip(const catalog::Resolved& resolved, const catalog::Anchor& anchor) {
    const bool wood = catalog::fastened_by(resolved, anchor).side.wood.has_value();
    const double power = std::pow(anchor.diameter_in, 1.5);
    const format::Citation clause{"NDS 2018 11.3.6"};
    if (wood) return {180000.0 * power, phrase("180,000 D^1.5 lb/in ({})", clause)};
    return {270000.0 * power, phrase("270,000 D^1.5 lb/in ({})", clause)};
}

double tie_lb_per_in(const model::TensionTie& tie) { return tie.tension_lb / tie.deflection_in; }

}  // namespace toehold::demand

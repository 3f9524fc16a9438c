#include "job/sizing.h"

#include "resistance/wood/connection_factors.h"
#include "resistance/wood/member_factors.h"
#include "resistance/wood/withdrawal.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace toehold::job {
namespace {

/// Corner anchor's tension up to which the ends of a block commonly hold.
constexpr double bolt_tension_lb = 1250.0;
/// Of a lag screw's withdrawal in wet wood, what the estimate uses: it is short of the peak.
constexpr double share_of_withdrawal = 0.75;
constexpr std::array<double, 4> screw_lengths_in = {6.0, 8.0, 10.0, 12.0};

double foot_half_in(const Design& design) {
    const model::Footprint print = model::footprint(design.post);
    return 0.5 * std::max(print.width_in, print.depth_in);
}

/// The lag screw that comes nearest the block's underside without reaching it.
double screw_length_in(const Design& design) {
    constexpr double plate_and_washer_in = 0.6;
    const double room_in = plate_and_washer_in + design.decking_in + design.block_depth_in;
    double longest_in = screw_lengths_in.front();
    for (const double length_in : screw_lengths_in)
        if (length_in < room_in) longest_in = length_in;
    return longest_in;
}

/// Block ends and joists shear, and `bolt_tension_lb` is for southern pine: other wood has its share of it.
double share_of_shear(const Job& job, const Design& design, const catalog::Catalog& catalog) {
    constexpr double southern_pine_psi = 175.0;  // NDS Supplement 2018 Table 4B, every grade
    const catalog::Section section{design.joist_width_in, design.joist_depth_in};
    const double shear_psi = catalog::find_grade(catalog, design.species, design.grade, section)->shear_psi;
    const bool incised =
        job.treated.value_or(true) && !catalog::find(catalog.species, design.species)->treated_without_incising;
    const double factor = resistance::member_incising(resistance::MemberProperty::shear, incised);
    return std::min(1.0, shear_psi * factor / southern_pine_psi);
}

/// Over a joist the rows on both sides of it pull on one joist, whose shear strength goes with its depth.
double share_of_joist(const Job& job, const Design& design) {
    constexpr double enough_in = 9.25;
    return job.place == Place::over_a_joist ? std::min(1.0, design.joist_depth_in / enough_in) : 1.0;
}

double usable_tension_lb(const Job& job, const Design& design, const catalog::Catalog& catalog) {
    const double by_wood_lb = bolt_tension_lb * share_of_shear(job, design, catalog) * share_of_joist(job, design);
    if (design.bolts) return by_wood_lb;
    const catalog::Species* const species = catalog::find(catalog.species, design.species);
    const double per_in = resistance::lag_withdrawal_lb_per_in(species->specific_gravity, anchor_in) *
                          resistance::screw_withdrawal_wet_service(resistance::ConnectionMoisture::wet);
    const double tip_in = catalog::find(catalog.lag_screws, lag_size)->tip_length_in;
    const double thread_in = resistance::lag_thread_length_in(design.screw_length_in) - tip_in;
    return std::min(by_wood_lb, share_of_withdrawal * per_in * thread_in);
}

/// Corner anchor under a diagonal push: M over its distance and half the pressed corner's.
double corner_tension_lb(double moment_lb_in, double row_x_in, double row_y_in) {
    const double corner_in = std::hypot(row_x_in, row_y_in);
    const double pressed_in = 0.5 * std::hypot(row_x_in + plate_edge_in, row_y_in + plate_edge_in);
    return moment_lb_in / (corner_in + pressed_in);
}

constexpr double from_foot_in = 1.0, beyond_any_row_in = 24.0;

struct Limits {
    double least_in = 0.0, most_in = 0.0;
};

/// Of the anchors' distance from the post along the rail: clear of the foot and over blocks; away from their ends by
/// the 7 D of NDS 2018 Table 12.5.1A, or by the least 4 D where the foot needs the room.
Limits limits_along(const Job& job, const Design& design) {
    const double full_end_in = 7.0 * anchor_in, least_end_in = 4.0 * anchor_in;
    const double from_post_in = foot_half_in(design) + from_foot_in;
    if (job.place == Place::over_a_joist)
        return {std::max(from_post_in, 0.5 * design.joist_width_in + least_end_in), beyond_any_row_in};
    const double half_in = 0.5 * clear_bay_in(job, design.joist_width_in);
    const double most_in = std::max(half_in - full_end_in, std::min(from_post_in, half_in - least_end_in));
    return {std::min(from_post_in, most_in), most_in};
}

/// Rows further out by half inches, until the estimate finds the corner anchor's tension usable; along the rail to the
/// quarter inch, as far as the blocks allow.
void choose_rows(const Job& job, Design& design, double usable_lb) {
    constexpr double step_in = 0.5, first_in = 2.5, quarters = 4.0;
    constexpr int steps = 10;
    const Limits along = limits_along(job, design);
    const double least_in = std::max(first_in, std::ceil((foot_half_in(design) + from_foot_in) / step_in) * step_in);
    for (int step = 0; step < steps; ++step) {
        design.row_y_in = least_in + step * step_in;
        const double along_in = std::min(std::max(design.row_y_in, along.least_in), along.most_in);
        design.row_x_in = std::floor(along_in * quarters) / quarters;
        design.tension_lb = corner_tension_lb(design.moment_lb_in, design.row_x_in, design.row_y_in);
        if (design.tension_lb <= usable_lb) return;
    }
}

/// A strip at 45 degrees from the post's corner to the anchor bends as a cantilever, to half of its allowable moment.
double plate_thickness_in(const Design& design, const catalog::Metal& metal) {
    constexpr double safety = 1.67, use = 0.5, least_strip_in = 2.0, step_in = 0.125, least_in = 0.5;
    const double foot_in = foot_half_in(design);
    const double arm_in = std::hypot(design.row_x_in - foot_in, design.row_y_in - foot_in);
    const double strip_in = std::max(least_strip_in, 2.0 * arm_in - anchor_in);
    const double yield_psi = metal.welded_yield_psi.value_or(metal.yield_psi);
    const double square_in2 = 4.0 * design.tension_lb * arm_in * safety / (yield_psi * strip_in * use);
    return std::max(least_in, std::ceil(std::sqrt(square_in2) / step_in) * step_in);
}

double up_to_hundreds(double force_lb) { return std::ceil(force_lb / 100.0 - 1e-9) * 100.0; }

/// A metal post's plate, with a bolt on each side of it in every row, and its nut's plate clear of the joist behind.
void choose_bracket(SideDesign& side, const model::Footprint& post) {
    constexpr double beside_post_in = 1.25, beside_joist_in = 2.5, plate_beyond_in = 1.25;
    side.bolt_x_in = std::max(0.5 * post.width_in + beside_post_in, beside_joist_in);
    side.bracket_width_in = 2.0 * (side.bolt_x_in + plate_beyond_in);
    side.bracket_in = 0.5;
}

}  // namespace

SideDesign side_design(const Job& job, const Design& design) {
    constexpr double bolt_in = 0.5, quarters = 4.0, least_tie_lb = 1800.0;
    const double edge_in = 4.0 * bolt_in;  // NDS 2018 Table 12.5.1C, an edge loaded across the grain
    const model::Footprint post = model::shaft(design.post);
    SideDesign side;
    side.rim_size = design.block_size;
    side.rim_width_in = design.block_width_in;
    side.bottom_in = design.joist_depth_in;
    side.upper_in = edge_in;
    side.lower_in = std::floor((side.bottom_in - edge_in) * quarters) / quarters;
    if (!std::holds_alternative<model::WoodPost>(design.post)) {
        choose_bracket(side, post);
        // NDS 2018 12.5.1.3: rows that one steel plate holds across the grain are no further apart.
        constexpr double most_apart_in = 5.0;
        side.lower_in = std::min(side.lower_in, side.upper_in + most_apart_in);
    }
    side.to_rim_in = 0.5 * post.depth_in + side.bracket_in;
    if (side.bracket_in == 0.0)
        side.tie_lb = std::max(least_tie_lb, up_to_hundreds(side_tension_lb(job, design, side)));
    return side;
}

double side_tension_lb(const Job& job, const Design& design, const SideDesign& side) {
    const double lever_in = job.guard_height_in + design.decking_in + side.bottom_in;
    return design.push_lb * lever_in / (side.bottom_in - side.upper_in);
}

void size_base(const Job& job, Design& design, const catalog::Catalog& catalog) {
    design.screw_length_in = screw_length_in(design);
    choose_rows(job, design, usable_tension_lb(job, design, catalog));
    design.thickness_in = plate_thickness_in(design, *catalog::find(catalog.metals, design.plate_metal));
}

}  // namespace toehold::job

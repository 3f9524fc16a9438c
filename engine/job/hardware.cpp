#include "job/hardware.h"

#include <algorithm>
#include <cmath>

namespace toehold::job {
namespace {

/// A 42 in guard under 200 lb, which the values below are for; more moment asks for more, in this proportion.
constexpr double usual_moment_lb_in = 8400.0;
constexpr double usual_spacing_in = 16.0;

/// The values that follow are what it must have.
model::ReportedConnector to_be_chosen(const char* name) {
    model::ReportedConnector hardware;
    hardware.name = name;
    hardware.chosen = false;
    return hardware;
}

double to_the_hundred(double force_lb) { return std::ceil(force_lb / 100.0 - 1e-9) * 100.0; }

double scaled_lb(double usual_lb, double scale) { return to_the_hundred(usual_lb * std::max(1.0, scale)); }

/// What the couple of a push asks of two members so far apart.
double couple_scale(const Design& design, double apart_in) {
    return design.moment_lb_in / usual_moment_lb_in * usual_spacing_in / apart_in;
}

/// Arm of a pull against the pressed edge of an upright pair of angles that leave 1 in free above and below.
double height_in(double depth_in) { return std::max(5.0, std::floor(depth_in - 3.0)); }

/// On both sides of a member of this section, upright, 1 in free above and below.
model::ReportedConnector upright_angles(const char* name, double width_in, double depth_in) {
    model::ReportedConnector angles = to_be_chosen(name);
    angles.couple_arm_in = width_in;
    angles.height_in = height_in(depth_in);
    angles.from_top_in = angles.from_bottom_in = 1.0;
    return angles;
}

}  // namespace

model::ReportedConnector at_block_end(const Design& design) {
    const double scale = design.moment_lb_in / usual_moment_lb_in;
    model::ReportedConnector angles = upright_angles("pair of steel angles, one on each side of the block",
                                                     design.block_width_in, design.block_depth_in);
    angles.uplift_lb = angles.down_lb = scaled_lb(1600.0, scale);
    angles.lateral_lb = scaled_lb(700.0, scale);
    angles.pull_lb = scaled_lb(1200.0, scale);
    return angles;
}

model::ReportedConnector at_ledger(const Design& design, double reaction_lb) {
    model::ReportedConnector hanger = to_be_chosen("joist hanger");
    hanger.uplift_lb = scaled_lb(600.0, design.moment_lb_in / usual_moment_lb_in);
    hanger.down_lb = std::max(1200.0, to_the_hundred(1.5 * reaction_lb));
    hanger.lateral_lb = 400.0;
    hanger.pull_lb = 300.0;
    hanger.couple_arm_in = design.joist_width_in;
    hanger.height_in = 5.0;
    hanger.from_top_in = 1.0;
    hanger.from_bottom_in = 0.0;
    return hanger;
}

model::ReportedConnector on_beam(const Design& design, double spacing_in, double overhang) {
    const double scale = couple_scale(design, spacing_in) * (1.0 + overhang);
    model::ReportedConnector ties = to_be_chosen("pair of ties, one on each side of the joist");
    ties.uplift_lb = ties.down_lb = scaled_lb(1000.0, scale);
    ties.lateral_lb = scaled_lb(500.0, design.moment_lb_in / usual_moment_lb_in);
    ties.couple_arm_in = design.joist_width_in;
    ties.from_top_in = ties.from_bottom_in = 1.0;
    return ties;
}

model::ReportedConnector at_rim(const Design& design, double spacing_in) {
    const double scale = couple_scale(design, spacing_in);
    model::ReportedConnector angles = upright_angles("pair of steel angles, one on each side of the joist",
                                                     design.joist_width_in, design.joist_depth_in);
    angles.uplift_lb = angles.down_lb = scaled_lb(800.0, scale);
    angles.lateral_lb = scaled_lb(500.0, scale);
    angles.pull_lb = scaled_lb(600.0, scale);
    return angles;
}

model::ReportedConnector on_beam_behind_rim(const Design& design, double spacing_in) {
    model::ReportedConnector ties = on_beam(design, spacing_in, 0.0);
    ties.pull_lb = scaled_lb(400.0, design.moment_lb_in / usual_moment_lb_in);
    ties.height_in = height_in(design.joist_depth_in);
    return ties;
}

model::ReportedConnector at_rolling_rim(const Design& design, double spacing_in) {
    model::ReportedConnector angles = at_rim(design, spacing_in);
    angles.pull_lb = std::max(angles.pull_lb, to_the_hundred(design.tension_lb));
    return angles;
}

format::Phrase words_of(const model::ReportedConnector& hardware) {
    using format::phrase;
    using format::Quantity;
    if (hardware.pull_lb == 0.0) {
        return phrase("allowable {} up, {} down, {} across", Quantity{hardware.uplift_lb, "lb"},
                      Quantity{hardware.down_lb, "lb"}, Quantity{hardware.lateral_lb, "lb"});
    }
    return phrase("allowable {} up, {} down, {} across, {} along the member", Quantity{hardware.uplift_lb, "lb"},
                  Quantity{hardware.down_lb, "lb"}, Quantity{hardware.lateral_lb, "lb"},
                  Quantity{hardware.pull_lb, "lb"});
}

}  // namespace toehold::job

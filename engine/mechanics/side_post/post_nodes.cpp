#include "mechanics/side_post/post_nodes.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace toehold::mechanics::side_post {
namespace {

/// More pieces than this along what holds the post only a bed far stiffer than the post could ask for.
constexpr double most_pieces = 48.0;
/// A node this part of a step from another is the same node.
constexpr double same_node = 0.05;

/// Over which a load on a beam on an elastic bed dies out: the smallest of bending, shearing and twisting.
double fading_length(const PostSection& section, double bed_lb_per_in2, double twist_lb) {
    const double bending = std::pow(4.0 * section.bending_x_lb_in2 / bed_lb_per_in2, 0.25);
    const double twisting = std::sqrt(section.torsion_lb_in2 / twist_lb);
    const double shearing = section.shear_y_lb > 0.0 ? std::sqrt(section.shear_y_lb / bed_lb_per_in2) : bending;
    return std::min({bending, twisting, shearing});
}

/// Along the stretch, from every bearing that covers it.
double step_on(const SidePost& post, double from_in, double to_in, double longest_in) {
    double bed = 0.0, twist = 0.0;
    for (const PostBearing& bearing : post.bearings) {
        if (bearing.z_max_in <= from_in || bearing.z_min_in >= to_in) continue;
        const double x0 = bearing.x_min_in, x1 = bearing.x_max_in;
        bed += bearing.stiffness_psi_per_in * (x1 - x0);
        twist += bearing.stiffness_psi_per_in * (x1 * x1 * x1 - x0 * x0 * x0) / 3.0;
    }
    return bed > 0.0 ? std::min(longest_in, 0.25 * fading_length(post.section, bed, twist)) : longest_in;
}

void add_between(std::vector<double>& heights, double from_in, double to_in, double step_in) {
    const int count = static_cast<int>(std::ceil((to_in - from_in) / step_in * (1.0 - 1e-9)));
    for (int i = 1; i < count; ++i) heights.push_back(from_in + (to_in - from_in) * i / count);
}

}  // namespace

HeldHeight held_height(const SidePost& post) {
    HeldHeight held{std::numeric_limits<double>::infinity(), -std::numeric_limits<double>::infinity()};
    const auto widen = [&](double from_in, double to_in) {
        held.from_in = std::min(held.from_in, from_in);
        held.to_in = std::max(held.to_in, to_in);
    };
    for (const PostBearing& bearing : post.bearings) widen(bearing.z_min_in, bearing.z_max_in);
    for (const PostFastener& fastener : post.fasteners) widen(fastener.z_in, fastener.z_in);
    return held;
}

std::vector<double> node_heights(const SidePost& post, std::span<const PostLoad> loads, double fineness) {
    const HeldHeight held = held_height(post);
    std::vector<double> wanted{held.middle_in()};
    for (const PostBearing& bearing : post.bearings) wanted.insert(wanted.end(), {bearing.z_min_in, bearing.z_max_in});
    for (const PostFastener& fastener : post.fasteners) wanted.push_back(fastener.z_in);
    for (const PostLoad& load : loads) wanted.push_back(load.at.z);
    std::sort(wanted.begin(), wanted.end());

    const double height = std::max(held.to_in - held.from_in, 2.0 * post.axis_y_in);
    const double step = step_on(post, wanted.front(), wanted.back(), 0.25 * height);
    const double shortest = same_node * std::max(step, height / most_pieces) / fineness;
    std::vector<double> kept{wanted.front()};
    for (const double place : wanted)
        if (place - kept.back() > shortest) kept.push_back(place);
    // The topmost place carries the push: it keeps its node.
    if (kept.size() > 1) kept.back() = wanted.back();
    if (kept.size() == 1) kept.push_back(kept.front() + height);

    std::vector<double> heights = kept;
    for (std::size_t i = 1; i < kept.size(); ++i) {
        const double longest =
            kept[i] > held.to_in || kept[i - 1] < held.from_in ? kept[i] - kept[i - 1] : 0.25 * height;
        const double here = std::max(step_on(post, kept[i - 1], kept[i], longest), height / most_pieces);
        add_between(heights, kept[i - 1], kept[i], here / fineness);
    }
    std::sort(heights.begin(), heights.end());
    return heights;
}

}  // namespace toehold::mechanics::side_post

// How the cost of a detail grows with what it is made of: one thing at a time, the exponent fitted by least squares to
// the logarithms.
#include "bench/interleaved.h"
#include "bench/tables.h"
#include "demand/demand.h"
#include "review/review.h"
#include "support/shipped.h"

#include <fmt/core.h>

#include <cmath>
#include <functional>
#include <numbers>
#include <string>
#include <vector>

namespace toehold::bench {
namespace {

struct Size {
    std::size_t count = 0;
    catalog::Resolved resolved;
    demand::Sampling sampling = demand::Sampling::whole();
};

struct Growth {
    std::string of;
    std::vector<Size> sizes;
};

model::BaseDetail start() { return test::demo_detail("heron-landing-public-boardwalk"); }

/// On a 12 x 12 in plate, in equal steps on a square through the four corners' holes.
model::BaseDetail with_anchors(std::size_t count) {
    model::BaseDetail detail = start();
    on_deck(detail).plate.outline = model::RectangleOutline{12.0, 12.0, 0.0, {}};
    on_deck(detail).plate_reference.reset();
    const model::Hole like = on_deck(detail).plate.holes.front();
    on_deck(detail).plate.holes.clear();
    const std::size_t a_side = count / 4;
    constexpr double half_in = 5.0;
    for (std::size_t i = 0; i < count; ++i) {
        const double along = -half_in + 2.0 * half_in * static_cast<double>(i % a_side) / static_cast<double>(a_side);
        const model::Position places[] = {{along, -half_in}, {half_in, along}, {-along, half_in}, {-half_in, -along}};
        model::Hole hole = like;
        hole.id = fmt::format("H{}", i + 1);
        hole.center = places[i / a_side];
        on_deck(detail).plate.holes.push_back(hole);
    }
    for (model::AnchorGroup& group : anchor_groups(detail)) group.holes.clear();
    return detail;
}

/// Further joists 16 in apart on both sides, with the rim over all of them.
model::BaseDetail with_joists(std::size_t count) {
    model::BaseDetail detail = start();
    std::vector<model::Joist>& joists = detail.framing.joists->members;
    for (std::size_t i = 0; joists.size() < count; ++i) {
        const double away_in = 40.0 + 16.0 * static_cast<double>(i / 2);
        joists.push_back({fmt::format("X{}", i + 1), i % 2 == 0 ? away_in : -away_in});
    }
    const double reach_in = 24.75 + 8.0 * static_cast<double>(count);
    for (model::Rim& rim : detail.framing.rims) rim.from_in = -reach_in, rim.to_in = reach_in;
    return detail;
}

/// A plate 11.2 in across whose outline is a regular polygon of so many corners about its inscribed circle.
model::BaseDetail with_corners(std::size_t count) {
    model::BaseDetail detail = start();
    on_deck(detail).plate_reference.reset();
    const double turn = 2.0 * std::numbers::pi / static_cast<double>(count);
    const double radius_in = 5.6 / std::cos(0.5 * turn);
    model::PolygonOutline outline;
    for (std::size_t i = 0; i < count; ++i) {
        const double at = turn * (static_cast<double>(i) + 0.5);
        outline.corners.push_back({radius_in * std::cos(at), radius_in * std::sin(at)});
    }
    on_deck(detail).plate.outline = outline;
    return detail;
}

Growth growth(std::string of, const std::vector<std::size_t>& counts,
              const std::function<model::BaseDetail(std::size_t)>& detail) {
    Growth growth{std::move(of), {}};
    for (const std::size_t count : counts) growth.sizes.push_back({count, test::resolved_by_shipped(detail(count))});
    return growth;
}

Growth of_directions() {
    Growth growth{"directions", {}};
    for (const std::size_t every : {12U, 6U, 3U, 1U}) {
        demand::Sampling sampling = demand::Sampling::whole();
        sampling.every = every;
        growth.sizes.push_back({72 / every, test::resolved_by_shipped(start()), sampling});
    }
    return growth;
}

std::string name(const Growth& growth, const Size& size, const char* what) {
    return fmt::format("{} {} {}", growth.of, size.count, what);
}

/// Of the straight line through the logarithms.
double exponent(const Growth& growth, const Medians& medians, const char* what) {
    double n = 0.0, x = 0.0, y = 0.0, xx = 0.0, xy = 0.0;
    for (const Size& size : growth.sizes) {
        const double log_count = std::log(static_cast<double>(size.count));
        const double log_time = std::log(medians.seconds(name(growth, size, what)));
        n += 1.0, x += log_count, y += log_time, xx += log_count * log_count, xy += log_count * log_time;
    }
    return (n * xy - x * y) / (n * xx - x * x);
}

void print(const Growth& growth, const Medians& medians) {
    for (const char* const what : {"demand", "evaluation"}) {
        fmt::print("  {:<12}{:<12}", growth.of, what);
        for (const Size& size : growth.sizes)
            fmt::print("{:>5}: {:>7.1f} ms", size.count, 1e3 * medians.seconds(name(growth, size, what)));
        fmt::print("   exponent {:.2f}\n", exponent(growth, medians, what));
    }
}

}  // namespace

void print_growth_table(std::size_t repetitions) {
    const std::vector<Growth> all = {growth("anchors", {4, 8, 16, 32}, with_anchors),
                                     growth("joists", {6, 12, 24, 48}, with_joists), of_directions(),
                                     growth("corners", {4, 12, 36, 108}, with_corners)};
    Interleaved timed;
    for (const Growth& growth : all) {
        for (const Size& size : growth.sizes) {
            timed.add(name(growth, size, "demand"),
                      [&size] { (void)demand::find_demand(size.resolved, size.sampling); });
            timed.add(name(growth, size, "evaluation"), [&size] {
                (void)review::evaluate(size.resolved, demand::find_demand(size.resolved, size.sampling), "");
            });
        }
    }
    const Medians medians = timed.run(repetitions);
    fmt::print("\nHow the cost of a detail grows; medians of {}, processor time\n", medians.repetitions());
    for (const Growth& growth : all) print(growth, medians);
}

}  // namespace toehold::bench

#include "oracle/solid_solution.h"

#include "mechanics/plane/area_moments.h"

#include <algorithm>
#include <cmath>

namespace toehold::test {
namespace {

using mechanics::Point;
using mechanics::Polygon;

/// Where a spring stands, for moments, and which rectangle or anchor it is of.
struct Place {
    Point at;
    std::size_t owner = 0;
};

struct Springs {
    std::vector<SolidSpring> springs;
    std::vector<Place> places;
};

void add_bed_point(Springs& to, const SolidPlate& plate, std::size_t wedge, Point at, double area_in2, const Base& base,
                   std::size_t rectangle) {
    to.springs.push_back(
        {plate.row(wedge, Face::under, at), base.bed[rectangle].stiffness_psi_per_in, -1.0, 0.0, std::sqrt(area_in2)});
    to.places.push_back({at, rectangle});
}

/// The middles of the sides of triangles that fan out from the piece's first corner: exact for a quadratic pressure.
void add_piece(Springs& to, const SolidPlate& plate, std::size_t wedge, const Polygon& piece, const Base& base,
               std::size_t rectangle) {
    for (std::size_t i = 1; i + 1 < piece.size(); ++i) {
        const std::array<Point, 3> fan = {piece[0], piece[i], piece[i + 1]};
        const double third = mechanics::moments({fan.begin(), fan.end()}).area / 3.0;
        constexpr double nothing_in2 = 1e-10;
        if (third < nothing_in2) continue;
        for (std::size_t side = 0; side < 3; ++side) {
            const Point a = fan[side], b = fan[(side + 1) % 3];
            add_bed_point(to, plate, wedge, {0.5 * (a.x + b.x), 0.5 * (a.y + b.y)}, third, base, rectangle);
        }
    }
}

Springs springs_of(const Base& base, const SolidPlate& plate) {
    Springs result;
    for (std::size_t wedge = 0; wedge < plate.wedges().size(); ++wedge) {
        const std::array<Point, 3> corners = plate.corners(wedge);
        for (std::size_t r = 0; r < base.bed.size(); ++r) {
            const mechanics::BedRectangle& bed = base.bed[r];
            const Polygon whole(corners.begin(), corners.end());
            add_piece(result, plate, wedge,
                      mechanics::clip_rectangle(whole, bed.x_min, bed.x_max, bed.y_min, bed.y_max), base, r);
        }
    }
    for (std::size_t i = 0; i < base.anchors.size(); ++i) {
        const mechanics::FlexibleAnchor& anchor = base.anchors[i];
        result.springs.push_back({plate.mean_row(Face::over, anchor.footprint), anchor.stiffness_lb_per_in, 1.0,
                                  anchor.preload_lb / anchor.stiffness_lb_per_in, 1.0});
        result.places.push_back({anchor.footprint.center, i});
    }
    return result;
}

void take(mechanics::PlateLoad& left, double down_lb, Point at) {
    left.fz_lb -= down_lb;
    left.mx_lb_in -= down_lb * at.y;
    left.my_lb_in += down_lb * at.x;
}

Deck deck_of(const Base& base, const mechanics::PlateMesh& mesh, const mechanics::PlateLoad& load, Springs& springs) {
    Deck deck{SolidPlate(mesh, base.thickness_in), base.modulus_psi, base.poisson, 1.0, true, load, {}, {}, {}};
    springs = springs_of(base, deck.plate);
    deck.springs = springs.springs;
    return deck;
}

}  // namespace

Deck deck_of(const Base& base, const mechanics::PlateMesh& mesh, const mechanics::PlateLoad& load) {
    Springs springs;
    return deck_of(base, mesh, load, springs);
}

SolidSolution solve_with_ccx(const Base& base, const mechanics::PlateMesh& mesh, const mechanics::PlateLoad& load,
                             double shear_factor) {
    Springs springs;
    Deck deck = deck_of(base, mesh, load, springs);
    deck.shear_factor = shear_factor;
    const CcxRun run = run_ccx(text_of(deck));
    SolidSolution solution;
    solution.freedoms = 3 * deck.plate.nodes().size();
    solution.iterations = run.iterations;
    solution.seconds = run.seconds;
    const auto& rotation = run.displacements.at(number_of_rotation(deck));
    solution.lift_in = run.displacements.at(number_of_body(deck))[2] / load_in_deck;
    solution.tilt_x_rad = rotation[0] / load_in_deck;
    solution.tilt_y_rad = rotation[1] / load_in_deck;
    solution.bearing_lb.assign(base.bed.size(), 0.0);
    solution.left = load;
    for (std::size_t i = 0; i < deck.springs.size(); ++i) {
        const SolidSpring& spring = deck.springs[i];
        const Place& place = springs.places[i];
        const double moved = run.displacements.at(number_of_spring(deck, i))[2] / load_in_deck;
        const double force =
            spring.scale * spring.stiffness_lb_per_in * std::max(0.0, spring.sign * moved + spring.gap_in);
        take(solution.left, spring.sign * force, place.at);
        if (spring.sign < 0.0) {
            solution.bearing_lb[place.owner] += force;
        } else {
            solution.tension_lb.push_back(force);
        }
    }
    return solution;
}

}  // namespace toehold::test

// What must hold for every flexible plate: balance, forces of the right sign, one answer, and the symmetries of the
// problem; and the few plates whose answer is plain statics.
#include "mechanics/flexible_plate/bases.h"
#include "mechanics/shapes.h"
#include "support/compare.h"
#include "support/random/number.h"

#include <algorithm>

using namespace toehold::mechanics;
using namespace toehold::test;

namespace {

constexpr double moment_lb_in = 8400.0;  // 200 lb at 42 in
constexpr double coarse = 0.7;           // enough where only exact properties of a mesh are asked

PlateLoad random_load() { return push(number(100.0, 12000.0), number(0.0, 6.28), number(-600.0, 300.0)); }

/// The largest of what is left of force, and of moment per inch of the plate's reach, worked from the reported forces
/// and their places alone, relative to the largest force.
double imbalance(const FlexibleBase& base, const FlexiblePlateSolution& solution, const PlateLoad& load) {
    double fz = load.fz_lb, mx = load.mx_lb_in, my = load.my_lb_in;
    for (std::size_t i = 0; i < base.anchors.size(); ++i) {
        const Point at = base.anchors[i].footprint.center;
        fz -= solution.tension_lb[i];
        mx -= solution.tension_lb[i] * at.y;
        my += solution.tension_lb[i] * at.x;
    }
    for (const PatchForce& patch : solution.patches) {
        fz += patch.force_lb;
        mx += patch.force_lb * patch.at.y;
        my -= patch.force_lb * patch.at.x;
    }
    constexpr double reach_in = 4.0;
    return std::max({std::abs(fz), std::abs(mx) / reach_in, std::abs(my) / reach_in}) / largest_force(solution);
}

/// Same forces, the second's times `scale`, to `part` of the largest.
bool same_forces(const FlexiblePlateSolution& a, const FlexiblePlateSolution& b, double scale, double part) {
    const double absolute = part * largest_force(a);
    bool same = a.status == SolveStatus::solved && b.status == SolveStatus::solved;
    for (std::size_t i = 0; i < a.tension_lb.size(); ++i)
        same = same && close(scale * b.tension_lb[i], a.tension_lb[i], 0.0, absolute);
    for (std::size_t i = 0; i < a.patches.size(); ++i)
        same = same && close(scale * b.patches[i].force_lb, a.patches[i].force_lb, 0.0, absolute);
    return same;
}

/// A plate far too stiff to bend, on one bed.
FlexibleBase stiff_rectangle() {
    FlexibleBase base = square_base();
    base.outline = rectangle(-3.0, 3.0, -4.0, 4.0);
    base.anchors.clear();
    for (const Point at : {Point{-2.0, -3.0}, {2.0, -3.0}, {2.0, 3.0}, {-2.0, 3.0}})
        base.anchors.push_back({{at, 0.4}, 30000.0, 0.0});
    base.bed = {{-10.0, 10.0, -10.0, 10.0, 25000.0}};
    base.modulus_psi = 29e11;
    return base;
}

/// The mesh and all on it seen in the mirror x = 0, in the mirror y = 0, or in both (half a turn).
struct Mirror {
    double x = 1.0, y = 1.0;  ///< -1 where mirrored
    [[nodiscard]] Point of(Point p) const { return {x * p.x, y * p.y}; }
    [[nodiscard]] PlateLoad of(const PlateLoad& load) const {
        return {load.fz_lb, y * load.mx_lb_in, x * load.my_lb_in};
    }
    [[nodiscard]] FlexiblePlateInput of(FlexiblePlateInput input) const {
        for (Point& node : input.mesh.nodes) node = of(node);
        for (Triangle& triangle : input.mesh.triangles) {
            if (x * y < 0.0) std::swap(triangle[1], triangle[2]);
        }
        for (FlexibleAnchor& anchor : input.anchors) anchor.footprint.center = of(anchor.footprint.center);
        return input;
    }
};

}  // namespace

TEST_CASE("Every flexible solution balances its load and no support acts the wrong way", "[property]") {
    REQUIRE(rc::check("equilibrium", [] {
        const FlexibleBase base = random_base();
        const PlateLoad load = random_load();
        FlexiblePlate plate(input_of(base, coarse));
        for (const FlexiblePlateSolution& solution : {plate.solve(load, {}), plate.solve_on_full_mesh(load, {})}) {
            RC_ASSERT(solution.status == SolveStatus::solved);
            RC_ASSERT(imbalance(base, solution, load) < 1e-9);
            RC_ASSERT(solution.residuals.force < 1e-9);
            RC_ASSERT(solution.residuals.moment < 1e-9);
            for (const double tension : solution.tension_lb) RC_ASSERT(tension >= 0.0);
            for (const PatchForce& patch : solution.patches) RC_ASSERT(patch.force_lb >= 0.0);
            RC_ASSERT(solution.iterations < 40);
        }
    }));
}

TEST_CASE("Loads and preloads scaled together scale every force of a flexible plate", "[property]") {
    REQUIRE(rc::check("homogeneity", [] {
        const FlexibleBase base = random_base();
        FlexibleBase scaled = base;
        const double scale = number(0.01, 50.0);
        for (FlexibleAnchor& anchor : scaled.anchors) anchor.preload_lb *= scale;
        const PlateLoad load = random_load();
        const PlateLoad scaled_load{scale * load.fz_lb, scale * load.mx_lb_in, scale * load.my_lb_in};
        const FlexiblePlateInput input = input_of(base, coarse);
        FlexiblePlateInput scaled_input = input;
        scaled_input.anchors = scaled.anchors;
        RC_ASSERT(same_forces(FlexiblePlate(input).solve(load, {}), FlexiblePlate(scaled_input).solve(scaled_load, {}),
                              1.0 / scale, 1e-8));
    }));
}

TEST_CASE("A flexible plate and its mesh in the mirror give the mirrored forces", "[property]") {
    REQUIRE(rc::check("mirror", [] {
        FlexiblePlateInput input = input_of(random_base(), coarse);
        // One bed under all of the plate: where its edge cuts triangles, the pieces' springs depend on their order.
        input.bed = {{-100.0, 100.0, -100.0, 100.0, 20000.0}};
        const PlateLoad load = random_load();
        const int kind = *rc::gen::inRange(0, 3);
        const Mirror mirror{kind == 0 ? 1.0 : -1.0, kind == 1 ? 1.0 : -1.0};
        RC_ASSERT(same_forces(FlexiblePlate(input).solve(load, {}),
                              FlexiblePlate(mirror.of(input)).solve(mirror.of(load), {}), 1.0, 1e-8));
    }));
}

TEST_CASE("A symmetric base is symmetric up to its mesh, which is not", "[property]") {
    FlexiblePlate plate(input_of(square_base(), 1.0));
    double worst = 0.0;
    for (const double direction : {0.0, 0.4, 0.9, 1.3}) {
        const FlexiblePlateSolution solution = plate.solve(push(moment_lb_in, direction), {});
        const FlexiblePlateSolution mirrored = plate.solve(push(moment_lb_in, std::numbers::pi - direction), {});
        REQUIRE(solution.status == SolveStatus::solved);
        // Anchors 0 and 1, 2 and 3 are each other's images in x = 0.
        for (const auto& [here, there] : {std::pair{0U, 1U}, {1U, 0U}, {2U, 3U}, {3U, 2U}}) {
            const double apart = std::abs(solution.tension_lb[here] - mirrored.tension_lb[there]);
            worst = std::max(worst, apart / largest_tension(solution));
        }
    }
    CAPTURE(worst);
    CHECK(worst < 3e-3);
}

TEST_CASE("No start and no order of directions changes a flexible plate's answer", "[property]") {
    for (const FlexibleBase& base : common_bases()) {
        FlexiblePlate forward(input_of(base, 1.0)), shuffled(input_of(base, 1.0));
        constexpr int count = 24;
        const auto load = [](int step) { return push(moment_lb_in, 2.0 * std::numbers::pi * step / count); };
        std::vector<FlexiblePlateSolution> in_order, out_of_order(count);
        for (int step = 0; step < count; ++step) in_order.push_back(forward.solve(load(step), {}));
        for (int i = 0; i < count; ++i) {
            const int step = (7 * i + 5) % count;
            // Loads of other kinds and other stiffness in between, so that no two starts are alike.
            (void)shuffled.solve({-1e4, 0.0, 0.0}, {0.5, 2.0});
            out_of_order[static_cast<std::size_t>(step)] = shuffled.solve(load(step), {});
        }
        for (std::size_t step = 0; step < count; ++step) {
            CAPTURE(base.name, step);
            CHECK(same_forces(in_order[step], out_of_order[step], 1.0, 1e-9));
        }
    }
}

TEST_CASE("Preload alone presses the bed, less what the bed gives way", "[closed-form]") {
    // A stiff plate sinks by s = 4 P / (4 k + K): each anchor keeps P - k s.
    FlexibleBase base = stiff_rectangle();
    constexpr double preload = 800.0, anchor = 30000.0, bed = 25000.0 * 48.0;
    for (FlexibleAnchor& a : base.anchors) a.preload_lb = preload;
    const double sunk = 4.0 * preload / (4.0 * anchor + bed);
    FlexiblePlate plate(input_of(base, 1.0));
    for (const FlexiblePlateSolution& solution : {plate.solve({}, {}), plate.solve_on_full_mesh({}, {})}) {
        REQUIRE(solution.status == SolveStatus::solved);
        for (const double tension : solution.tension_lb) CHECK_CLOSE(tension, preload - anchor * sunk, 1e-5, 0.0);
        CHECK_CLOSE(solution.patches[0].force_lb, 4.0 * (preload - anchor * sunk), 1e-5, 0.0);
        CHECK_CLOSE(solution.lift_in, -sunk, 1e-5, 0.0);
        CHECK_CLOSE(solution.patches[0].peak_psi, 25000.0 * sunk, 1e-4, 0.0);
    }
}

TEST_CASE("Preload alone balances on every random base", "[property]") {
    REQUIRE(rc::check("preload", [] {
        FlexibleBase base = random_base();
        for (FlexibleAnchor& anchor : base.anchors) anchor.preload_lb = number(50.0, 800.0);
        const FlexiblePlateSolution solution = FlexiblePlate(input_of(base, coarse)).solve({}, {});
        RC_ASSERT(solution.status == SolveStatus::solved);
        RC_ASSERT(imbalance(base, solution, {}) < 1e-9);
        RC_ASSERT(largest_force(solution) > 0.0);
    }));
}

TEST_CASE("A weight inside the kern of a stiff plate presses all of it and pulls no anchor", "[closed-form]") {
    // P/A + M/S at the edge; 6 x 8 in, kern 1 in along x and 4/3 in along y.
    FlexiblePlate plate(input_of(stiff_rectangle(), 1.0));
    constexpr double weight = 1000.0;
    for (const Point at : {Point{0.0, 0.0}, {0.9, 0.0}, {0.0, -1.2}, {-0.4, 0.7}}) {
        const FlexiblePlateSolution solution = plate.solve_on_full_mesh({-weight, -weight * at.y, weight * at.x}, {});
        REQUIRE(solution.status == SolveStatus::solved);
        CHECK(largest_tension(solution) == 0.0);
        CHECK_CLOSE(solution.patches[0].contact_area_in2, 48.0, 1e-9, 0.0);
        const double peak = weight / 48.0 * (1.0 + 6.0 * std::abs(at.x) / 6.0 + 6.0 * std::abs(at.y) / 8.0);
        CHECK_CLOSE(solution.patches[0].peak_psi, peak, 1e-4, 0.0);
        CHECK_CLOSE(solution.patches[0].at.x, at.x, 0.0, 1e-8);
        CHECK_CLOSE(solution.patches[0].at.y, at.y, 0.0, 1e-8);
    }
}

TEST_CASE("A weight outside the kern of a stiff plate leaves a wedge of pressure under part of it", "[closed-form]") {
    // 2P / (3b (h/2 - e)) over 3 (h/2 - e), e = 1.2: the far anchors, 2 in out, are still pressed down.
    FlexiblePlate plate(input_of(stiff_rectangle(), 2.0));
    const FlexiblePlateSolution wedge = plate.solve_on_full_mesh({-1000.0, 0.0, 1200.0}, {});
    REQUIRE(wedge.status == SolveStatus::solved);
    CHECK(largest_tension(wedge) == 0.0);
    CHECK_CLOSE(wedge.patches[0].peak_psi, 2.0 * 1000.0 / (3.0 * 8.0 * 1.8), 2e-3, 0.0);
    // A point of the bed works or does not: the length is known to half an element of 0.3 in.
    CHECK_CLOSE(wedge.patches[0].contact_area_in2 / 8.0, 3.0 * 1.8, 0.0, 0.15);
    // Farther out they lift, and hold.
    CHECK(largest_tension(plate.solve_on_full_mesh({-1000.0, 0.0, 1600.0}, {})) > 0.0);
}

TEST_CASE("Uplift without a moment is carried by the anchors, with what the plate's rim pries", "[property]") {
    for (FlexibleBase base : common_bases()) {
        for (FlexibleAnchor& anchor : base.anchors) anchor.preload_lb = 0.0;
        const FlexiblePlateSolution solution = FlexiblePlate(input_of(base, 1.0)).solve({600.0, 0.0, 0.0}, {});
        REQUIRE(solution.status == SolveStatus::solved);
        double pulled = 0.0, pressed = 0.0;
        for (const double tension : solution.tension_lb) pulled += tension;
        for (const PatchForce& patch : solution.patches) pressed += patch.force_lb;
        CHECK_CLOSE(pulled, 600.0 + pressed, 1e-9, 0.0);
        CHECK(solution.lift_in > 0.0);
    }
    // Stiff and symmetric: a quarter each and no prying.
    const FlexiblePlateSolution even = FlexiblePlate(input_of(stiff_rectangle(), 1.0)).solve({600.0, 0.0, 0.0}, {});
    for (const double tension : even.tension_lb) CHECK_CLOSE(tension, 150.0, 1e-5, 0.0);
    CHECK(even.patches[0].force_lb == 0.0);
}

TEST_CASE("What nothing can balance is never called solved by the flexible plate", "[bad-input]") {
    FlexibleBase base = square_base();
    base.anchors.clear();
    FlexiblePlate plate(input_of(base, 1.0));
    // Pulled up; turned with no weight; a weight beyond the plate's edge at 4 in.
    for (const PlateLoad& load :
         {PlateLoad{100.0, 0.0, 0.0}, PlateLoad{0.0, 500.0, 0.0}, PlateLoad{-1000.0, 4500.0, 0.0}}) {
        for (const FlexiblePlateSolution& solution : {plate.solve(load, {}), plate.solve_on_full_mesh(load, {})}) {
            CAPTURE(load.fz_lb, load.mx_lb_in);
            CHECK(solution.status != SolveStatus::solved);
            CHECK(solution.lift_in == 0.0);
            CHECK(largest_force(solution) == 0.0);
        }
    }
    const FlexiblePlateSolution stands = plate.solve({-1000.0, 3800.0, 0.0}, {});
    CHECK(stands.status == SolveStatus::solved);
    CHECK_CLOSE(largest_force(stands), 1000.0, 1e-9, 0.0);
}

TEST_CASE("No load is solved by no lift, after any other load", "[unit]") {
    FlexiblePlate plate(input_of(l_base(), 1.0));
    for (const PlateLoad& before : {PlateLoad{}, push(moment_lb_in, 1.0), PlateLoad{500.0, 0.0, 0.0}}) {
        (void)plate.solve(before, {});
        const FlexiblePlateSolution solution = plate.solve({}, {});
        CHECK(solution.status == SolveStatus::solved);
        CHECK_CLOSE(largest_force(solution), 0.0, 0.0, 1e-9);
    }
}

TEST_CASE("A plate without a mesh or without a post's foot is refused", "[bad-input]") {
    FlexiblePlateInput no_mesh = input_of(square_base(), 1.0), no_ring = no_mesh;
    no_mesh.mesh.triangles.clear();
    no_ring.mesh.ring.clear();
    CHECK_THROWS_AS(FlexiblePlate(std::move(no_mesh)), std::invalid_argument);
    CHECK_THROWS_AS(FlexiblePlate(std::move(no_ring)), std::invalid_argument);
}

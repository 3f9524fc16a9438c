// How long the flexible plate, whole reviews and larger details take, as ratios within one run: machines differ, ratios
// stay. `toehold_bench TABLE...` prints some of the tables: plate, reviews, growth.
//
// The base is common: 8 x 8 x 1/2 in of steel, four anchors, two blocks, about 1,000 unknowns. The yardsticks are the
// factorisation of the same plate's elastic stiffness by a library, the rigid plate, and a general-purpose program on
// solid elements over the same mesh.
#include "bench/report.h"
#include "bench/tables.h"
#include "mechanics/flexible_plate/one_way_springs.h"
#include "mechanics/flexible_plate/plate_assembly.h"
#include "mechanics/flexible_plate/reduced_system.h"
#include "oracle/solid_solution.h"

#include <benchmark/benchmark.h>
#include <Eigen/SparseCholesky>

#include <fmt/core.h>

#include <algorithm>
#include <array>
#include <exception>
#include <set>
#include <string>
#include <vector>

namespace {

using namespace toehold;
using mechanics::FlexiblePlate;

constexpr double fineness = 1.6;
constexpr int directions = 72;

const test::Base& base() {
    static const test::Base one = test::square_on_two_blocks();
    return one;
}

const mechanics::PlateMesh& mesh() {
    static const mechanics::PlateMesh one = test::mesh_of(base(), fineness);
    return one;
}

mechanics::PlateMaterial material() { return {base().modulus_psi, base().poisson, base().thickness_in}; }

/// For each anchor its largest tension over all directions.
void flexible_envelope(FlexiblePlate& plate) {
    std::array<double, 4> largest{};
    for (int i = 0; i < directions; ++i) {
        const auto solution = plate.solve(test::push(360.0 / directions * i), {});
        for (std::size_t a = 0; a < largest.size(); ++a) largest[a] = std::max(largest[a], solution.tension_lb[a]);
    }
    benchmark::DoNotOptimize(largest);
}

void rigid_envelope(const std::vector<mechanics::AnchorSpring>& anchors, const std::vector<mechanics::BedPatch>& bed) {
    std::array<double, 4> largest{};
    mechanics::RigidPlateSolution last;
    for (int i = 0; i < directions; ++i) {
        last = mechanics::solve_rigid_plate(anchors, bed, test::push(360.0 / directions * i), i > 0 ? &last : nullptr);
        for (std::size_t a = 0; a < largest.size(); ++a) largest[a] = std::max(largest[a], last.tension_lb[a]);
    }
    benchmark::DoNotOptimize(largest);
}

void time_mesh(benchmark::State& state) {
    for (auto _ : state) benchmark::DoNotOptimize(test::mesh_of(base(), fineness));
}

void time_assembly(benchmark::State& state) {
    for (auto _ : state) benchmark::DoNotOptimize(mechanics::PlateAssembly(mesh(), material()));
}

void time_springs(benchmark::State& state) {
    const mechanics::PlateAssembly assembly(mesh(), material());
    for (auto _ : state) benchmark::DoNotOptimize(mechanics::OneWaySprings(assembly, base().anchors, base().bed));
}

void time_reduction(benchmark::State& state) {
    const mechanics::PlateAssembly assembly(mesh(), material());
    const mechanics::OneWaySprings springs(assembly, base().anchors, base().bed);
    for (auto _ : state) benchmark::DoNotOptimize(mechanics::reduced_rows(assembly, springs));
}

void time_factorisation(benchmark::State& state) {
    const mechanics::PlateAssembly assembly(mesh(), material());
    for (auto _ : state) {
        Eigen::SimplicialLDLT<Eigen::SparseMatrix<double>> factor;
        factor.compute(assembly.stiffness());
        benchmark::DoNotOptimize(factor.vectorD().sum());
    }
}

void time_flexible_envelope(benchmark::State& state) {
    FlexiblePlate plate(test::input_of(base(), mesh()));
    for (auto _ : state) flexible_envelope(plate);
}

void time_rigid_envelope(benchmark::State& state) {
    std::vector<mechanics::AnchorSpring> anchors;
    for (const auto& anchor : base().anchors) anchors.push_back({anchor.footprint.center, anchor.stiffness_lb_per_in});
    std::vector<mechanics::BedPatch> bed;
    for (const auto& r : base().bed) {
        bed.push_back(
            {mechanics::clip_rectangle(base().outline, r.x_min, r.x_max, r.y_min, r.y_max), r.stiffness_psi_per_in});
    }
    for (auto _ : state) rigid_envelope(anchors, bed);
}

/// Turned about before each solve, so that no neighbouring direction helps.
void time_one_direction(benchmark::State& state) {
    FlexiblePlate plate(test::input_of(base(), mesh()));
    double direction = 90.0;
    for (auto _ : state) {
        benchmark::DoNotOptimize(plate.solve(test::push(direction), {}));
        direction = 360.0 - direction;
    }
}

void time_ccx(benchmark::State& state) {
    for (auto _ : state) state.SetIterationTime(test::solve_with_ccx(base(), mesh(), test::push(90.0)).seconds);
}

/// A deck of one wedge: what ccx takes before it has anything to do.
void time_ccx_start(benchmark::State& state) {
    const mechanics::PlateMesh one{{{0.0, 0.0}, {1.0, 0.0}, {0.0, 1.0}}, {{0, 1, 2}}, {}};
    const test::Deck deck{test::SolidPlate(one, 0.5), 29e6, 0.3, 1.0, false, {}, {0, 2, 4}, {{1, 1.0}}, {}};
    const std::string text = test::text_of(deck);
    for (auto _ : state) state.SetIterationTime(test::run_ccx(text).seconds);
}

BENCHMARK(time_mesh)->Name("mesh");
BENCHMARK(time_assembly)->Name("assembly");
BENCHMARK(time_springs)->Name("springs");
BENCHMARK(time_reduction)->Name("reduction");
BENCHMARK(time_factorisation)->Name("factorisation");
BENCHMARK(time_flexible_envelope)->Name("flexible envelope");
BENCHMARK(time_rigid_envelope)->Name("rigid envelope");
BENCHMARK(time_one_direction)->Name("one direction");
BENCHMARK(time_ccx)->Name("ccx")->UseManualTime()->Iterations(1);
BENCHMARK(time_ccx_start)->Name("ccx start")->UseManualTime()->Iterations(1);

void print_table(const bench::Medians& medians) {
    FlexiblePlate plate(test::input_of(base(), mesh()));
    flexible_envelope(plate);
    const auto ms = [&](const char* name) { return 1e3 * medians.seconds(name); };
    const double preparation = ms("mesh") + ms("assembly") + ms("springs") + ms("reduction");
    const double envelope = ms("flexible envelope"), factorisation = ms("factorisation");
    const double ccx = ms("ccx") - ms("ccx start");
    fmt::print("\n{}, {} unknowns, {} in the small space; medians of {} repetitions, processor time\n", base().name,
               plate.unknowns(), plate.reduced_unknowns(), medians.repetitions());
    const auto time = [](const char* what, double value) { fmt::print("  {:<58}{:>10.3f} ms\n", what, value); };
    time("mesh", ms("mesh"));
    time("assembly of the elastic stiffness", ms("assembly"));
    time("springs of bed and anchors", ms("springs"));
    time("reduction to the small space", ms("reduction"));
    time("sparse LDLT of the elastic stiffness (the yardstick)", factorisation);
    time("flexible envelope, 72 directions", envelope);
    time("rigid envelope, 72 directions", ms("rigid envelope"));
    time("one direction, turned about each time", ms("one direction"));
    time("ccx on the same mesh, one direction, start-up taken off", ccx);
    time("start-up of ccx (one element)", ms("ccx start"));
    const auto ratio = [](const char* what, double value) { fmt::print("  {:<58}{:>10.2f}\n", what, value); };
    ratio("flexible envelope / sparse LDLT", envelope / factorisation);
    ratio("flexible envelope with preparation / sparse LDLT", (envelope + preparation) / factorisation);
    ratio("ccx / one direction", ccx / ms("one direction"));
    ratio("rigid envelope / flexible envelope", ms("rigid envelope") / envelope);
}

}  // namespace

int main(int count, char** words) {
    try {
        const std::set<std::string> tables = bench::take_tables(count, words);
        const auto wanted = [&tables](const char* table) { return tables.empty() || tables.contains(table); };
        std::size_t repetitions = 5;
        if (wanted("plate")) {
            const bench::Medians medians = bench::run_benchmarks(count, words);
            if (!medians.complete()) return 0;
            print_table(medians);
            repetitions = medians.repetitions();
        }
        if (wanted("reviews")) bench::print_review_table(repetitions);
        if (wanted("growth")) bench::print_growth_table(std::min<std::size_t>(repetitions, 3));
        return 0;
    } catch (const std::exception& error) {
        fmt::print(stderr, "toehold_bench: {}\n", error.what());
        return 1;
    }
}

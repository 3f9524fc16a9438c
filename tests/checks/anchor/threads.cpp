// Which diameter counts in the yield equations, NDS 2018 12.3.7.2, and which shear stress, AISC 360 Table J3.2.
#include "checks/anchor/threads.h"

#include "checks/anchor/bolt_example.h"
#include "checks/run_check.h"
#include "support/compare.h"

using namespace toehold;
using checks::thread_place;

namespace {

/// 3/8 in of plate and 1 in of decking over a block 5.5 in deep.
catalog::Resolved bolted(std::optional<double> length_in, std::optional<double> thread_in = std::nullopt,
                         std::optional<model::Threads> threads = std::nullopt) {
    catalog::Resolved resolved = test::bolted_example();
    for (catalog::Anchor& anchor : resolved.anchors) {
        anchor.bolt = model::ThroughBolt{"bolt-1/2", "a307", {}};
        anchor.bolt->length_in = length_in;
        anchor.bolt->thread_length_in = thread_in;
        anchor.bolt->threads = threads;
    }
    return resolved;
}

double lateral_lb(const catalog::Resolved& resolved) {
    const demand::Demand demand = test::example_demand(resolved, {0.0, 0.0, 40.0}, {});
    return test::run_check("anchor-lateral", resolved, demand).at(0).capacity;
}

}  // namespace

TEST_CASE("a bolt's threads follow from its length", "[published]") {
    // 8 in long, thread 2 x 0.5 + 0.5 = 1.5 in (ASME B18.2.1): shank to 6.5 in below the head, 5.125 in of the 5.5 in
    // of wood. Threads 0.375 in, less than 5.5/4 = 1.375.
    catalog::Resolved resolved = bolted(8.0);
    CHECK(thread_place(resolved, resolved.anchors[0]).full_diameter);
    CHECK(thread_place(resolved, resolved.anchors[0]).clear_of_plane);
    // Threaded over 2.5 in: exactly a quarter of the wood has thread. Over 2.6 in: more.
    resolved = bolted(8.0, 2.5);
    CHECK(thread_place(resolved, resolved.anchors[0]).full_diameter);
    resolved = bolted(8.0, 2.6);
    CHECK_FALSE(thread_place(resolved, resolved.anchors[0]).full_diameter);
    CHECK(thread_place(resolved, resolved.anchors[0]).clear_of_plane);
    // A tap bolt has thread all along.
    resolved = bolted(8.0, 8.0);
    CHECK_FALSE(thread_place(resolved, resolved.anchors[0]).clear_of_plane);
}

TEST_CASE("without a length the file may say where the threads lie", "[unit]") {
    catalog::Resolved resolved = bolted(std::nullopt);
    CHECK_FALSE(thread_place(resolved, resolved.anchors[0]).full_diameter);
    resolved = bolted(std::nullopt, std::nullopt, model::Threads::excluded);
    CHECK(thread_place(resolved, resolved.anchors[0]).full_diameter);
    resolved = bolted(8.0, 8.0, model::Threads::excluded);
    CHECK_FALSE(thread_place(resolved, resolved.anchors[0]).full_diameter);
}

TEST_CASE("the full diameter raises the lateral value by its square in mode IV with a gap", "[closed-form][B11]") {
    // The moment M = F_yb D^3/6 at both hinges over the gap governs, so the value goes with nearly D^3 of 0.5 over 0.4,
    // 1.95; the bearing parts of the lever make it less. By a script of the general dowel equations (AWC TR12; q_m =
    // 3625 D, q_s = 87,000 D, gap 1 in) 1350.8 over 755.2 lb: 1.789. 0.5.0 gave 1.
    const double root_lb = lateral_lb(bolted(std::nullopt));
    const double full_lb = lateral_lb(bolted(8.0));
    CHECK_CLOSE(full_lb / root_lb, 1.789, 2e-3, 0.0);
}

TEST_CASE("a lag screw's own thread mostly reaches too far up", "[unit]") {
    // The example's: 3.5 in of thread on 6 in, 2.5 in of shank less 1.375 above the block: 1.125 in of 4.52.
    catalog::Resolved resolved = test::example_resolved();
    CHECK_FALSE(thread_place(resolved, resolved.anchors[0]).full_diameter);
    resolved.anchors[0].thread_length_in = 1.2;
    // shank to 4.8: 3.425 of 4.515625 in, thread 1.09 in, less than a quarter, 1.129
    CHECK(thread_place(resolved, resolved.anchors[0]).full_diameter);
}

TEST_CASE("threads out of the plane raise the shear of a bolt grade that has the value", "[published]") {
    // AISC 360-10 Table J3.2, Group A: 54 and 68 ksi. 68,000 x pi/4 x 0.25/2 = 6675.9 lb
    catalog::Resolved resolved = bolted(8.0);
    for (catalog::Anchor& anchor : resolved.anchors)
        anchor.bolt_grade = catalog::BoltGrade{"a325-n", "A325", 90000.0, 54000.0, {}};
    const auto shear_lb = [&] {
        const demand::Demand demand = test::example_demand(resolved, {0.0, 0.0, 40.0}, {});
        return test::run_check("anchor-steel-shear", resolved, demand).at(0).capacity;
    };
    CHECK_CLOSE(shear_lb(), 5301.4, 0.0, 0.1);
    for (catalog::Anchor& anchor : resolved.anchors) anchor.bolt_grade->nominal_shear_excluded_psi = 68000.0;
    CHECK_CLOSE(shear_lb(), 6675.9, 0.0, 0.1);
    for (catalog::Anchor& anchor : resolved.anchors) anchor.bolt->thread_length_in = 8.0;
    CHECK_CLOSE(shear_lb(), 5301.4, 0.0, 0.1);
}

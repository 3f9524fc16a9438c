// Walls of aluminum tubes: Aluminum Design Manual 2020 B.5.4, B.5.5, F.3, all from memory, to be confirmed.
#include "resistance/aluminum/local_buckling.h"

#include "support/compare.h"

#include <cmath>

using namespace toehold;
using namespace toehold::resistance;
using aluminum::Temper;

namespace {
constexpr double modulus_psi = 10.1e6;
}

// Part VI, flat elements supported on both edges in uniform compression, 6061-T6: S1 20.8, S2 33; 6063-T6: S1 22.8.
// Round tubes, 6061-T6: S1 27.6, S2 141 (from memory). Bp = 45.00, Dp = 0.3004 ksi, so between: 45.00 - 0.4806 b/t.
TEST_CASE("A flat wall yields, buckles after yield has begun, then elastically", "[memory]") {
    CHECK(aluminum::flat_wall_psi(20.7, 35e3, modulus_psi, Temper::aged) == 35e3);
    CHECK(aluminum::flat_wall_psi(20.9, 35e3, modulus_psi, Temper::aged) < 35e3);
    CHECK(aluminum::flat_wall_psi(22.7, 25e3, modulus_psi, Temper::aged) == 25e3);
    CHECK(aluminum::flat_wall_psi(22.9, 25e3, modulus_psi, Temper::aged) < 25e3);
    // 3 x 3 x 1/8: b/t 22: 34.43 ksi; b/t 30: 30.58 ksi.
    CHECK_CLOSE(aluminum::flat_wall_psi(22.0, 35e3, modulus_psi, Temper::aged), 34428.0, 1e-4, 0.0);
    CHECK_CLOSE(aluminum::flat_wall_psi(30.0, 35e3, modulus_psi, Temper::aged), 30583.0, 1e-4, 0.0);
    // 2.27 root(45.00 x 10,100)/(1.6 x 40) = 23.91 ksi.
    CHECK_CLOSE(aluminum::flat_wall_psi(40.0, 35e3, modulus_psi, Temper::aged), 23912.0, 1e-4, 0.0);
    // The parts meet at S2 = 32.8 within 1 %.
    CHECK_CLOSE(aluminum::flat_wall_psi(32.77, 35e3, modulus_psi, Temper::aged),
                aluminum::flat_wall_psi(32.78, 35e3, modulus_psi, Temper::aged), 0.01, 0.0);
    // Softened to 15 ksi: Bp = 19.86, Dp = 0.1079: yields to b/t 28.2.
    CHECK(aluminum::flat_wall_psi(28.1, 15e3, modulus_psi, Temper::softened) == 15e3);
    CHECK_CLOSE(aluminum::flat_wall_psi(30.0, 15e3, modulus_psi, Temper::softened), 14685.0, 1e-4, 0.0);
    // Past S2, 0.50 x 19.864/0.10789/1.6 = 57.5: 2.04 root(19.864 x 10,100)/(1.6 b/t) = 571.09/(b/t) ksi. Just past it
    // the line would still give 9.506 ksi.
    CHECK_CLOSE(aluminum::flat_wall_psi(60.0, 15e3, modulus_psi, Temper::softened), 9518.1, 1e-5, 0.0);
    CHECK_CLOSE(aluminum::flat_wall_psi(80.0, 15e3, modulus_psi, Temper::softened), 7138.6, 1e-5, 0.0);
}

TEST_CASE("A bent wall reaches 1.5 times yield, a round one its own limits", "[memory]") {
    // Bbr = 66.82, Dbr = 0.6657: (66.82 - 52.5)/(0.65 x 0.6657) = 33.1.
    CHECK(aluminum::bent_wall_psi(33.0, 35e3, modulus_psi) == 52.5e3);
    CHECK_CLOSE(aluminum::bent_wall_psi(50.0, 35e3, modulus_psi), 66824.3 - 0.65 * 50.0 * 665.712, 1e-5, 0.0);
    // Past 0.50 x 66.824/0.66571/0.65 = 77.2: 2.04 root(66.824 x 10,100)/(0.65 b/t) = 2,578.4/(b/t) ksi; the line would
    // give 32.207 and 23.553 ksi.
    CHECK_CLOSE(aluminum::bent_wall_psi(80.0, 35e3, modulus_psi), 32229.6, 1e-5, 0.0);
    CHECK_CLOSE(aluminum::bent_wall_psi(100.0, 35e3, modulus_psi), 25783.7, 1e-5, 0.0);
    CHECK(aluminum::round_wall_psi(27.5, 35e3, modulus_psi, Temper::aged) == 35e3);
    // 43.19 - 1.558 root(50) = 32.17 ksi.
    CHECK_CLOSE(aluminum::round_wall_psi(50.0, 35e3, modulus_psi, Temper::aged), 32172.0, 1e-4, 0.0);
    // At S2 = 141 line and elastic curve meet: 24.69 and 24.63 ksi.
    CHECK_CLOSE(aluminum::round_wall_psi(141.0, 35e3, modulus_psi, Temper::aged), 24635.0, 1e-4, 0.0);
}

// 3 x 3 x 1/8, square corners: I 1.98405, walls along the load 2 x 1/8 x 2.75^3/12 = 0.43327; 34,428 x 1.55078/1.4375 +
// 52,500 x 0.43327/1.375 = 53,684 lb in; softened 15,000 and 22,500: 23,272.
TEST_CASE("A tube's local buckling is the weighted average of its walls", "[unit]") {
    const steel::TubeShape tube{false, 3.0, 3.0, 0.125};
    const auto moment = [&](double yield_psi, Temper temper) {
        return aluminum::tube_local_moment_lb_in(tube, steel::BentAbout::x, yield_psi, modulus_psi, temper);
    };
    CHECK_CLOSE(moment(35e3, Temper::aged), 53684.0, 1e-4, 0.0);
    CHECK_CLOSE(moment(15e3, Temper::softened), 23272.0, 1e-4, 0.0);
    // 2 x 6 x 1/8 on edge: flange b/t 14 yields, 35,000; walls along the load 46: 66,824 - 0.65 x 46 x 665.71 = 46,919
    // psi. I of the whole 8.27572, of those walls 2 x 1/8 x 5.75^3/12 = 3.96057; 35,000 x 4.31510/2.9375 + 46,919 x
    // 3.96057/2.875 = 116,050 lb in.
    CHECK_CLOSE(aluminum::tube_local_moment_lb_in({false, 2.0, 6.0, 0.125}, steel::BentAbout::x, 35e3, modulus_psi,
                                                  Temper::aged),
                116050.5, 1e-4, 0.0);
    // A stocky round tube has no such limit, a thin one F_c S.
    CHECK(std::isinf(aluminum::tube_local_moment_lb_in({true, 2.0, 2.0, 0.125}, steel::BentAbout::x, 35e3, modulus_psi,
                                                       Temper::aged)));
    const steel::TubeShape thin{true, 4.0, 4.0, 4.0 / 101.0};
    CHECK_CLOSE(aluminum::tube_local_moment_lb_in(thin, steel::BentAbout::y, 35e3, modulus_psi, Temper::aged),
                32172.0 * steel::section_as_drawn(thin).section_x_in3, 1e-4, 0.0);
}

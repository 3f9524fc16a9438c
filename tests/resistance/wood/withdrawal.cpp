// Reference withdrawal values and thread lengths against the published tables; head pull-through against an independent
// computation; combined lateral and withdrawal load.
#include "resistance/wood/withdrawal.h"

#include "support/compare.h"

#include <array>
#include <cstddef>
#include <numbers>
#include <vector>

using namespace toehold::resistance;
using toehold::test::prints_as;

namespace {

constexpr double degree = std::numbers::pi / 180.0;

template <std::size_t Columns>
struct Row {
    double specific_gravity;
    std::array<double, Columns> withdrawal_lb_per_in;
};

// NDS 2015/2018 Table 12.2A, lb per inch of thread, read in public scans of the page (241 of 242 entries; the one
// for G 0.49, 1/4 in is damaged there and is the equation's).
constexpr std::array<double, 11> lag_diameters_in{0.25, 0.3125, 0.375, 0.4375, 0.5, 0.625,
                                                  0.75, 0.875,  1.0,   1.125,  1.25};
const std::vector<Row<11>> lag_table{{0.73, {397, 469, 538, 604, 668, 789, 905, 1016, 1123, 1226, 1327}},
                                     {0.71, {381, 450, 516, 579, 640, 757, 868, 974, 1077, 1176, 1273}},
                                     {0.68, {357, 422, 484, 543, 600, 709, 813, 913, 1009, 1103, 1193}},
                                     {0.67, {349, 413, 473, 531, 587, 694, 796, 893, 987, 1078, 1167}},
                                     {0.58, {281, 332, 381, 428, 473, 559, 641, 719, 795, 869, 940}},
                                     {0.55, {260, 307, 352, 395, 437, 516, 592, 664, 734, 802, 868}},
                                     {0.51, {232, 274, 314, 353, 390, 461, 528, 593, 656, 716, 775}},
                                     {0.50, {225, 266, 305, 342, 378, 447, 513, 576, 636, 695, 752}},
                                     {0.49, {218, 258, 296, 332, 367, 434, 498, 559, 617, 674, 730}},
                                     {0.47, {205, 242, 278, 312, 345, 408, 467, 525, 580, 634, 686}},
                                     {0.46, {199, 235, 269, 302, 334, 395, 453, 508, 562, 613, 664}},
                                     {0.44, {186, 220, 252, 283, 312, 369, 423, 475, 525, 574, 621}},
                                     {0.43, {179, 212, 243, 273, 302, 357, 409, 459, 508, 554, 600}},
                                     {0.42, {173, 205, 235, 264, 291, 344, 395, 443, 490, 535, 579}},
                                     {0.41, {167, 198, 226, 254, 281, 332, 381, 428, 473, 516, 559}},
                                     {0.40, {161, 190, 218, 245, 271, 320, 367, 412, 455, 497, 538}},
                                     {0.39, {155, 183, 210, 236, 261, 308, 353, 397, 438, 479, 518}},
                                     {0.38, {149, 176, 202, 227, 251, 296, 340, 381, 422, 461, 498}},
                                     {0.37, {143, 169, 194, 218, 241, 285, 326, 367, 405, 443, 479}},
                                     {0.36, {137, 163, 186, 209, 231, 273, 313, 352, 389, 425, 460}},
                                     {0.35, {132, 156, 179, 200, 222, 262, 300, 337, 373, 407, 441}},
                                     {0.31, {110, 130, 149, 167, 185, 218, 250, 281, 311, 339, 367}}};

// NDS 2015/2018 Table 12.2B as computed from Eq. 12.2-2 by an independent script; the printed page was not seen, and
// may differ by 1 where the value ends in one half.
constexpr std::array<double, 11> screw_diameters_in{0.138, 0.151, 0.164, 0.177, 0.190, 0.216,
                                                    0.242, 0.268, 0.294, 0.320, 0.372};
const std::vector<Row<11>> screw_table{{0.73, {210, 229, 249, 269, 289, 328, 368, 407, 447, 486, 565}},
                                       {0.67, {177, 193, 210, 226, 243, 276, 310, 343, 376, 409, 476}},
                                       {0.58, {132, 145, 157, 170, 182, 207, 232, 257, 282, 307, 357}},
                                       {0.55, {119, 130, 141, 153, 164, 186, 209, 231, 253, 276, 321}},
                                       {0.51, {102, 112, 122, 131, 141, 160, 179, 199, 218, 237, 276}},
                                       {0.50, {98, 108, 117, 126, 135, 154, 172, 191, 209, 228, 265}},
                                       {0.49, {94, 103, 112, 121, 130, 148, 166, 183, 201, 219, 255}},
                                       {0.46, {83, 91, 99, 107, 115, 130, 146, 162, 177, 193, 224}},
                                       {0.43, {73, 80, 86, 93, 100, 114, 128, 141, 155, 169, 196}},
                                       {0.42, {69, 76, 82, 89, 96, 109, 122, 135, 148, 161, 187}},
                                       {0.37, {54, 59, 64, 69, 74, 84, 94, 105, 115, 125, 145}},
                                       {0.36, {51, 56, 61, 65, 70, 80, 89, 99, 109, 118, 137}},
                                       {0.35, {48, 53, 57, 62, 66, 75, 84, 94, 103, 112, 130}}};

}  // namespace

TEST_CASE("Every entry of NDS Table 12.2A is met to the pound", "[published]") {
    REQUIRE(lag_table.size() == 22);
    for (const Row<11>& row : lag_table) {
        for (std::size_t column = 0; column < lag_diameters_in.size(); ++column) {
            const double diameter_in = lag_diameters_in[column];
            CAPTURE(row.specific_gravity, diameter_in, row.withdrawal_lb_per_in[column]);
            CHECK(prints_as(lag_withdrawal_lb_per_in(row.specific_gravity, diameter_in),
                            row.withdrawal_lb_per_in[column], 1.0));
        }
    }
}

TEST_CASE("Wood screw withdrawal meets an independent computation of NDS Table 12.2B", "[closed-form]") {
    for (const Row<11>& row : screw_table) {
        for (std::size_t column = 0; column < screw_diameters_in.size(); ++column) {
            const double diameter_in = screw_diameters_in[column];
            CAPTURE(row.specific_gravity, diameter_in, row.withdrawal_lb_per_in[column]);
            CHECK(prints_as(wood_screw_withdrawal_lb_per_in(row.specific_gravity, diameter_in),
                            row.withdrawal_lb_per_in[column], 1.0));
        }
    }
}

TEST_CASE("A No. 10 wood screw in G 0.45 holds the 109 lb/in that a public engineering page works out", "[published]") {
    // The page truncates 109.65.
    CHECK_CLOSE(wood_screw_withdrawal_lb_per_in(0.45, 0.190), 109.65, 0.0, 0.005);
}

TEST_CASE("Wood screw withdrawal is the ultimate value of the Wood Handbook over 5.51", "[published]") {
    // Wood Handbook p = 15700 G^2 D; a public page works out 1262 lb for 1 in of No. 8 in G 0.70. 15700/2850 = 5.5088.
    CHECK_CLOSE(wood_screw_withdrawal_lb_per_in(0.70, 0.164) * 15700.0 / 2850.0, 1262.0, 0.0, 0.5);
}

TEST_CASE("Lag screw thread lengths are those of ASME B18.2.1", "[published]") {
    // L and T in inches, seen in two fastener sheets; L = 7 also confirmed by a public permit calculation.
    const std::vector<std::array<double, 2>> thread_for_length{{3, 2},   {4, 2.5}, {5, 3},    {6, 3.5}, {7, 4},
                                                               {8, 4.5}, {9, 5},   {10, 5.5}, {11, 6},  {12, 6}};
    for (const auto& [length_in, thread_in] : thread_for_length) {
        CAPTURE(length_in);
        CHECK(lag_thread_length_in(length_in) == thread_in);
    }
}

TEST_CASE("A short lag screw is never threaded beyond its length", "[published]") {
    // NDS 2018 Table L2, read in a public transcription: 1 in has 3/4 in of thread, 1-1/2 in has 1-1/4 in.
    CHECK(lag_thread_length_in(1.0) == 0.75);
    CHECK(lag_thread_length_in(1.5) == 1.25);
    CHECK(lag_thread_length_in(0.1) == 0.0);
    for (int sixteenth = 0; sixteenth <= 256; ++sixteenth) {
        const double length_in = sixteenth / 16.0;
        CAPTURE(length_in);
        CHECK(lag_thread_length_in(length_in) >= 0.0);
        CHECK(lag_thread_length_in(length_in) <= length_in);
    }
}

TEST_CASE("Thread wholly inside the block counts all but its tip", "[published]") {
    // 3/8 x 6 lag: T = 3.5, E = 7/32; under 3/8 plate and 1 in decking 1.375 in lie above a 5.5 in block.
    // Thread runs from 2.5 to 5.78125 under the head: T - E = 3.28125, as the permit calculation of NDS 12.2.1 does.
    CHECK(effective_thread_in(6.0, 3.5, 0.21875, 1.375, 5.5) == 3.28125);
    CHECK(embedment_in(6.0, 1.375, 5.5) == 4.625);
    CHECK(tip_in_block_in(6.0, 0.21875, 1.375, 5.5) == 0.21875);
}

TEST_CASE("Thread above the block does not count", "[unit]") {
    // 3/8 x 4: T = 2.5 from 1.5 to 4; block's top at 2.0: 4 - 2.0 - 0.21875.
    CHECK(effective_thread_in(4.0, 2.5, 0.21875, 2.0, 5.5) == 1.78125);
}

TEST_CASE("A screw that comes out below the block leaves its tip outside", "[unit]") {
    // 6 in long, 0.5 in above a 3.5 in block: block from 0.5 to 4.0; thread from 2.5, so 1.5 in holds.
    CHECK(effective_thread_in(6.0, 3.5, 0.21875, 0.5, 3.5) == 1.5);
    CHECK(embedment_in(6.0, 0.5, 3.5) == 3.5);
    CHECK(tip_in_block_in(6.0, 0.21875, 0.5, 3.5) == 0.0);
    // Out by 1/8 in only: block from 0.5 to 5.875, tip from 5.78125: 3/32 in of it is still in the wood.
    CHECK(tip_in_block_in(6.0, 0.21875, 0.5, 5.375) == 0.09375);
    CHECK(effective_thread_in(6.0, 3.5, 0.21875, 0.5, 5.375) == 3.28125);
}

TEST_CASE("A screw that does not reach the block, or only with its tip or shank, holds nothing", "[bad-input]") {
    CHECK(embedment_in(1.0, 1.375, 5.5) == 0.0);
    CHECK(effective_thread_in(1.0, 0.75, 0.2, 1.375, 5.5) == 0.0);
    CHECK(effective_thread_in(1.5, 1.25, 0.2, 1.375, 5.5) == 0.0);  // 1/8 in of tip
    CHECK(effective_thread_in(12.0, 6.0, 0.2, 0.5, 3.5) == 0.0);    // block from 0.5 to 4, thread from 6
    CHECK(effective_thread_in(2.0, 9.0, 0.0, 0.5, 5.0) == 1.5);     // more thread stated than there is screw
}

TEST_CASE("Penetration, tip and effective thread add up however deep the block", "[property]") {
    for (int length = 8; length <= 80; ++length) {
        for (int above = 0; above <= 24; ++above) {
            for (const double depth_in : {1.5, 3.5, 5.5}) {
                const double length_in = length / 8.0;
                const double above_in = above / 8.0;
                const double thread_in = lag_thread_length_in(length_in);
                const double effective_in = effective_thread_in(length_in, thread_in, 0.25, above_in, depth_in);
                CAPTURE(length_in, above_in, depth_in);
                CHECK(effective_in + tip_in_block_in(length_in, 0.25, above_in, depth_in) <=
                      embedment_in(length_in, above_in, depth_in) + 1e-12);
                CHECK(effective_in <= thread_in);
                CHECK(effective_in >= 0.0);
            }
        }
    }
}

TEST_CASE("Least penetrations are 4 D for lag screws and 6 D for wood screws", "[published]") {
    // A public note on NDS 2015 12.1.4.6 gives 2 in for a 1/2 in lag; 6 D: the publisher's note on the 2001 edition.
    CHECK(lag_minimum_penetration_in(0.5) == 2.0);
    CHECK_CLOSE(wood_screw_minimum_penetration_in(0.242), 1.452, 1e-12, 0.0);
}

TEST_CASE("Head pull-through meets three entries of NDS Table 12.2F", "[published]") {
    // Read in a public transcription, to the pound.
    CHECK(prints_as(head_pull_through_lb(0.50, 0.234, 0.3125), 40.0, 1.0));
    CHECK(prints_as(head_pull_through_lb(0.50, 0.312, 1.0), 132.0, 1.0));
    CHECK(prints_as(head_pull_through_lb(0.42, 0.500, 1.5), 239.0, 1.0));
}

TEST_CASE("Head pull-through meets the values computed apart for four species", "[closed-form]") {
    // Computed by an independent script from the equation of NDS 2018 12.2.5.
    // Its 250 lb for G 0.43 and a 1/2 in head is 690 x 3.14159 x 0.5 x 0.1849 x 1.25 = 250.505 by hand: held to that
    // instead.
    struct Case {
        double head_in, thickness_in, specific_gravity, printed_lb;
    };
    const Case cases[] = {{0.375, 0.75, 0.55, 184}, {0.375, 0.75, 0.50, 152}, {0.375, 0.75, 0.43, 113},
                          {0.375, 0.75, 0.42, 108}, {0.5, 1.5, 0.55, 410},    {0.5, 1.5, 0.50, 339},
                          {0.5, 1.5, 0.43, 250.5},  {0.5, 1.5, 0.42, 239},    {1.0, 1.5, 0.55, 984},
                          {1.0, 1.5, 0.50, 813},    {1.0, 1.5, 0.43, 601},    {1.0, 1.5, 0.42, 574}};
    for (const Case& one : cases) {
        CAPTURE(one.head_in, one.thickness_in, one.specific_gravity);
        CHECK(
            prints_as(head_pull_through_lb(one.specific_gravity, one.head_in, one.thickness_in), one.printed_lb, 1.0));
    }
}

TEST_CASE("Beyond 2.5 head diameters more wood adds nothing", "[property]") {
    // 1725 pi DH^2 G^2 with DH = 0.75, G = 0.5: 1725 x 3.14159265 x 0.5625 x 0.25 = 762.09.
    CHECK_CLOSE(head_pull_through_lb(0.5, 0.75, 1.875), 762.09, 0.0, 0.01);
    CHECK(head_pull_through_lb(0.5, 0.75, 5.5) == head_pull_through_lb(0.5, 0.75, 1.875));
    CHECK(head_pull_through_lb(0.5, 0.75, 1.8) < head_pull_through_lb(0.5, 0.75, 1.875));
}

TEST_CASE("Screws under combined load match an independent computation of Eq. 12.4-1", "[unit]") {
    // W'p 762.5 lb, Z' 270 lb, computed by an independent routine; the equation was read in a public transcription.
    struct Entry {
        double angle_deg, value_lb;
    };
    constexpr std::array entries{Entry{0, 270.0},  Entry{15, 282.2}, Entry{30, 322.0}, Entry{45, 398.8},
                                 Entry{60, 523.7}, Entry{75, 679.5}, Entry{90, 762.5}};
    for (const Entry& entry : entries) {
        CAPTURE(entry.angle_deg);
        CHECK(toehold::test::prints_as(screw_combined_lb(762.5, 270.0, entry.angle_deg * degree), entry.value_lb, 0.1));
    }
}

TEST_CASE("Nails' linear form is never above the screws'", "[property]") {
    for (double angle = 0.0; angle <= 90.0; angle += 5.0) {
        CHECK(nail_combined_lb(762.5, 270.0, angle * degree) <= screw_combined_lb(762.5, 270.0, angle * degree) + 1e-9);
    }
    // 45 degrees: 1 / (0.707107 (1/762.5 + 1/270)) = 282.00
    CHECK_CLOSE(nail_combined_lb(762.5, 270.0, 45.0 * degree), 282.0, 1e-4, 0.0);
}

TEST_CASE("A resistance that is needed and missing leaves nothing", "[unit]") {
    CHECK(screw_combined_lb(0.0, 270.0, 30.0 * degree) == 0.0);
    CHECK(screw_combined_lb(762.5, 0.0, 30.0 * degree) == 0.0);
    CHECK(screw_combined_lb(762.5, 0.0, 90.0 * degree) == 762.5);
    CHECK(screw_combined_lb(0.0, 270.0, 0.0) == 270.0);
}

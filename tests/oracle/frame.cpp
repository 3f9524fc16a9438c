#include "oracle/frame.h"

#include "oracle/ccx/frame_deck.h"
#include "oracle/ccx/run.h"

namespace toehold::test {
namespace {

using mechanics::GridMember;
using mechanics::GridMotion;

/// E I, G J and G A_s of a rectangle stood on its narrow side: J by the usual series' two terms, A_s 5/6 of the area
/// (any textbook), G one sixteenth of E. Both programs are given the same numbers, whatever they are.
GridMember rectangle(int from, int to, double width_in, double depth_in) {
    constexpr double modulus_psi = 1.4e6, shear_psi = modulus_psi / 16.0;
    const double thin = width_in * width_in * width_in;
    return {from, to, modulus_psi * width_in * depth_in * depth_in * depth_in / 12.0,
            shear_psi * depth_in * thin * (1.0 / 3.0 - 0.21 * width_in / depth_in),
            shear_psi * 5.0 / 6.0 * width_in * depth_in};
}

std::vector<GridMotion> motions(const CcxRun& run, const std::vector<std::size_t>& nodes) {
    std::vector<GridMotion> result;
    result.reserve(nodes.size());
    for (const std::size_t node : nodes) {
        const auto& turned = run.rotations.at(node);
        result.push_back({run.displacements.at(node)[2], turned[0], turned[1]});
    }
    return result;
}

}  // namespace

FrameSolution solve_frame_with_ccx(const Frame& frame, const std::vector<Station>& stations, double element_in) {
    const FrameDeck deck = frame_deck(frame, stations, element_in);
    const CcxRun run = run_ccx(deck.text);
    return {motions(run, deck.nodes), motions(run, deck.stations)};
}

Frame two_beams() {
    Frame frame;
    frame.nodes = {{0, 0}, {30, 10}, {54, 18}, {18, 46}, {39, -17}};
    frame.members = {rectangle(0, 1, 3.0, 7.25), rectangle(1, 2, 3.0, 7.25), rectangle(3, 1, 1.5, 9.25),
                     rectangle(1, 4, 1.5, 9.25)};
    frame.supports = {{0, 4e4, 2e6, 3e6}, {2, 1e4, 1e5, 0}, {3, 2e4, 0, 5e5}, {4, 6e4, 1e6, 1e6}};
    frame.member_loads = {{0, 20.0, -350.0, 900.0, 0.0}, {2, 13.0, 120.0, 0.0, -2500.0}, {3, 9.0, 0.0, 1500.0, 700.0}};
    frame.loads = {{1, -200.0, 0.0, 1200.0}};
    return frame;
}

Frame deck_corner() {
    Frame frame;
    constexpr double first_support_in = 6.0, second_support_in = 84.0, near_block_in = 97.0, far_block_in = 101.5,
                     end_in = 108.0;
    // A joist's nodes along y: its start, both supports, both blocks, the rim.
    for (const double x : {-16.0, 0.0, 16.0}) {
        for (const double y : {0.0, first_support_in, second_support_in, near_block_in, far_block_in, end_in}) {
            frame.nodes.push_back({x, y});
            const int node = static_cast<int>(frame.nodes.size()) - 1;
            if (y > 0.0) frame.members.push_back(rectangle(node - 1, node, 1.5, 9.25));
            if (y == first_support_in || y == second_support_in) frame.supports.push_back({node, 8e4, 0.0, 6e5});
        }
    }
    constexpr int a_joist = 6, near_block = 3, far_block = 4, at_rim = 5;
    // The rim, nailed to the joists' ends.
    for (int joist = 0; joist < 3; ++joist) {
        frame.nodes.push_back({16.0 * (joist - 1), end_in});
        const int node = static_cast<int>(frame.nodes.size()) - 1;
        if (joist > 0) frame.members.push_back(rectangle(node - 1, node, 1.5, 9.25));
        frame.joints.push_back({a_joist * joist + at_rim, node, 3e4, 2e4, 5e4});
    }
    // A block between the first two joists and one between the last two, from face to face.
    for (int bay = 0; bay < 2; ++bay) {
        const double y = bay == 0 ? near_block_in : far_block_in;
        const int on_joist = bay == 0 ? near_block : far_block;
        const mechanics::Point left{16.0 * (bay - 1) + 0.75, y}, right{16.0 * bay - 0.75, y};
        frame.nodes.insert(frame.nodes.end(), {left, right});
        const int node = static_cast<int>(frame.nodes.size()) - 2;
        frame.members.push_back(rectangle(node, node + 1, 3.0, 7.25));
        frame.joints.push_back({a_joist * bay + on_joist, node, 2.5e4, 8e4, 3e4, left});
        frame.joints.push_back({a_joist * (bay + 1) + on_joist, node + 1, 4e4, 8e4, 1e4, right});
    }
    const int blocks = static_cast<int>(frame.members.size()) - 2;
    // A post's push lifts one anchor of a block and presses beside it; a joist is twisted, and one carries people.
    frame.member_loads = {{blocks, 5.0, 1900.0, 0.0, 0.0},       {blocks, 9.0, -1500.0, 2100.0, 300.0},
                          {blocks + 1, 4.0, 300.0, -900.0, 0.0}, {6, 40.0, -250.0, 0.0, 0.0},
                          {9, 3.0, 0.0, 500.0, 1400.0},          {2, 6.5, -80.0, 0.0, -600.0}};
    frame.loads = {{a_joist + at_rim, -120.0, 0.0, 0.0}};
    return frame;
}

}  // namespace toehold::test

#pragma once
// Fasteners pulled along their axis out of side grain, their heads drawn through the wood they bear on, and tension and
// lateral force at once: NDS 2018 12.2 and 12.4, with ASME B18.2.1 for the lag screw's thread. in, lb, values lb/in.

namespace toehold::resistance {

/// W = 1800 G^(3/2) D^(3/4), lb per inch of thread in side grain, tip excluded: NDS 2018 Eq. 12.2-1.
/// `specific_gravity` is the assigned G of NDS 2018 Table 12.3.3A, > 0; `diameter_in` the nominal one, 1/4 to 1-1/4.
[[nodiscard]] double lag_withdrawal_lb_per_in(double specific_gravity, double diameter_in);

/// W = 2850 G^2 D, lb per inch of thread in side grain: NDS 2018 Eq. 12.2-2. `diameter_in` is the nominal one, > 0.
[[nodiscard]] double wood_screw_withdrawal_lb_per_in(double specific_gravity, double diameter_in);

/// W = 1380 G^(5/2) D, lb per inch of penetration in side grain of a plain-shank nail, tip included: NDS 2018 Eq.
/// 12.2-3. `diameter_in` of the shank, > 0. None in end grain (12.2.3.3).
[[nodiscard]] double nail_withdrawal_lb_per_in(double specific_gravity, double diameter_in);

/// Least thread of a lag screw of this length under the head, tip included: the lesser of L/2 + 1/2 in and 6 in, as in
/// ASME B18.2.1. A short screw is threaded as near its head as practicable; 1/4 in is left for that (from memory of
/// NDS 2018 Table L2, to be confirmed). Never below 0.
[[nodiscard]] double lag_thread_length_in(double length_in);

/// Fastener length below the block's top, tip included, no more than the block's depth; 0 when it does not reach.
/// `above_block_in`: all between the head's underside and the block (plate, washer, decking, shims), >= 0.
[[nodiscard]] double embedment_in(double length_in, double above_block_in, double block_depth_in);

/// Tip inside the block: less than `tip_length_in` where the screw comes out below, or does not reach far enough.
[[nodiscard]] double tip_in_block_in(double length_in, double tip_length_in, double above_block_in,
                                     double block_depth_in);

/// Thread inside the block that holds: neither unthreaded shank nor tip, and nothing outside the block.
/// `thread_length_in` includes the tip. NDS 2018 12.2.1.1 and 12.2.2.1.
[[nodiscard]] double effective_thread_in(double length_in, double thread_length_in, double tip_length_in,
                                         double above_block_in, double block_depth_in);

/// Least penetration of a lag screw into the main member, tip excluded: 4 D, NDS 2018 12.1.4.6 (the number and the
/// exclusion of the tip were read in two public notes on the clause).
[[nodiscard]] double lag_minimum_penetration_in(double diameter_in);

/// Least penetration of a wood screw into the main member, tip included: 6 D, NDS 2018 12.1.5.6 (the number and the
/// inclusion of the tip were read in a public note of the standard's publisher, the clause number in a public copy).
[[nodiscard]] double wood_screw_minimum_penetration_in(double diameter_in);

// Head pull-through, NDS 2018 12.2.5. That the clause exists, and that it is for round heads, was read in the
// publisher's summary of changes; the equation, with its range of heads to 1/2 in and wood to 1 1/2 in, in a public
// copy. It is not for a head or nut that bears on a washer or a metal plate.

/// WH, lb: 690 pi DH G^2 t where t <= 2.5 DH, and 1725 pi DH^2 G^2 beyond (2.5 x 690 = 1725, so that the two meet).
/// `head_diameter_in`: of the round head; `net_thickness_in`: of the wood under it. All > 0.
[[nodiscard]] double head_pull_through_lb(double specific_gravity, double head_diameter_in, double net_thickness_in);

// Combined lateral and withdrawal load, NDS 2018 12.4 (read in a public copy). `angle_rad`: between the wood's
// surface and the force, 0 (all lateral) to pi/2 (all withdrawal).

/// Lag and wood screws, Eq. 12.4-1: (W'p) Z' / ((W'p) cos^2 + Z' sin^2). `withdrawal_lb` is W'p. 0 where the part that
/// is needed is 0.
[[nodiscard]] double screw_combined_lb(double withdrawal_lb, double lateral_lb, double angle_rad);

/// Nails, Eq. 12.4-2: (W'p) Z' / ((W'p) cos + Z' sin).
[[nodiscard]] double nail_combined_lb(double withdrawal_lb, double lateral_lb, double angle_rad);

}  // namespace toehold::resistance

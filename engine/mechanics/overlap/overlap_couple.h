#pragma once
// A post held upright by what it overlaps: a sleeve over a stub, or a wood post in a closed shoe. One side bears near
// the top of the overlap, the other near its bottom. Pure statics; lb, in.

namespace toehold::mechanics {

/// Forces between a post and what it overlaps, for a push above the overlap.
struct OverlapCouple {
    double upper_lb = 0.0;                  ///< against the push, at the top of the overlap
    double lower_lb = 0.0;                  ///< with the push, at its bottom; less than the upper one by the push
    double upper_in = 0.0, lower_in = 0.0;  ///< lengths over which they act; together the overlap
    double line_lb_per_in = 0.0;            ///< pressure over those lengths, the same on both
    /// Largest pressure were both bodies rigid on an elastic skin without play: linear over the overlap.
    double elastic_peak_lb_per_in = 0.0;
};

/// The least even pressure that balances `push_lb` at `above_bottom_in` over the bottom of an overlap `overlap_in`
/// long: both blocks together fill it. Closed form: with h above the bottom and L long, the lower block is h - root(h^2
/// - h L + L^2/2), the pressure H/(L - 2 a). Far above, 4 M/L^2 of the moment M. `overlap_in` > 0, `above_bottom_in` >=
/// `overlap_in`.
[[nodiscard]] OverlapCouple overlap_couple(double push_lb, double above_bottom_in, double overlap_in);

}  // namespace toehold::mechanics

#pragma once
// Published tests of wood guard posts, pulled outward at their top: J. Loferski, D. Albright and F. Woeste, Strong
// Rail-Post Connections for Wooden Decks, a builders' journal, February 2005 (its table read in a public copy). 4x4 No.
// 2 southern pine posts at the side of a 2x8 southern pine band, all above 19 percent moisture; guard 36 in high; the
// aim was 500 lb. None stands on a base plate: they tell what such a test looks like and how it scatters, not what a
// base carries. The distance between the fasteners of a post was not seen.
#include <optional>
#include <span>

namespace toehold::resistance::ultimate {

enum class PostFastening {
    lag_screws,    ///< 1/2 in, of a notched post to the band
    through_bolts  ///< 1/2 in, of a post to the band
};

enum class GuardFailure {
    fasteners_withdrew,  ///< the lag screws out of the band
    band_left_joists     ///< the band's screws out of the joists' ends
};

struct GuardPostTest {
    PostFastening fastening = PostFastening::lag_screws;
    int specimens = 0;
    double mean_lb = 0.0, least_lb = 0.0, most_lb = 0.0;  ///< breaking load
    std::optional<double> movement_at_200_lb_in = std::nullopt;
    GuardFailure failure = GuardFailure::fasteners_withdrew;
};

inline constexpr double guard_test_height_in = 36.0, guard_test_aim_lb = 500.0, guard_test_screw_in = 0.5;
/// Of southern pine, NDS 2018 Table 12.3.3A.
inline constexpr double guard_test_gravity = 0.55;

[[nodiscard]] std::span<const GuardPostTest> guard_post_tests();

/// How the two lag screws of a post stood in the band. Assumed, since it was not seen: 2 in from the edges of a 2x8,
/// the thread through its whole thickness, under 1 in of decking. Inches.
struct AssumedScrews {
    double upper_in = 5.25, lower_in = 2.0;  ///< above the band's lower edge, about which the post turns
    double thread_in = 1.5;
    double lever_in = guard_test_height_in + 1.0 + 7.25;  ///< of the push above that edge
};

/// The push under which the upper screw comes out where the post turns about the band's lower edge and pulls on each
/// screw in proportion to its height above it: T = W (a_u^2 + a_l^2)/a_u over the lever. `withdrawal_lb_per_in` is a
/// mean. Only withdrawal is in it: no splitting of the band, no prying, no roll of the band.
[[nodiscard]] double push_by_withdrawal_lb(double withdrawal_lb_per_in, const AssumedScrews& screws = {});

}  // namespace toehold::resistance::ultimate

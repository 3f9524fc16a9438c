#pragma once
// The post where it meets the plate: the tube's own outline, or the shoe's that holds a wood post.
#include "model/place.h"
#include "model/post.h"
#include "resistance/steel/tube.h"

#include <vector>

namespace toehold::catalog {
struct Resolved;
}
namespace toehold::demand {
struct Demand;
struct State;
}  // namespace toehold::demand

namespace toehold::checks {

struct PostFoot {
    /// Outline of all that stands on the plate (of twin bars: both with their gap). A solid bar is a tube whose wall is
    /// half its lesser side: nothing is left inside.
    resistance::steel::TubeShape tube;
    bool shoe = false;    ///< of a wood post
    bool welded = false;  ///< to the plate; metal posts always
    /// Each of twin bars, else the same as `tube`; welded all round.
    resistance::steel::TubeShape piece;
    std::vector<model::Position> centers;  ///< of the pieces: one, or two of twin bars
    bool solid = false;                    ///< bars, or a solid stub
    double thickness_in = 0.0;             ///< of the metal welded: the wall, or a bar's lesser side
};
[[nodiscard]] PostFoot post_foot(const model::Post& post);

/// Moment of a state's push about the bearing plane, wind included, lb in, and its absolute parts about the plan axes.
struct PushMoment {
    double total_lb_in = 0.0;
    double about_x_lb_in = 0.0;  ///< from the push along y
    double about_y_lb_in = 0.0;
};
/// `above_in`: height of the section above the bearing plane; never below 0.
[[nodiscard]] PushMoment push_moment(const demand::Demand& demand, const demand::State& state, double above_in = 0.0);

}  // namespace toehold::checks

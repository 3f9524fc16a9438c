#pragma once
// What passes through a guard line under one push: by statics alone, from the forces on its posts.
#include <Eigen/Core>

#include <cstddef>
#include <utility>
#include <vector>

namespace toehold::test {

/// On a span of the line, a wall's stretch first and last where there is one; level, from its start.
struct RailPlace {
    std::size_t span = 0;
    double along_in = 0.0;
};

struct RailPush {
    RailPlace at;
    double direction_rad = 0.0;  ///< in the project's plan
};

/// Sizes, per lb of push; the moment about what is square to the rail and to its level pushes.
struct RailSection {
    double axial_lb = 0.0, shear_lb = 0.0, moment_lb_in = 0.0;
};

[[nodiscard]] Eigen::Vector2d unit_vector(double angle_rad);

class LineSolution {
  public:
    /// A stretch of the rail in plan.
    struct Leg {
        Eigen::Vector2d start, along;
        double plan_in = 0.0, true_over_plan = 1.0;
        double station_in = 0.0;     ///< of its start from the first post
        std::size_t first_post = 0;  ///< posts before it and at its start
    };
    LineSolution(std::vector<Leg> legs, std::vector<Eigen::Vector2d> post_at, RailPush push)
        : legs_(std::move(legs)), post_at_(std::move(post_at)), push_(push) {}

    std::vector<Eigen::Vector2d> posts;         ///< force on each post's top
    std::vector<Eigen::Vector2d> post_motions;  ///< of the rail there; of the end that goes on, where two meet
    std::vector<Eigen::Vector2d> span_motions;  ///< of each span's middle, or of its end in the air

    /// Of the part toward the line's first post: with a push at the very place counted or not.
    [[nodiscard]] RailSection section(const RailPlace& place, bool with_push) const;

  private:
    [[nodiscard]] Eigen::Vector2d push() const;

    std::vector<Leg> legs_;
    std::vector<Eigen::Vector2d> post_at_;
    RailPush push_;
};

}  // namespace toehold::test

#include "oracle/line/line_solution.h"

#include <cmath>

namespace toehold::test {
namespace {

using Eigen::Vector2d;

constexpr double at_one_place_in = 1e-6;

double crossed(const Vector2d& a, const Vector2d& b) { return a.x() * b.y() - a.y() * b.x(); }

}  // namespace

Eigen::Vector2d unit_vector(double angle_rad) { return {std::cos(angle_rad), std::sin(angle_rad)}; }

Eigen::Vector2d LineSolution::push() const { return unit_vector(push_.direction_rad); }

RailSection LineSolution::section(const RailPlace& place, bool with_push) const {
    const Leg& leg = legs_[place.span];
    const Vector2d cut = leg.start + place.along_in * leg.along, square(-leg.along.y(), leg.along.x());
    Vector2d sum = Vector2d::Zero();
    double moment = 0.0;
    const auto add = [&](const Vector2d& at, const Vector2d& force) {
        sum += force;
        moment += crossed(at - cut, force);
    };
    for (std::size_t post = 0; post < leg.first_post; ++post) add(post_at_[post], -posts[post]);
    const bool same = push_.at.span == place.span && std::abs(push_.at.along_in - place.along_in) < at_one_place_in;
    const bool before =
        push_.at.span < place.span || (push_.at.span == place.span && push_.at.along_in < place.along_in);
    if (same ? with_push : before) {
        const Leg& under = legs_[push_.at.span];
        add(under.start + push_.at.along_in * under.along, push());
    }
    return {std::abs(sum.dot(leg.along)), std::abs(sum.dot(square)), std::abs(moment) * leg.true_over_plan};
}

}  // namespace toehold::test

#include "mechanics/side_post/spring_model.h"

#include "mechanics/interior_point.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <map>

namespace toehold::test {
namespace {

using namespace mechanics;

// Unknowns are counted in thousandths of an inch.
constexpr double unit_in = 1e-3;
constexpr int six = 6;

/// A motion as a sum of unknowns.
using Sum = std::map<int, double>;

void add(Sum& sum, const Sum& other, double factor) {
    for (const auto& [unknown, value] : other) sum[unknown] += factor * value;
}

class SpringModel {
  public:
    SpringModel(const SidePost& post, const std::vector<PostLoad>& loads, int steps, int across)
        : post_(post), across_(across) {
        place_nodes(loads, steps);
        bodies_at_ = six * static_cast<int>(heights_.size());
        unknowns_ = bodies_at_ + six * static_cast<int>(post.bodies.places.size());
    }

    SpringModelForces solve(const std::vector<PostLoad>& loads) {
        program_.linear.assign(static_cast<std::size_t>(unknowns_), 0.0);
        program_.least_unknown.assign(static_cast<std::size_t>(unknowns_), no_bound);
        program_.unknowns = unknowns_;
        for (std::size_t i = 0; i + 1 < heights_.size(); ++i) add_beam(i);
        add_bodies();
        for (const PostLoad& load : loads) add_load(load);
        for (const PostFastener& fastener : post_.fasteners) add_fastener(fastener);
        for (std::size_t i = 0; i < post_.bearings.size(); ++i) add_bearing(i);
        const std::vector<double> x = lowest_by_interior_point(program_, 1e-9);
        return forces(x, loads);
    }

  private:
    /// Even steps over what holds the post; beyond, a node at each load.
    void place_nodes(const std::vector<PostLoad>& loads, int steps) {
        double low = 1e9, high = -1e9;
        for (const PostBearing& one : post_.bearings) {
            low = std::min(low, one.z_min_in);
            high = std::max(high, one.z_max_in);
        }
        for (const PostFastener& one : post_.fasteners) {
            low = std::min(low, one.z_in);
            high = std::max(high, one.z_in);
        }
        for (int i = 0; i <= steps; ++i) heights_.push_back(low + (high - low) * i / steps);
        for (const PostLoad& load : loads)
            if (load.at.z > high + 1e-9) heights_.push_back(load.at.z);
        std::sort(heights_.begin(), heights_.end());
    }

    [[nodiscard]] std::size_t piece(double z) const {
        std::size_t i = 0;
        while (i + 2 < heights_.size() && z >= heights_[i + 1]) ++i;
        return i;
    }

    /// The axis' motion (0, 1, 2) or rotation (3, 4, 5) at a height, by Hermite's cubics across the axis.
    [[nodiscard]] Sum axis(int which, double z) const {
        const std::size_t i = piece(z);
        const double l = heights_[i + 1] - heights_[i], s = (z - heights_[i]) / l;
        const int a = six * static_cast<int>(i), b = a + six;
        if (which >= 2) return {{a + which, 1.0 - s}, {b + which, s}};
        const double n1 = 1 - 3 * s * s + 2 * s * s * s, n2 = l * (s - 2 * s * s + s * s * s),
                     n3 = 3 * s * s - 2 * s * s * s, n4 = l * (s * s * s - s * s);
        if (which == 0) return {{a, n1}, {a + 4, n2}, {b, n3}, {b + 4, n4}};
        return {{a + 1, n1}, {a + 3, -n2}, {b + 1, n3}, {b + 3, -n4}};
    }

    /// Of a place that moves with the post, at an arm across the axis, less the body's there.
    [[nodiscard]] Sum place(int along, double x, double y, double z, const std::optional<std::size_t>& body) const {
        const double arm = y - post_.axis_y_in;
        Sum sum = axis(along, z);
        if (along == 0) add(sum, axis(5, z), -arm);
        if (along == 1) add(sum, axis(5, z), x);
        if (along == 2) {
            add(sum, axis(3, z), arm);
            add(sum, axis(4, z), -x);
        }
        if (!body) return sum;
        const SpaceVector at = post_.bodies.places[*body];
        const double dx = x - at.x, dy = y - at.y, dz = z - at.z;
        const int b = bodies_at_ + six * static_cast<int>(*body);
        if (along == 0) add(sum, {{b, 1.0}, {b + 4, dz}, {b + 5, -dy}}, -1.0);
        if (along == 1) add(sum, {{b + 1, 1.0}, {b + 3, -dz}, {b + 5, dx}}, -1.0);
        if (along == 2) add(sum, {{b + 2, 1.0}, {b + 3, dy}, {b + 4, -dx}}, -1.0);
        return sum;
    }

    /// stiffness/2 sum^2
    void add_energy(const Sum& sum, double stiffness) {
        for (const auto& [i, a] : sum)
            for (const auto& [j, b] : sum)
                if (i >= j && a * b != 0.0) program_.hessian.push_back({i, j, stiffness * a * b * unit_in * unit_in});
    }

    /// E I/2 of the integral of the curvature squared, which is linear along a piece, as two squares: its mean and its
    /// change; and stretch and twist.
    void add_beam(std::size_t i) {
        const double l = heights_[i + 1] - heights_[i];
        const int a = six * static_cast<int>(i), b = a + six;
        const auto add_plane = [&](int move, int turn, double sign, double bending) {
            // The mean is (t2 - t1)/l, the change from end to end (6/l)(t1 + t2 - 2 (v2 - v1)/l), t the slopes, v the
            // motions; the change squared counts a twelfth.
            add_energy({{a + turn, -sign / l}, {b + turn, sign / l}}, bending * l);
            add_energy({{a + turn, sign * 6 / l},
                        {b + turn, sign * 6 / l},
                        {a + move, 12 / (l * l)},
                        {b + move, -12 / (l * l)}},
                       bending * l / 12.0);
        };
        add_plane(1, 3, -1.0, post_.section.bending_x_lb_in2);
        add_plane(0, 4, 1.0, post_.section.bending_y_lb_in2);
        add_energy({{a + 2, -1.0}, {b + 2, 1.0}}, post_.section.axial_lb / l);
        add_energy({{a + 5, -1.0}, {b + 5, 1.0}}, post_.section.torsion_lb_in2 / l);
    }

    void add_bodies() {
        const int order = unknowns_ - bodies_at_;
        for (int i = 0; i < order; ++i)
            for (int j = 0; j <= i; ++j)
                program_.hessian.push_back(
                    {bodies_at_ + i, bodies_at_ + j,
                     post_.bodies.stiffness[static_cast<std::size_t>(i * order + j)] * unit_in * unit_in});
    }

    void add_work(const Sum& sum, double force) {
        for (const auto& [i, value] : sum) program_.linear[static_cast<std::size_t>(i)] -= force * value * unit_in;
    }

    void add_load(const PostLoad& load) {
        const std::array<double, 3> force{load.force_lb.x, load.force_lb.y, load.force_lb.z},
            moment{load.moment_lb_in.x, load.moment_lb_in.y, load.moment_lb_in.z};
        for (int i = 0; i < 3; ++i) {
            add_work(place(i, load.at.x, load.at.y, load.at.z, std::nullopt), force[static_cast<std::size_t>(i)]);
            add_work(axis(3 + i, load.at.z), moment[static_cast<std::size_t>(i)]);
        }
    }

    /// A stretch t >= sum - gap, t >= 0, of stiffness/2 t^2.
    int add_one_way(const Sum& sum, double sign, double gap, double stiffness) {
        const int stretch = program_.unknowns++, row = program_.constraints++;
        program_.linear.push_back(0.0);
        program_.least_unknown.push_back(0.0);
        program_.hessian.push_back({stretch, stretch, stiffness * unit_in * unit_in});
        program_.rows.push_back({row, stretch, 1.0});
        for (const auto& [i, value] : sum) program_.rows.push_back({row, i, -sign * value});
        program_.least_row.push_back(-gap / unit_in);
        return stretch;
    }

    void add_fastener(const PostFastener& of) {
        add_energy(place(0, of.x_in, 0.0, of.z_in, of.body), of.slip_x_lb_per_in);
        add_energy(place(2, of.x_in, 0.0, of.z_in, of.body), of.slip_z_lb_per_in);
        fasteners_.push_back(
            add_one_way(place(1, of.x_in, 0.0, of.z_in, of.body), 1.0, of.gap_in, of.tension_lb_per_in));
    }

    struct BedSpring {
        std::size_t bearing;
        int stretch;
        double stiffness;
    };

    void add_bearing(std::size_t index) {
        const PostBearing& of = post_.bearings[index];
        constexpr int rows = 4;
        const double width = (of.x_max_in - of.x_min_in) / across_;
        for (std::size_t i = 0; i + 1 < heights_.size(); ++i) {
            const double low = std::max(of.z_min_in, heights_[i]), high = std::min(of.z_max_in, heights_[i + 1]);
            if (high <= low) continue;
            for (int r = 0; r < rows; ++r) {
                for (int c = 0; c < across_; ++c) {
                    const double z = low + (high - low) * (r + 0.5) / rows, x = of.x_min_in + width * (c + 0.5);
                    const double stiffness = of.stiffness_psi_per_in * width * (high - low) / rows;
                    const double sign = of.side == PostSide::face ? -1.0 : 1.0;
                    bed_.push_back(
                        {index, add_one_way(place(1, x, 0.0, z, of.body), sign, of.gap_in, stiffness), stiffness});
                }
            }
        }
    }

    static double value(const Sum& sum, const std::vector<double>& x) {
        double total = 0.0;
        for (const auto& [i, factor] : sum) total += factor * x[static_cast<std::size_t>(i)] * unit_in;
        return total;
    }

    [[nodiscard]] SpringModelForces forces(const std::vector<double>& x, const std::vector<PostLoad>& loads) const {
        SpringModelForces found;
        for (std::size_t i = 0; i < post_.fasteners.size(); ++i) {
            const PostFastener& of = post_.fasteners[i];
            found.tension_lb.push_back(of.tension_lb_per_in * x[static_cast<std::size_t>(fasteners_[i])] * unit_in);
            found.slip_x_lb.push_back(of.slip_x_lb_per_in * value(place(0, of.x_in, 0.0, of.z_in, of.body), x));
        }
        found.bearing_lb.assign(post_.bearings.size(), 0.0);
        for (const BedSpring& spring : bed_)
            found.bearing_lb[spring.bearing] +=
                spring.stiffness * x[static_cast<std::size_t>(spring.stretch)] * unit_in;
        for (const PostLoad& load : loads)
            found.top_in.push_back(
                {value(axis(0, load.at.z), x), value(axis(1, load.at.z), x), value(axis(2, load.at.z), x)});
        return found;
    }

    const SidePost& post_;
    int across_;
    std::vector<double> heights_;
    int bodies_at_ = 0, unknowns_ = 0;
    QuadraticProgram program_;
    std::vector<int> fasteners_;
    std::vector<BedSpring> bed_;
};

}  // namespace

SpringModelForces solve_as_springs(const SidePost& post, const std::vector<PostLoad>& loads, int steps, int across) {
    return SpringModel(post, loads, steps, across).solve(loads);
}

}  // namespace toehold::test

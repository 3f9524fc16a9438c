#include "mechanics/side_post/post_energy.h"

#include "mechanics/side_post/pressed_strip.h"

#include <algorithm>
#include <cmath>

namespace toehold::mechanics::side_post {
namespace {

/// Where the curvature's parts come together.
class CurvatureSum {
  public:
    explicit CurvatureSum(const PostModel& model) : elastic_count_(model.unknowns() - rigid_freedoms) {
        sum_.elastic_rigid = Eigen::MatrixXd::Zero(elastic_count_, rigid_freedoms);
        for (int column = 0; column < elastic_count_; ++column)
            for (Eigen::SparseMatrix<double>::InnerIterator entry(model.elastic_stiffness(), column); entry; ++entry)
                entries_.emplace_back(entry.row(), entry.col(), entry.value());
    }

    template <std::size_t Size, class Square>
    void add(const std::array<int, Size>& index, const Square& local) {
        for (std::size_t i = 0; i < Size; ++i) {
            const int row = index[i];
            if (row < 0) continue;
            for (std::size_t j = 0; j < Size; ++j) {
                const int column = index[j];
                const double value = local(static_cast<Eigen::Index>(i), static_cast<Eigen::Index>(j));
                if (column < 0 || value == 0.0) continue;
                if (row < rigid_freedoms && column < rigid_freedoms) {
                    sum_.rigid(row, column) += value;
                } else if (row >= rigid_freedoms && column < rigid_freedoms) {
                    sum_.elastic_rigid(row - rigid_freedoms, column) += value;
                } else if (column >= rigid_freedoms && row >= column) {
                    entries_.emplace_back(row - rigid_freedoms, column - rigid_freedoms, value);
                }
            }
        }
    }

    [[nodiscard]] Curvature finish() {
        sum_.elastic.resize(elastic_count_, elastic_count_);
        sum_.elastic.setFromTriplets(entries_.begin(), entries_.end());
        return std::move(sum_);
    }

  private:
    int elastic_count_;
    Curvature sum_;
    std::vector<Eigen::Triplet<double>> entries_;
};

using Local = Eigen::Matrix<double, 12, 1>;
using LocalSquare = Eigen::Matrix<double, 12, 12>;

/// Calls `visit(place, energy of the strip there, weight)` at each pressed place of the rule along the piece.
template <class Visit>
void for_each_place(const PostModel& model, const BearingPiece& piece, const Unknowns& at, Contact contact,
                    Visit visit) {
    const PostBearing& bearing = model.post().bearings[piece.bearing];
    const bool two_way = contact == Contact::two_way;
    const auto closing = [&](double part, double x) {
        return model.closing(at, piece, part, x) + (two_way ? bearing.gap_in : 0.0);
    };
    const auto along = [&](double x) {
        return Cubic({closing(0.0, x), closing(1.0 / 3.0, x), closing(2.0 / 3.0, x), closing(1.0, x)});
    };
    const Cubic left = along(bearing.x_min_in), right = along(bearing.x_max_in);
    const double scale =
        bearing.stiffness_psi_per_in * (bearing.x_max_in - bearing.x_min_in) * model.piece_length_in(piece.piece);
    for (const RulePoint& point : rule_points(left, right, piece.from, piece.to)) {
        const StripEnergy energy = strip_energy(left.at(point.at), right.at(point.at), two_way);
        if (energy.value > 0.0 || two_way) visit(point, energy, scale * point.weight);
    }
}

void add_bearing_slope(const PostModel& model, const BearingPiece& piece, const Unknowns& at, Contact contact,
                       Slope& slope) {
    const PostBearing& bearing = model.post().bearings[piece.bearing];
    const double sign = bearing.side == PostSide::face ? -1.0 : 1.0;
    Local local = Local::Zero();
    for_each_place(model, piece, at, contact, [&](const RulePoint& point, const StripEnergy& energy, double weight) {
        const FaceRow left = model.face_row(piece.piece, point.at, bearing.x_min_in, bearing.body);
        const FaceRow right = model.face_row(piece.piece, point.at, bearing.x_max_in, bearing.body);
        slope.energy_lb_in += weight * energy.value;
        slope.total_force += weight * std::abs(energy.by_left + energy.by_right);
        local += sign * weight * (energy.by_left * left.factor + energy.by_right * right.factor);
    });
    const FaceRow row = model.face_row(piece.piece, 0.0, 0.0, bearing.body);
    for (int i = 0; i < local.size(); ++i) {
        const int index = row.index[static_cast<std::size_t>(i)];
        if (index >= 0) slope.gradient(index) += local(i);
    }
}

LocalSquare bearing_curvature(const PostModel& model, const BearingPiece& piece, const Unknowns& at, Contact contact) {
    const PostBearing& bearing = model.post().bearings[piece.bearing];
    LocalSquare local = LocalSquare::Zero();
    for_each_place(model, piece, at, contact, [&](const RulePoint& point, const StripEnergy& energy, double weight) {
        const Local left = model.face_row(piece.piece, point.at, bearing.x_min_in, bearing.body).factor;
        const Local right = model.face_row(piece.piece, point.at, bearing.x_max_in, bearing.body).factor;
        const Local to_left = weight * (energy.by_left_left * left + energy.by_left_right * right);
        const Local to_right = weight * (energy.by_left_right * left + energy.by_right_right * right);
        local.noalias() += left * to_left.transpose() + right * to_right.transpose();
    });
    return local;
}

void add_spring_slope(const PointRow& row, double stiffness, double stretch, Slope& slope) {
    const double force = stiffness * stretch;
    slope.energy_lb_in += 0.5 * force * stretch;
    slope.total_force += std::abs(force);
    for (std::size_t i = 0; i < row.index.size(); ++i)
        if (row.index[i] >= 0) slope.gradient(row.index[i]) += force * row.factor(static_cast<Eigen::Index>(i));
}

/// How far a fastener is stretched; 0 where it does not pull.
double stretch_of(const PostFastener& fastener, const FastenerRows& rows, const Unknowns& at, Contact contact) {
    const double opening = rows.opening.dot(at);
    return contact == Contact::two_way ? opening : std::max(0.0, opening - fastener.gap_in);
}

}  // namespace

Slope slope_at(const PostModel& model, const Unknowns& at, Contact contact) {
    const auto elastic = at.tail(at.size() - rigid_freedoms);
    Slope slope;
    slope.gradient = -model.load();
    const Eigen::VectorXd bending = model.elastic_stiffness().selfadjointView<Eigen::Lower>() * elastic;
    slope.gradient.tail(elastic.size()) += bending;
    slope.energy_lb_in = 0.5 * elastic.dot(bending) - model.load().dot(at);
    slope.total_force = model.load().head<rigid_freedoms>().cwiseAbs().sum();
    for (std::size_t i = 0; i < model.fastener_rows().size(); ++i) {
        const PostFastener& fastener = model.post().fasteners[i];
        const FastenerRows& rows = model.fastener_rows()[i];
        add_spring_slope(rows.opening, fastener.tension_lb_per_in, stretch_of(fastener, rows, at, contact), slope);
        add_spring_slope(rows.slip_x, fastener.slip_x_lb_per_in, rows.slip_x.dot(at), slope);
        add_spring_slope(rows.slip_z, fastener.slip_z_lb_per_in, rows.slip_z.dot(at), slope);
    }
    for (const BearingPiece& piece : model.bearing_pieces()) add_bearing_slope(model, piece, at, contact, slope);
    return slope;
}

double largest_elastic_force(const PostModel& model, const Slope& slope) {
    double largest = 0.0;
    for (Eigen::Index i = rigid_freedoms; i < slope.gradient.size(); ++i) {
        const bool turns = (i - rigid_freedoms) % 6 >= 3;
        largest = std::max(largest, std::abs(slope.gradient(i)) / (turns ? model.length_in() : 1.0));
    }
    return largest;
}

Curvature curvature_at(const PostModel& model, const Unknowns& at, Contact contact) {
    CurvatureSum sum(model);
    const auto add_spring = [&sum](const PointRow& row, double stiffness) {
        if (stiffness > 0.0)
            sum.add(row.index, Eigen::Matrix<double, 24, 24>(stiffness * row.factor * row.factor.transpose()));
    };
    for (std::size_t i = 0; i < model.fastener_rows().size(); ++i) {
        const PostFastener& fastener = model.post().fasteners[i];
        const FastenerRows& rows = model.fastener_rows()[i];
        const bool pulls = contact == Contact::two_way || stretch_of(fastener, rows, at, contact) > 0.0;
        if (pulls) add_spring(rows.opening, fastener.tension_lb_per_in);
        add_spring(rows.slip_x, fastener.slip_x_lb_per_in);
        add_spring(rows.slip_z, fastener.slip_z_lb_per_in);
    }
    for (const BearingPiece& piece : model.bearing_pieces()) {
        const auto& body = model.post().bearings[piece.bearing].body;
        sum.add(model.face_row(piece.piece, 0.0, 0.0, body).index, bearing_curvature(model, piece, at, contact));
    }
    return sum.finish();
}

}  // namespace toehold::mechanics::side_post

#include "mechanics/side_post/post_model.h"

#include "mechanics/side_post/post_nodes.h"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace toehold::mechanics::side_post {
namespace {

constexpr int node_freedoms = 6;
// Places of the four groups of six in a PointRow.
constexpr int of_rigid = 0, of_lower = 6, of_upper = 12, of_body = 18;

std::size_t nearest(const std::vector<double>& heights, double to) {
    const auto closer = [to](double a, double b) { return std::abs(a - to) < std::abs(b - to); };
    return static_cast<std::size_t>(std::min_element(heights.begin(), heights.end(), closer) - heights.begin());
}

/// Of one of the four groups: counted up from `first`, or none where that is below 0.
void set_group(PointRow& row, std::ptrdiff_t group, int first) {
    const auto begin = row.index.begin() + group;
    if (first < 0) {
        std::fill(begin, begin + node_freedoms, -1);
    } else {
        std::iota(begin, begin + node_freedoms, first);
    }
}

}  // namespace

Vector6 carried_row(int along, const SpaceVector& arm) {
    return space_frame::carried(space_frame::eigen(arm)).row(along).transpose();
}

PostModel::PostModel(const SidePost& post, std::span<const PostLoad> loads, double fineness) : post_(post) {
    place_nodes(loads, fineness);
    assemble();
    for (const PostFastener& fastener : post_.fasteners) {
        const SpaceVector at{fastener.x_in, 0.0, fastener.z_in};
        FastenerRows rows{post_row(Along::y, at), post_row(Along::x, at), post_row(Along::z, at)};
        if (fastener.body) {
            subtract_body(rows.opening, Along::y, at, *fastener.body);
            subtract_body(rows.slip_x, Along::x, at, *fastener.body);
            subtract_body(rows.slip_z, Along::z, at, *fastener.body);
        }
        fastener_rows_.push_back(rows);
    }
    load_ = Unknowns::Zero(unknowns_);
    for (const PostLoad& load : loads) add_load(load);
}

void PostModel::place_nodes(std::span<const PostLoad> loads, double fineness) {
    const HeldHeight held = held_height(post_);
    nodes_in_ = node_heights(post_, loads, fineness);
    reference_ = nearest(nodes_in_, held.middle_in());
    length_in_ = std::max(held.to_in - held.from_in, 2.0 * post_.axis_y_in);
    unknowns_ = rigid_freedoms + node_freedoms * static_cast<int>(nodes_in_.size() - 1 + post_.bodies.places.size());
    for (std::size_t bearing = 0; bearing < post_.bearings.size(); ++bearing) {
        const double from = post_.bearings[bearing].z_min_in, to = post_.bearings[bearing].z_max_in;
        for (std::size_t piece = 0; piece + 1 < nodes_in_.size(); ++piece) {
            const BearingPiece part{bearing, piece, std::clamp(part_at(piece, from), 0.0, 1.0),
                                    std::clamp(part_at(piece, to), 0.0, 1.0)};
            if (part.to > part.from) bearing_pieces_.push_back(part);
        }
    }
}

int PostModel::first_of_node(std::size_t node) const {
    if (node == reference_) return -1;
    return rigid_freedoms + node_freedoms * static_cast<int>(node < reference_ ? node : node - 1);
}

int PostModel::first_of_body(std::size_t body) const {
    return rigid_freedoms + node_freedoms * static_cast<int>(nodes_in_.size() - 1 + body);
}

std::size_t PostModel::piece_at(double z_in) const {
    const auto above = std::upper_bound(nodes_in_.begin() + 1, nodes_in_.end() - 1, z_in);
    return static_cast<std::size_t>(above - nodes_in_.begin()) - 1;
}

double PostModel::part_at(std::size_t piece, double z_in) const {
    return (z_in - nodes_in_[piece]) / piece_length_in(piece);
}

BeamPiece PostModel::outward(std::size_t piece) const {
    return {piece_length_in(piece), post_.section.bending_x_lb_in2, post_.section.shear_y_lb};
}

BeamPiece PostModel::sideways(std::size_t piece) const {
    return {piece_length_in(piece), post_.section.bending_y_lb_in2, post_.section.shear_x_lb};
}

PointRow PostModel::indexed(std::size_t piece) const {
    PointRow row;
    set_group(row, of_rigid, 0);
    set_group(row, of_lower, first_of_node(piece));
    set_group(row, of_upper, first_of_node(piece + 1));
    set_group(row, of_body, -1);
    return row;
}

PointRow PostModel::rotation_row(Along about, double z_in) const {
    const std::size_t piece = piece_at(z_in);
    const double part = part_at(piece, z_in);
    const int freedom = 3 + static_cast<int>(about);
    PointRow row = indexed(piece);
    row.factor(of_rigid + freedom) = 1.0 / length_in_;
    row.factor(of_lower + freedom) = 1.0 - part;
    row.factor(of_upper + freedom) = part;
    return row;
}

PointRow PostModel::post_row(Along along, const SpaceVector& at) const {
    const std::size_t piece = piece_at(at.z);
    const double part = part_at(piece, at.z);
    PointRow row = indexed(piece);
    const SpaceVector arm{at.x, at.y - post_.axis_y_in, at.z - reference_in()};
    row.factor.segment<6>(of_rigid) = carried_row(static_cast<int>(along), arm);
    row.factor.segment<3>(of_rigid + 3) /= length_in_;

    const Vector6 here = carried_row(static_cast<int>(along), {arm.x, arm.y, 0.0});
    row.factor.segment<6>(of_lower) = (1.0 - part) * here;
    row.factor.segment<6>(of_upper) = part * here;
    if (along == Along::y) {
        const Eigen::Vector4d shape = outward(piece).motion(part);
        row.factor(of_lower + 1) = shape(0);
        row.factor(of_lower + 3) += -shape(1);
        row.factor(of_upper + 1) = shape(2);
        row.factor(of_upper + 3) += -shape(3);
    } else if (along == Along::x) {
        const Eigen::Vector4d shape = sideways(piece).motion(part);
        row.factor(of_lower) = shape(0);
        row.factor(of_lower + 4) += shape(1);
        row.factor(of_upper) = shape(2);
        row.factor(of_upper + 4) += shape(3);
    }
    return row;
}

void PostModel::subtract_body(PointRow& row, Along along, const SpaceVector& at, std::size_t body) const {
    const SpaceVector arm = at - post_.bodies.places[body];
    row.factor.segment<6>(of_body) = -carried_row(static_cast<int>(along), arm);
    set_group(row, of_body, first_of_body(body));
}

FaceRow PostModel::face_row(std::size_t piece, double part, double x_in, const std::optional<std::size_t>& body) const {
    const double z = nodes_in_[piece] + part * piece_length_in(piece), arm = z - reference_in();
    const Eigen::Vector4d shape = outward(piece).motion(part);
    FaceRow row;
    row.factor << 1.0, -arm / length_in_, x_in / length_in_,  //
        shape(0), -shape(1), x_in * (1.0 - part),             //
        shape(2), -shape(3), x_in * part,                     //
        0.0, 0.0, 0.0;
    const std::array<int, 4> first{0, first_of_node(piece), first_of_node(piece + 1), body ? first_of_body(*body) : -1};
    for (std::size_t group = 0; group < first.size(); ++group) {
        const bool is_there = first[group] >= 0;
        row.index[3 * group] = is_there ? first[group] + 1 : -1;
        row.index[3 * group + 1] = is_there ? first[group] + 3 : -1;
        row.index[3 * group + 2] = is_there ? first[group] + 5 : -1;
    }
    if (body) {
        const SpaceVector from = post_.bodies.places[*body];
        row.factor.tail<3>() << -1.0, z - from.z, -(x_in - from.x);
    }
    return row;
}

double PostModel::closing(const Unknowns& at, const BearingPiece& of, double part, double x_in) const {
    const PostBearing& bearing = post_.bearings[of.bearing];
    const double away = face_row(of.piece, part, x_in, bearing.body).dot(at);
    return (bearing.side == PostSide::face ? -away : away) - bearing.gap_in;
}

PostMotion PostModel::axis_motion(const Unknowns& at, double z_in) const {
    const SpaceVector place{0.0, post_.axis_y_in, z_in};
    return {{post_row(Along::x, place).dot(at), post_row(Along::y, place).dot(at), post_row(Along::z, place).dot(at)},
            {rotation_row(Along::x, z_in).dot(at), rotation_row(Along::y, z_in).dot(at),
             rotation_row(Along::z, z_in).dot(at)}};
}

void PostModel::add_piece_stiffness(std::size_t piece, std::vector<Eigen::Triplet<double>>& entries) const {
    const std::array<int, 2> node{first_of_node(piece), first_of_node(piece + 1)};
    // The slope of uy is -rx, that of ux is ry.
    struct Freedom {
        int end, offset;
        double sign;
    };
    const auto add = [&](const Freedom& row, const Freedom& column, double value) {
        const int first_row = node[static_cast<std::size_t>(row.end)],
                  first_column = node[static_cast<std::size_t>(column.end)];
        if (first_row < 0 || first_column < 0 || value == 0.0) return;
        const int i = first_row + row.offset - rigid_freedoms, j = first_column + column.offset - rigid_freedoms;
        if (i >= j) entries.emplace_back(i, j, row.sign * column.sign * value);
    };
    const auto add_plane = [&](const std::array<Freedom, 4>& freedoms, const Eigen::Matrix4d& stiffness) {
        for (int i = 0; i < 4; ++i)
            for (int j = 0; j < 4; ++j)
                add(freedoms[static_cast<std::size_t>(i)], freedoms[static_cast<std::size_t>(j)], stiffness(i, j));
    };
    add_plane({{{0, 1, 1.0}, {0, 3, -1.0}, {1, 1, 1.0}, {1, 3, -1.0}}}, outward(piece).stiffness());
    add_plane({{{0, 0, 1.0}, {0, 4, 1.0}, {1, 0, 1.0}, {1, 4, 1.0}}}, sideways(piece).stiffness());
    const double length = piece_length_in(piece);
    for (const auto& [offset, value] :
         {std::pair{2, post_.section.axial_lb / length}, std::pair{5, post_.section.torsion_lb_in2 / length}}) {
        for (int i = 0; i < 2; ++i)
            for (int j = 0; j < 2; ++j) add({i, offset, 1.0}, {j, offset, 1.0}, i == j ? value : -value);
    }
}

void PostModel::assemble() {
    std::vector<Eigen::Triplet<double>> entries;
    for (std::size_t piece = 0; piece + 1 < nodes_in_.size(); ++piece) add_piece_stiffness(piece, entries);
    const std::size_t order = rigid_freedoms * post_.bodies.places.size();
    const int first = order > 0 ? first_of_body(0) - rigid_freedoms : 0;
    for (std::size_t i = 0; i < order; ++i)
        for (std::size_t j = 0; j <= i; ++j)
            entries.emplace_back(first + static_cast<int>(i), first + static_cast<int>(j),
                                 0.5 * (post_.bodies.stiffness[i * order + j] + post_.bodies.stiffness[j * order + i]));
    elastic_.resize(unknowns_ - rigid_freedoms, unknowns_ - rigid_freedoms);
    elastic_.setFromTriplets(entries.begin(), entries.end());
}

void PostModel::add_load(const PostLoad& load) {
    const auto add = [&](const PointRow& row, double size) {
        for (std::size_t i = 0; i < row.index.size(); ++i)
            if (row.index[i] >= 0) load_(row.index[i]) += size * row.factor(static_cast<Eigen::Index>(i));
    };
    add(post_row(Along::x, load.at), load.force_lb.x);
    add(post_row(Along::y, load.at), load.force_lb.y);
    add(post_row(Along::z, load.at), load.force_lb.z);
    add(rotation_row(Along::x, load.at.z), load.moment_lb_in.x);
    add(rotation_row(Along::y, load.at.z), load.moment_lb_in.y);
    add(rotation_row(Along::z, load.at.z), load.moment_lb_in.z);
}

}  // namespace toehold::mechanics::side_post

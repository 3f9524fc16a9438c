#pragma once
// The post's problem as unknowns and rows: where its nodes stand, what every unknown moves, and what is elastic.
//
// Motion is split in two. The rigid part moves the whole post as one body, by six freedoms at the reference node; the
// elastic part is what every other node moves beyond that, and how the backing bodies move. So the elastic stiffness
// is positive definite whatever holds the post, a stiff post loses no digits (a small elastic part, not the difference
// of two large motions), and only the rigid six can be left unresisted.
#include "mechanics/side_post/beam_shape.h"
#include "mechanics/side_post/side_post.h"
#include "mechanics/space_frame/beam.h"

#include <Eigen/Core>
#include <Eigen/SparseCore>

#include <array>
#include <vector>

namespace toehold::mechanics::side_post {

using space_frame::Matrix6;
using space_frame::Vector6;

inline constexpr int rigid_freedoms = 6;

/// All unknowns, rigid ones first: ux, uy, uz of the reference node, then its rotations times `length_in`.
using Unknowns = Eigen::VectorXd;

/// A motion as a sum over some unknowns. An index of -1 is a freedom that does not exist (the reference node's elastic
/// part, a body that is ground) and has no part in it.
template <std::size_t Size>
struct Row {
    using Factors = Eigen::Matrix<double, static_cast<int>(Size), 1>;
    std::array<int, Size> index = {};
    Factors factor = Factors::Zero();

    [[nodiscard]] double dot(const Unknowns& unknowns) const {
        double sum = 0.0;
        for (std::size_t i = 0; i < Size; ++i)
            if (index[i] >= 0) sum += factor(static_cast<Eigen::Index>(i)) * unknowns(index[i]);
        return sum;
    }
};
/// Rigid body, lower node, upper node, backing body: six each.
using PointRow = Row<24>;
/// Of those, what moves the face along y: uy, rx, rz of each.
using FaceRow = Row<12>;

/// Part of one bearing along one piece of the post, from `from` to `to` of the piece's length.
struct BearingPiece {
    std::size_t bearing = 0, piece = 0;
    double from = 0.0, to = 1.0;
};

/// What a fastener holds: the opening along y, and slip along x and z. Body's motion taken off.
struct FastenerRows {
    PointRow opening, slip_x, slip_z;
};

class PostModel {
  public:
    /// The input is checked already, and outlives the model.
    PostModel(const SidePost& post, std::span<const PostLoad> loads, double fineness);

    [[nodiscard]] const SidePost& post() const { return post_; }
    [[nodiscard]] const std::vector<double>& nodes_in() const { return nodes_in_; }
    [[nodiscard]] double piece_length_in(std::size_t piece) const { return nodes_in_[piece + 1] - nodes_in_[piece]; }
    [[nodiscard]] double reference_in() const { return nodes_in_[reference_]; }
    /// Height of everything that holds the post, at least its depth: what rotations are measured against.
    [[nodiscard]] double length_in() const { return length_in_; }
    [[nodiscard]] int unknowns() const { return unknowns_; }
    /// Unknown of a node's first elastic freedom; -1 of the reference node.
    [[nodiscard]] int first_of_node(std::size_t node) const;
    [[nodiscard]] int first_of_body(std::size_t body) const;

    /// Of the elastic unknowns among themselves (their index less six): lower half.
    [[nodiscard]] const Eigen::SparseMatrix<double>& elastic_stiffness() const { return elastic_; }
    [[nodiscard]] const Unknowns& load() const { return load_; }
    [[nodiscard]] const std::vector<BearingPiece>& bearing_pieces() const { return bearing_pieces_; }
    [[nodiscard]] const std::vector<FastenerRows>& fastener_rows() const { return fastener_rows_; }

    /// The face's motion along y at x and a part of a piece, less that of the body.
    [[nodiscard]] FaceRow face_row(std::size_t piece, double part, double x_in,
                                   const std::optional<std::size_t>& body) const;
    /// How far the bearing is pressed at x and a part of a piece; < 0: open.
    [[nodiscard]] double closing(const Unknowns& at, const BearingPiece& of, double part, double x_in) const;
    /// Of the post's axis at a height.
    [[nodiscard]] PostMotion axis_motion(const Unknowns& at, double z_in) const;

  private:
    enum class Along { x, y, z };
    [[nodiscard]] std::size_t piece_at(double z_in) const;
    [[nodiscard]] double part_at(std::size_t piece, double z_in) const;
    [[nodiscard]] BeamPiece outward(std::size_t piece) const;
    [[nodiscard]] BeamPiece sideways(std::size_t piece) const;
    /// Of a place at an arm from the axis that moves with the post there.
    [[nodiscard]] PointRow post_row(Along along, const SpaceVector& at) const;
    [[nodiscard]] PointRow rotation_row(Along about, double z_in) const;
    [[nodiscard]] PointRow indexed(std::size_t piece) const;
    void subtract_body(PointRow& row, Along along, const SpaceVector& at, std::size_t body) const;
    void place_nodes(std::span<const PostLoad> loads, double fineness);
    void add_piece_stiffness(std::size_t piece, std::vector<Eigen::Triplet<double>>& entries) const;
    void assemble();
    void add_load(const PostLoad& load);

    const SidePost& post_;
    std::vector<double> nodes_in_;
    std::size_t reference_ = 0;
    double length_in_ = 1.0;
    int unknowns_ = 0;
    Eigen::SparseMatrix<double> elastic_;
    Unknowns load_;
    std::vector<BearingPiece> bearing_pieces_;
    std::vector<FastenerRows> fastener_rows_;
};

/// The factors of six motions in the motion along x, y or z (0, 1, 2) of a place at an arm from where they are taken.
[[nodiscard]] Vector6 carried_row(int along, const SpaceVector& arm);

}  // namespace toehold::mechanics::side_post

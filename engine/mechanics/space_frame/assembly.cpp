#include "mechanics/space_frame/assembly.h"

#include <algorithm>

namespace toehold::mechanics::space_frame {
namespace {

Eigen::Index first_unknown(int node) { return 6 * static_cast<Eigen::Index>(node); }

const SpaceVector& at(std::span<const SpaceVector> nodes, int node) { return nodes[static_cast<std::size_t>(node)]; }

PreparedJoint prepare_joint(std::span<const SpaceVector> nodes, const SpaceJoint& joint) {
    const SpaceVector place = joint.at.value_or(at(nodes, joint.first));
    const Vector3 first = eigen(place - at(nodes, joint.first)), second = eigen(place - at(nodes, joint.second));
    const Matrix6 to_axes = twice(rows_of(joint.axes));
    return {joint.first,
            joint.second,
            Eigen::Map<const Vector6>(joint.stiffness.data()),
            to_axes * carried(first),
            to_axes * carried(second),
            carried(-second) * to_axes.transpose()};
}

PreparedSupport prepare_support(const SpaceSupport& support) {
    PreparedSupport result{support.node, Matrix6::Zero(), twice(rows_of(support.axes))};
    for (Eigen::Index i = 0; i < 6; ++i) {
        for (Eigen::Index k = 0; k < 6; ++k)
            result.stiffness(i, k) = support.stiffness[static_cast<std::size_t>(i)][static_cast<std::size_t>(k)];
    }
    return result;
}

/// Hangs the second node of each joint on its first, where neither hangs on the other already.
std::vector<Expression> hang_nodes(std::size_t nodes, std::vector<PreparedJoint>& joints) {
    std::vector<const PreparedJoint*> holder(nodes, nullptr);
    const auto of = [&](int node) -> const PreparedJoint*& { return holder[static_cast<std::size_t>(node)]; };
    for (PreparedJoint& joint : joints) {
        int root = joint.first;
        while (of(root)) root = of(root)->first;
        joint.hangs = !of(joint.second) && root != joint.second;
        if (joint.hangs) of(joint.second) = &joint;
    }
    std::vector<Expression> result(nodes);
    for (int node = 0; node < static_cast<int>(nodes); ++node) {
        Matrix6 so_far = Matrix6::Identity();
        int reached = node;
        for (const PreparedJoint* joint = of(reached); joint; joint = of(reached)) {
            const Matrix6 from_place = so_far * joint->to_second;
            result[static_cast<std::size_t>(node)].emplace_back(reached, from_place);
            so_far = from_place * joint->from_first;
            reached = joint->first;
        }
        result[static_cast<std::size_t>(node)].emplace_back(reached, so_far);
    }
    return result;
}

/// The lower half of the stiffness between the unknowns, by parts of six rows and columns.
class Parts {
  public:
    explicit Parts(const std::vector<Expression>& expressions) : expressions_(expressions) {}

    /// Between the motions of two nodes.
    void add(int row, int column, const Matrix6& part) {
        for (const auto& [i, of_row] : expressions_[static_cast<std::size_t>(row)]) {
            for (const auto& [k, of_column] : expressions_[static_cast<std::size_t>(column)])
                add_unknowns(i, k, of_row.transpose() * part * of_column);
        }
    }
    void add_unknowns(int row, int column, const Matrix6& part) {
        if (row < column) return;
        for (Eigen::Index i = 0; i < 6; ++i) {
            for (Eigen::Index k = 0; k < 6; ++k)
                entries_.emplace_back(first_unknown(row) + i, first_unknown(column) + k, part(i, k));
        }
    }
    [[nodiscard]] Eigen::SparseMatrix<double> stiffness() const {
        const auto size = 6 * static_cast<Eigen::Index>(expressions_.size());
        Eigen::SparseMatrix<double> all(size, size);
        all.setFromTriplets(entries_.begin(), entries_.end());
        return all.triangularView<Eigen::Lower>();
    }

  private:
    const std::vector<Expression>& expressions_;
    std::vector<Eigen::Triplet<double, Eigen::Index>> entries_;
};

Eigen::SparseMatrix<double> stiffness_of(const Assembly& assembly) {
    Parts parts(assembly.expressions);
    for (const PreparedBeam& beam : assembly.beams) {
        parts.add(beam.of.from, beam.of.from, beam.from_from);
        parts.add(beam.of.from, beam.of.to, beam.from_to);
        parts.add(beam.of.to, beam.of.from, beam.from_to.transpose());
        parts.add(beam.of.to, beam.of.to, beam.to_to);
    }
    for (const PreparedJoint& joint : assembly.joints) {
        if (joint.hangs) {
            parts.add_unknowns(joint.second, joint.second, joint.stiffness.asDiagonal().toDenseMatrix());
            continue;
        }
        const Matrix6 by_first = joint.stiffness.asDiagonal() * joint.from_first;
        const Matrix6 by_second = joint.stiffness.asDiagonal() * joint.from_second;
        parts.add(joint.first, joint.first, joint.from_first.transpose() * by_first);
        parts.add(joint.first, joint.second, -joint.from_first.transpose() * by_second);
        parts.add(joint.second, joint.first, -joint.from_second.transpose() * by_first);
        parts.add(joint.second, joint.second, joint.from_second.transpose() * by_second);
    }
    for (const PreparedSupport& support : assembly.supports)
        parts.add(support.node, support.node, support.to_axes.transpose() * support.stiffness * support.to_axes);
    return parts.stiffness();
}

}  // namespace

Vector6 Assembly::motion(int node, const Eigen::VectorXd& unknowns) const {
    Vector6 result = Vector6::Zero();
    for (const auto& [of, part] : expressions[static_cast<std::size_t>(node)])
        result += part * unknowns.segment<6>(first_unknown(of));
    return result;
}

Vector6 Assembly::stretch(std::size_t joint, const Eigen::VectorXd& unknowns) const {
    const PreparedJoint& of = joints[joint];
    if (of.hangs) return unknowns.segment<6>(first_unknown(of.second));
    return of.from_second * motion(of.second, unknowns) - of.from_first * motion(of.first, unknowns);
}

void Assembly::add_load(int node, const Vector6& load, Eigen::VectorXd& loads) const {
    for (const auto& [of, part] : expressions[static_cast<std::size_t>(node)])
        loads.segment<6>(first_unknown(of)) += part.transpose() * load;
}

Assembly assemble(std::span<const SpaceVector> nodes, std::span<const SpaceMember> members,
                  std::span<const SpaceJoint> joints, std::span<const SpaceSupport> supports) {
    Assembly assembly;
    for (const SpaceMember& member : members) assembly.beams.push_back(prepare_beam(nodes, member));
    for (const SpaceJoint& joint : joints) assembly.joints.push_back(prepare_joint(nodes, joint));
    for (const SpaceSupport& support : supports) assembly.supports.push_back(prepare_support(support));
    assembly.expressions = hang_nodes(nodes.size(), assembly.joints);
    assembly.factor = factored(stiffness_of(assembly));
    return assembly;
}

}  // namespace toehold::mechanics::space_frame

#include "drawing/marks/field_cut.h"

#include "drawing/marks/field_levels.h"
#include "drawing/marks/profile.h"

#include <optional>
#include <utility>

namespace toehold::drawing {
namespace {

std::optional<CutEnd> crossing(const demand::DeflectedShape::Node& one, const demand::DeflectedShape::Node& other,
                               const SectionPlane& plane) {
    const double from = aside_in(plane, one.at), to = aside_in(plane, other.at);
    if ((from > plane.at_in) == (to > plane.at_in)) return std::nullopt;
    const double share = (plane.at_in - from) / (to - from);
    const auto between = [share](double a, double b) { return a + share * (b - a); };
    return CutEnd{between(along_in(plane, one.at), along_in(plane, other.at)), between(one.lift_in, other.lift_in),
                  between(one.pressure_psi, other.pressure_psi)};
}

}  // namespace

std::vector<std::array<CutEnd, 2>> field_cut(const demand::DeflectedShape& field, const SectionPlane& plane) {
    std::vector<std::array<CutEnd, 2>> pieces;
    const auto node = [&](int index) -> const demand::DeflectedShape::Node& {
        return field.nodes[static_cast<std::size_t>(index)];
    };
    for (const std::array<int, 3>& triangle : field.triangles) {
        if (!has_nodes(field, triangle)) continue;
        std::vector<CutEnd> ends;
        for (std::size_t side = 0; side < 3; ++side) {
            if (const auto end = crossing(node(triangle[side]), node(triangle[(side + 1) % 3]), plane))
                ends.push_back(*end);
        }
        if (ends.size() != 2) continue;
        if (ends[0].along_in > ends[1].along_in) std::swap(ends[0], ends[1]);
        pieces.push_back({ends[0], ends[1]});
    }
    return pieces;
}

}  // namespace toehold::drawing

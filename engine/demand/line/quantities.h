#pragma once
// What is asked of a line's frame: force on a post's top, force at a rail's end, moment and shear within it.
#include "demand/line/influence.h"

namespace toehold::demand {

/// The component along a unit vector of the force on a post's top.
[[nodiscard]] Response post_force(const LineFrame& frame, const LineLayout& layout, std::size_t post,
                                  const PlanVector& along);

enum class PieceEnd { from, to };

/// Just inside an end of a piece, where a load on the piece's very end has passed by: what the joint there carries.
[[nodiscard]] Response axial_force(const LineFrame& frame, const LineLayout& layout, std::size_t piece, PieceEnd end);
[[nodiscard]] Response shear_force(const LineFrame& frame, const LineLayout& layout, std::size_t piece, PieceEnd end);

/// About the upright axis at a place on a piece (0 to 1), as laid out level.
[[nodiscard]] Response moment(const LineFrame& frame, const LineLayout& layout, std::size_t piece, double at);

}  // namespace toehold::demand

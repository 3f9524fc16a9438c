#pragma once
// Framing seen along the ground: what an upright plane cuts, and what stands behind it. z = 0 is the plate's underside,
// or the member's top edge of a post on its side.
#include "drawing/drawings.h"
#include "model/member.h"

#include <string>
#include <vector>

namespace toehold::model {
struct Position;
}

namespace toehold::drawing {

struct Profile {
    model::Member member;
    model::PartId part;
    Box box;                 ///< along the plane, and z
    bool cut = false;        ///< by the plane
    bool end_grain = false;  ///< seen, or cut, across its grain
    double behind_in = 0.0;  ///< from the plane to the member, 0 where cut; negative: between the plane and the reader
};

/// Height of the framing's top: under the layers of a plate, at 0 of a post on a member's side.
[[nodiscard]] double framing_top_in(const model::BaseDetail& detail);

/// The farthest first; members without a size are left out. A plane along y is read from the side of +x, one along x
/// from the side of -y, so that x or y runs to the right.
[[nodiscard]] std::vector<Profile> profiles(const model::BaseDetail& detail, const SectionPlane& plane);

/// How far the boards go along the plane: to where joists or rims end, and without end where that is not described.
struct DeckEnds {
    double low_in = 0.0, high_in = 0.0;
};
[[nodiscard]] DeckEnds deck_ends(const model::Framing& framing, const SectionPlane& plane);

/// Coordinates along the plane and across it.
[[nodiscard]] double along_in(const SectionPlane& plane, const model::Position& position);
[[nodiscard]] double aside_in(const SectionPlane& plane, const model::Position& position);

}  // namespace toehold::drawing

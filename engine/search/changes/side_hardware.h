#pragma once
// Changes of the metal that holds a post to a member's side: what is under the heads and the nuts, ties back to a
// joist, and what joins a rim to its joists. Refused where they do not go with the rest; meaningless of another mount.
#include "model/base_detail.h"
#include "search/changes/applied.h"

#include <optional>

namespace toehold::search {

/// Under every head this plate in place of a washer. Refused of a post whose heads bear on metal.
Applied set_head_plate(model::BaseDetail& detail, const model::BackingPlate& plate);
/// Under every head this washer; absent: none.
Applied set_head_washer(model::BaseDetail& detail, const std::optional<model::Washer>& washer);
/// What the nuts behind the member bear on; meaningless where an anchor is no bolt.
Applied set_nut(model::BaseDetail& detail, const decltype(model::ThroughBolt::below)& below);

/// Of the plate a metal post is welded to; framing goes with its face. Refused of a post without one.
Applied set_bracket_thickness(model::BaseDetail& detail, double thickness_in);

/// Of a tie not chosen yet: what its line of force is off the side of the joist it runs along, and how far it gives at
/// its allowable pull, at most, in (common practice).
inline constexpr double tie_off_joist_in = 1.5, tie_gives_in = 0.125;

/// A tie that is not chosen yet at every row of fasteners, of at least this allowable pull, along the side of the
/// nearest joist or block that runs up to the member; the post moves along the rail until its axis is in the ties'
/// line where it was not near enough. A bolt in that line hangs its tie. Ties that are not chosen yet are replaced.
/// Refused of a post inside the deck, which ties cannot draw against its member, where ties are chosen, and where
/// nothing runs up to the member.
Applied add_ties(model::BaseDetail& detail, double tension_lb);

/// Between the rim the post is fastened to and its joists, hardware not chosen yet on both sides of each joist, of the
/// least values this force stands for. Refused of a member that is no rim.
Applied rim_hardware(model::BaseDetail& detail, double vertical_lb);

}  // namespace toehold::search

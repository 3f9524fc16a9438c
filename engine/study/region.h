#pragma once
// Where a dragged thing may stand so that every check passes, with the border named by what stops it there.
//
// The answer depends on everything but the place of the dragged thing itself: one region is good for the whole drag, to
// be found once when the drag begins (or the thing is selected) and only drawn while the hand moves.
//
// It comes in steps, each better than the one before and from where the thing stands outward: a coarse grid by a probe
// demand; what that does not rule out by the whole engine; then the same two on a grid refined at the border. What is
// confirmed and what is not are told apart. What fails a rule of geometry costs no solve.
#include "model/place.h"
#include "study/judged.h"

#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <vector>

namespace toehold::study {

/// A thing that can be dragged, and over what.
struct Reach {
    std::string id;       ///< `anchor A`, `edge right`, `block B1`, `length of anchors[1]`
    format::Phrase name;  ///< for people
    bool plane = true;    ///< over x and y of the plan; false: over x alone, which `along` says the meaning of
    /// Of a reach over one coordinate: which coordinate of the plan that is; absent: none (a length).
    std::optional<model::PlanAxis> along;
    model::Position now;     ///< where it is; of a reach over one coordinate: x
    Range x, y;              ///< what is looked over
    double finest_in = 0.0;  ///< side of the smallest cell, > 0
    std::function<Made(const model::BaseDetail&, model::Position)> set;
};

enum class EdgeSide { outward, inward, right, left };  ///< +y, -y, +x, -x

// Each absent where the detail has no such thing to drag.
/// The hole's center in plan; its anchor, and packing about it, go with it.
[[nodiscard]] std::optional<Reach> anchor_reach(const Subject& subject, const std::string& hole);
/// One side of a rectangular plate; the opposite one and the holes stay.
[[nodiscard]] std::optional<Reach> edge_reach(const Subject& subject, EdgeSide side);
/// Across the block's length.
[[nodiscard]] std::optional<Reach> block_reach(const Subject& subject, const std::string& block);
/// Length under the head of the group's lag or wood screws.
[[nodiscard]] std::optional<Reach> length_reach(const Subject& subject, std::size_t group);

/// A closed polygon, counter-clockwise. Of a reach over one coordinate: two corners, the ends of an interval.
using Polygon = std::vector<model::Position>;

/// A piece of the region's border. Of a reach over one coordinate: one place twice.
struct RegionBorder {
    model::Position from, to;
    Limit limit;
};

struct Region {
    /// Confirmed: at every corner of a piece the whole engine calls the detail adequate. Pieces do not overlap; their
    /// union is the region.
    std::vector<Polygon> holds;
    /// Not ruled out by a few states, not confirmed either. Empty once not provisional.
    std::vector<Polygon> likely;
    std::vector<RegionBorder> border;  ///< between what holds and what does not; the range's own ends are none
    bool provisional = true;           ///< true: not all of what was shown has been confirmed yet
    bool stopped = false;
    std::size_t probed = 0, confirmed = 0;  ///< places solved by a probe, and by the whole engine
    /// Where nothing holds, what stops the thing at most places; absent: something holds, or nothing is known.
    std::optional<Limit> stops_most = std::nullopt;
};

struct RegionRun {
    std::size_t jobs = 1;  ///< threads; 0: as many as there are cores
    std::function<bool()> stop = nullptr;
    /// Told each better answer, from one thread at a time: the first as soon as there is a piece, then a few a second.
    std::function<void(const Region&)> better = nullptr;
};

/// One search, which may be stopped and gone on with: what was answered stays answered.
class RegionSearch {
  public:
    /// The catalog outlives this.
    RegionSearch(catalog::Resolved resolved, const catalog::Catalog& catalog, const Reach& reach);
    ~RegionSearch();
    RegionSearch(RegionSearch&&) noexcept;
    RegionSearch& operator=(RegionSearch&&) noexcept;

    /// Whether this detail is the one looked over, wherever the dragged thing stands in it.
    [[nodiscard]] bool is_of(const model::BaseDetail& detail) const;
    /// To the end, unless stopped.
    Region go_on(const RegionRun& run = {});

  private:
    struct State;
    std::unique_ptr<State> state_;
};

/// The whole of one search.
[[nodiscard]] Region find_region(const Subject& subject, const Reach& reach, const RegionRun& run = {});

}  // namespace toehold::study

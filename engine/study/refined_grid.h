#pragma once
// A grid over a line or a plane that is refined where what holds meets what does not: which nodes to ask for next, and
// the region the answers give. Knows nothing of details.
#include "study/region.h"

#include <cstddef>
#include <map>
#include <optional>
#include <vector>

namespace toehold::study {

struct GridNode {
    int i = 0, j = 0;  ///< in smallest cells from the lower corner
    // NOLINTNEXTLINE(modernize-use-nullptr): clang-tidy 14 takes the 0 a comparison is rewritten with for a pointer
    friend auto operator<=>(const GridNode&, const GridNode&) = default;
};

struct NodeAnswer {
    bool holds = false;
    bool confirmed = false;       ///< by the whole engine, or by a failure that needs none
    std::optional<double> ratio;  ///< of the governing check; absent: no number
    Limit limit;                  ///< what stops it, where it does not hold
};

class RefinedGrid {
  public:
    /// The thing's place now is a node of the coarse grid, which covers the reach.
    explicit RefinedGrid(const Reach& reach);

    [[nodiscard]] model::Position place(GridNode node) const;
    /// Corners of the cells that have no answer yet, those next to the thing's place now first.
    [[nodiscard]] std::vector<GridNode> unanswered() const;
    void answer(GridNode node, NodeAnswer answer) { answers_[node] = std::move(answer); }
    [[nodiscard]] const NodeAnswer* answer(GridNode node) const;
    /// Splits each cell that has both kinds of nodes about it and is not the smallest; false: there is none.
    bool refine();
    /// Of the cells all of whose corners are answered: `holds`, `likely` and `border`.
    [[nodiscard]] Region region() const;
    /// The limit that stops the thing at most nodes; absent: it holds wherever it is answered, or nothing is.
    [[nodiscard]] std::optional<Limit> most_often() const;

  private:
    struct Cell {
        GridNode low;
        int side = 1;
    };
    [[nodiscard]] std::vector<GridNode> corners(const Cell& cell) const;
    [[nodiscard]] bool mixed(const Cell& cell) const;
    void add_plane_cell(Region& region, const Cell& cell) const;
    void add_line_cell(Region& region, const Cell& cell) const;
    /// The last place that holds between the two, by the ratio where one check decides, else the node that holds.
    [[nodiscard]] model::Position crossing(GridNode holds, GridNode fails) const;

    bool plane_;
    double finest_in_;
    model::Position low_;
    GridNode now_;                 ///< the thing's place now
    int coarse_ = 1;               ///< side of a coarse cell in smallest ones
    int across_ = 1, upward_ = 1;  ///< coarse cells
    std::vector<Cell> cells_;
    std::map<GridNode, NodeAnswer> answers_;
};

}  // namespace toehold::study

#include "study/refined_grid.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <string>
#include <utility>

namespace toehold::study {
namespace {

/// Coarse cells before and after `now`, of this size.
struct Coarse {
    int before = 0, after = 0;
};

Coarse cells_about(double now, const Range& range, double size) {
    return {std::max(1, static_cast<int>(std::ceil((now - range.least) / size - 1e-9))),
            std::max(1, static_cast<int>(std::ceil((range.most - now) / size - 1e-9)))};
}

}  // namespace

RefinedGrid::RefinedGrid(const Reach& reach) : plane_(reach.plane), finest_in_(reach.finest_in) {
    constexpr double most_coarse = 10.0;
    const double longest =
        plane_ ? std::max(reach.x.most - reach.x.least, reach.y.most - reach.y.least) : reach.x.most - reach.x.least;
    while (coarse_ * finest_in_ * most_coarse < longest) coarse_ *= 2;
    const double size = coarse_ * finest_in_;
    const Coarse x = cells_about(reach.now.x_in, reach.x, size);
    low_.x_in = reach.now.x_in - x.before * size;
    now_.i = x.before * coarse_;
    across_ = x.before + x.after;
    if (plane_) {
        const Coarse y = cells_about(reach.now.y_in, reach.y, size);
        low_.y_in = reach.now.y_in - y.before * size;
        now_.j = y.before * coarse_;
        upward_ = y.before + y.after;
    }
    for (int up = 0; up < upward_; ++up) {
        for (int right = 0; right < across_; ++right) cells_.push_back({{right * coarse_, up * coarse_}, coarse_});
    }
}

model::Position RefinedGrid::place(GridNode node) const {
    return {low_.x_in + node.i * finest_in_, plane_ ? low_.y_in + node.j * finest_in_ : 0.0};
}

std::vector<GridNode> RefinedGrid::corners(const Cell& cell) const {
    const GridNode low = cell.low;
    if (!plane_) return {low, {low.i + cell.side, 0}};
    return {low, {low.i + cell.side, low.j}, {low.i + cell.side, low.j + cell.side}, {low.i, low.j + cell.side}};
}

std::vector<GridNode> RefinedGrid::unanswered() const {
    std::vector<GridNode> nodes;
    for (const Cell& cell : cells_) {
        for (const GridNode node : corners(cell)) {
            if (!answers_.contains(node)) nodes.push_back(node);
        }
    }
    const auto away = [this](GridNode node) {
        const int right = node.i - now_.i, up = node.j - now_.j;
        return std::pair{right * right + up * up, node};
    };
    std::sort(nodes.begin(), nodes.end(), [&away](GridNode one, GridNode other) { return away(one) < away(other); });
    nodes.erase(std::unique(nodes.begin(), nodes.end()), nodes.end());
    return nodes;
}

const NodeAnswer* RefinedGrid::answer(GridNode node) const {
    const auto found = answers_.find(node);
    return found == answers_.end() ? nullptr : &found->second;
}

/// Nodes on the sides count too, which smaller neighbors have there.
bool RefinedGrid::mixed(const Cell& cell) const {
    bool holds = false, fails = false;
    const auto look = [&](GridNode node) {
        const NodeAnswer* const known = answer(node);
        if (known != nullptr) (known->holds ? holds : fails) = true;
    };
    for (int step = 0; step <= cell.side; ++step) {
        look({cell.low.i + step, cell.low.j});
        if (!plane_) continue;
        look({cell.low.i + step, cell.low.j + cell.side});
        look({cell.low.i, cell.low.j + step});
        look({cell.low.i + cell.side, cell.low.j + step});
    }
    return holds && fails;
}

bool RefinedGrid::refine() {
    std::vector<Cell> finer;
    bool split = false;
    for (const Cell& cell : cells_) {
        if (cell.side == 1 || !mixed(cell)) {
            finer.push_back(cell);
            continue;
        }
        split = true;
        const int half = cell.side / 2;
        for (const int up : plane_ ? std::vector<int>{0, half} : std::vector<int>{0}) {
            for (const int right : {0, half}) finer.push_back({{cell.low.i + right, cell.low.j + up}, half});
        }
    }
    cells_ = std::move(finer);
    return split;
}

model::Position RefinedGrid::crossing(GridNode holds, GridNode fails) const {
    const NodeAnswer &good = answers_.at(holds), &bad = answers_.at(fails);
    const model::Position from = place(holds), to = place(fails);
    const bool one_check = good.ratio && bad.ratio && std::isfinite(*bad.ratio) && *good.ratio < 1.0 &&
                           *bad.ratio > 1.0 && good.confirmed == bad.confirmed && good.limit.id == bad.limit.id;
    const double t = one_check ? (1.0 - *good.ratio) / (*bad.ratio - *good.ratio) : 0.0;
    return {from.x_in + t * (to.x_in - from.x_in), from.y_in + t * (to.y_in - from.y_in)};
}

void RefinedGrid::add_line_cell(Region& region, const Cell& cell) const {
    const GridNode a = cell.low, b{cell.low.i + cell.side, 0};
    const NodeAnswer &one = answers_.at(a), &other = answers_.at(b);
    if (!one.holds && !other.holds) return;
    model::Position from = place(a), to = place(b);
    if (one.holds != other.holds) {
        const model::Position end = one.holds ? crossing(a, b) : crossing(b, a);
        (one.holds ? to : from) = end;
        region.border.push_back({end, end, one.holds ? other.limit : one.limit});
    }
    const bool certain = (!one.holds || one.confirmed) && (!other.holds || other.confirmed);
    std::vector<Polygon>& pieces = certain ? region.holds : region.likely;
    const bool goes_on = !pieces.empty() && pieces.back()[1] == from;
    if (goes_on) pieces.back()[1] = to;
    if (!goes_on) pieces.push_back({from, to});
}

/// Round the cell's corners: those that hold, and where its sides are crossed. Two that hold across from each other
/// are two pieces.
void RefinedGrid::add_plane_cell(Region& region, const Cell& cell) const {
    const std::vector<GridNode> nodes = corners(cell);
    std::array<bool, 4> holds{};
    int count = 0;
    bool certain = true;
    for (std::size_t k = 0; k < 4; ++k) {
        const NodeAnswer& answer = answers_.at(nodes[k]);
        holds[k] = answer.holds;
        count += holds[k] ? 1 : 0;
        certain = certain && (!holds[k] || answer.confirmed);
    }
    if (count == 0) return;
    std::vector<Polygon>& pieces = certain ? region.holds : region.likely;
    if (count == 4) {
        pieces.push_back({place(nodes[0]), place(nodes[1]), place(nodes[2]), place(nodes[3])});
        return;
    }
    // From each corner that holds after one that does not, on to the last in a row that hold.
    for (std::size_t start = 0; start < 4; ++start) {
        const std::size_t before = (start + 3) % 4;
        if (!holds[start] || holds[before]) continue;
        Polygon piece{crossing(nodes[start], nodes[before])};
        std::size_t last = start;
        piece.push_back(place(nodes[start]));
        while (holds[(last + 1) % 4]) {
            last = (last + 1) % 4;
            piece.push_back(place(nodes[last]));
        }
        piece.push_back(crossing(nodes[last], nodes[(last + 1) % 4]));
        region.border.push_back({piece.back(), piece.front(), answers_.at(nodes[(last + 1) % 4]).limit});
        pieces.push_back(std::move(piece));
    }
}

Region RefinedGrid::region() const {
    Region region;
    std::vector<Cell> in_order = cells_;
    std::sort(in_order.begin(), in_order.end(), [](const Cell& one, const Cell& other) { return one.low < other.low; });
    for (const Cell& cell : in_order) {
        const std::vector<GridNode> all = corners(cell);
        const bool known =
            std::all_of(all.begin(), all.end(), [this](GridNode node) { return answers_.contains(node); });
        if (!known) continue;
        if (plane_) add_plane_cell(region, cell);
        if (!plane_) add_line_cell(region, cell);
    }
    std::erase_if(region.border, [this](const RegionBorder& piece) { return plane_ && piece.from == piece.to; });
    return region;
}

std::optional<Limit> RefinedGrid::most_often() const {
    std::map<std::string, std::pair<std::size_t, const Limit*>> stopped;
    for (const auto& [node, answer] : answers_) {
        if (answer.holds) continue;
        auto& [count, limit] = stopped[answer.limit.id];
        ++count;
        limit = &answer.limit;
    }
    const auto most = std::max_element(stopped.begin(), stopped.end(), [](const auto& one, const auto& other) {
        return one.second.first < other.second.first;
    });
    if (most == stopped.end()) return std::nullopt;
    return *most->second.second;
}

}  // namespace toehold::study

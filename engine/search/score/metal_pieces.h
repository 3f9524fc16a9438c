#pragma once
// Every piece of metal a detail describes the size of, as whoever weighs and cuts it sees it.
#include "catalog/resolve.h"

#include <string>
#include <vector>

namespace toehold::search {

/// Plate, cut from stock: the base plate or a bracket's, where there is one; then plates under heads, backing plates
/// and lower plates.
struct CutPiece {
    std::string metal;  ///< catalog id
    double weight_lb = 0.0;
    double cut_in = 0.0;  ///< length of its outline
    int holes = 0;
};
[[nodiscard]] std::vector<CutPiece> cut_pieces(const catalog::Resolved& resolved);

/// Under the head: a screw's own, a bolt's as stated, else through all it joins and a nut as high as it is thick.
[[nodiscard]] double anchor_length_in(const catalog::Resolved& resolved, const catalog::Anchor& anchor);
/// The shank, as a cylinder of the nominal diameter.
[[nodiscard]] double shank_weight_lb(const catalog::Resolved& resolved, const catalog::Anchor& anchor);
/// Washers under its head and, of a bolt, under its nut.
[[nodiscard]] std::vector<catalog::WasherSize> washers_of(const catalog::Anchor& anchor);
/// Of the anchor's own kind of metal.
[[nodiscard]] double washer_weight_lb(const catalog::WasherSize& washer, const catalog::Anchor& anchor);

}  // namespace toehold::search

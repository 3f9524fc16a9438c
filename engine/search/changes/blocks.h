#pragma once
// Changes of the framing under the anchors: blocks of other lumber, in other places, and joists doubled beside them. As
// those of the plate, refused where they do not go with the rest. Bolts whose length was stated become as long as they
// must be.
#include "catalog/catalog.h"
#include "model/base_detail.h"
#include "search/changes/applied.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace toehold::search {

/// A size of lumber by the name people order it by.
struct Lumber {
    std::string size;                           ///< `4x8`
    double thickness_in = 0.0, width_in = 0.0;  ///< its lesser and its greater face, dressed
};
/// Absent for a name nobody orders.
[[nodiscard]] std::optional<Lumber> lumber(std::string_view name);
/// What the first block is cut from, the greater face last; absent without a block. Its name may be empty.
[[nodiscard]] std::optional<Lumber> lumber_of_blocks(const model::Framing& framing);

/// What a new block is cut from.
struct Wood {
    std::string species;  ///< catalog id, or the id of a material of the file's own
    std::string grade;    ///< catalog id; empty with a material of the file's own
};
/// As the first block, else as the joists; absent without either.
[[nodiscard]] std::optional<Wood> wood_of_blocks(const model::Framing& framing);
/// Sizes of 4 in stock, or of 6 in, that this wood's grade is listed for, no deeper than the joists, or where none is
/// described than `deepest_in`; the deepest last. None where the wood is not known.
[[nodiscard]] std::vector<Lumber> sizes_on_edge(const model::Framing& framing, const catalog::Catalog& catalog,
                                                double deepest_in, int nominal_thickness_in = 4);

enum class Lie { upright, flat };

/// One block under each row of anchors in each bay they stand in, of `plies` pieces side by side, in place of those
/// named; where another member holds a row already, none. Refused where nothing is to be set, where one would lie in
/// another member, or be deeper than the joists.
Applied blocks_under_rows(model::BaseDetail& detail, const Lumber& of, Lie lie, int plies,
                          const std::vector<std::string>& replaced);
/// One flat block a bay that reaches from the first to the last row of anchors.
Applied one_flat_block(model::BaseDetail& detail, const Lumber& of, const std::vector<std::string>& replaced);
/// A block like the first under every row of anchors that nothing holds.
Applied block_under_free_row(model::BaseDetail& detail);
/// Every block carried on beyond the joists at its ends into the next bay.
Applied blocks_into_next_bay(model::BaseDetail& detail);
/// The named blocks move with the rows of anchors they stood under in `base`.
Applied blocks_follow(model::BaseDetail& detail, const model::BaseDetail& base);
/// The named blocks of other lumber, upright or flat as they are.
Applied set_block_lumber(model::BaseDetail& detail, const Lumber& of, const std::vector<std::string>& blocks);
/// One more piece to every joist that holds a block with an anchor: on the side away from the block, or on both halves
/// of its width where blocks meet it from both sides, which are cut shorter.
Applied double_joists(model::BaseDetail& detail);

/// The post set back from a rim that an anchor stands in, until a block as wide as `of` on edge fits under that row, by
/// moving the rim and the joists' ends and supports away from it; and such a block under every row. Refused where no
/// anchor stands in a rim. How far is put into `moved_in`.
Applied set_back_from_rim(model::BaseDetail& detail, const Lumber& of, double& moved_in);

}  // namespace toehold::search

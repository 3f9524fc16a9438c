#pragma once
// Changes of the wood about a post on a member's side: the post itself, the member's pieces, and blocks behind it. The
// origin is on the post's axis, so framing moves with the faces it lies against. Refused where they do not go with the
// rest; meaningless of another mount.
#include "catalog/catalog.h"
#include "model/base_detail.h"
#include "search/changes/applied.h"
#include "search/changes/blocks.h"

#include <string>
#include <vector>

namespace toehold::search {

/// Sizes of wood post its own grade is listed for, the smallest first: 4x4, 4x6 (its greater side across the rail) and
/// 6x6. Empty of a post of metal or of a wood of the file's own.
[[nodiscard]] std::vector<std::string> post_sizes(const model::BaseDetail& detail, const catalog::Catalog& catalog);
/// A post of this nominal size, its greater side across the rail; framing goes with its face, bolts become as long as
/// they must be.
Applied set_post_size(model::BaseDetail& detail, const std::string& size);
/// A post like it that is not notched.
Applied without_notch(model::BaseDetail& detail);

/// The pieces of the rim or joist it is fastened to; refused of a block.
Applied set_member_plies(model::BaseDetail& detail, int plies);

/// A block of this lumber on edge right behind the member, between the joists to both sides of the post, which every
/// anchor then goes into (`AnchorGroup::into`); its ends in hardware to be chosen with the least values this force
/// stands for. Refused where no joists run past it on both sides of the post, or a joist stands behind the post.
Applied block_behind(model::BaseDetail& detail, const Lumber& of, double vertical_lb);

/// Blocks of this lumber on edge to both sides of the post, from an end joist it is fastened to across to the next
/// joist, their ends in such hardware: they keep the joist from rolling. Refused where the member is not a joist along
/// the rail, or blocks hold it there already.
Applied blocks_to_next_joist(model::BaseDetail& detail, const Lumber& of, double vertical_lb);

}  // namespace toehold::search

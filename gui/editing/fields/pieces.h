#pragma once
// What joists, rims, supports and blocks have in common: their ids, and their section.
#include "editing/fields/form.h"
#include "model/framing.h"
#include "model/layers.h"
#include "model/post.h"

#include <string>
#include <vector>

namespace toehold::editing {

/// Every id of the framing but `except`, once.
[[nodiscard]] std::vector<std::string> framing_ids(const model::Framing& framing, const std::string& except);
/// Ends of blocks that named `old` name `fresh`; an empty `fresh` leaves them with nothing to meet.
void follow_id(model::Framing& framing, const std::string& old, const std::string& fresh);

/// A member's id, which the ends of blocks follow.
void member_id(Form& form, model::Framing& framing, std::string& id);

/// Actual sizes of one piece, and its wood.
struct Piece {
    double& width_in;
    double& depth_in;
    std::string& species;
    std::string& grade;
    std::string& size;
    const std::vector<model::OwnWood>& materials;
};
template <class Member>
[[nodiscard]] Piece piece_of(Member& member, const model::Framing& framing) {
    return {member.width_in, member.depth_in, member.species, member.grade, member.size, framing.materials};
}
void piece_fields(Form& form, const Piece& piece);
/// Species and grade, or one of the materials, which has no grade.
void wood_fields(Form& form, std::string& species, std::string& grade, const std::vector<model::OwnWood>& materials);
void post_size_field(Form& form, model::WoodPost& post);
void board_size_field(Form& form, model::Decking& decking);
void plies_field(Form& form, int& plies);

/// What a new member of the framing is sawn from: the joists' section, else a 2x10.
struct Timber {
    double width_in = 1.5, depth_in = 9.25;
    std::string species, grade;
};
[[nodiscard]] Timber start_timber(const model::Framing& framing, const catalog::Catalog& catalog);

}  // namespace toehold::editing

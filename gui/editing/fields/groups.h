#pragma once
// The groups of fields, one file each, in the order of the load path. Each describes its part of the detail to the
// form.
#include "editing/fields/form.h"
#include "model/base_detail.h"

#include <string>

namespace toehold::editing {

void detail_fields(Form& form, model::BaseDetail& detail);
void guard_fields(Form& form, model::BaseDetail& detail);
void load_fields(Form& form, model::Loads& loads);
void post_fields(Form& form, model::BaseDetail& detail);
void weld_fields(Form& form, model::BaseDetail& detail);
void plate_fields(Form& form, model::BaseDetail& detail);
void outline_fields(Form& form, model::Outline& outline);
// How many there are, and whether there are any, stands with what holds them; each then under its own heading.
void hole_count(Form& form, model::BaseDetail& detail);
void hole_fields(Form& form, model::BaseDetail& detail);
void anchor_fields(Form& form, model::BaseDetail& detail);
/// Of one group: what its fastener is and measures; `level` of one driven from the side.
void fastener_fields(Form& form, model::AnchorGroup& group, bool level);
/// Of a group on a post's side: the member behind that its fasteners reach, and a plate under each head.
void into_field(Form& form, const model::BaseDetail& detail, model::AnchorGroup& group);
void head_plate_fields(Form& form, model::AnchorGroup& group);
void layer_fields(Form& form, model::Layers& layers);
/// Of the boards themselves and what holds them.
void decking_fields(Form& form, model::Decking& decking, const std::string& path);
// A post on a member's side: the joint, its fasteners' places, its ties, and the pieces of it.
void side_fields(Form& form, model::BaseDetail& detail);
void place_fields(Form& form, model::BaseDetail& detail);
void tie_fields(Form& form, model::BaseDetail& detail);
void side_piece_fields(Form& form, model::BaseDetail& detail);
void framing_fields(Form& form, model::Framing& framing);
/// Wood of the detail's own, which members and a wood post may be of.
void material_fields(Form& form, model::BaseDetail& detail);
void joist_presence(Form& form, model::Framing& framing);
void joist_fields(Form& form, model::Framing& framing);
void block_count(Form& form, model::Framing& framing);
void block_fields(Form& form, model::Framing& framing);
void basis_fields(Form& form, model::Basis& basis);
void remark_fields(Form& form, std::vector<model::Remark>& remarks);

/// How the end of a member `depth_in` deep is joined to what holds it.
void connection_fields(Form& form, model::EndConnection& connection, double depth_in);

}  // namespace toehold::editing

// The pieces of a joint on a member's side: layers, bracket plate, notch, the stringer's slope, the boards above.
#include "editing/fields/choices.h"
#include "editing/fields/groups.h"

#include <fmt/format.h>

namespace toehold::editing {
namespace {

using units::Kind;

void one_layer(Form& form, model::SideLayer& layer, std::size_t number) {
    form.at({fmt::format("side/layer[{}]", number), {model::PartKind::post}, phrase("Layer {}", number)});
    form.pick({"material", phrase("Material"), phrase("What the layer is of.")}, layer.material,
              row_choices(form.catalog().decking));
    form.length({"thickness", phrase("Thickness"), phrase("Between member and post.")}, layer.thickness_in);
    form.optional_quantity({"from", phrase("Upper edge"),
                            phrase("Below the member's top edge. Empty: it covers all of the overlap above.")},
                           layer.from_below_top_in, Kind::length, Range::not_negative);
    form.optional_quantity(
        {"to", phrase("Lower edge"), phrase("Below the member's top edge. Empty: it covers all of the overlap below.")},
        layer.to_below_top_in, Kind::length);
}

void bracket_fields(Form& form, model::BracketPlate& bracket) {
    form.at({"side/bracket", {model::PartKind::plate}, phrase("Bracket plate")});
    form.length({"width", phrase("Width"), phrase("Along the rail.")}, bracket.width_in);
    form.length({"height", phrase("Height"), phrase("Up the face.")}, bracket.height_in);
    form.place({"below-top", phrase("Upper edge"), phrase("Below the member's top edge; negative is above it.")},
               bracket.from_top_in);
    form.length({"thickness", phrase("Thickness"), phrase("Of the plate.")}, bracket.thickness_in);
    form.pick({"metal", phrase("Metal"), phrase("Its strength is looked up in the catalogs.")}, bracket.metal,
              row_choices(form.catalog().metals));
    form.length(
        {"weld-leg", phrase("Weld leg"), phrase("Of the fillets on both sides of the post, down the plate's height.")},
        bracket.weld_leg_in);
    form.pick({"filler", phrase("Filler"), phrase("Filler metal of the weld.")}, bracket.filler,
              row_choices(form.catalog().fillers));
    form.length(
        {"hole-over", phrase("Hole over the fastener"), phrase("Diameter of its holes less that of the fasteners.")},
        bracket.hole_over_in);
}

void notch_fields(Form& form, model::PostNotch& notch) {
    form.at({"side/notch", {model::PartKind::post}, phrase("Notch")});
    form.length({"depth", phrase("Depth"), phrase("Cut out of the post, square to the rail.")}, notch.depth_in);
    form.place({"below-top", phrase("Shoulder"), phrase("Below the member's top edge; negative is above it.")},
               notch.below_top_in);
}

void stringer_fields(Form& form, model::StringerSlope& stringer) {
    form.at({"side/stringer", {model::PartKind::post}, phrase("Stringer")});
    form.quantity({"angle", phrase("Angle"), phrase("Of its run from level, rising to the right; at most 60 degrees.")},
                  stringer.angle_deg, Kind::angle);
    form.length({"effective-depth", phrase("Depth below the cuts"), phrase("Square to the slope.")},
                stringer.effective_depth_in);
    form.text({"braced-by", phrase("Braced sideways by"),
               phrase("What keeps it from moving sideways at the post. Empty: not specified, and a finding asks for "
                      "it.")},
              stringer.braced_by);
}

}  // namespace

void side_piece_fields(Form& form, model::BaseDetail& detail) {
    model::SideFastened& mount = on_side(detail);
    for (std::size_t index = 0; index < mount.layers.size(); ++index) one_layer(form, mount.layers[index], index + 1);
    if (mount.bracket) bracket_fields(form, *mount.bracket);
    if (mount.notch) notch_fields(form, *mount.notch);
    if (mount.stringer) stringer_fields(form, *mount.stringer);
    if (mount.decking) decking_fields(form, *mount.decking, "side/decking");
}

}  // namespace toehold::editing

#include "xml/detail/parts.h"

#include <array>
#include <string>

namespace toehold::xml {
namespace {

using units::Kind;

constexpr std::array<Word<model::MemberFace>, 2> member_faces{
    {{"outside", model::MemberFace::outside}, {"inside", model::MemberFace::inside}}};

double any_place(ElementReader& reader, std::string_view attribute) {
    return reader.quantity(attribute, Kind::length, Sign::any);
}

double size_of(ElementReader& reader, std::string_view attribute) {
    return reader.quantity(attribute, Kind::length, Sign::positive);
}

model::SidePlace read_place(ElementReader& reader) {
    return {reader.id(), any_place(reader, "x"), size_of(reader, "below-top")};
}

Element place_element(const model::SidePlace& place) {
    Element element("place");
    element.text("id", place.id).quantity("x", place.x_in, Kind::length);
    return element.quantity("below-top", place.below_top_in, Kind::length);
}

/// A tie that a bolt hangs is at that bolt; where no place has its id, the rules of the model say so.
void read_place_of_tie(ElementReader& reader, const std::vector<model::SidePlace>& places, model::TensionTie& tie) {
    tie.bolt = reader.optional_id("bolt");
    if (tie.bolt.empty()) {
        tie.x_in = any_place(reader, "x");
        tie.below_top_in = any_place(reader, "below-top");
        return;
    }
    for (const model::SidePlace& place : places) {
        if (place.id != tie.bolt) continue;
        tie.x_in = place.x_in;
        tie.below_top_in = place.below_top_in;
    }
}

model::TensionTie read_tie(ElementReader& reader, const std::vector<model::SidePlace>& places) {
    model::TensionTie tie;
    tie.id = reader.id();
    tie.name = reader.text("name");
    tie.report = reader.optional_text("report");
    read_place_of_tie(reader, places, tie);
    tie.tension_lb = reader.quantity("tension", Kind::force, Sign::positive);
    tie.deflection_in = size_of(reader, "deflection");
    tie.into = reader.id("into");
    tie.eccentricity_in = reader.quantity("eccentricity", Kind::length, Sign::not_negative);
    tie.chosen = reader.optional_yes_no("chosen").value_or(tie.chosen);
    return tie;
}

Element tie_element(const model::TensionTie& tie) {
    Element element("tie");
    element.text("id", tie.id).text("name", tie.name).optional_text("report", tie.report);
    if (tie.bolt.empty()) {
        element.quantity("x", tie.x_in, Kind::length).quantity("below-top", tie.below_top_in, Kind::length);
    } else {
        element.text("bolt", tie.bolt);
    }
    element.quantity("tension", tie.tension_lb, Kind::force).quantity("deflection", tie.deflection_in, Kind::length);
    element.text("into", tie.into).quantity("eccentricity", tie.eccentricity_in, Kind::length);
    if (!tie.chosen) element.yes_no("chosen", false);
    return element;
}

model::SideLayer read_layer(ElementReader& reader) {
    model::SideLayer layer;
    layer.material = reader.id("material");
    layer.thickness_in = size_of(reader, "thickness");
    layer.from_below_top_in = reader.optional_quantity("from", Kind::length, Sign::not_negative);
    layer.to_below_top_in = reader.optional_quantity("to", Kind::length, Sign::positive);
    return layer;
}

Element layer_element(const model::SideLayer& layer) {
    Element element("layer");
    element.text("material", layer.material).quantity("thickness", layer.thickness_in, Kind::length);
    element.optional_quantity("from", layer.from_below_top_in, Kind::length);
    return element.optional_quantity("to", layer.to_below_top_in, Kind::length);
}

model::BracketPlate read_bracket(ElementReader& reader) {
    model::BracketPlate bracket;
    bracket.width_in = size_of(reader, "width");
    bracket.height_in = size_of(reader, "height");
    bracket.from_top_in = any_place(reader, "below-top");
    bracket.thickness_in = size_of(reader, "thickness");
    bracket.metal = reader.id("metal");
    bracket.weld_leg_in = size_of(reader, "weld-leg");
    bracket.filler = reader.id("filler");
    bracket.hole_over_in =
        reader.optional_quantity("hole-over", Kind::length, Sign::positive).value_or(bracket.hole_over_in);
    return bracket;
}

Element bracket_element(const model::BracketPlate& bracket) {
    Element element("bracket");
    element.quantity("width", bracket.width_in, Kind::length).quantity("height", bracket.height_in, Kind::length);
    element.quantity("below-top", bracket.from_top_in, Kind::length);
    element.quantity("thickness", bracket.thickness_in, Kind::length).text("metal", bracket.metal);
    element.quantity("weld-leg", bracket.weld_leg_in, Kind::length).text("filler", bracket.filler);
    return element.quantity("hole-over", bracket.hole_over_in, Kind::length);
}

model::PostNotch read_notch(ElementReader& reader) {
    return {size_of(reader, "depth"), any_place(reader, "below-top")};
}

Element notch_element(const model::PostNotch& notch) {
    Element element("notch");
    element.quantity("depth", notch.depth_in, Kind::length);
    return element.quantity("below-top", notch.below_top_in, Kind::length);
}

model::StringerSlope read_stringer(ElementReader& reader) {
    model::StringerSlope stringer;
    stringer.angle_deg = reader.quantity("angle", Kind::angle, Sign::positive);
    stringer.effective_depth_in = size_of(reader, "effective-depth");
    stringer.braced_by = reader.optional_text("braced-by");
    return stringer;
}

Element stringer_element(const model::StringerSlope& stringer) {
    Element element("stringer");
    element.quantity("angle", stringer.angle_deg, Kind::angle);
    element.quantity("effective-depth", stringer.effective_depth_in, Kind::length);
    return element.optional_text("braced-by", stringer.braced_by);
}

void read_anchor_groups(ElementReader& reader, std::vector<model::AnchorGroup>& groups) {
    for (ElementReader& part : reader.children("anchors")) {
        groups.push_back(read_anchor_group(part));
        part.stands_for("anchors[" + std::to_string(groups.size()) + "]");
    }
}

}  // namespace

model::SideFastened read_side_fastened(ElementReader& reader) {
    model::SideFastened mount;
    mount.member = reader.id("member");
    mount.face = reader.choice<model::MemberFace>("face", member_faces);
    mount.post_bottom_below_top_in = size_of(reader, "post-bottom");
    mount.boards_brace_member = reader.optional_yes_no("boards-brace-member").value_or(false);
    for (ElementReader& part : reader.children("place")) mount.places.push_back(read_place(part));
    read_anchor_groups(reader, mount.anchors);
    for (ElementReader& part : reader.children("tie")) mount.ties.push_back(read_tie(part, mount.places));
    for (ElementReader& part : reader.children("layer")) mount.layers.push_back(read_layer(part));
    if (std::optional<ElementReader> part = reader.optional_child("bracket")) mount.bracket = read_bracket(*part);
    if (std::optional<ElementReader> part = reader.optional_child("notch")) mount.notch = read_notch(*part);
    if (std::optional<ElementReader> part = reader.optional_child("stringer")) mount.stringer = read_stringer(*part);
    if (std::optional<ElementReader> part = reader.optional_child("decking")) mount.decking = read_decking(*part);
    return mount;
}

void add_side_fastened(Element& element, const model::SideFastened& mount) {
    element.text("member", mount.member).text("face", word_for<model::MemberFace>(mount.face, member_faces));
    element.quantity("post-bottom", mount.post_bottom_below_top_in, Kind::length);
    if (mount.boards_brace_member) element.yes_no("boards-brace-member", true);
    for (const model::SidePlace& place : mount.places) element.child(place_element(place));
    for (const model::AnchorGroup& group : mount.anchors) element.child(anchor_group_element(group));
    for (const model::TensionTie& tie : mount.ties) element.child(tie_element(tie));
    for (const model::SideLayer& layer : mount.layers) element.child(layer_element(layer));
    if (mount.bracket) element.child(bracket_element(*mount.bracket));
    if (mount.notch) element.child(notch_element(*mount.notch));
    if (mount.stringer) element.child(stringer_element(*mount.stringer));
    if (mount.decking) element.child(decking_element(*mount.decking));
}

}  // namespace toehold::xml

// The weld at the post's foot, and the gussets that stiffen it.
#include "editing/fields/choices.h"
#include "editing/fields/groups.h"
#include "model/foot_sides.h"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>
#include <array>
#include <sstream>

namespace toehold::editing {
namespace {

const std::array<Word<model::WeldKind>, 3> kinds{
    {{model::WeldKind::fillet, "fillet", phrase("Fillet")},
     {model::WeldKind::complete_penetration, "complete-penetration", phrase("Groove, complete penetration")},
     {model::WeldKind::partial_penetration, "partial-penetration", phrase("Groove, partial penetration")}}};
const std::array<Word<model::WeldFaces>, 2> faces{
    {{model::WeldFaces::top, "top", phrase("Top of the plate")},
     {model::WeldFaces::both, "both", phrase("Both faces: the tube passes through the plate")}}};

std::optional<model::FootSides> typed_sides(const std::string& text) {
    model::FootSides sides{false, false, false, false};
    std::istringstream words(text);
    for (std::string word; words >> word;) {
        if (!model::add_side(sides, word)) return std::nullopt;
    }
    return sides;
}

void sides_field(Form& form, const Named& name, model::FootSides& sides) {
    Field field = form.fresh(name, FieldKind::text);
    field.value = fmt::format("{}", fmt::join(model::side_words(sides), " "));
    form.add(std::move(field), [&sides](const std::string& text) -> Outcome {
        const std::optional<model::FootSides> read = typed_sides(text);
        if (!read) return {phrase("Sides are outward, inward, right and left, separated by blanks.")};
        sides = *read;
        return {};
    });
}

struct MetalOf {
    const std::string& operator()(const model::WoodPost& wood) const { return wood.shoe.metal; }
    const std::string& operator()(const auto& metal_post) const { return metal_post.metal; }
};

catalog::MetalKind metal_kind(const model::Post& post, const catalog::Catalog& catalog) {
    const model::Stub* const stub = model::stub_of(post);
    const catalog::Metal* const row =
        catalog::find(catalog.metals, stub != nullptr ? stub->metal : std::visit(MetalOf{}, post));
    return row == nullptr ? catalog::MetalKind::carbon_steel : row->kind;
}

model::Weld start_weld(const model::Post& post, const catalog::Catalog& catalog) {
    const catalog::MetalKind kind = metal_kind(post, catalog);
    const auto fits = [kind](const catalog::Filler& filler) { return filler.kind == kind; };
    const auto found = std::find_if(catalog.fillers.begin(), catalog.fillers.end(), fits);
    constexpr double leg_in = 0.125;
    return {leg_in, found == catalog.fillers.end() ? id_or_first(catalog.fillers, "e60") : found->id};
}

/// A kind begins with what it cannot be without.
void change_kind(model::Weld& weld, model::WeldKind kind) {
    constexpr double start_in = 0.125;
    weld.kind = kind;
    if (kind == model::WeldKind::fillet && !(weld.leg_in > 0.0)) weld.leg_in = start_in;
    weld.throat_in = kind == model::WeldKind::partial_penetration ? start_in : 0.0;
}

void kind_field(Form& form, model::Weld& weld) {
    const std::size_t before = form.entries().size();
    form.word({"kind", phrase("Kind"), phrase("A groove needs the post's end beveled.")}, weld.kind, kinds);
    form.after(before, [&weld] { change_kind(weld, weld.kind); });
}

void size_fields(Form& form, model::Weld& weld) {
    if (weld.kind == model::WeldKind::fillet)
        form.length({"leg", phrase("Leg"), phrase("Of the fillet.")}, weld.leg_in);
    else
        form.zero_if_empty({"leg", phrase("Leg"), phrase("Of the reinforcing fillet on the groove. Empty: none.")},
                           weld.leg_in, units::Kind::length, Range::not_negative);
    if (weld.kind == model::WeldKind::partial_penetration)
        form.length({"throat", phrase("Throat"), phrase("Effective throat of the groove.")}, weld.throat_in);
}

void gusset_fields(Form& form, model::Gussets& gussets) {
    form.at({"weld/gussets", {model::PartKind::weld}, phrase("Gussets")});
    sides_field(form,
                {"sides", phrase("Sides"),
                 phrase("Where a gusset stands, in the middle of the face: outward, inward, right, left.")},
                gussets.sides);
    form.length({"height", phrase("Height"), phrase("Up the post.")}, gussets.height_in);
    form.length({"length", phrase("Length"), phrase("Along the plate, from the face of the post.")}, gussets.length_in);
    form.length({"thickness", phrase("Thickness"), phrase("Of each gusset.")}, gussets.thickness_in);
    form.length({"leg", phrase("Leg"), phrase("Of the fillets on both sides of each gusset.")}, gussets.leg_in);
}

const model::Gussets start_gussets{{}, 2.0, 1.5, 0.25, 0.125};

}  // namespace

void weld_fields(Form& form, model::BaseDetail& detail) {
    form.at({"weld", {model::PartKind::weld}, phrase("Weld")});
    form.presence({"given", phrase("Welded"),
                   phrase("Whether a weld joins the foot to the plate; begins as 1/8 in of the weakest "
                          "filler for the post's metal.")},
                  on_deck(detail).weld, start_weld(detail.post, form.catalog()));
    if (!on_deck(detail).weld) return;
    model::Weld& weld = *on_deck(detail).weld;
    kind_field(form, weld);
    size_fields(form, weld);
    form.pick({"filler", phrase("Filler"), phrase("Filler metal of the weld.")}, weld.filler,
              row_choices(form.catalog().fillers));
    form.word({"faces", phrase("Faces"), phrase("Of the plate that are welded.")}, weld.faces, faces);
    sides_field(form,
                {"sides", phrase("Sides welded"),
                 phrase("Of a rectangular foot: outward, inward, right, left. All four: all around.")},
                weld.sides);
    form.presence({"gussets-given", phrase("Gussets"),
                   phrase("Whether triangular stiffeners stand on the plate; begin as 1/4 in plate, 2 in high.")},
                  weld.gussets, start_gussets);
    if (weld.gussets) gusset_fields(form, *weld.gussets);
}

}  // namespace toehold::editing

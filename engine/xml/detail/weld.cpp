#include "model/foot_sides.h"
#include "xml/detail/parts.h"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <array>

namespace toehold::xml {
namespace {

using format::phrase;

using units::Kind;

constexpr std::array<Word<model::WeldKind>, 3> kinds{{{"fillet", model::WeldKind::fillet},
                                                      {"complete-penetration", model::WeldKind::complete_penetration},
                                                      {"partial-penetration", model::WeldKind::partial_penetration}}};
constexpr std::array<Word<model::WeldFaces>, 2> faces{
    {{"top", model::WeldFaces::top}, {"both", model::WeldFaces::both}}};

/// All four where the attribute is not there.
model::FootSides read_sides(ElementReader& reader) {
    if (!reader.has("sides")) return {};
    model::FootSides sides{false, false, false, false};
    for (const std::string& word : reader.ids("sides")) {
        if (!model::add_side(sides, word))
            reader.report(phrase("{} is no side of the foot", word), "sides", phrase("outward, inward, right, left"));
    }
    return sides;
}

void write_sides(Element& element, const model::FootSides& sides) {
    if (model::count(sides) == 4) return;
    element.text("sides", fmt::format("{}", fmt::join(model::side_words(sides), " ")));
}

model::Gussets read_gussets(ElementReader& reader) {
    model::Gussets gussets;
    gussets.sides = read_sides(reader);
    gussets.height_in = reader.quantity("height", Kind::length, Sign::positive);
    gussets.length_in = reader.quantity("length", Kind::length, Sign::positive);
    gussets.thickness_in = reader.quantity("thickness", Kind::length, Sign::positive);
    gussets.leg_in = reader.quantity("leg", Kind::length, Sign::positive);
    return gussets;
}

Element gussets_element(const model::Gussets& gussets) {
    Element element("gussets");
    write_sides(element, gussets.sides);
    element.quantity("height", gussets.height_in, Kind::length).quantity("length", gussets.length_in, Kind::length);
    return element.quantity("thickness", gussets.thickness_in, Kind::length)
        .quantity("leg", gussets.leg_in, Kind::length);
}

}  // namespace

model::Weld read_weld(ElementReader& reader) {
    model::Weld weld;
    weld.kind = reader.optional_choice<model::WeldKind>("kind", kinds).value_or(weld.kind);
    weld.leg_in = weld.kind == model::WeldKind::fillet
                      ? reader.quantity("leg", Kind::length, Sign::positive)
                      : reader.optional_quantity("leg", Kind::length, Sign::positive).value_or(0.0);
    if (weld.kind == model::WeldKind::partial_penetration)
        weld.throat_in = reader.quantity("throat", Kind::length, Sign::positive);
    weld.filler = reader.id("filler");
    weld.faces = reader.optional_choice<model::WeldFaces>("faces", faces).value_or(weld.faces);
    weld.sides = read_sides(reader);
    if (std::optional<ElementReader> gussets = reader.optional_child("gussets")) weld.gussets = read_gussets(*gussets);
    return weld;
}

Element weld_element(const model::Weld& weld) {
    Element element("weld");
    if (weld.kind != model::WeldKind::fillet) element.text("kind", word_for<model::WeldKind>(weld.kind, kinds));
    element.given_quantity("leg", weld.leg_in, Kind::length);
    element.given_quantity("throat", weld.throat_in, Kind::length);
    element.text("filler", weld.filler);
    if (weld.faces != model::WeldFaces::top) element.text("faces", word_for<model::WeldFaces>(weld.faces, faces));
    write_sides(element, weld.sides);
    if (weld.gussets) element.child(gussets_element(*weld.gussets));
    return element;
}

}  // namespace toehold::xml

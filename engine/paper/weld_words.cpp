#include "paper/weld_words.h"

#include <vector>

namespace toehold::paper {
namespace {

using format::Dimension;
using format::Phrase;
using format::phrase;

Phrase kind_words(const model::Weld& weld, const Phrase& leg, const Phrase& throat) {
    switch (weld.kind) {
        case model::WeldKind::complete_penetration:
            return phrase("complete penetration groove");
        case model::WeldKind::partial_penetration:
            return phrase("partial penetration groove, effective throat {},", throat);
        case model::WeldKind::fillet:
            break;
    }
    return phrase("{} fillet", leg);
}

std::vector<Phrase> side_names(const model::FootSides& sides) {
    std::vector<Phrase> names;
    if (sides.outward) names.push_back(phrase("outward"));
    if (sides.inward) names.push_back(phrase("inward"));
    if (sides.right) names.push_back(phrase("right"));
    if (sides.left) names.push_back(phrase("left"));
    return names;
}

}  // namespace

Phrase welded_sides(const model::FootSides& sides) {
    const std::vector<Phrase> names = side_names(sides);
    switch (names.size()) {
        case 1:
            return phrase("on the {} side", names[0]);
        case 2:
            return phrase("on the {} and {} sides", names[0], names[1]);
        case 3:
            return phrase("on the {}, {} and {} sides", names[0], names[1], names[2]);
        default:
            return {};
    }
}

Phrase words_of_weld(const model::Weld& weld, const Phrase& leg, const Phrase& throat) {
    Phrase words = kind_words(weld, leg, throat);
    const Phrase sides = welded_sides(weld.sides);
    words = sides.empty() ? phrase("{} all around", std::move(words)) : phrase("{} {}", std::move(words), sides);
    if (weld.faces == model::WeldFaces::both) words = phrase("{}, above and below the plate", std::move(words));
    return words;
}

Phrase words_of_gussets(const model::Weld& weld) {
    if (!weld.gussets) return {};
    const model::Gussets& gussets = *weld.gussets;
    return phrase("{} gussets {} high x {} long x {}", std::to_string(model::count(gussets.sides)),
                  Dimension{gussets.height_in}, Dimension{gussets.length_in}, Dimension{gussets.thickness_in});
}

}  // namespace toehold::paper

#include "model/validate_weld.h"

namespace toehold::model {
namespace {

using format::phrase;

constexpr double largest_leg_in = 2.0;

bool all_round(const FootSides& sides) { return count(sides) == 4; }

void check_size(ProblemList& problems, const Weld& weld) {
    if (weld.kind == WeldKind::fillet)
        problems.positive(phrase("leg (in)"), weld.leg_in, largest_leg_in);
    else
        problems.between(phrase("leg (in)"), weld.leg_in, 0.0, largest_leg_in);
    if (weld.kind == WeldKind::partial_penetration)
        problems.positive(phrase("throat (in)"), weld.throat_in, largest_leg_in);
}

/// A weld along one side alone is a hinge: its line has no section about itself.
void check_sides(ProblemList& problems, const Weld& weld, bool round) {
    if (round && !all_round(weld.sides))
        problems.add(phrase("a round foot has no sides"), phrase("sides left out: welded all around"));
    else if (count(weld.sides) < 2)
        problems.add(phrase("a weld on fewer than two sides resists no moment"), phrase("two or more sides"));
}

void check_gussets(ProblemList& problems, const Gussets& gussets) {
    problems.at("weld/gussets");
    constexpr double largest_in = 24.0;
    problems.positive(phrase("height (in)"), gussets.height_in, largest_in);
    problems.positive(phrase("length (in)"), gussets.length_in, largest_in);
    problems.positive(phrase("thickness (in)"), gussets.thickness_in, largest_leg_in);
    problems.positive(phrase("leg (in)"), gussets.leg_in, largest_leg_in);
    if (count(gussets.sides) == 0)
        problems.add(phrase("gussets on no side of the foot"), phrase("one or more of outward, inward, right, left"));
}

}  // namespace

void check_weld(ProblemList& problems, const BaseDetail& detail) {
    const std::optional<Weld>& weld = on_deck(detail).weld;
    if (!weld) return;
    problems.at("weld");
    check_size(problems, *weld);
    check_sides(problems, *weld, footprint(detail.post).round);
    if (weld->gussets) check_gussets(problems, *weld->gussets);
}

}  // namespace toehold::model

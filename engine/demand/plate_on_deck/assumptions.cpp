#include "demand/plate_on_deck/assumptions.h"

namespace toehold::demand {
namespace {

using format::phrase;
using format::Phrase;

Phrase plate_sentence(bool flexible) {
    if (!flexible) {
        return phrase(
            "The plate is rigid, anchors only pull, and the bed only presses. Holes are not deducted from the bed.");
    }
    return phrase(
        "The plate bends as a thin elastic plate. Holes are not deducted from it or from the bed. Shear deformation is "
        "left out, which may leave the largest tension up to 2% low on thick plates with widely spaced anchors. The "
        "post's foot moves as one rigid piece. Anchors pull through their washer or head and never push; the bed "
        "presses and never pulls.");
}

void add_preload(std::vector<Phrase>& all, bool flexible) {
    all.push_back(flexible ? phrase("The preload specified for the anchors is taken to last. Wood relaxes, so it must "
                                    "be maintained. The rigid values do not count it.")
                           : phrase("The preload specified for the anchors is not counted with a rigid plate."));
}

void add_stiffness(std::vector<Phrase>& all, const std::optional<model::FixedStiffness>& fixed) {
    if (fixed) {
        all.push_back(phrase("Bed and anchor stiffness are specified in the file: {}.", fixed->reason));
        return;
    }
    all.push_back(phrase(
        "Bed and anchor stiffness are known to a factor. The demand is the largest found at the center and at the "
        "corners of two ranges that can govern, each range between published ends."));
}

}  // namespace

std::vector<Phrase> plate_assumptions(const PlateSolver& solver, const model::BaseDetail& detail) {
    std::vector<Phrase> all = solver.bed().assumptions;
    all.push_back(plate_sentence(solver.flexible()));
    if (!solver.why_rigid().empty())
        all.push_back(phrase("A flexible plate was requested and a rigid one is used: {}.", solver.why_rigid()));
    if (model::preloaded(detail)) add_preload(all, solver.flexible());
    if (solver.framing_can_flex() && !detail.basis.stiffness) {
        all.push_back(phrase(
            "Each of these is solved on rigid framing and on framing that bends, shears, twists and slips at its "
            "connections. Each member moves as one piece where the plate covers it."));
    }
    all.push_back(
        phrase("The anchors share shear equally, with the twist of an off-center post. Friction carries none of it."));
    add_stiffness(all, detail.basis.stiffness);
    return all;
}

}  // namespace toehold::demand

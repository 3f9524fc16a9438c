#include "demand/plate_on_deck/assumptions.h"

namespace toehold::demand {
namespace {

std::string plate_sentence(const PlateSolver& solver) {
    if (solver.flexible()) {
        return "The plate bends as a thin elastic plate: its holes are not taken out of it or of the bed, and its "
               "shear "
               "deformation is left out, which may leave the largest pull up to 2 % low on thick plates with widely "
               "spaced "
               "anchors. The post's foot keeps its shape and moves as one rigid piece; anchors pull through their "
               "washer or "
               "head and never push, the bed presses and never pulls.";
    }
    return "The plate is rigid, the bed presses and never pulls, anchors pull and never push; holes in the plate are "
           "not taken "
           "out of the bed.";
}

}  // namespace

std::vector<std::string> plate_assumptions(const PlateSolver& solver, const model::BaseDetail& detail) {
    std::vector<std::string> all = solver.bed().assumptions;
    all.push_back(plate_sentence(solver));
    if (!solver.why_rigid().empty()) {
        all.push_back("A flexible plate was asked for and a rigid one is used: " + solver.why_rigid() + ".");
    }
    if (model::preloaded(detail) && solver.flexible()) {
        all.push_back(
            "The stated preload of the anchors is taken to stay; wood lets go of it in time, so see to it that it is "
            "kept up. The rigid value beside counts none.");
    } else if (model::preloaded(detail)) {
        all.push_back("The stated preload of the anchors is not counted with a rigid plate.");
    }
    if (solver.framing_can_give() && !detail.basis.stiffness) {
        all.push_back(
            "One of the solves lets the framing under the plate bend, shear, twist and slip in its connections; each "
            "member moves as one piece where the plate covers it.");
    }
    all.push_back(
        "Shear is shared equally by the anchors, with the twist of an off-centre post; friction carries none of it.");
    if (detail.basis.stiffness) {
        all.push_back("Bed and anchor stiffness are fixed by the user: " + detail.basis.stiffness->reason + ".");
    } else {
        all.push_back(
            "Bed and anchor stiffness are estimates: the demand is the largest found with each of them halved, as "
            "computed, and doubled.");
    }
    return all;
}

}  // namespace toehold::demand

// How well the solves balance, and how near their numbers are to those of an ever finer mesh.
#include "format/figures.h"
#include "paper/report/sections.h"
#include "paper/report/symbols.h"

#include <fmt/format.h>

namespace toehold::paper::report {
namespace {

std::string residual(double value) { return written_number(format::number_text(value)); }

/// Two digits: how near the number is known, not the number itself.
std::string percent(double share) { return written_number(fmt::format("{:.2g}", 100.0 * share)); }

std::string balance_words(const demand::Proof& proof) {
    return fmt::format(
        "Balance: {} solves leave at most {} of the force, {} of the moment and {} of the contact's condition out of "
        "balance, relative to what is applied; a solve above 10⁻⁸ would stop the calculation.",
        proof.solves, residual(proof.force_residual), residual(proof.moment_residual),
        residual(proof.complementarity_residual));
}

std::string mesh_words(const demand::MeshAccuracy& plate) {
    return fmt::format(
        " Accuracy: the plate that bends has {} unknowns, its envelope is found in a space of {}. The largest pull is "
        "within {} % of that on a mesh half again as fine, and within {} % of that on the full mesh.",
        plate.unknowns, plate.reduced_unknowns, percent(plate.mesh_error), percent(plate.reduction_error));
}

}  // namespace

void add_accuracy(Blocks& blocks, const Source& source) {
    const demand::Demand& demand = *source.review.demand;
    std::string words = balance_words(demand.proof);
    if (demand.proof.plate) words += mesh_words(*demand.proof.plate);
    if (demand.framing) {
        words += demand.framing->unstable.empty()
                     ? fmt::format(" The framing's balance is met to {}.", residual(demand.framing->residual))
                     : " " + sentence("The framing carries no load: " + demand.framing->unstable);
    }
    blocks.emplace_back(fine_print(words));
}

}  // namespace toehold::paper::report

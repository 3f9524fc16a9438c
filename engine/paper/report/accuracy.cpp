// How well the solves balance, and how near their numbers are to those of an ever finer mesh.
#include "demand/demand.h"
#include "paper/report/sections.h"
#include "review/review.h"
#include "wording/demand.h"

namespace toehold::paper::report {

void add_accuracy(Blocks& blocks, const Source& source) {
    using format::phrase;
    const demand::Demand& demand = *source.review.demand;
    format::Phrase proof;
    for (format::Phrase& one : wording::accuracy(demand.proof))
        proof = proof.empty() ? std::move(one) : phrase("{}; {}", std::move(proof), std::move(one));
    std::vector<format::Phrase> sentences{phrase("Accuracy: {}.", std::move(proof))};
    sentences.push_back(phrase("A solve with a residual above 10⁻⁸ would stop the calculation."));
    if (demand.framing) {
        sentences.push_back(
            demand.framing->unstable.empty()
                ? phrase("The framing is in equilibrium to {}.", format::Quantity{demand.framing->residual, ""})
                : phrase("The framing carries no load: {}.", demand.framing->unstable));
    }
    blocks.emplace_back(fine_print(paper::sentences(sentences, source.locale())));
}

}  // namespace toehold::paper::report

#include "study/proof_load/proof_load.h"

#include "catalog/resolve.h"
#include "model/mount_words.h"

#include <algorithm>
#include <utility>

namespace toehold::study {
namespace {

std::vector<FirstBreak> ordered(const std::vector<std::uint64_t>& counts, std::uint64_t samples) {
    std::vector<FirstBreak> first;
    for (std::size_t link = 0; link < counts.size(); ++link) {
        if (counts[link] == 0) continue;
        const mechanics::Proportion of_all = mechanics::proportion(counts[link], samples);
        first.push_back({link, of_all.share, of_all.interval});
    }
    std::stable_sort(first.begin(), first.end(),
                     [](const FirstBreak& one, const FirstBreak& other) { return one.share > other.share; });
    return first;
}

model::Moisture other_than(model::Moisture moisture) {
    return moisture == model::Moisture::wet ? model::Moisture::dry : model::Moisture::wet;
}

}  // namespace

Prediction predict(TestChain chain, model::Moisture moisture, const mechanics::Drawing& drawing) {
    const mechanics::BreakingLoads drawn = mechanics::draw(chain.chain, drawing);
    Prediction prediction;
    prediction.moisture = moisture;
    prediction.mean_push_lb = drawn.mean_load;
    prediction.mean_interval = mechanics::mean_interval(drawn);
    prediction.deviation_lb = drawn.load_deviation;
    prediction.carries = mechanics::carrying(drawn, test_push_lb);
    constexpr std::array<double, 3> shares{0.05, 0.50, 0.95};
    std::transform(shares.begin(), shares.end(), prediction.curve.begin(), [&drawn](double share) {
        return ShareOfTests{share, mechanics::load_at_share(drawn, share)};
    });
    prediction.first = ordered(mechanics::first_breaks(drawn), drawing.samples);
    prediction.chain = std::move(chain);
    return prediction;
}

ProofLoadOutcome proof_load(const catalog::Resolved& resolved, const mechanics::Drawing& drawing) {
    const TestedBaseOutcome base = test_base(resolved, test_push_lb);
    if (!base.base) return {std::nullopt, base.failure};
    ProofLoad proof;
    proof.height_in = base.base->height_in;
    proof.datum = model::mount_words(resolved.detail).plane;
    proof.drawing = drawing;
    proof.moisture_stated = resolved.detail.basis.moisture.has_value();
    const std::optional<double> line_lb = demand::code_line_lb(resolved.detail);
    if (line_lb && *line_lb > demand::code_concentrated_lb) proof.line_lb = line_lb;
    const model::Moisture service = model::moisture(resolved.detail.basis);
    for (const bool in_service : {true, false}) {
        const model::Moisture moisture = in_service ? service : other_than(service);
        TestChainOutcome found = test_chain(resolved, *base.base, moisture);
        if (!found.chain) return {std::nullopt, std::move(found.failure)};
        (in_service ? proof.in_service : proof.other) = predict(std::move(*found.chain), moisture, drawing);
    }
    return {std::move(proof), {}};
}

}  // namespace toehold::study

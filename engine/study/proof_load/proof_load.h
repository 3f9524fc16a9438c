#pragma once
// What a load test would do to a base: how hard it can be pushed on the mean, how likely it carries 2.5 times the
// code's 200 lb, and which link breaks first. The first link that breaks counts as the end; a link whose mean is a
// yield strength counts as broken when it yields.
#include "demand/demand.h"
#include "demand/loads/code_loads.h"
#include "mechanics/sampling/breaking_loads.h"
#include "resistance/ultimate/load_test.h"
#include "study/proof_load/test_chain.h"

#include <array>
#include <cstdint>

namespace toehold::study {

/// 2.5 x 200 lb.
inline constexpr double test_push_lb = resistance::ultimate::carried_over_design * demand::code_concentrated_lb;

struct FirstBreak {
    std::size_t link = 0;                    ///< index in `TestChain::links`
    double share = 0.0;                      ///< of all samples, > 0
    mechanics::ConfidenceInterval interval;  ///< of that share, of the drawing alone, 95 %
};

struct ShareOfTests {
    double share = 0.0;
    double push_lb = 0.0;  ///< below which that share of the samples broke
};

struct Prediction {
    model::Moisture moisture = model::Moisture::wet;
    TestChain chain;
    double mean_push_lb = 0.0;  ///< at which the first link breaks
    mechanics::ConfidenceInterval mean_interval;
    double deviation_lb = 0.0;
    mechanics::Proportion carries;      ///< `test_push_lb`; interval of the drawing alone, 95 %
    std::array<ShareOfTests, 3> curve;  ///< 5, 50 and 95 %
    std::vector<FirstBreak> first;      ///< the most frequent first
};

struct ProofLoad {
    double height_in = 0.0;  ///< of the push above the bearing plane
    format::Phrase datum;    ///< what stands there, for people: `the underside of the plate`
    mechanics::Drawing drawing;
    bool moisture_stated = false;                  ///< in the file
    std::optional<double> line_lb = std::nullopt;  ///< the code's line load on this post, where it is above 200 lb
    Prediction in_service;                         ///< at the file's moisture
    Prediction other;                              ///< dry for wet, wet for dry; drawn with the same seed
};

struct ProofLoadOutcome {
    std::optional<ProofLoad> proof;  ///< absent: `failure` says why no number can be given
    format::Phrase failure;
};

/// `drawing.samples` from 1 to `mechanics::most_samples`.
[[nodiscard]] ProofLoadOutcome proof_load(const catalog::Resolved& resolved, const mechanics::Drawing& drawing);

/// One chain, drawn.
[[nodiscard]] Prediction predict(TestChain chain, model::Moisture moisture, const mechanics::Drawing& drawing);

}  // namespace toehold::study

#pragma once
// A base under a load test as a chain of links: each with the mean of its strength, its scatter, what it shares with
// others, and its demand by the push.
#include "mechanics/sampling/weakest_link.h"
#include "study/proof_load/link_strength.h"

#include <string>
#include <vector>

namespace toehold::study {

// Scatter that many links have in common and nothing published was found for; stated beside every result.
inline constexpr double moisture_variation = 0.05, workmanship_variation = 0.05;

struct TestedLink {
    std::string check;  ///< id of the check it comes from
    format::Phrase title;
    model::PartId part;
    LinkStrength strength;
    double mean = 0.0;             ///< strength, in `unit`; > 0
    std::string unit;              ///< empty: multiples of what the design value allows
    double demand_per_lb = 0.0;    ///< of push, at the central stiffness, >= 0
    double constant_demand = 0.0;  ///< the deck's own weight, >= 0
    bool framing_gives = false;    ///< whether that is the governing state, rather than framing that stands still
    double breaks_at_lb = 0.0;     ///< push at which the mean strength is reached; infinite: the push never does

    [[nodiscard]] const resistance::ultimate::LinkBasis& basis() const {
        return resistance::ultimate::basis_of(strength.link);
    }
    [[nodiscard]] bool yields() const { return basis().meaning == resistance::ultimate::Meaning::yield; }
};

struct LeftOutLink {
    std::string check;
    format::Phrase title;
    model::PartId part;
    NoStrength reason;
    double share = 0.0;  ///< of its design value (load duration 1.0) under the test's push; 0: not known
};

enum class CommonCause { calculation, moisture, workmanship, density };

struct CommonScatter {
    CommonCause cause = CommonCause::calculation;
    model::PartId member = {};  ///< of a density
    double variation = 0.0;
};

struct TestChain {
    std::vector<TestedLink> links;      ///< weakest first, by `breaks_at_lb`
    std::vector<LeftOutLink> left_out;  ///< the most used first
    std::vector<CommonScatter> common;  ///< same order as `chain.factors`
    mechanics::Chain chain;             ///< of the first `chain.links.size()` links: see `far_away`
};

/// A link whose mean is reached at so many times the weakest link's push is not drawn: a sample in which it breaks
/// first would be more than seven standard deviations off.
inline constexpr double far_away = 8.0;

/// A link without a mean that is used so many times its design value must be expected to break first: design values of
/// wood and its connections stand at about a third to a fifth of the mean (judgement). No chance is given then.
inline constexpr double far_beyond_design = 3.0;

struct TestChainOutcome {
    std::optional<TestChain> chain;  ///< absent: `failure` says why
    format::Phrase failure;
};

/// The most used of the links left out that could break; nullptr: none.
[[nodiscard]] const LeftOutLink* most_used_left_out(const TestChain& chain);

/// Refuses a base whose load path ends somewhere: nothing there has a strength; and one with a link left out that is
/// far beyond its design value.
[[nodiscard]] TestChainOutcome test_chain(const catalog::Resolved& resolved, const TestedBase& base,
                                          model::Moisture moisture);

}  // namespace toehold::study

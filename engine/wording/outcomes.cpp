#include "wording/outcomes.h"

#include "format/figures.h"
#include "review/comparison.h"
#include "review/review.h"
#include "wording/status.h"
#include "wording/verdict.h"

#include <algorithm>
#include <cmath>

namespace toehold::wording {
namespace {

using format::Phrase;
using format::phrase;
using format::Quantity;
using review::Verdict;

Phrase tension_change(double first, double second) {
    constexpr double left_by_a_solve = 1e-9, in_percent = 100.0, whole_from = 10.0;
    const double change = second - first;
    if (std::abs(change) <= left_by_a_solve * std::max(std::abs(first), std::abs(second))) return phrase("no change");
    if (first == 0.0) return phrase("none before");
    const double percent = in_percent * std::abs(change) / std::abs(first);
    if (percent < whole_from) return change < 0.0 ? phrase("{:.1f}% less", percent) : phrase("{:.1f}% more", percent);
    return change < 0.0 ? phrase("{:.0f}% less", percent) : phrase("{:.0f}% more", percent);
}

}  // namespace

Phrase remedy_outcome(const review::Remedy& remedy) {
    const Phrase governs = governing(remedy.governing);
    const std::size_t left = remedy.failing_results + remedy.failing_findings;
    switch (remedy.verdict) {
        case Verdict::adequate:
            return phrase("Then all checks pass. Nearest its limit: {}.", governs);
        case Verdict::incomplete:
            return phrase("Then no check fails, but something is not specified. Governs: {}.", governs);
        case Verdict::inadequate:
            break;
    }
    return left == 1 ? phrase("Not enough: 1 check still fails. Governs: {}.", governs)
                     : phrase("Not enough: {} checks still fail. Governs: {}.", left, governs);
}

Phrase no_remedies(const review::Review& review) {
    if (review.verdict == Verdict::adequate) return phrase("None needed: all checks pass.");
    return phrase("None of the usual changes, each run through every check, makes more checks pass.");
}

Phrase other_choice(const review::Assumption& assumption) {
    if (!assumption.other) return {};
    const review::OtherChoice& other = *assumption.other;
    if (!other.ratio_before || !other.ratio_after) return phrase("{}: no ratio to compare.", other.choice);
    constexpr double shown = 0.005;  // ratios are printed to two decimals
    if (std::abs(*other.ratio_after - *other.ratio_before) < shown && other.failing_after == other.failing_before) {
        return phrase("{}: the largest ratio and the number of failing checks stay the same.", other.choice);
    }
    if (other.failing_after == other.failing_before) {
        return phrase("{}: largest demand/capacity {} ({}) instead of {}; the number of failing checks stays the same.",
                      other.choice, format::ratio_text(*other.ratio_after), result(other.title, other.part),
                      format::ratio_text(*other.ratio_before));
    }
    return phrase("{}: largest demand/capacity {} ({}) instead of {}; failing checks: {} instead of {}.", other.choice,
                  format::ratio_text(*other.ratio_after), result(other.title, other.part),
                  format::ratio_text(*other.ratio_before), other.failing_after, other.failing_before);
}

Phrase verdict_change(const review::Comparison& comparison) {
    const Phrase first = word(comparison.first.verdict), second = word(comparison.second.verdict);
    if (!comparison.verdict_turns()) return phrase("SAME VERDICT: {} on both sides", first);
    return phrase("VERDICT CHANGES: the first is {}, the second {}", first, second);
}

std::vector<Phrase> anchor_changes(const review::Comparison& comparison) {
    const review::Side &first = comparison.first, &second = comparison.second;
    std::vector<Phrase> sentences;
    const auto &one = first.facts.largest_tension, &other = second.facts.largest_tension;
    if (one && other) {
        sentences.push_back(phrase("Largest tension: {} on {} in the first, {} on {} in the second: {}.",
                                   Quantity{one->tension_lb, "lb"}, model::part_name(one->part),
                                   Quantity{other->tension_lb, "lb"}, model::part_name(other->part),
                                   tension_change(one->tension_lb, other->tension_lb)));
    }
    if (!first.no_demand.empty()) sentences.push_back(phrase("No demand was found in the first: {}.", first.no_demand));
    if (!second.no_demand.empty())
        sentences.push_back(phrase("No demand was found in the second: {}.", second.no_demand));
    if (first.anchors != second.anchors)
        sentences.push_back(phrase("The first has {} anchors, the second {}.", first.anchors, second.anchors));
    if (first.method != second.method) {
        sentences.push_back(
            phrase("One side is ASD and the other LRFD: only one side's demands and capacities are factored. Compare "
                   "demand/capacity only."));
    }
    return sentences;
}

}  // namespace toehold::wording

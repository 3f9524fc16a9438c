#include "review/comparison.h"

#include "units/unit_table.h"
#include "xml/detail/differences.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <tuple>

namespace toehold::review {
namespace {

using checks::CheckResult;
using checks::Finding;
using checks::Status;

bool holds(const CheckResult& result) { return result.status == Status::holds; }

/// Infinite where nothing is there to resist; 0 where a side has no number.
double ratio(const std::optional<CheckResult>& result) {
    return result && result->status != Status::missing_evidence ? result->ratio : 0.0;
}

double change_of_ratio(const CheckDifference& difference) {
    const double first = ratio(difference.first);
    const double second = ratio(difference.second);
    if (std::isinf(first) && std::isinf(second)) return 0.0;
    return std::abs(second - first);
}

bool equal(double first, double second) {
    constexpr double left_by_a_solve = 1e-9;
    return std::abs(second - first) <= left_by_a_solve * std::max(std::abs(first), std::abs(second));
}

/// Takes the first of the items that fits out of the list.
template <class Item, class Fits>
std::optional<Item> take(std::vector<Item>& items, Fits&& fits) {
    const auto found = std::find_if(items.begin(), items.end(), fits);
    if (found == items.end()) return std::nullopt;
    std::optional<Item> taken = std::move(*found);
    items.erase(found);
    return taken;
}

template <class Item>
bool same_subject(const Item& one, const Item& other) {
    return one.id == other.id && one.subject == other.subject;
}

CheckDifference difference_of(std::optional<CheckResult> first, std::optional<CheckResult> second) {
    const CheckResult& named = first ? *first : *second;
    return {named.id, named.title, named.subject, std::move(first), std::move(second)};
}

/// A check may say several things of one subject, each an aspect of its own; where even that is the same, the worst of
/// one side stands beside the worst of the other.
bool same_result(const CheckResult& one, const CheckResult& other) {
    return same_subject(one, other) && one.aspect == other.aspect;
}

std::vector<CheckDifference> check_differences(const std::vector<CheckResult>& first, std::vector<CheckResult> second) {
    std::vector<CheckDifference> differences;
    differences.reserve(first.size() + second.size());
    for (const CheckResult& result : first) {
        differences.push_back(difference_of(
            result, take(second, [&result](const CheckResult& other) { return same_result(result, other); })));
    }
    for (CheckResult& result : second) differences.push_back(difference_of(std::nullopt, std::move(result)));
    std::stable_sort(differences.begin(), differences.end(), [](const CheckDifference& a, const CheckDifference& b) {
        return std::tuple(!a.status_turns(), -change_of_ratio(a)) < std::tuple(!b.status_turns(), -change_of_ratio(b));
    });
    return differences;
}

std::vector<FindingDifference> finding_differences(std::vector<Finding> first, std::vector<Finding> second) {
    const auto same = [](const Finding& one, const Finding& other) {
        return same_subject(one, other) && one.severity == other.severity && one.message == other.message;
    };
    std::vector<Finding> only_first;
    for (Finding& finding : first) {
        if (!take(second, [&](const Finding& other) { return same(finding, other); })) {
            only_first.push_back(std::move(finding));
        }
    }
    std::vector<FindingDifference> differences;
    for (Finding& finding : only_first) {
        std::optional<Finding> partner =
            take(second, [&](const Finding& other) { return same_subject(finding, other); });
        differences.push_back({std::move(finding), std::move(partner)});
    }
    for (Finding& finding : second) differences.push_back({std::nullopt, std::move(finding)});
    return differences;
}

std::optional<LargestPull> largest_pull(const Review& review) {
    if (!review.demand || review.demand->anchors.empty()) return std::nullopt;
    const std::vector<demand::AnchorEnvelope>& anchors = review.demand->anchors;
    const auto largest = std::max_element(anchors.begin(), anchors.end(), [](const auto& one, const auto& other) {
        return one.tension_lb < other.tension_lb;
    });
    const auto index = static_cast<std::size_t>(largest - anchors.begin());
    return LargestPull{review.resolved.anchors.at(index).id, largest->tension_lb, largest->direction_rad};
}

Side side(const Review& review, const std::string& label) {
    return {label,         review.detail,    review.input_sha256, review.verdict,
            review.reason, review.governing, largest_pull(review)};
}

std::string force(double lb) { return fmt::format("{:.0f} lb ({:.0f} N)", lb, lb * units::newton_per_lb); }

std::string change_in_words(double first, double second) {
    if (equal(first, second)) return "the same";
    if (first == 0.0) return "where there was none";
    const double percent = 100.0 * std::abs(second - first) / std::abs(first);
    return fmt::format("{:.{}f} % {}", percent, percent < 10.0 ? 1 : 0, second < first ? "less" : "more");
}

void say_pulls(std::vector<std::string>& sentences, const Side& first, const Side& second) {
    if (!first.largest_pull || !second.largest_pull) return;
    const LargestPull& one = *first.largest_pull;
    const LargestPull& other = *second.largest_pull;
    sentences.push_back(
        fmt::format("The largest pull is {} on anchor {} in the first and {} on anchor {} in the "
                    "second: {}.",
                    force(one.tension_lb), one.anchor, force(other.tension_lb), other.anchor,
                    change_in_words(one.tension_lb, other.tension_lb)));
}

void say_missing(std::vector<std::string>& sentences, const Review& review, std::string_view which) {
    if (review.demand) return;
    sentences.push_back(fmt::format("No demand was found in the {}: {}.", which, review.no_demand));
}

std::vector<std::string> anchor_sentences(const Comparison& sides, const Review& first, const Review& second) {
    std::vector<std::string> sentences;
    say_pulls(sentences, sides.first, sides.second);
    say_missing(sentences, first, "first");
    say_missing(sentences, second, "second");
    if (first.resolved.anchors.size() != second.resolved.anchors.size()) {
        sentences.push_back(fmt::format("The first has {} anchors, the second {}.", first.resolved.anchors.size(),
                                        second.resolved.anchors.size()));
    }
    if (first.resolved.detail.basis.method != second.resolved.detail.basis.method) {
        sentences.emplace_back(
            "One side is ASD and the other LRFD: demands and capacities are factored on one side alone, and only "
            "demand over capacity can be held against each other.");
    }
    return sentences;
}

std::vector<InputDifference> input_differences(const Review& first, const Review& second) {
    std::vector<InputDifference> differences;
    for (xml::Difference& one : xml::detail_differences(first.resolved.detail, second.resolved.detail)) {
        differences.push_back({std::move(one.place), std::move(one.first), std::move(one.second)});
    }
    return differences;
}

}  // namespace

bool CheckDifference::status_turns() const { return !first || !second || holds(*first) != holds(*second); }

bool CheckDifference::same() const {
    if (!first || !second || first->status != second->status) return false;
    if (!equal(first->demand, second->demand)) return false;
    return first->status == Status::missing_evidence || equal(first->capacity, second->capacity);
}

Comparison compare(const Review& first, const std::string& first_label, const Review& second,
                   const std::string& second_label) {
    Comparison comparison;
    comparison.first = side(first, first_label);
    comparison.second = side(second, second_label);
    comparison.input = input_differences(first, second);
    comparison.checks = check_differences(first.checks, second.checks);
    comparison.findings = finding_differences(first.findings, second.findings);
    comparison.anchors = anchor_sentences(comparison, first, second);
    return comparison;
}

}  // namespace toehold::review

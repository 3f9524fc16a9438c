#include "review/comparison.h"

#include "review/review.h"
#include "xml/detail/differences.h"

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
bool same_part(const Item& one, const Item& other) {
    return one.id == other.id && one.part == other.part;
}

CheckDifference difference_of(std::optional<CheckResult> first, std::optional<CheckResult> second) {
    const CheckResult& named = first ? *first : *second;
    CheckDifference difference;
    difference.id = named.id;
    difference.title = named.title;
    difference.part = named.part;
    difference.first = std::move(first);
    difference.second = std::move(second);
    return difference;
}

/// A check may say several things of one part, each an aspect of its own; where even that is the same, the worst of
/// one side stands beside the worst of the other.
bool same_result(const CheckResult& one, const CheckResult& other) {
    return same_part(one, other) && one.aspect == other.aspect;
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
        return same_part(one, other) && one.severity == other.severity && one.message == other.message;
    };
    std::vector<Finding> only_first;
    for (Finding& finding : first) {
        if (!take(second, [&](const Finding& other) { return same(finding, other); })) {
            only_first.push_back(std::move(finding));
        }
    }
    std::vector<FindingDifference> differences;
    for (Finding& finding : only_first) {
        std::optional<Finding> partner = take(second, [&](const Finding& other) { return same_part(finding, other); });
        differences.push_back({std::move(finding), std::move(partner)});
    }
    for (Finding& finding : second) differences.push_back({std::nullopt, std::move(finding)});
    return differences;
}

Side side(const Review& review, const std::string& label) {
    Side side;
    side.label = label;
    side.detail = review.detail;
    side.input_sha256 = review.input_sha256;
    side.verdict = review.verdict;
    side.governing = review.governing;
    side.facts = review.facts;
    side.anchors = review.demand ? review.demand->anchors.size() : review.resolved.anchors.size();
    side.method = review.resolved.detail.basis.method;
    if (!review.demand) side.no_demand = review.no_demand;
    return side;
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
    return comparison;
}

}  // namespace toehold::review

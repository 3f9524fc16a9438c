#include "review/remedies.h"

#include "review/changes.h"
#include "review/verdict.h"

#include <algorithm>
#include <cmath>
#include <functional>
#include <tuple>

namespace toehold::review {
namespace {

using Change = std::function<std::optional<model::BaseDetail>(const catalog::Resolved&)>;

struct Idea {
    std::string id, text;
    std::vector<Change> changes;  ///< one after the other
};

std::vector<Idea> ideas() {
    const std::string upright = "one 4x8 block on edge under every row of anchors";
    const std::string bolts = "through-bolts with a 3 x 3 x 1/4 in backing plate below the framing";
    const std::string angles =
        "1/4 in steel angles on both sides of the blocks' ends, 3/8 in bolts through block and joist, three to a leg "
        "at 1 3/4 in or as many as the block is deep enough for";
    const std::string hardware =
        "hardware on both sides of the blocks' ends whose report gives one end at least 1600 lb up and down, 700 lb "
        "sideways, and 1200 lb against drawing away over 6 in of height";
    const std::string bay = "the blocks carried on into the next joist bay";
    return {{"second-block", "A block like the first under the row of anchors that has none.", {second_block}},
            {"upright-blocks", "Instead of these blocks, " + upright + ".", {upright_blocks}},
            {"through-bolts", "Instead of these anchors, " + bolts + ".", {through_bolts}},
            {"end-angles", "At the blocks' ends, " + angles + ".", {end_angles}},
            {"end-hardware", "At the blocks' ends, " + hardware + ".", {end_hardware}},
            {"next-bay", "In addition, " + bay + ".", {next_bay}},
            {"blocks-and-hardware", "Together: " + upright + "; " + hardware + ".", {upright_blocks, end_hardware}},
            {"bolts-and-hardware", "Together: " + bolts + "; " + hardware + ".", {through_bolts, end_hardware}},
            {"blocks-bolts-hardware",
             "Together: " + upright + "; " + bolts + "; " + hardware + ".",
             {upright_blocks, through_bolts, end_hardware}},
            {"blocks-bolts-angles-bay",
             "Together: " + upright + "; " + bolts + "; " + angles + "; " + bay + ".",
             {upright_blocks, through_bolts, end_angles, next_bay}}};
}

std::size_t failing(const Review& review) {
    const auto fails = [](const checks::CheckResult& result) {
        return result.status == checks::Status::fails || result.status == checks::Status::no_path;
    };
    return static_cast<std::size_t>(std::count_if(review.checks.begin(), review.checks.end(), fails));
}

std::size_t failing_findings(const Review& review) {
    return static_cast<std::size_t>(
        std::count_if(review.findings.begin(), review.findings.end(),
                      [](const checks::Finding& finding) { return finding.severity == checks::Severity::fails; }));
}

/// The detail after every change; absent where one of them does not apply or leaves an id no catalog knows.
std::optional<catalog::Resolved> changed(const catalog::Resolved& resolved, const std::vector<Change>& changes,
                                         const catalog::Catalog& catalog) {
    catalog::Resolved current = resolved;
    for (const Change& change : changes) {
        const std::optional<model::BaseDetail> detail = change(current);
        if (!detail) return std::nullopt;
        catalog::Resolution resolution = catalog::resolve(*detail, catalog);
        if (!resolution.resolved) return std::nullopt;
        current = std::move(*resolution.resolved);
    }
    return current;
}

Remedy remedy_of(const Idea& idea, const Review& after) {
    Remedy remedy;
    remedy.id = idea.id;
    remedy.text = idea.text;
    remedy.verdict = after.verdict;
    remedy.governing = after.governing;
    remedy.failing_results = failing(after);
    remedy.failing_findings = failing_findings(after);
    remedy.detail = after.resolved.detail;
    return remedy;
}

/// Fewer failures, or the same ones by less.
bool helps(const Remedy& remedy, const Review& before) {
    const std::size_t left = remedy.failing_results + remedy.failing_findings;
    const std::size_t failed = failing(before) + failing_findings(before);
    if (left != failed) return left < failed;
    return remedy.governing.ratio < 0.95 * before.governing.ratio;
}

int rank(Verdict verdict) { return verdict == Verdict::adequate ? 0 : verdict == Verdict::incomplete ? 1 : 2; }

}  // namespace

std::vector<Remedy> find_remedies(const Review& review, const catalog::Catalog& catalog, const Stop& stop) {
    std::vector<Remedy> remedies;
    if (review.verdict == Verdict::adequate || failing(review) + failing_findings(review) == 0) return remedies;
    for (const Idea& idea : ideas()) {
        if (stop && stop()) break;
        const std::optional<catalog::Resolved> other = changed(review.resolved, idea.changes, catalog);
        if (!other) continue;
        const Review after = evaluate(*other, review.input_sha256);
        if (!after.demand) continue;
        Remedy remedy = remedy_of(idea, after);
        if (helps(remedy, review) || !review.demand) remedies.push_back(std::move(remedy));
        constexpr long enough = 2;
        const auto mends = [](const Remedy& one) { return one.verdict == Verdict::adequate; };
        if (std::count_if(remedies.begin(), remedies.end(), mends) >= enough) break;
    }
    std::stable_sort(remedies.begin(), remedies.end(), [](const Remedy& a, const Remedy& b) {
        return std::tuple(rank(a.verdict), a.failing_results + a.failing_findings, a.governing.ratio) <
               std::tuple(rank(b.verdict), b.failing_results + b.failing_findings, b.governing.ratio);
    });
    return remedies;
}

}  // namespace toehold::review

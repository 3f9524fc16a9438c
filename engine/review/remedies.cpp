#include "review/remedies.h"

#include "review/changes.h"
#include "review/verdict.h"

#include <algorithm>
#include <cmath>
#include <functional>
#include <tuple>

namespace toehold::review {
namespace {

using format::Dimension;
using format::Phrase;
using format::phrase;
using format::Quantity;

using Change = std::function<std::optional<model::BaseDetail>(const catalog::Resolved&)>;

struct Idea {
    std::string id;
    format::Phrase text;
    std::vector<Change> changes;  ///< one after the other
};

std::vector<Idea> ideas() {
    const Phrase upright = phrase("one 4x8 block on edge under every row of anchors");
    const Phrase bolts = phrase("through-bolts with a {} x {} x {} backing plate below the framing", Dimension{3.0},
                                Dimension{3.0}, Dimension{0.25});
    const Phrase angles = phrase(
        "{} steel angles on both sides of the block ends, {} bolts through block and joist, three to a leg at {}, or "
        "as "
        "many as the block depth allows",
        Dimension{0.25}, Dimension{0.375}, Dimension{1.75});
    const Phrase hardware = phrase(
        "hardware on both sides of the block ends whose report gives each end at least {} up and down, {} lateral, and "
        "{} against pulling away over {} of height",
        Quantity{1600.0, "lb"}, Quantity{700.0, "lb"}, Quantity{1200.0, "lb"}, Dimension{6.0});
    const Phrase bay = phrase("extend the blocks into the next joist bay");
    return {
        {"second-block", phrase("Add a block like the first under the row of anchors that has none."), {second_block}},
        {"upright-blocks", phrase("Replace these blocks: {}.", upright), {upright_blocks}},
        {"through-bolts", phrase("Replace these anchors: {}.", bolts), {through_bolts}},
        {"end-angles", phrase("At the block ends, add {}.", angles), {end_angles}},
        {"end-hardware", phrase("At the block ends, add {}.", hardware), {end_hardware}},
        {"next-bay", phrase("In addition, {}.", bay), {next_bay}},
        {"blocks-and-hardware", phrase("Together: {}; {}.", upright, hardware), {upright_blocks, end_hardware}},
        {"bolts-and-hardware", phrase("Together: {}; {}.", bolts, hardware), {through_bolts, end_hardware}},
        {"blocks-bolts-hardware",
         phrase("Together: {}; {}; {}.", upright, bolts, hardware),
         {upright_blocks, through_bolts, end_hardware}},
        {"blocks-bolts-angles-bay",
         phrase("Together: {}; {}; {}; {}.", upright, bolts, angles, bay),
         {upright_blocks, through_bolts, end_angles, next_bay}}};
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
    remedy.failing_results = after.facts.counts.failing();
    remedy.failing_findings = after.facts.counts.findings_fail;
    remedy.detail = after.resolved.detail;
    return remedy;
}

/// Fewer failures, or the same ones by less.
bool helps(const Remedy& remedy, const Review& before) {
    const std::size_t left = remedy.failing_results + remedy.failing_findings;
    const std::size_t failed = before.facts.counts.failing() + before.facts.counts.findings_fail;
    if (left != failed) return left < failed;
    return remedy.governing.ratio < 0.95 * before.governing.ratio;
}

int rank(Verdict verdict) { return verdict == Verdict::adequate ? 0 : verdict == Verdict::incomplete ? 1 : 2; }

}  // namespace

std::vector<Remedy> find_remedies(const Review& review, const catalog::Catalog& catalog, const Stop& stop) {
    std::vector<Remedy> remedies;
    if (review.verdict == Verdict::adequate || review.facts.counts.failing() + review.facts.counts.findings_fail == 0)
        return remedies;
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

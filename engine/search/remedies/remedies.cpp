#include "search/remedies/remedies.h"

#include "search/remedies/menu.h"
#include "search/remedies/trial.h"

#include <algorithm>
#include <iterator>
#include <set>
#include <tuple>
#include <utility>

namespace toehold::search {
namespace {

using review::Remedy;
using review::Review;
using review::Verdict;

constexpr std::size_t most_together = 5;   ///< changes made at once
constexpr std::size_t kept_each_step = 3;  ///< trials that further changes are added to
constexpr std::size_t enough = 2;          ///< remedies that let the detail hold

/// What the whole search has at hand and has spent.
struct Search {
    const Review& review;
    const catalog::Catalog& catalog;
    const review::Stop& stop;
    std::vector<Change> changes;
    std::set<std::vector<std::size_t>> tried = {};
    std::vector<Remedy> remedies = {};
    int probes = 0, reviews = 0;

    [[nodiscard]] bool stopped() const { return stop && stop(); }
};

Remedy remedy_of(const Trial& trial, const std::vector<Change>& menu, const Review& after) {
    Remedy remedy;
    remedy.id = id(trial, menu);
    remedy.text = words(trial, menu);
    remedy.verdict = after.verdict;
    remedy.governing = after.governing;
    remedy.failing_results = after.facts.counts.failing();
    remedy.failing_findings = after.facts.counts.findings_fail;
    remedy.detail = after.resolved.detail;
    return remedy;
}

/// Fewer failures, or the same ones by less.
bool helps(const Remedy& remedy, const Review& before) {
    if (!before.demand) return true;
    const std::size_t left = remedy.failing_results + remedy.failing_findings;
    const std::size_t failed = before.facts.counts.failing() + before.facts.counts.findings_fail;
    if (left != failed) return left < failed;
    constexpr double notably = 0.95;
    return remedy.governing.ratio < notably * before.governing.ratio;
}

/// Under every push, and what fails then in place of what the probe said.
void review_whole(Search& search, Trial& trial) {
    ++search.reviews;
    const Review after = review::evaluate(trial.resolved, search.review.input_sha256);
    note_failures(trial, after);
    if (!after.demand) return;
    Remedy remedy = remedy_of(trial, search.changes, after);
    if (helps(remedy, search.review)) search.remedies.push_back(std::move(remedy));
}

/// Nothing fails any more, though something may still not be specified.
bool mends(const Remedy& remedy) { return remedy.failing_results + remedy.failing_findings == 0; }

std::size_t mending(const Search& search) {
    return static_cast<std::size_t>(std::count_if(search.remedies.begin(), search.remedies.end(), mends));
}

std::vector<std::string_view> axes_of(const Search& search, const Trial& trial) {
    std::vector<std::string_view> axes;
    for (const std::size_t change : trial.changes) axes.push_back(search.changes[change].axis);
    return axes;
}

bool excludes(const Search& search, const Trial& from, std::size_t change) {
    return std::any_of(from.changes.begin(), from.changes.end(),
                       [&](std::size_t made) { return search.changes[made].axis == search.changes[change].axis; });
}

/// The trial with one more change, for every change that bears on what is to be mended first.
std::vector<Trial> with_one_more(Search& search, const Trial& from) {
    std::vector<Trial> more;
    for (std::size_t change = 0; change < search.changes.size(); ++change) {
        if (excludes(search, from, change) || !bears_on(search.changes[change], from.first)) continue;
        std::vector<std::size_t> together = from.changes;
        together.insert(std::upper_bound(together.begin(), together.end(), change), change);
        if (!search.tried.insert(together).second) continue;
        if (search.probes == most_probes || search.stopped()) break;
        std::optional<Trial> trial = changed(search.review.resolved, search.changes, together, search.catalog);
        if (!trial) continue;
        ++search.probes;
        probe(*trial);
        trial->stuck = trial->first == from.first;
        more.push_back(std::move(*trial));
    }
    return more;
}

/// Those that pass, the cheapest first, until enough of them hold under every push. What mends by the same things as a
/// cheaper one does is no news.
void review_those_that_pass(Search& search, std::vector<Trial>& trials) {
    std::vector<Trial*> passing;
    for (Trial& trial : trials) {
        if (trial.failing == 0) passing.push_back(&trial);
    }
    std::stable_sort(passing.begin(), passing.end(), [](const Trial* a, const Trial* b) { return a->cost < b->cost; });
    std::set<std::vector<std::string_view>> known;
    for (Trial* trial : passing) {
        if (known.count(axes_of(search, *trial)) == 1) continue;
        if (mending(search) >= enough || search.reviews == most_reviews || search.stopped()) return;
        review_whole(search, *trial);
        if (trial->failing == 0) known.insert(axes_of(search, *trial));
    }
}

/// What mended the first cause before what did not, then what leaves least kinds of failure, then what leaves the worst
/// ratio least, then the cheapest.
void keep_best(std::vector<Trial>& trials) {
    std::stable_sort(trials.begin(), trials.end(), [](const Trial& a, const Trial& b) {
        return std::tuple(a.stuck, a.limits.size(), a.worst, a.cost) <
               std::tuple(b.stuck, b.limits.size(), b.worst, b.cost);
    });
    if (trials.size() > kept_each_step) trials.erase(trials.begin() + kept_each_step, trials.end());
}

/// Where nothing lets it hold: what came nearest, as far as reviews are left.
void review_nearest(Search& search, std::vector<Trial>& nearest) {
    for (Trial& trial : nearest) {
        if (search.remedies.size() >= enough || search.reviews == most_reviews || search.stopped()) return;
        review_whole(search, trial);
    }
}

int rank(Verdict verdict) { return verdict == Verdict::adequate ? 0 : verdict == Verdict::incomplete ? 1 : 2; }

/// Those that let it hold stay in the order they were found in: fewest changes, then cheapest.
void put_in_order(std::vector<Remedy>& remedies) {
    std::stable_sort(remedies.begin(), remedies.end(), [](const Remedy& a, const Remedy& b) {
        return std::tuple(rank(a.verdict), a.failing_results + a.failing_findings) <
               std::tuple(rank(b.verdict), b.failing_results + b.failing_findings);
    });
}

}  // namespace

std::vector<Remedy> find_remedies(const Review& review, const catalog::Catalog& catalog, const review::Stop& stop) {
    if (review.verdict == Verdict::adequate || review.facts.counts.failing() + review.facts.counts.findings_fail == 0)
        return {};
    Search search{review, catalog, stop, menu(review.resolved, catalog)};
    Trial original;
    original.resolved = review.resolved;
    note_failures(original, review);
    std::vector<Trial> kept{original}, nearest;
    for (std::size_t together = 1; together <= most_together && mending(search) == 0; ++together) {
        std::vector<Trial> trials;
        for (const Trial& from : kept) {
            for (Trial& trial : with_one_more(search, from)) trials.push_back(std::move(trial));
        }
        review_those_that_pass(search, trials);
        // What holds, or passed the probe alone, is not built on.
        trials.erase(std::remove_if(trials.begin(), trials.end(), [](const Trial& one) { return one.failing == 0; }),
                     trials.end());
        keep_best(trials);
        if (!trials.empty()) nearest = trials;
        kept = std::move(trials);
        if (search.stopped() || kept.empty()) break;
    }
    if (search.remedies.empty()) review_nearest(search, nearest);
    put_in_order(search.remedies);
    return std::move(search.remedies);
}

}  // namespace toehold::search

#include "search/remedies/remedies.h"

#include "demand/kept.h"
#include "search/remedies/menu.h"
#include "search/remedies/trial.h"

#include <algorithm>
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
    demand::Kept& kept;  ///< between trials
    std::vector<Change> changes;
    Trial original;
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

/// Fewer kinds of failure, else fewer of them, else the same ones by less: an anchor that now reaches a block has
/// checks it did not have before.
bool helps(const Trial& trial, const Trial& original) {
    const auto failures = [](const Trial& one) { return std::tuple(one.limits.size(), one.failing); };
    constexpr double notably = 0.95;
    if (failures(trial) != failures(original)) return failures(trial) < failures(original);
    return trial.worst < notably * original.worst;
}

/// Under every push, and what fails then in place of what the probe said.
void review_whole(Search& search, Trial& trial) {
    ++search.reviews;
    const Review after =
        review::evaluate(trial.resolved, demand::find_demand(trial.resolved, demand::Sampling::whole(), &search.kept),
                         search.review.input_sha256);
    note_failures(trial, after);
    if (!after.demand) return;
    Remedy remedy = remedy_of(trial, search.changes, after);
    if (!search.review.demand || helps(trial, search.original)) search.remedies.push_back(std::move(remedy));
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

/// Numbers of the changes that bear on what the trial must mend first, or where none does (the post fails), on whatever
/// else fails; without those that the trial's own exclude.
std::vector<std::size_t> next_changes(const Search& search, const Trial& from) {
    const model::MountKind mount = kind(search.review.resolved.detail.mount);
    std::vector<std::size_t> on_first, on_any;
    for (std::size_t change = 0; change < search.changes.size(); ++change) {
        if (excludes(search, from, change)) continue;
        const auto bears = [&](const std::string& limit) { return bears_on(search.changes[change], limit, mount); };
        if (bears(from.first)) on_first.push_back(change);
        if (std::any_of(from.limits.begin(), from.limits.end(), bears)) on_any.push_back(change);
    }
    return on_first.empty() ? on_any : on_first;
}

/// The trial with this change too, probed; absent where they do not go together, were tried before, or no probe is
/// left.
std::optional<Trial> with(Search& search, const Trial& from, std::size_t change) {
    std::vector<std::size_t> together = from.changes;
    together.insert(std::upper_bound(together.begin(), together.end(), change), change);
    if (search.probes == most_probes || search.stopped() || !search.tried.insert(together).second) return std::nullopt;
    std::optional<Trial> trial = changed(search.review.resolved, search.changes, together, search.catalog);
    if (!trial) return std::nullopt;
    ++search.probes;
    probe(*trial, search.kept);
    trial->stuck = trial->first == from.first;
    return trial;
}

/// Of steps of one kind the largest is tried first, and the smaller ones only where it mends what is to be mended
/// first, up to the first of them that does.
void try_steps(Search& search, const Trial& from, const std::vector<std::size_t>& steps, std::vector<Trial>& trials) {
    std::optional<Trial> largest = with(search, from, steps.back());
    const bool mended = largest && !largest->stuck;
    for (std::size_t step = 0; mended && step + 1 < steps.size(); ++step) {
        std::optional<Trial> smaller = with(search, from, steps[step]);
        const bool as_good = smaller && !smaller->stuck;
        if (smaller) trials.push_back(std::move(*smaller));
        if (as_good) break;
    }
    if (largest) trials.push_back(std::move(*largest));
}

/// The trial with one more change, each of those that may come next in turn.
std::vector<Trial> with_one_more(Search& search, const Trial& from) {
    std::vector<Trial> more;
    const std::vector<std::size_t> next = next_changes(search, from);
    for (std::size_t at = 0; at < next.size();) {
        const std::string_view kind = search.changes[next[at]].steps;
        std::vector<std::size_t> steps{next[at++]};
        while (!kind.empty() && at < next.size() && search.changes[next[at]].steps == kind) steps.push_back(next[at++]);
        try_steps(search, from, steps, more);
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
    std::set<std::vector<std::string_view>> known;
    for (Trial& trial : nearest) {
        if (!known.insert(axes_of(search, trial)).second) continue;
        if (search.remedies.size() >= enough || search.reviews == most_reviews || search.stopped()) return;
        review_whole(search, trial);
    }
}

int rank(Verdict verdict) { return verdict == Verdict::adequate ? 0 : verdict == Verdict::incomplete ? 1 : 2; }

/// Beside what mends the detail nobody needs what does not.
void leave_out_failures(std::vector<Remedy>& remedies) {
    if (std::none_of(remedies.begin(), remedies.end(), mends)) return;
    remedies.erase(std::remove_if(remedies.begin(), remedies.end(), [](const Remedy& one) { return !mends(one); }),
                   remedies.end());
}

/// Those that let it hold stay in the order they were found in: fewest changes, then cheapest.
void put_in_order(std::vector<Remedy>& remedies) {
    std::stable_sort(remedies.begin(), remedies.end(), [](const Remedy& a, const Remedy& b) {
        return std::tuple(rank(a.verdict), a.failing_results + a.failing_findings) <
               std::tuple(rank(b.verdict), b.failing_results + b.failing_findings);
    });
}

}  // namespace

std::vector<Remedy> find_remedies(const Review& review, const catalog::Catalog& catalog, const review::Stop& stop,
                                  demand::Kept* given) {
    if (review.verdict == Verdict::adequate || review.facts.counts.failing() + review.facts.counts.findings_fail == 0)
        return {};
    Trial original;
    original.resolved = review.resolved;
    note_failures(original, review);
    demand::Kept own;
    Search search{review, catalog, stop, given != nullptr ? *given : own, menu(review.resolved, catalog), original};
    std::vector<Trial> kept{std::move(original)}, nearest;
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
    leave_out_failures(search.remedies);
    put_in_order(search.remedies);
    return std::move(search.remedies);
}

}  // namespace toehold::search

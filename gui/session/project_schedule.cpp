// The schedule of a project's posts in the order wished.
#include "review/project_review.h"
#include "session/project_session.h"

#include <algorithm>
#include <map>
#include <tuple>

namespace toehold::session {
namespace {

using format::Phrase;
using format::phrase;

/// The largest of the lines the post stands in, as `review::share_of`; lives as long as its review does.
std::shared_ptr<const review::PostShare> share_of(const std::shared_ptr<const review::ProjectReview>& review,
                                                  const std::string& post) {
    if (review == nullptr) return nullptr;
    const review::PostShare* largest = nullptr;
    for (const review::LineReview& line : review->lines) {
        if (!line.rail || !line.unsolved.empty()) continue;
        for (const review::PostShare& one : line.posts) {
            if (one.post == post && (largest == nullptr || one.share > largest->share)) largest = &one;
        }
    }
    return largest == nullptr ? nullptr : std::shared_ptr<const review::PostShare>(review, largest);
}

/// Inadequate, incomplete, not reviewed yet, adequate.
int rank(const ScheduleEntry& entry) {
    if (entry.outcome == nullptr) return 2;
    switch (entry.outcome->verdict) {
        case review::Verdict::inadequate:
            return 0;
        case review::Verdict::incomplete:
            return 1;
        case review::Verdict::adequate:
            break;
    }
    return 3;
}

/// Posts that stand together: adequate ones do, whatever is nearest its limit.
using Group = std::pair<int, std::string>;
Group group_of(const ScheduleEntry& entry) {
    const int place = rank(entry);
    return {place, place < 2 ? entry.outcome->cause.id : std::string()};
}

Phrase title_of(const ScheduleEntry& entry) {
    if (entry.outcome == nullptr) return phrase("Not reviewed yet");
    if (entry.outcome->verdict == review::Verdict::adequate) return phrase("All checks pass");
    return entry.outcome->cause.id.empty() ? phrase("No check could be made") : entry.outcome->cause.title;
}

void group_by_cause(std::vector<ScheduleEntry>& entries) {
    std::map<Group, std::size_t> sizes;
    for (const ScheduleEntry& entry : entries) ++sizes[group_of(entry)];
    const auto key = [&sizes](const ScheduleEntry& entry) {
        const Group group = group_of(entry);
        return std::tuple(group.first, -static_cast<long>(sizes[group]), group.second);
    };
    std::stable_sort(entries.begin(), entries.end(),
                     [&key](const ScheduleEntry& one, const ScheduleEntry& other) { return key(one) < key(other); });
    for (std::size_t at = 0; at < entries.size(); ++at) {
        const Group group = group_of(entries[at]);
        if (at > 0 && group_of(entries[at - 1]) == group) continue;
        const std::size_t posts = sizes[group];
        entries[at].heading = posts == 1 ? phrase("{}: 1 post", title_of(entries[at]))
                                         : phrase("{}: {} posts", title_of(entries[at]), posts);
    }
}

}  // namespace

std::shared_ptr<const solving::PostOutcome> outcome_in(const PostOutcomes& outcomes, const std::string& post) {
    const auto found =
        std::find_if(outcomes.begin(), outcomes.end(), [&post](const auto& one) { return one->post == post; });
    return found == outcomes.end() ? nullptr : *found;
}

std::vector<ScheduleEntry> ProjectSession::schedule() const {
    std::vector<ScheduleEntry> entries;
    for (const model::PlacedPost& post : project().posts) {
        ScheduleEntry entry;
        entry.post = post.id;
        entry.mount = post.mount;
        entry.outcome = outcome_in(fresh_, post.id);
        entry.stale = entry.outcome == nullptr;
        if (entry.stale) entry.outcome = outcome_in(stale_, post.id);
        entry.share = share_of(review_, post.id);
        entries.push_back(std::move(entry));
    }
    if (order_ == ScheduleOrder::first_cause) group_by_cause(entries);
    return entries;
}

}  // namespace toehold::session

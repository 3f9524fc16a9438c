#include "search/run/clashes.h"

#include "model/validate.h"

#include <algorithm>
#include <map>
#include <string>
#include <tuple>
#include <utility>

namespace toehold::search {
namespace {

using model::BaseDetail;

/// Options by axis, as flags.
using Options = std::vector<std::vector<bool>>;

Options none_of(const Space& space) {
    Options none;
    for (const Axis& axis : space.axes) none.emplace_back(axis.options.size(), false);
    return none;
}

/// A refusal, and the options of the axes before it that it was met with.
struct Met {
    Clash clash;
    Options before;
};

/// Axis, option and reason in English; the details that are none come last.
using Key = std::tuple<std::size_t, std::size_t, std::string>;

/// Goes through the space as a tree: what is refused along one axis is so for every option of the axes after it.
class Walk {
  public:
    Walk(const Space& space, const catalog::Catalog& catalog, const Judged& judged,
         const std::vector<Judgement>& details)
        : space_(space), catalog_(catalog), judged_(judged), details_(details) {
        for (const Axis& axis : space.axes) tried_.emplace_back(axis.options.size(), none_of(space));
        tried_.emplace_back(1, none_of(space));  // whole candidates
    }

    std::vector<Clash> found() {
        visit(space_.base.detail, 0, judged_.candidates(), judged_.counts().judged);
        std::vector<Clash> all;
        for (auto& [key, met] : met_) {
            met.clash.with = depends_on(met, std::get<0>(key), std::get<1>(key));
            all.push_back(std::move(met.clash));
        }
        return all;
    }

  private:
    /// How many of these are judged.
    [[nodiscard]] Candidate judged_in(Candidate first, Candidate count) const {
        if (judged_.counts().left() == 0) return count;
        Candidate judged = 0;
        for (Candidate candidate = first; candidate < first + count; ++candidate)
            judged += judged_.contains(candidate) ? 1U : 0U;
        return judged;
    }

    /// How many of these are judged to be details.
    [[nodiscard]] Candidate details_in(Candidate first, Candidate count) const {
        const auto before = [](const Judgement& one, Candidate number) { return one.candidate < number; };
        const auto from = std::lower_bound(details_.begin(), details_.end(), first, before);
        const auto to = std::lower_bound(from, details_.end(), first + count, before);
        return static_cast<Candidate>(to - from);
    }

    /// The candidates that begin with the choices so far, whose numbers are `count` from `first` on; `judged` of them.
    void visit(const BaseDetail& detail, Candidate first, Candidate count, Candidate judged) {
        const Candidate none = judged - details_in(first, count);
        const std::size_t axis = chosen_.size();
        if (none == 0 && judged > 0) note_all_tried();
        if (none == 0) return;
        if (axis == space_.axes.size()) {
            note_tried(axis, 0);
            note(axis, 0, why_none(detail), none);
            return;
        }
        const Candidate each = count / space_.axes[axis].options.size();
        for (std::size_t option = 0; option < space_.axes[axis].options.size(); ++option) {
            const Candidate begin = first + option * each, judged_there = judged_in(begin, each);
            if (judged_there == 0) continue;
            note_tried(axis, option);
            BaseDetail changed = detail;
            const Applied applied = space_.axes[axis].options[option].apply(changed);
            if (!applied) {
                note(axis, option, applied, judged_there);
                continue;
            }
            chosen_.push_back(option);
            visit(changed, begin, each, judged_there);
            chosen_.pop_back();
        }
    }

    /// This option after the choices so far.
    void note_tried(std::size_t axis, std::size_t option) {
        for (std::size_t before = 0; before < chosen_.size(); ++before)
            tried_[axis][option][before][chosen_[before]] = true;
    }

    /// The choices so far go with every option that comes after them.
    void note_all_tried() {
        for (std::size_t axis = chosen_.size(); axis < tried_.size(); ++axis)
            for (std::size_t option = 0; option < tried_[axis].size(); ++option) {
                note_tried(axis, option);
                for (std::size_t between = chosen_.size(); between < axis; ++between)
                    tried_[axis][option][between].assign(space_.axes[between].options.size(), true);
            }
    }

    void note(std::size_t axis, std::size_t option, const Applied& refusal, Candidate candidates) {
        if (refusal) return;
        Met& met = met_[Key{axis, option, format::english(refusal.why)}];
        if (met.before.empty()) met.before = none_of(space_);
        if (axis < space_.axes.size()) met.clash.choice = Choice{axis, option};
        met.clash.why = refusal.why;
        met.clash.meaningless = refusal.meaningless;
        met.clash.candidates += candidates;
        for (std::size_t before = 0; before < axis; ++before) met.before[before][chosen_[before]] = true;
    }

    /// What `check` says of a detail it does not take.
    [[nodiscard]] Applied why_none(const BaseDetail& detail) const {
        model::Problems problems = model::validate(detail);
        if (problems.empty()) problems = catalog::resolve(detail, catalog_).problems;
        return problems.empty() ? Applied{} : refused(problems.front().message);
    }

    [[nodiscard]] std::vector<Choice> depends_on(const Met& met, std::size_t axis, std::size_t option) const {
        std::vector<Choice> with;
        for (std::size_t before = 0; before < axis; ++before) {
            if (met.before[before] == tried_[axis][option][before]) continue;
            for (std::size_t other = 0; other < met.before[before].size(); ++other)
                if (met.before[before][other]) with.push_back({before, other});
        }
        return with;
    }

    const Space& space_;
    const catalog::Catalog& catalog_;
    const Judged& judged_;
    const std::vector<Judgement>& details_;
    std::vector<std::size_t> chosen_;
    std::map<Key, Met> met_;
    std::vector<std::vector<Options>>
        tried_;  ///< of each axis and option, the options before it that it was tried with
};

}  // namespace

std::vector<Clash> clashes(const Space& space, const catalog::Catalog& catalog, const Judged& judged,
                           const std::vector<Judgement>& details) {
    std::vector<Clash> all = Walk(space, catalog, judged, details).found();
    std::stable_sort(all.begin(), all.end(), [](const Clash& a, const Clash& b) {
        return a.meaningless != b.meaningless ? b.meaningless : a.candidates > b.candidates;
    });
    return all;
}

}  // namespace toehold::search

#include "search/run/judged.h"

#include <algorithm>
#include <stdexcept>
#include <utility>

namespace toehold::search {

void Counts::add(const Judgement& judgement) {
    ++judged;
    if (judgement.holds) ++found;
    ++by_stage.at(static_cast<std::size_t>(judgement.stage));
}

Judged::Judged(Candidate candidates) {
    if (candidates > most_candidates) throw std::length_error("a space of too many candidates");
    known_.resize(static_cast<std::size_t>(candidates), false);
    counts_.candidates = candidates;
}

void Judged::add(Judgement judgement) {
    const auto place = static_cast<std::size_t>(judgement.candidate);
    if (known_.at(place)) return;
    known_[place] = true;
    counts_.add(judgement);
    if (judgement.stage != Stage::choice) judgements_.push_back(std::move(judgement));
}

std::vector<Judgement> Judged::sorted() const {
    std::vector<Judgement> all = judgements_;
    std::sort(all.begin(), all.end(), [](const Judgement& a, const Judgement& b) { return a.candidate < b.candidate; });
    return all;
}

}  // namespace toehold::search

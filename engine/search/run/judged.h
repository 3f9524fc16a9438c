#pragma once
// What is known of a space so far: which candidates are judged, and how.
#include "search/judge/judge.h"

#include <array>
#include <vector>

namespace toehold::search {

/// The largest space that is searched at once: a bit for each candidate and some 140 bytes for each that is a detail.
/// A larger one is spread over workers part by part, or asked for with fewer values.
inline constexpr Candidate most_candidates = 20'000'000;

/// How many candidates were judged, by the stage that decided.
struct Counts {
    Candidate candidates = 0;                ///< of the space
    Candidate judged = 0;                    ///< of those
    Candidate found = 0;                     ///< hold
    std::array<Candidate, 4> by_stage = {};  ///< judged, by `Stage`; those that hold are in the last
    [[nodiscard]] Candidate left() const { return candidates - judged; }
    void add(const Judgement& judgement);
};

class Judged {
  public:
    /// Nothing is judged yet. Throws std::length_error beyond `most_candidates`.
    explicit Judged(Candidate candidates);

    /// A second judgement of a candidate is passed over. Throws std::out_of_range for one the space does not have.
    void add(Judgement judgement);
    [[nodiscard]] bool contains(Candidate candidate) const { return known_.at(static_cast<std::size_t>(candidate)); }
    [[nodiscard]] Candidate candidates() const { return known_.size(); }
    /// Which candidates are judged, by their numbers.
    [[nodiscard]] const std::vector<bool>& known() const { return known_; }
    [[nodiscard]] const Counts& counts() const { return counts_; }
    /// Those beyond the stage `choice`, in the order of their candidates.
    [[nodiscard]] std::vector<Judgement> sorted() const;

  private:
    std::vector<bool> known_;
    std::vector<Judgement> judgements_;  ///< without those of the stage `choice`, which say nothing more
    Counts counts_;
};

}  // namespace toehold::search

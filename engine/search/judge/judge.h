#pragma once
// Whether a candidate holds: by the whole engine, or before that by something cheaper that cannot be wrong about a
// failure. The stages, from cheap to dear, and why a candidate that fails at one fails under the whole engine too:
//
//   1. choice   its choices do not go together, model::validate finds a problem with the detail, or catalog::resolve
//               finds an id no catalog knows: a detail that `check` would not take.
//   2. finding  a finding rule that looks at the detail alone fails it. The whole engine runs the same rules on the
//               same values (review::evaluate), and one finding that fails makes its verdict.
//   3. probe    a check fails under some of the pushes and one stiffness (demand::Sampling::probe()), by more than the
//               margin `probe_margin`. The whole engine solves those pushes too, and a check takes its worst state.
//   4. whole    review::evaluate, whose verdict is the judgement. Only what is adequate holds.
#include "catalog/catalog.h"
#include "catalog/resolve.h"
#include "model/part.h"
#include "search/space/space.h"

#include <memory>
#include <optional>
#include <string>
#include <string_view>

namespace toehold::search {

/// `Judgement::limit` where the base overturns, as the finding of a review, and where the engine gives no number for
/// the detail: a solve that misses equilibrium, or a mesh that stays too coarse.
inline constexpr const char* no_equilibrium = "no-equilibrium";
inline constexpr const char* not_solved = "not-solved";

enum class Stage { choice, finding, probe, whole };

/// The detail as `check` would take it; absent where it would not.
[[nodiscard]] std::optional<catalog::Resolved> sound(const model::BaseDetail& detail, const catalog::Catalog& catalog);

/// `choice`, `finding`, `probe`, `whole`: for files and JSON.
[[nodiscard]] std::string_view word(Stage stage);

struct Judgement {
    Candidate candidate = 0;
    Stage stage = Stage::choice;  ///< that decided
    bool holds = false;           ///< adequate by the whole engine
    /// Id of the check or finding that limits it: what failed first where it does not hold, what governs where it does.
    /// Empty where the choices do not go together or make no detail that `check` would take.
    std::string limit = {};
    model::PartId part = {};  ///< that check or finding is about
    /// Demand over capacity of that check; infinite where there is no load path; 0 of a finding and of a check that
    /// lacks what it needs. At the probe it is of the first failing check that was met, not of the worst.
    double ratio = 0.0;
    friend bool operator==(const Judgement&, const Judgement&) = default;
};

/// What one worker keeps from candidate to candidate of one space, so that what neighbors share is done once. A
/// judgement is the same with and without it. One thread at a time.
class Judge {
  public:
    /// Both outlive this.
    Judge(const Space& space, const catalog::Catalog& catalog);
    ~Judge();
    Judge(const Judge&) = delete;
    Judge& operator=(const Judge&) = delete;
    Judge(Judge&&) = delete;
    Judge& operator=(Judge&&) = delete;

    /// Throws what `review::evaluate` throws: std::runtime_error for a fault of the program; and as `choices` does.
    [[nodiscard]] Judgement judge(Candidate candidate);

  private:
    struct Kept;
    std::unique_ptr<Kept> kept_;
};

/// One candidate alone, as Judge does.
[[nodiscard]] Judgement judge(const Space& space, const catalog::Catalog& catalog, Candidate candidate);

}  // namespace toehold::search

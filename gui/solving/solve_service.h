#pragma once
// Solves beside the window: the newest request wins, a quick answer comes first, the full review when the hand rests.
#include "demand/preview.h"
#include "format/phrase.h"
#include "model/base_detail.h"
#include "model/problem.h"

#include <cstdint>
#include <functional>
#include <memory>
#include <optional>
#include <string>

namespace toehold::catalog {
struct Catalog;
struct Resolved;
}  // namespace toehold::catalog
namespace toehold::review {
struct Review;
}

namespace toehold::solving {

struct Request {
    std::uint64_t revision =
        0;  ///< of the detail; results carry it back. Grows with every request that changes the detail
    model::BaseDetail detail;
    std::optional<double> direction_rad;  ///< of the push shown; absent: the one that pulls most
    bool moving = false;                  ///< a hand is on it: only the quick answer is asked for
};

enum class Stage {
    quick,      ///< nominal stiffness: `quick` is set
    evaluated,  ///< every check has run: `review` is set, without assumptions and remedies
    complete,   ///< with assumptions, cautions and remedies
};

/// The quick answer.
struct Quick {
    demand::PolarEnvelope polar;
    demand::PushResult push;
    std::vector<demand::LoadCase> cases;
};

struct Result {
    std::uint64_t revision = 0;
    Stage stage = Stage::quick;
    model::Problems problems;  ///< why there is nothing to solve; then nothing below is set
    format::Phrase failure;    ///< why no number can be given (it turns over, a solve missed its residual); may stand
                               ///< beside a review
    std::shared_ptr<const catalog::Resolved> resolved;
    std::shared_ptr<const Quick> quick;
    std::shared_ptr<const review::Review> review;
};

/// Two threads, one for quick answers, one for reviews. A review that an edit has overtaken is not delivered.
class SolveService {
  public:
    /// `deliver` is called on the service's threads, never after the destructor has returned. `rest_ms`: how long the
    /// newest request must stand before a review of it is begun. The catalog outlives the service.
    SolveService(const catalog::Catalog& catalog, std::function<void(Result)> deliver, int rest_ms = 120);
    ~SolveService();  ///< waits for what runs, which takes at most one check or one remedy
    SolveService(const SolveService&) = delete;
    SolveService& operator=(const SolveService&) = delete;

    /// Never waits. A request whose revision was reviewed already and whose direction alone is new gets a quick answer
    /// only.
    void submit(Request request);

  private:
    struct Threads;
    std::unique_ptr<Threads> threads_;
};

/// What the service does for a request, on the caller's thread: for tests and for the benchmark.
[[nodiscard]] Result solve_quick(const Request& request, const catalog::Catalog& catalog);
[[nodiscard]] Result solve_review(const Request& request, const catalog::Catalog& catalog);

}  // namespace toehold::solving

#pragma once
// A search for sizes beside the window, on every core.
#include "catalog/catalog.h"
#include "format/phrase.h"
#include "search/run/run.h"
#include "solving/errand.h"

#include <cstdint>
#include <functional>
#include <memory>

namespace toehold::solving {

/// How far a search is, or what came of it.
struct SizingNews {
    std::uint64_t search = 0;  ///< as `begin` numbered it
    search::Progress progress;
    std::shared_ptr<const search::Outcome> outcome;  ///< absent: it is still running, or failed
    format::Phrase failure;                          ///< one sentence; empty: none
};

class Sizing {
  public:
    /// `deliver` is called on the search's threads, never after the destructor has returned. The catalog outlives this.
    Sizing(const catalog::Catalog& catalog, std::function<void(SizingNews)> deliver);

    /// Never waits. A search that still runs is stopped, and nothing more is heard of it.
    std::uint64_t begin(search::Space space);
    /// Never waits. What was found till then is delivered as the outcome, which says that it was stopped.
    void stop();

  private:
    struct Told;
    const catalog::Catalog& catalog_;
    std::function<void(SizingNews)> deliver_;
    std::uint64_t last_ = 0;
    std::shared_ptr<Told> told_;  ///< of the search that runs
    Errand errand_;               ///< last, so that what it uses outlives it
};

}  // namespace toehold::solving

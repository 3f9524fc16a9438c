#pragma once
// Where a dragged thing may stand so that every check passes, looked for beside the window.
#include "catalog/catalog.h"
#include "editing/reach/reach.h"
#include "model/base_detail.h"
#include "model/place.h"
#include "solving/errand.h"
#include "study/region.h"

#include <cstdint>
#include <functional>
#include <memory>
#include <optional>

namespace toehold::solving {

/// An answer, each better than the one before.
struct RegionNews {
    std::uint64_t number = 0;  ///< as `begin` numbered it
    editing::Dragged dragged;
    study::Region region;
    bool plane = true;                          ///< as of study::Reach
    std::optional<model::PlanAxis> along = {};  ///< as of study::Reach
    double now_in = 0.0;                        ///< where it stood, of a reach over one coordinate
    bool last = false;                          ///< nothing better comes
    bool looked = true;  ///< false: the detail cannot be solved or has no such thing, or the search broke off
};

class Regions {
  public:
    /// `deliver` is called on the thread that looks, never after the destructor has returned. The catalog outlives
    /// this.
    Regions(const catalog::Catalog& catalog, std::function<void(std::shared_ptr<const RegionNews>)> deliver);

    /// Never waits; what was looked for before is left where it was, and gone on with where the same thing is taken
    /// again, wherever it stands by then. Unless stopped, a last answer always comes.
    std::uint64_t begin(model::BaseDetail detail, editing::Dragged dragged);
    void stop();  ///< never waits; nothing more is delivered

    ~Regions();

  private:
    struct Begun;
    const catalog::Catalog& catalog_;
    std::function<void(std::shared_ptr<const RegionNews>)> deliver_;
    std::uint64_t last_ = 0;
    std::unique_ptr<Begun> begun_;  ///< the errand's own
    Errand errand_;                 ///< last, so that what it uses outlives it
};

}  // namespace toehold::solving

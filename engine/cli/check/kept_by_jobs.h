#pragma once
// What jobs keep from detail to detail (demand/kept.h): each job has one to itself while it works, whichever is free.
#include "demand/kept.h"

#include <memory>
#include <mutex>
#include <utility>
#include <vector>

namespace toehold::cli {

class KeptByJobs {
  public:
    /// What `work(demand::Kept&)` gives; on any thread. What it throws is passed on.
    template <class Work>
    [[nodiscard]] auto with(Work&& work) {
        std::unique_ptr<demand::Kept> kept = take();
        auto result = std::forward<Work>(work)(*kept);
        give_back(std::move(kept));
        return result;
    }

  private:
    [[nodiscard]] std::unique_ptr<demand::Kept> take() {
        const std::scoped_lock lock(mutex_);
        if (free_.empty()) return std::make_unique<demand::Kept>();
        std::unique_ptr<demand::Kept> kept = std::move(free_.back());
        free_.pop_back();
        return kept;
    }
    void give_back(std::unique_ptr<demand::Kept> kept) {
        const std::scoped_lock lock(mutex_);
        free_.push_back(std::move(kept));
    }

    std::mutex mutex_;
    std::vector<std::unique_ptr<demand::Kept>> free_;
};

}  // namespace toehold::cli

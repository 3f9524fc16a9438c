#pragma once
// What a solve service delivers, kept in order of arrival, for a test to wait for.
#include "solving/solve_service.h"

#include <chrono>
#include <condition_variable>
#include <mutex>
#include <vector>

namespace toehold::test {

class Collected {
  public:
    void operator()(solving::Result result) {
        const std::lock_guard lock(mutex_);
        results_.push_back(std::move(result));
        changed_.notify_all();
    }
    [[nodiscard]] std::vector<solving::Result> all() const {
        const std::lock_guard lock(mutex_);
        return results_;
    }
    /// False when it has not come in two minutes, which is long on the slowest machine.
    bool wait_for(std::uint64_t revision, solving::Stage stage) {
        std::unique_lock lock(mutex_);
        return changed_.wait_for(lock, std::chrono::minutes(2), [&] {
            for (const solving::Result& result : results_) {
                if (result.revision == revision && result.stage == stage) return true;
            }
            return false;
        });
    }
    [[nodiscard]] std::size_t count(std::uint64_t revision, solving::Stage stage) const {
        std::size_t found = 0;
        for (const solving::Result& result : all())
            found += result.revision == revision && result.stage == stage ? 1 : 0;
        return found;
    }

  private:
    mutable std::mutex mutex_;
    std::condition_variable changed_;
    std::vector<solving::Result> results_;
};

}  // namespace toehold::test

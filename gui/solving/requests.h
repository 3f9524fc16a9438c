#pragma once
// What waits to be solved: one request for a quick answer, one for a review, and which revision is the newest. Shared
// by the thread that submits and the two that solve; every member may be called from any of them.
#include "solving/solve_service.h"

#include <chrono>
#include <condition_variable>
#include <mutex>
#include <optional>

namespace toehold::solving {

class Requests {
  public:
    explicit Requests(std::chrono::milliseconds rest) : rest_(rest) {}

    void submit(Request request);
    void close();  ///< wakes everybody who waits; nothing more is handed out

    /// Waits for the newest request that has no quick answer yet. Absent: closed.
    [[nodiscard]] std::optional<Request> next_quick();
    /// Waits until the newest request has rested, no hand is on it, and its revision has not been handed out for
    /// review. Absent: closed.
    [[nodiscard]] std::optional<Request> next_review();

    [[nodiscard]] bool overtaken(std::uint64_t revision) const;  ///< there is a newer revision, or all is closed
    [[nodiscard]] bool closed() const;

  private:
    using Clock = std::chrono::steady_clock;
    const std::chrono::milliseconds rest_;
    mutable std::mutex mutex_;
    std::condition_variable for_quick_, for_review_;
    std::optional<Request> quick_, review_;
    Clock::time_point rested_at_;  ///< of `review_`
    std::uint64_t newest_ = 0;
    std::optional<std::uint64_t> reviewed_;  ///< revision handed out last
    bool closed_ = false;
};

}  // namespace toehold::solving

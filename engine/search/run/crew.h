#pragma once
// Threads that judge the candidates of a space block by block, and hand over what they find as they go.
#include "catalog/catalog.h"
#include "search/run/judged.h"

#include <atomic>
#include <chrono>
#include <condition_variable>
#include <cstddef>
#include <exception>
#include <functional>
#include <mutex>
#include <thread>
#include <vector>

namespace toehold::search {

class Crew {
  public:
    /// Begins at once with what `known` does not contain. All four outlive this. `stop` is asked by every thread
    /// between candidates.
    Crew(const Space& space, const catalog::Catalog& catalog, const std::vector<bool>& known,
         const std::function<bool()>& stop, std::size_t threads);
    ~Crew();
    Crew(const Crew&) = delete;
    Crew& operator=(const Crew&) = delete;
    Crew(Crew&&) = delete;
    Crew& operator=(Crew&&) = delete;

    /// What was judged since the last call, after waiting for something for at most this long; empty: nothing.
    [[nodiscard]] std::vector<Judgement> take(std::chrono::milliseconds at_most);
    /// Every thread has ended and everything was taken. Throws what judging threw on one of them.
    [[nodiscard]] bool done();

  private:
    void work();
    void judge_block(Judge& judge, Candidate first, std::vector<Judgement>& judgements);
    void hand_over(std::vector<Judgement> judgements);

    const Space& space_;
    const catalog::Catalog& catalog_;
    const std::vector<bool>& known_;
    const std::function<bool()>& stop_;
    std::atomic<Candidate> next_{0};
    std::atomic<bool> stopped_{false};
    std::mutex mutex_;  ///< of what follows
    std::condition_variable something_;
    std::vector<Judgement> ready_;
    std::exception_ptr fault_;
    std::size_t working_ = 0;
    std::vector<std::jthread> threads_;  ///< last: joined before the rest goes
};

}  // namespace toehold::search

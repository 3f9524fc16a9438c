#pragma once
// Work on several threads whose results are taken in order, as soon as each and all before it are done.
#include <atomic>
#include <future>
#include <thread>
#include <vector>

namespace toehold::cli {

/// Calls `work(index)` for 0 to count - 1 on `threads` threads, where that is one on this one, and `take(index,
/// result)` on this one in that order. What `work` throws is thrown here when its turn comes; work not begun by then is
/// not done.
template <class Work, class Take>
void ordered_parallel_map(std::size_t count, std::size_t threads, const Work& work, const Take& take) {
    if (threads < 2) {
        for (std::size_t index = 0; index < count; ++index) take(index, work(index));
        return;
    }
    using Result = decltype(work(std::size_t{}));
    std::vector<std::promise<Result>> promises(count);
    std::atomic<std::size_t> next{0};
    const auto work_on = [&] {
        for (std::size_t index = next++; index < count; index = next++) {
            try {
                promises[index].set_value(work(index));
            } catch (...) {
                promises[index].set_exception(std::current_exception());
            }
        }
    };
    // Joined at the end of the scope, whatever `take` throws.
    struct Crew {
        std::atomic<std::size_t>& next;
        std::size_t count;
        std::vector<std::jthread> members = {};
        ~Crew() { next = count; }
    } crew{next, count};
    for (std::size_t thread = 0; thread < threads; ++thread) crew.members.emplace_back(work_on);
    for (std::size_t index = 0; index < count; ++index) take(index, promises[index].get_future().get());
}

}  // namespace toehold::cli

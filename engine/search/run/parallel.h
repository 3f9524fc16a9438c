#pragma once
// Pieces of work that do not need each other, on several threads.
#include "demand/kept.h"

#include <algorithm>
#include <atomic>
#include <cstddef>
#include <exception>
#include <functional>
#include <mutex>
#include <thread>
#include <vector>

namespace toehold::search {

/// How long work is run and watched.
struct Run {
    std::size_t jobs = 0;  ///< threads; 0: as many as there are cores
    /// True: what is left may be left out. Asked from several threads.
    std::function<bool()> stop = nullptr;
    /// So many of so many are done; told from one thread at a time.
    std::function<void(std::size_t done, std::size_t all)> progress = nullptr;
};

/// As many as the machine has cores, where none is asked for; never more than there is work, and one at least.
[[nodiscard]] inline std::size_t threads_for(std::size_t count, std::size_t asked_for) {
    const std::size_t cores = std::max<std::size_t>(1, std::thread::hardware_concurrency());
    return std::max<std::size_t>(1, std::min(count, asked_for == 0 ? cores : asked_for));
}

/// Calls `work(index, kept)` for each of 0 to count - 1; false when it was stopped before all were begun. What `work`
/// throws first ends the others and is thrown here. `kept`: one for each thread, for calls in a row; made where there
/// are too few.
template <class Work>
bool for_each_index(std::size_t count, const Run& run, std::vector<demand::Kept>& kept, const Work& work) {
    const std::size_t threads = threads_for(count, run.jobs);
    while (kept.size() < threads) kept.emplace_back();
    std::atomic<std::size_t> next{0};
    std::size_t done = 0;
    std::mutex told;
    std::exception_ptr fault;
    const auto work_on = [&](demand::Kept& own) {
        try {
            for (std::size_t index = next++; index < count; index = next++) {
                if (run.stop && run.stop()) return;
                work(index, own);
                const std::lock_guard lock(told);
                ++done;
                if (run.progress) run.progress(done, count);
            }
        } catch (...) {
            next = count;
            const std::lock_guard lock(told);
            if (!fault) fault = std::current_exception();
        }
    };
    {
        std::vector<std::jthread> others;
        for (std::size_t thread = 1; thread < threads; ++thread) others.emplace_back(work_on, std::ref(kept[thread]));
        work_on(kept.front());
    }
    if (fault) std::rethrow_exception(fault);
    return done == count;
}

/// The same, where nothing is kept for another call.
template <class Work>
bool for_each_index(std::size_t count, const Run& run, const Work& work) {
    std::vector<demand::Kept> kept;
    return for_each_index(count, run, kept, work);
}

}  // namespace toehold::search

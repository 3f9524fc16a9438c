#include "solving/errand.h"

#include <condition_variable>
#include <cstdint>
#include <mutex>
#include <optional>
#include <thread>
#include <utility>

#ifdef __linux__
#include <sys/resource.h>
#include <unistd.h>
#endif

namespace toehold::solving {
namespace {

/// So that a hand on the window never waits behind it. Threads that it begins stand behind too.
void stand_behind() {
#ifdef __linux__
    constexpr int behind = 10;
    static_cast<void>(setpriority(PRIO_PROCESS, static_cast<id_t>(gettid()), behind));
#endif
}

}  // namespace

struct Errand::Thread {
    std::mutex mutex;
    std::condition_variable news;
    std::optional<Work> next;
    std::uint64_t newest = 0;  ///< number of the last errand asked for, or of the last stop
    bool closed = false;
    std::jthread runs;  // last, so that what it uses outlives it

    Thread() {
        runs = std::jthread([this] {
            stand_behind();
            work();
        });
    }
    ~Thread() {
        {
            const std::lock_guard lock(mutex);
            closed = true;
            next.reset();
        }
        news.notify_all();
    }
    Thread(const Thread&) = delete;
    Thread& operator=(const Thread&) = delete;

    void ask(std::optional<Work> work) {
        {
            const std::lock_guard lock(mutex);
            ++newest;
            next = std::move(work);
        }
        news.notify_all();
    }

    void work() {
        for (;;) {
            Work now;
            std::uint64_t number = 0;
            {
                std::unique_lock lock(mutex);
                news.wait(lock, [this] { return closed || next; });
                if (closed) return;
                now = *std::exchange(next, std::nullopt);
                number = newest;
            }
            now([this, number] {
                const std::lock_guard lock(mutex);
                return closed || newest != number;
            });
        }
    }
};

Errand::Errand() : thread_(std::make_unique<Thread>()) {}
Errand::~Errand() = default;

void Errand::begin(Work work) { thread_->ask(std::move(work)); }
void Errand::stop() { thread_->ask(std::nullopt); }

}  // namespace toehold::solving

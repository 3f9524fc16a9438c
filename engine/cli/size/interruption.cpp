#include "cli/size/interruption.h"

#include <atomic>
#include <csignal>
#include <ctime>

namespace toehold::cli {
namespace {

// A signal's handler can reach nothing else; lock-free, so that it may be written there and read by any thread.
std::atomic<bool> asked{false};
std::atomic<std::time_t> asked_at{0};
static_assert(std::atomic<bool>::is_always_lock_free && std::atomic<std::time_t>::is_always_lock_free);

extern "C" void note_interruption(int signal) {
    // A shell or a supervisor may send one wish twice, to the program and to its group.
    constexpr std::time_t one_wish_s = 1;
    const std::time_t now = std::time(nullptr);
    if (asked && now > asked_at + one_wish_s) {
        std::signal(signal, SIG_DFL);
        std::raise(signal);
        return;
    }
    if (!asked) asked_at = now;
    asked = true;
}

}  // namespace

Interruption::Interruption() {
    asked = false;
    std::signal(SIGINT, note_interruption);
    std::signal(SIGTERM, note_interruption);
}

Interruption::~Interruption() {
    std::signal(SIGINT, SIG_DFL);
    std::signal(SIGTERM, SIG_DFL);
}

bool Interruption::asked_for() { return asked; }

}  // namespace toehold::cli

#include "cli/progress.h"

#include <unistd.h>

#include <cstdio>
#include <utility>

namespace toehold::cli {

Progress::Progress(std::string doing, std::size_t count)
    : doing_(std::move(doing)), count_(count), seen_(count > 1 && ::isatty(STDERR_FILENO) != 0) {}

void Progress::show(std::size_t done) {
    if (!seen_) return;
    clear();
    std::fprintf(stderr, "%s: %zu of %zu", doing_.c_str(), done, count_);
    std::fflush(stderr);
    on_screen_ = true;
}

void Progress::clear() {
    if (!on_screen_) return;
    // Erases the line (ECMA-48 EL), which every terminal that is one understands.
    std::fputs("\r\033[K", stderr);
    std::fflush(stderr);
    on_screen_ = false;
}

}  // namespace toehold::cli

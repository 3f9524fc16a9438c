#include "cli/progress.h"

#include <unistd.h>

#include <cstdio>
#include <utility>

namespace toehold::cli {

Progress::Progress(format::Locale locale, std::size_t count)
    : locale_(std::move(locale)), count_(count), seen_(count > 1 && ::isatty(STDERR_FILENO) != 0) {}

void Progress::show(std::size_t done) { show(format::phrase("reviewed: {} of {}", done, count_)); }

void Progress::show(const format::Phrase& words) {
    if (!seen_) return;
    clear();
    std::fputs(format::text(words, locale_).c_str(), stderr);
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

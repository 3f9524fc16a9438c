#include "bench/interleaved.h"

#include <chrono>
#include <ctime>

namespace toehold::bench {
namespace {

double processor_seconds(const std::function<void()>& work) {
    const std::clock_t start = std::clock();
    work();
    return static_cast<double>(std::clock() - start) / CLOCKS_PER_SEC;
}

double wall_seconds(const std::function<void()>& work) {
    const auto start = std::chrono::steady_clock::now();
    work();
    return std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count();
}

}  // namespace

Medians Interleaved::run(std::size_t repetitions) const {
    Medians medians;
    if (repetitions > 1) {
        for (const Timed& one : all_) one.work();
    }
    for (std::size_t repetition = 0; repetition < repetitions; ++repetition) {
        for (const Timed& one : all_)
            medians.add(one.name, one.clock == Clock::wall ? wall_seconds(one.work) : processor_seconds(one.work));
    }
    return medians;
}

}  // namespace toehold::bench

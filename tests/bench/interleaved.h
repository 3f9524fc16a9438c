#pragma once
// Several things timed in turns, so that a slow moment of the machine falls on all alike.
#include "bench/report.h"

#include <functional>
#include <string>
#include <utility>
#include <vector>

namespace toehold::bench {

enum class Clock { processor, wall };

class Interleaved {
  public:
    void add(std::string name, std::function<void()> work, Clock clock = Clock::processor) {
        all_.push_back({std::move(name), std::move(work), clock});
    }
    /// Each once for every repetition. An untimed round comes before the first of several.
    [[nodiscard]] Medians run(std::size_t repetitions) const;

  private:
    struct Timed {
        std::string name;
        std::function<void()> work;
        Clock clock;
    };
    std::vector<Timed> all_;
};

}  // namespace toehold::bench

#pragma once
// Random numbers that a seed settles: the same sequence on every platform and with every library. The generator is the
// 64-bit Mersenne Twister, whose sequence the C++ standard fixes ([rand.predef]: the 10,000th number after the default
// seed is 9981545732273789042); what is made of its bits is written here.
#include <cstdint>
#include <random>

namespace toehold::mechanics {

class RandomNumbers {
  public:
    explicit RandomNumbers(std::uint64_t seed) : bits_(seed) {}

    /// Evenly between 0 and 1, neither of which it ever is: the middle of one of 2^52 equal cells.
    [[nodiscard]] double uniform();
    /// Standard normal, the quantile of one `uniform`; its size is at most 8.21. Platforms may differ in the last
    /// digits of the logarithm, in the tails alone.
    [[nodiscard]] double normal();

  private:
    std::mt19937_64 bits_;
};

}  // namespace toehold::mechanics

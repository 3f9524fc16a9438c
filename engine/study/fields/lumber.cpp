#include "study/fields/groups.h"

#include "model/lumber_size.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cmath>

namespace toehold::study {
namespace {

constexpr std::array<int, 7> nominals = {2, 3, 4, 6, 8, 10, 12};
constexpr double same_in = 1e-3;

bool same_side(double one_in, double other_in) { return std::abs(one_in - other_in) <= same_in; }

/// The lesser side first, as people say it.
std::string name_of(int one, int other) { return fmt::format("{}x{}", std::min(one, other), std::max(one, other)); }

}  // namespace

std::string lumber_name(double one_in, double other_in) {
    for (const int one : nominals) {
        for (const int other : nominals) {
            std::string name = name_of(one, other);
            if (one <= other && model::is_size(name, one_in, other_in)) return name;
        }
    }
    return {};
}

std::vector<Size> lumber_sizes(const LumberSide& side) {
    std::vector<Size> sizes;
    for (const int kept : nominals) {
        for (const int other : nominals) {
            const std::string name = name_of(kept, other);
            const auto dressed = model::dressed_size(name);
            if (!dressed) continue;
            const double first_in = kept <= other ? dressed->first_in : dressed->second_in;
            const double second_in = kept <= other ? dressed->second_in : dressed->first_in;
            if (!same_side(first_in, side.kept_in) || second_in > side.at_most_in + same_in) continue;
            sizes.push_back({second_in, name});
        }
    }
    std::sort(sizes.begin(), sizes.end(), [](const Size& one, const Size& other) { return one.value < other.value; });
    const auto is_own = [&side](const Size& size) { return same_side(size.value, side.now_in); };
    if (std::none_of(sizes.begin(), sizes.end(), is_own)) return {};
    std::find_if(sizes.begin(), sizes.end(), is_own)->value = side.now_in;
    return sizes;
}

}  // namespace toehold::study

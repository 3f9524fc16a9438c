#include "model/foot_sides.h"

#include <algorithm>
#include <array>

namespace toehold::model {
namespace {

struct SideWord {
    std::string_view word;
    bool FootSides::*side;
};
constexpr std::array<SideWord, 4> words{{{"outward", &FootSides::outward},
                                         {"inward", &FootSides::inward},
                                         {"right", &FootSides::right},
                                         {"left", &FootSides::left}}};

}  // namespace

std::vector<std::string> side_words(const FootSides& sides) {
    std::vector<std::string> all;
    for (const SideWord& one : words) {
        if (sides.*(one.side)) all.emplace_back(one.word);
    }
    return all;
}

bool add_side(FootSides& sides, std::string_view word) {
    const auto* const known =
        std::find_if(words.begin(), words.end(), [&](const SideWord& one) { return word == one.word; });
    if (known == words.end()) return false;
    sides.*(known->side) = true;
    return true;
}

}  // namespace toehold::model

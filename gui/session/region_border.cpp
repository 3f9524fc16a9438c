#include "session/region_border.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace toehold::session {
namespace {

using Border = std::vector<study::RegionBorder>;

bool goes_on(const study::RegionBorder& before, const study::RegionBorder& after) {
    return before.to == after.from && before.limit.id == after.limit.id;
}

/// Nothing of its limit ends where it begins.
bool is_beginning(const Border& border, const study::RegionBorder& piece) {
    return std::none_of(border.begin(), border.end(),
                        [&](const study::RegionBorder& before) { return &before != &piece && goes_on(before, piece); });
}

/// From this piece on, as long as one that is not taken yet goes on from the last.
BorderStretch follow(const Border& border, std::size_t first, std::vector<bool>& taken) {
    BorderStretch stretch{border[first].limit, {border[first].from}, 0.0};
    for (std::size_t now = first; now < border.size();) {
        const study::RegionBorder& piece = border[now];
        taken[now] = true;
        if (!(piece.to == piece.from)) stretch.places.push_back(piece.to);
        stretch.long_in += std::hypot(piece.to.x_in - piece.from.x_in, piece.to.y_in - piece.from.y_in);
        std::size_t next = 0;
        while (next < border.size() && (taken[next] || !goes_on(piece, border[next]))) ++next;
        now = next;
    }
    return stretch;
}

}  // namespace

std::vector<BorderStretch> stretches(const Border& border) {
    std::vector<BorderStretch> found;
    std::vector<bool> taken(border.size(), false);
    for (const bool closed : {false, true}) {  // what closes on itself begins anywhere
        for (std::size_t at = 0; at < border.size(); ++at) {
            if (!taken[at] && (closed || is_beginning(border, border[at]))) found.push_back(follow(border, at, taken));
        }
    }
    std::stable_sort(found.begin(), found.end(),
                     [](const BorderStretch& one, const BorderStretch& other) { return one.long_in > other.long_in; });
    return found;
}

}  // namespace toehold::session

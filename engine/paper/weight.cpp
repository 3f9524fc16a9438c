#include "paper/weight.h"

#include "search/score/metal_pieces.h"

#include <fmt/format.h>

namespace toehold::paper {

double plate_weight_lb(const catalog::Resolved& resolved) { return search::cut_pieces(resolved).front().weight_lb; }

std::string weight_words(double weight_lb, units::System system) {
    constexpr double kg_per_lb = 0.45359237;  // exact, by definition of the pound
    return system == units::System::si ? fmt::format("{:.1f} kg", kg_per_lb * weight_lb)
                                       : fmt::format("{:.1f} lb", weight_lb);
}

}  // namespace toehold::paper

#include "paper/site/wording.h"

#include "drawing/annotation/labels.h"
#include "paper/sheet.h"
#include "paper/words.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cmath>

namespace toehold::paper::site {
namespace {

using format::Phrase;
using format::phrase;

constexpr double mm_per_in = 25.4;
constexpr double same_size_in = 0.01;

struct Dressed {
    double actual_in = 0.0;
    int nominal = 0;
};
constexpr std::array<Dressed, 10> dimension_lumber = {
    {{1.5, 2}, {2.5, 3}, {3.5, 4}, {4.5, 5}, {5.5, 6}, {7.25, 8}, {9.25, 10}, {11.25, 12}, {13.25, 14}, {15.25, 16}}};
constexpr std::array<Dressed, 6> timbers = {{{4.5, 5}, {5.5, 6}, {7.5, 8}, {9.5, 10}, {11.5, 12}, {13.5, 14}}};

template <std::size_t Size>
int nominal_of(const std::array<Dressed, Size>& sizes, double actual_in) {
    for (const Dressed& size : sizes) {
        if (std::abs(size.actual_in - actual_in) < same_size_in) return size.nominal;
    }
    return 0;
}

struct CommonNail {
    double diameter_in = 0.0, length_in = 0.0;
    const char* name = "";
};
constexpr std::array<CommonNail, 10> common_nails = {{{0.113, 2.0, "6d"},
                                                      {0.131, 2.5, "8d"},
                                                      {0.148, 3.0, "10d"},
                                                      {0.148, 3.25, "12d"},
                                                      {0.162, 3.5, "16d"},
                                                      {0.192, 4.0, "20d"},
                                                      {0.207, 4.5, "30d"},
                                                      {0.225, 5.0, "40d"},
                                                      {0.244, 5.5, "50d"},
                                                      {0.263, 6.0, "60d"}}};

enum class Lying { square, on_edge, flat };

Lying lying(const model::Member& member) {
    const double piece_in = model::ply_width_in(member);
    const double depth_in = model::piece_depth_in(member);
    if (std::abs(piece_in - depth_in) < same_size_in) return Lying::square;
    return depth_in > piece_in ? Lying::on_edge : Lying::flat;
}

std::string piece_words(double width_in, double depth_in, units::System system) {
    std::string nominal = nominal_size(std::min(width_in, depth_in), std::max(width_in, depth_in));
    if (!nominal.empty()) return nominal;
    return tape_figure(std::min(width_in, depth_in), system) + " x " + tape_words(std::max(width_in, depth_in), system);
}

/// Each layer of a stack has all the pieces side by side.
Phrase stack_words(const model::Member& member, const std::string& piece) {
    Phrase layer = member.plies == 1 ? format::verbatim(piece) : phrase("{} {} side by side", member.plies, piece);
    return member.stack_fastened
               ? phrase("{} layers one on another, screwed to each other, each {}", member.stack, std::move(layer))
               : phrase("{} layers one on another, each {}", member.stack, std::move(layer));
}

}  // namespace

std::string tape_figure(double length_in, units::System system) {
    if (!std::isfinite(length_in)) return "-";
    if (system == units::System::si) return fmt::format("{:.0f}", std::round(length_in * mm_per_in) + 0.0);
    return drawing::length_figure(std::round(16.0 * length_in) / 16.0, system);
}

std::string tape_words(double length_in, units::System system) {
    return tape_figure(length_in, system) + (system == units::System::si ? " mm" : " in");
}

std::string hole_words(double diameter_in, units::System system) {
    if (system == units::System::si) return drawing::length_words(diameter_in, system);
    const double nearest_in = std::round(64.0 * diameter_in) / 64.0;
    constexpr double same_bit_in = 0.0005;
    if (std::abs(nearest_in - diameter_in) < same_bit_in) return sixty_fourths(diameter_in);
    return drawing::length_words(diameter_in, system);
}

std::string nominal_size(double thickness_in, double face_in) {
    constexpr double timber_from_in = 4.5;
    const bool timber = thickness_in > timber_from_in - same_size_in;
    // A timber is dressed green or dry; dry it is as much under its name as dimension lumber.
    const auto nominal = [timber](double side_in) {
        const int green = timber ? nominal_of(timbers, side_in) : 0;
        return green > 0 ? green : nominal_of(dimension_lumber, side_in);
    };
    const int thickness = nominal(thickness_in);
    const int face = nominal(face_in);
    return thickness == 0 || face == 0 ? std::string() : fmt::format("{}x{}", thickness, face);
}

Phrase lumber_words(const model::Member& member, units::System system) {
    const std::string piece = piece_words(model::ply_width_in(member), model::piece_depth_in(member), system);
    const Lying lies = lying(member);
    if (member.stack > 1) return stack_words(member, piece);
    if (member.plies <= 1) {
        return lies == Lying::square    ? format::verbatim(piece)
               : lies == Lying::on_edge ? phrase("{} on edge", piece)
                                        : phrase("{} laid flat", piece);
    }
    Phrase pieces = member.plies == 2   ? phrase("two {} nailed together", piece)
                    : member.plies == 3 ? phrase("three {} nailed together", piece)
                                        : phrase("{} {} nailed together", member.plies, piece);
    return lies == Lying::square    ? std::move(pieces)
           : lies == Lying::on_edge ? phrase("{}, on edge", std::move(pieces))
                                    : phrase("{}, laid flat", std::move(pieces));
}

Phrase actual_words(const model::Member& member, units::System system) {
    return phrase("{} wide x {} deep", tape_figure(member.width_in, system), tape_words(member.depth_in, system));
}

std::string penny_size(double diameter_in, double length_in) {
    constexpr double same_wire_in = 0.0005;
    for (const CommonNail& nail : common_nails) {
        if (std::abs(nail.diameter_in - diameter_in) < same_wire_in &&
            std::abs(nail.length_in - length_in) < same_size_in)
            return nail.name;
    }
    return {};
}

}  // namespace toehold::paper::site

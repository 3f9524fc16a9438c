#include "model/lumber_size.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdlib>

namespace toehold::model {
namespace {

struct Row {
    std::string_view nominal;
    double nominal_in;
    double dressed_in;
};

// Thicknesses that are no whole number from 2 on, PS 20 Table 3 (boards) and Table 4 (dimension lumber).
constexpr std::array<Row, 7> thin_rows{{{"1", 1.0, 0.75},
                                        {"5/4", 1.25, 1.0},
                                        {"1 1/4", 1.25, 1.0},
                                        {"6/4", 1.5, 1.25},
                                        {"1 1/2", 1.5, 1.25},
                                        {"2 1/2", 2.5, 2.0},
                                        {"3 1/2", 3.5, 3.0}}};

constexpr double thinnest_timber_in = 5.0;
constexpr double largest_in = 24.0;

std::string trimmed(std::string_view text) {
    while (!text.empty() && text.front() == ' ') text.remove_prefix(1);
    while (!text.empty() && text.back() == ' ') text.remove_suffix(1);
    return std::string(text);
}

struct Side {
    double nominal_in = 0.0;
    double thin_dressed_in = 0.0;  ///< of a row above; 0: a whole number
};

std::optional<Side> side(std::string_view text) {
    const std::string word = trimmed(text);
    for (const Row& row : thin_rows) {
        if (word == row.nominal) return Side{row.nominal_in, row.dressed_in};
    }
    if (word.empty() || word.size() > 2 || word.find_first_not_of("0123456789") != std::string::npos)
        return std::nullopt;
    const double nominal_in = std::strtod(word.c_str(), nullptr);
    if (nominal_in < 2.0 || nominal_in > largest_in) return std::nullopt;
    return Side{nominal_in, 0.0};
}

/// 1/2 in under the nominal size to 6 in and 3/4 in beyond (dimension lumber: read in a public transcription of Table
/// 1A); timbers the same when dry, and 1 in from 16 in (from memory; dressed green they are 1/2 in under).
double dressed_in(const Side& one, bool timber) {
    if (one.thin_dressed_in > 0.0) return one.thin_dressed_in;
    if (one.nominal_in <= 6.0) return one.nominal_in - 0.5;
    return one.nominal_in - (timber && one.nominal_in >= 16.0 ? 1.0 : 0.75);
}

std::size_t sign_in(std::string_view name) { return name.find_first_of("xX"); }

std::string plain(std::string_view name) {
    constexpr std::string_view times = "\u00d7";
    std::string text(name);
    const std::size_t at = text.find(times);
    if (at != std::string::npos) text.replace(at, times.size(), "x");
    return text;
}

bool same(double a_in, double b_in) {
    constexpr double reading_in = 1e-3;  // a size in millimeters is rounded to this
    return std::abs(a_in - b_in) <= reading_in;
}

}  // namespace

std::optional<DressedSize> dressed_size(std::string_view name) {
    const std::string text = plain(name);
    const std::size_t sign = sign_in(text);
    if (sign == std::string::npos) return std::nullopt;
    const std::optional<Side> first = side(std::string_view(text).substr(0, sign));
    const std::optional<Side> second = side(std::string_view(text).substr(sign + 1));
    if (!first || !second) return std::nullopt;
    const bool timber = std::min(first->nominal_in, second->nominal_in) >= thinnest_timber_in;
    return DressedSize{dressed_in(*first, timber), dressed_in(*second, timber)};
}

bool is_size(std::string_view name, double width_in, double depth_in) {
    const std::optional<DressedSize> size = dressed_size(name);
    if (!size) return false;
    return (same(size->first_in, width_in) && same(size->second_in, depth_in)) ||
           (same(size->first_in, depth_in) && same(size->second_in, width_in));
}

}  // namespace toehold::model

#include "search/ranges/read_choices.h"

#include "search/ranges/axes.h"
#include "search/ranges/values.h"
#include "units/quantity.h"
#include "units/scan.h"

namespace toehold::search {
namespace {

/// A count of holes, from 1 to 12.
std::optional<int> hole_count(std::string_view text) {
    constexpr int most_in_a_row = 12;
    std::string_view rest = units::trimmed(text);
    const std::optional<int> count = units::take_whole(rest);
    if (!count || !rest.empty() || *count < 1 || *count > most_in_a_row) return std::nullopt;
    return count;
}

/// `2x3`.
std::optional<Pattern> grid_of(std::string_view text) {
    const std::size_t sign = text.find_first_of("xX");
    if (sign == std::string_view::npos) return std::nullopt;
    const std::optional<int> across = hole_count(text.substr(0, sign)), deep = hole_count(text.substr(sign + 1));
    if (!across || !deep || *across * *deep < 2) return std::nullopt;
    Pattern pattern;
    pattern.across = *across;
    pattern.deep = *deep;
    return pattern;
}

std::vector<PlateChoice> plates_in_steps(const std::string& text) {
    const std::optional<Steps> range = steps(text, [](std::string_view end) { return sides(end).has_value(); });
    if (!range) return {};
    const Sides from = *sides(range->from), to = *sides(range->to);
    std::vector<PlateChoice> all;
    for (const double width_in : stepped(from.first_in, to.first_in, range->step_in)) {
        for (const double depth_in : stepped(from.second_in, to.second_in, range->step_in))
            all.emplace_back(PlateSize{width_in, depth_in});
    }
    return all;
}

}  // namespace

std::vector<PlateChoice> plates_of(const std::string& text, const catalog::Catalog& catalog) {
    if (catalog::find(catalog.stock_plates, text) != nullptr) return {StockPlate{text}};
    if (is_steps(text)) return plates_in_steps(text);
    const std::optional<Sides> size = sides(text);
    if (!size) return {};
    return {PlateSize{size->first_in, size->second_in}};
}

std::vector<double> lengths_of(const std::string& text) {
    if (!is_steps(text)) {
        const std::optional<double> length_in = inches(text);
        return length_in ? std::vector<double>{*length_in} : std::vector<double>{};
    }
    const std::optional<Steps> range = steps(text, [](std::string_view end) { return inches(end).has_value(); });
    if (!range) return {};
    return stepped(*inches(range->from), *inches(range->to), range->step_in);
}

AnchorChoice anchor_of(const std::string& text, const catalog::Catalog& catalog) {
    const std::size_t blank = text.find(' ');
    AnchorChoice choice;
    choice.size = text.substr(0, blank);
    if (blank != std::string::npos) choice.grade = std::string(units::trimmed(std::string_view(text).substr(blank)));
    if (choice.grade.empty() && find(catalog.bolts, choice.size) != nullptr) choice.grade = "a307";
    return choice;
}

std::optional<Pattern> pattern_of(const std::string& text) {
    const std::size_t sign = text.find_first_of("@:");
    if (sign == std::string::npos) return std::nullopt;
    std::optional<Pattern> pattern = grid_of(std::string_view(text).substr(0, sign));
    const std::string_view rest = std::string_view(text).substr(sign + 1);
    if (!pattern) return std::nullopt;
    if (text[sign] == '@') {
        const std::optional<double> edge_in = inches(rest);
        if (!edge_in) return std::nullopt;
        pattern->edge_in = *edge_in;
        return pattern;
    }
    const std::optional<Sides> spacing = sides(rest);
    if (!spacing) return std::nullopt;
    pattern->spacing_x_in = spacing->first_in;
    pattern->spacing_y_in = spacing->second_in;
    return pattern;
}

std::optional<BackingChoice> backing_of(const std::string& text) {
    if (text == "none") return BackingChoice{BackingChoice::Kind::none};
    if (text == "washer") return BackingChoice{BackingChoice::Kind::wide_washer};
    const std::optional<Sides> plate = sides(text);
    if (!plate || plate->second_in >= plate->first_in) return std::nullopt;
    return BackingChoice{BackingChoice::Kind::plate, plate->first_in, plate->second_in};
}

std::optional<EndChoice> end_of(const std::string& text) {
    if (text == "as-is") return EndChoice{};
    if (text == "angles") return EndChoice{EndChoice::Kind::bolted_angles};
    constexpr std::string_view hardware = "hardware";
    if (!text.starts_with(hardware)) return std::nullopt;
    const std::string_view rest = units::trimmed(std::string_view(text).substr(hardware.size()));
    std::optional<double> force_lb = units::parse(rest, units::Kind::force).value;
    if (!force_lb) force_lb = units::parse_number(rest);
    // What is weaker is no hardware for this, and so soft that a post on it finds no equilibrium (common practice).
    constexpr double least_lb = 100.0, most_lb = 1e5;
    if (!force_lb || !(*force_lb >= least_lb && *force_lb <= most_lb)) return std::nullopt;
    return EndChoice{EndChoice::Kind::hardware, *force_lb};
}

}  // namespace toehold::search

#include "job/post_order.h"

#include "units/quantity.h"
#include "units/scan.h"

#include <algorithm>
#include <vector>

namespace toehold::job {
namespace {

using units::Kind;

constexpr std::string_view round_word = "round ";

bool is_round(std::string_view section) { return section.starts_with(round_word); }

/// A length in inches where it says no unit; a board's `5/4` is none.
std::optional<double> length_in(std::string_view text) {
    const units::Parsed with_unit = units::parse(text, Kind::length);
    const std::optional<double> value =
        with_unit.value ? with_unit.value : units::parse(std::string(text) + " in", Kind::length).value;
    return value && *value > 0.0 ? value : std::nullopt;
}

/// Empty where one of the parts is no length.
std::vector<double> lengths_in(std::string_view text) {
    std::vector<double> lengths;
    while (true) {
        const std::size_t sign = text.find_first_of("xX");
        const std::optional<double> one = length_in(units::trimmed(text.substr(0, sign)));
        if (!one) return {};
        lengths.push_back(*one);
        if (sign == std::string_view::npos) return lengths;
        text.remove_prefix(sign + 1);
    }
}

std::optional<model::Post> round_section(const std::vector<double>& sizes) {
    if (sizes.size() == 1) return model::SolidBar{sizes[0], sizes[0], true, {}};
    if (sizes.size() == 2 && sizes[1] < 0.5 * sizes[0]) return model::RoundTube{sizes[0], sizes[1], {}};
    return std::nullopt;
}

std::optional<model::Post> square_section(const std::vector<double>& sizes) {
    if (sizes.size() == 2) return model::SolidBar{sizes[0], sizes[1], false, {}};
    if (sizes.size() == 3 && sizes[2] < 0.5 * std::min(sizes[0], sizes[1]))
        return model::RectangularTube{sizes[0], sizes[1], sizes[2], {}};
    return std::nullopt;
}

bool is_bar(std::string_view section) {
    const auto signs = std::count_if(section.begin(), section.end(), [](char c) { return c == 'x' || c == 'X'; });
    return signs == (is_round(section) ? 0 : 1);
}

/// What is stocked in each form (common practice).
std::string usual_steel(std::string_view section) {
    if (is_bar(section)) return "steel-a36";
    return is_round(section) ? "steel-a500-b-round" : "steel-a500-b";
}

}  // namespace

std::optional<PostOrder> read_post(std::string_view text) {
    text = units::trimmed(text);
    const std::size_t blank = text.find_last_of(" \t");
    if (blank == std::string_view::npos) return std::nullopt;
    return PostOrder{std::string(units::trimmed(text.substr(0, blank))), std::string(text.substr(blank + 1))};
}

std::string text_of(const PostOrder& order) { return order.section + " " + order.material; }

format::Phrase accepted_posts() {
    return format::phrase(
        "a section and its material: a tube such as 2x2x3/16 steel or round 1.9x0.145 steel, a bar such as 1 1/2x1 1/2 "
        "steel, lumber such as 4x4 wood; steel, stainless, aluminum, wood, or a metal of `toehold list metals`");
}

bool is_wood(const PostOrder& order) { return order.material == "wood"; }

bool names_metal(const PostOrder& order) {
    return order.material != "steel" && order.material != "stainless" && order.material != "aluminum";
}

std::string metal_of(const PostOrder& order, const catalog::Catalog& catalog) {
    std::string id = order.material;
    if (id == "steel") id = usual_steel(order.section);
    if (id == "stainless") id = "stainless-304";
    if (id == "aluminum") id = "aluminum-6061-t6";
    const catalog::Metal* const metal = catalog::find(catalog.metals, id);
    return metal != nullptr && !metal->by_certificate ? id : std::string();
}

std::optional<model::Post> metal_section(std::string_view section) {
    if (!is_round(section)) return square_section(lengths_in(section));
    return round_section(lengths_in(section.substr(round_word.size())));
}

}  // namespace toehold::job

// `height=30..48/2`: a field and its values, as they are typed.
#include "study/fields/groups.h"

#include <algorithm>
#include <cctype>
#include <cmath>

namespace toehold::study {
namespace {

using format::Phrase;
using format::phrase;

constexpr std::size_t most_values = 200;

std::string trimmed(std::string_view text) {
    while (!text.empty() && text.front() == ' ') text.remove_prefix(1);
    while (!text.empty() && text.back() == ' ') text.remove_suffix(1);
    return std::string(text);
}

bool is_bare(const std::string& text) {
    return !text.empty() && (std::isdigit(static_cast<unsigned char>(text.back())) != 0 || text.back() == '.');
}

/// A bare number, or a fraction, is in the field's own unit.
std::optional<double> quantity(const Field& field, const std::string& given) {
    const std::string text = trimmed(given);
    const bool bare = is_bare(text);
    if (field.unit == "in") return units::parse(bare ? text + " in" : text, units::Kind::length).value;
    if (bare) return units::parse_number(text);
    if (field.unit == "lb") return units::parse(text, units::Kind::force).value;
    if (field.unit == "psi/in") return units::parse(text, units::Kind::bed_stiffness).value;
    const std::optional<double> per_in = units::parse(text, units::Kind::force_per_length).value;
    if (per_in && field.unit == "lb/ft") return *per_in * units::inches_per_foot;
    return per_in;
}

std::optional<double> size_named(const Field& field, const std::string& given) {
    std::string name = trimmed(given);
    if (name.size() > 3 && name.compare(name.size() - 3, 3, " in") == 0) name.resize(name.size() - 3);
    for (const Size& size : field.sizes) {
        if (size.name == name || size.name == "No. " + name) return size.value;
    }
    return std::nullopt;
}

std::optional<double> value_of(const Field& field, const std::string& text) {
    return field.sizes.empty() ? quantity(field, text) : size_named(field, text);
}

std::vector<std::string> split(const std::string& text, char at) {
    std::vector<std::string> pieces;
    for (std::size_t from = 0; from <= text.size();) {
        const std::size_t end = std::min(text.find(at, from), text.size());
        pieces.push_back(text.substr(from, end - from));
        from = end + 1;
    }
    return pieces;
}

struct Ends {
    double from = 0.0, to = 0.0, step = 0.0;
};

bool rises(const Ends& ends) { return ends.to > ends.from && ends.step > 0.0; }

/// `30..48`, `30..48/2`, `1/4..3/4/1/8`: every slash is tried as the one before the step, a fraction first.
std::optional<Ends> read_ends(const Field& field, const std::string& text) {
    const std::size_t dots = text.find("..");
    if (dots == std::string::npos) return std::nullopt;
    const std::optional<double> from = value_of(field, text.substr(0, dots));
    if (!from) return std::nullopt;
    const std::string rest = text.substr(dots + 2);
    if (const auto to = value_of(field, rest)) {
        const Ends ends{*from, *to, field.sizes.empty() ? field.step : 1.0};
        if (rises(ends)) return ends;
    }
    if (!field.sizes.empty()) return std::nullopt;
    for (std::size_t slash = rest.find('/'); slash != std::string::npos; slash = rest.find('/', slash + 1)) {
        const auto to = value_of(field, rest.substr(0, slash)), step = value_of(field, rest.substr(slash + 1));
        if (!to || !step) continue;
        const Ends ends{*from, *to, *step};
        if (rises(ends)) return ends;
    }
    return std::nullopt;
}

/// Both ends among them, whatever the step.
std::vector<double> values_between(const Field& field, const Ends& ends) {
    constexpr double same = 1e-9;
    std::vector<double> values;
    if (!field.sizes.empty()) {
        for (const Size& size : field.sizes) {
            if (size.value >= ends.from - same && size.value <= ends.to + same) values.push_back(size.value);
        }
        return values;
    }
    const double count = std::floor((ends.to - ends.from) / ends.step * (1.0 + same));
    for (std::size_t i = 0; i <= most_values && static_cast<double>(i) <= count; ++i)
        values.push_back(ends.from + static_cast<double>(i) * ends.step);
    if (values.back() < ends.to * (1.0 - same)) values.push_back(ends.to);
    return values;
}

std::optional<std::vector<double>> read_list(const Field& field, const std::string& text) {
    std::vector<double> values;
    for (const std::string& piece : split(text, ',')) {
        const std::optional<double> value = value_of(field, piece);
        if (!value) return std::nullopt;
        values.push_back(*value);
    }
    std::sort(values.begin(), values.end());
    values.erase(std::unique(values.begin(), values.end()), values.end());
    return values;
}

std::string names_of(const std::vector<Size>& sizes) {
    std::string names;
    for (const Size& size : sizes) names += (names.empty() ? "" : ", ") + size.name;
    return names;
}

Phrase no_values(const Field& field, const std::string& text) {
    if (!field.sizes.empty()) {
        return phrase("\"{}\" is no range of sizes for {}; accepted: two or more of {}, as {}..{} or with commas", text,
                      field.id, names_of(field.sizes), field.sizes.front().name, field.sizes.back().name);
    }
    return phrase(
        "\"{}\" is no range for {}; accepted: FROM..TO or FROM..TO/STEP, FROM less than TO, or two or more "
        "values with commas, in {} or with a unit, such as {}",
        text, field.id, field.unit,
        field.id + "=" + value_figure(field, field.range.least, {}) + ".." + value_figure(field, field.range.most, {}) +
            "/" + value_figure(field, field.step, {}));
}

Phrase no_field(const std::vector<Field>& fields, const std::string& id) {
    std::string names;
    for (const Field& field : fields) names += (names.empty() ? "" : ", ") + field.id;
    return phrase("this detail has no field \"{}\"; it has: {}", id, names);
}

}  // namespace

ValuesRead read_values(const std::vector<Field>& fields, std::string_view text) {
    const std::size_t equals = text.find('=');
    const std::string id = trimmed(text.substr(0, equals));
    const Field* const field = find_field(fields, id);
    if (field == nullptr) return {std::nullopt, no_field(fields, id)};
    if (equals == std::string_view::npos) return {Asked{*field, customary_values(*field)}, {}};
    const std::string given = trimmed(text.substr(equals + 1));
    std::optional<std::vector<double>> values;
    if (const std::optional<Ends> ends = read_ends(*field, given)) {
        values = values_between(*field, *ends);
    } else {
        values = read_list(*field, given);
    }
    if (!values || values->size() < 2 || !(values->front() > 0.0)) return {std::nullopt, no_values(*field, given)};
    if (values->size() > most_values) {
        return {std::nullopt, phrase("{} takes at most {} values; \"{}\" has more: use a larger step", field->id,
                                     most_values, given)};
    }
    return {Asked{*field, std::move(*values)}, {}};
}

}  // namespace toehold::study

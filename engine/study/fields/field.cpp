#include "study/field.h"

#include "format/figures.h"
#include "model/validate.h"
#include "study/fields/groups.h"

#include <algorithm>
#include <cmath>

namespace toehold::study {
namespace {

using format::Phrase;
using format::phrase;

bool same(double one, double other) { return std::abs(one - other) <= 1e-9 * std::max(std::abs(one), std::abs(other)); }

const Size* size_at(const Field& field, double value) {
    const auto found = std::find_if(field.sizes.begin(), field.sizes.end(),
                                    [value](const Size& size) { return same(size.value, value); });
    return found == field.sizes.end() ? nullptr : &*found;
}

Phrase not_valid(const model::Problem& problem) {
    if (problem.accepted.empty()) return phrase("{}: {}", problem.element, problem.message);
    return phrase("{}: {}; accepted: {}", problem.element, problem.message, problem.accepted);
}

Made changed(const model::BaseDetail& detail, double value, const Change& change) {
    Made made{detail, {}};
    made.refusal = change(*made.detail, value);
    if (made.refusal.empty()) {
        const model::Problems problems = model::validate(*made.detail);
        if (!problems.empty()) made.refusal = not_valid(problems.front());
    }
    if (!made.refusal.empty()) made.detail.reset();
    return made;
}

/// Millimeters to a tenth, as a drawing writes them; sixteenths, else decimals.
std::string length_figure(double length_in, units::System system) {
    if (system == units::System::si) {
        const double tenths = std::round(format::in_system(length_in, "in", system).value * 10.0);
        return format::number_text(tenths / 10.0);
    }
    return units::bare_fraction(length_in);
}

}  // namespace

void add(FieldList& list, Field field, Change change) {
    const std::vector<Size> sizes = field.sizes;
    const Phrase name = field.name;
    field.set = [sizes, name, change = std::move(change)](const model::BaseDetail& detail, double value) -> Made {
        if (!std::isfinite(value) || !(value > 0.0)) return {std::nullopt, phrase("{} must be a number above 0", name)};
        const auto is_it = [value](const Size& size) { return same(size.value, value); };
        if (!sizes.empty() && std::none_of(sizes.begin(), sizes.end(), is_it))
            return {std::nullopt, phrase("{} has no size of that measure", name)};
        return changed(detail, value, change);
    };
    list.push_back(std::move(field));
}

Range about(double now, double step) {
    const double least = std::max(step, std::floor(0.5 * now / step) * step);
    return {std::min(least, now), std::ceil(1.5 * now / step) * step};
}

std::vector<Field> fields(const Subject& subject) {
    FieldList list;
    add_guard_fields(list, subject);
    add_post_fields(list, subject);
    add_plate_fields(list, subject);
    add_side_fields(list, subject);
    add_anchor_fields(list, subject);
    add_block_fields(list, subject);
    add_joist_fields(list, subject);
    add_stiffness_fields(list, subject);
    return list;
}

const Field* find_field(const std::vector<Field>& fields, std::string_view id) {
    const auto found = std::find_if(fields.begin(), fields.end(), [id](const Field& field) { return field.id == id; });
    return found == fields.end() ? nullptr : &*found;
}

std::string value_figure(const Field& field, double value, units::System system) {
    if (const Size* const size = size_at(field, value)) return size->name;
    if (field.unit == "in") return length_figure(value, system);
    return format::number_text(value, field.unit, system);
}

std::string value_words(const Field& field, double value, units::System system) {
    if (!field.sizes.empty()) return value_figure(field, value, system);
    return value_figure(field, value, system) + " " + format::in_system(value, field.unit, system).unit;
}

std::vector<double> customary_values(const Field& field) {
    std::vector<double> values;
    for (const Size& size : field.sizes) values.push_back(size.value);
    if (!values.empty()) return values;
    const int steps =
        std::max(1, static_cast<int>(std::floor((field.range.most - field.range.least) / field.step + 1e-6)));
    for (int i = 0; i <= steps; ++i) values.push_back(field.range.least + i * field.step);
    return values;
}

}  // namespace toehold::study

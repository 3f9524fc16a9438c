#include "editing/fields/variants.h"

#include "editing/samples.h"

#include <catch2/catch.hpp>

#include <algorithm>

namespace toehold::test {
namespace {

using editing::Field;
using editing::FieldKind;

const std::vector<std::vector<Setting>>& recipes() {
    static const std::string end = "framing/block[B1]/end[from]/";
    static const std::vector<std::vector<Setting>> all{
        {{"post/shape", "rectangular-tube"}},
        {{"post/shape", "round-tube"}},
        {{"post/shape", "wood"}},
        {{"post/shape", "bar"}},
        {{"post/shape", "round-bar"}},
        {{"post/shape", "twin-bars"}},
        {{"post/on-stub", "yes"}},
        {{"post/shape", "round-tube"}, {"post/on-stub", "yes"}},
        {{"post/certified", "yes"}},
        {{"plate/outline", "circle"}},
        {{"plate/outline", "polygon"}},
        {{"plate/outline", "polygon"}, {"plate/outline", "rectangle"}},
        {{"plate/hole[A]/shape", "slot"}},
        {{"weld/given", "no"}},
        {{"weld/kind", "complete-penetration"}},
        {{"weld/kind", "partial-penetration"}},
        {{"weld/gussets-given", "yes"}},
        {{"anchors[1]/fastener", "wood-screw"}},
        {{"anchors[1]/fastener", "through-bolt"}},
        {{"anchors[1]/fastener", "through-bolt"}, {"anchors[1]/below", "none"}},
        {{"anchors[1]/fastener", "through-bolt"}, {"anchors[1]/below", "backing-plate"}},
        {{"anchors[1]/fastener", "through-bolt"}, {"anchors[1]/below", "lower-plate"}},
        {{"anchors[1]/fastener", "through-bolt"},
         {"anchors[1]/below", "lower-plate"},
         {"anchors[1]/lower-shape", "angle"}},
        {{"anchors[1]/fastener", "reported-fastener"}},
        {{"anchor-group-count", "2"}},
        {{"layers/decking-given", "no"}},
        {{"layers/decking/fastened", "no"}},
        {{"layers/packing-given", "yes"}},
        {{"layers/packing-given", "yes"}, {"layers/packing/shape", "round"}},
        {{"layers/packing-given", "yes"}, {"layers/packing/place-count", "1"}},
        {{"layers/shim-count", "2"}},
        {{"framing/joists-given", "no"}},
        {{end + "connection", "none"}},
        {{end + "connection", "nails"}},
        {{end + "connection", "screws"}},
        {{end + "connection", "structural-screws"}},
        {{end + "connection", "toe-nails"}},
        {{end + "connection", "connector"}},
        {{end + "connection", "angles"}, {end + "kind", "lag-screw"}},
        {{"framing/support[S1]/kind", "beam"}},
        {{"framing/rim-count", "2"}},
        {{"framing/support-count", "3"}},
        {{"framing/block-count", "0"}, {"framing/block-count", "1"}},
        {{"loads/concentrated", "no"}, {"loads/line", "yes"}, {"loads/wind", "yes"}},
        {{"loads/user-count", "1"}},
        {{"basis/fixed", "yes"}},
        {{"framing/block[B1]/stack", "2"}},
        {{"framing/material-count", "1"}},
        {{"framing/material-count", "1"}, {"framing/material[W1]/volume-factor", "depth"}},
        {{"remark-count", "1"}},
    };
    return all;
}

/// The same of a post on a member's side.
const std::vector<std::vector<Setting>>& side_recipes() {
    static const std::vector<std::vector<Setting>> all{
        {},
        {{"side/layer-count", "1"}},
        {{"side/notch-given", "yes"}},
        {{"side/stringer-given", "yes"}},
        {{"side/tie-count", "1"}},
        {{"side/decking-given", "no"}},
        {{"side/decking/fastened", "yes"}},
        {{"post/shape", "square-tube"}, {"side/bracket-given", "yes"}},
        {{"post/shape", "round-tube"}},
        {{"post/shape", "bar"}},
        {{"anchors[1]/fastener", "lag-screw"}},
        {{"anchors[1]/washer", ""}, {"anchors[1]/head-plate-given", "yes"}},
        {{"anchor-group-count", "2"}},
    };
    return all;
}

void add_variants(std::vector<Variant>& variants, const model::BaseDetail& base,
                  const std::vector<std::vector<Setting>>& recipes) {
    for (const std::vector<Setting>& recipe : recipes) {
        Variant variant{recipe, base};
        for (const Setting& setting : recipe) variant.detail = with(variant.detail, setting.path, setting.text);
        variants.push_back(std::move(variant));
    }
}

std::string another_choice(const Field& field) {
    for (const editing::Choice& choice : field.choices) {
        if (choice.value != field.value) return choice.value;
    }
    return {};
}

std::string another_quantity(const Field& field) {
    const std::optional<double> now = editing::typed(field.value, field.quantity, units::System::us);
    return editing::shown(now && *now != 0.0 ? 1.25 * *now : 1.0, field.quantity, units::System::us);
}

std::string another_text(const Field& field) {
    if (field.path.ends_with("/sha256")) return std::string(64, field.value.starts_with("a") ? 'b' : 'a');
    if (field.path.ends_with("/size")) return field.value == "2x8" ? "4x6" : "2x8";
    if (field.path.ends_with("/holes")) return field.value == "A" ? "B" : "A";
    if (field.path.ends_with("/sides")) return field.value == "outward inward" ? "right left" : "outward inward";
    if (field.path.ends_with("/date")) return field.value == "2026-11-25" ? "2026-11-26" : "2026-11-25";
    return field.value + "x";
}

}  // namespace

const catalog::Catalog& field_catalog() { return shipped_catalog(); }

std::vector<Variant> field_variants() {
    model::BaseDetail base = demo_detail("heron-landing-bolted-angles");
    std::vector<Variant> variants{{{}, base}, {{}, base}};
    on_deck(base).plate_reference.reset();
    variants.front().detail = base;
    add_variants(variants, base, recipes());
    add_variants(variants, post_on_side(), side_recipes());
    return variants;
}

model::BaseDetail with(const model::BaseDetail& detail, const std::string& path, const std::string& text) {
    const editing::FieldEdit edit = editing::set_field(detail, field_catalog(), units::System::us, path, text);
    INFO(path << " set to \"" << text << "\": " << format::english(edit.refusal));
    REQUIRE(edit.detail);
    CHECK_FALSE(edit.step.empty());
    CHECK(edit.refusal.empty());
    return *edit.detail;
}

const Field* find_field(const std::vector<Field>& fields, const std::string& path) {
    const auto found = std::find_if(fields.begin(), fields.end(), [&](const Field& one) { return one.path == path; });
    return found == fields.end() ? nullptr : &*found;
}

std::string value_at(const model::BaseDetail& detail, const std::string& path) {
    const std::vector<Field> fields = editing::fields(detail, field_catalog(), units::System::us);
    const Field* const field = find_field(fields, path);
    INFO(path);
    REQUIRE(field != nullptr);
    return field->value;
}

std::string another_value(const Field& field) {
    switch (field.kind) {
        case FieldKind::choice:
        case FieldKind::yes_no:
            return another_choice(field);
        case FieldKind::quantity:
            return another_quantity(field);
        case FieldKind::number:
            return field.value == "0.9" ? "0.95" : "0.9";
        case FieldKind::count:
            if (field.path.ends_with("/corner-count")) return "5";
            return field.value == "1" ? "2" : "1";
        case FieldKind::text:
            break;
    }
    return another_text(field);
}

}  // namespace toehold::test

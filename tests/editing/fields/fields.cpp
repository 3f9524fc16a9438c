// Fields, against the file format: what a field sets is what the written detail says.
#include "editing/fields.h"

#include "editing/fields/variants.h"
#include "editing/samples.h"
#include "support/compare.h"
#include "support/parts.h"
#include "xml/detail/detail_file.h"

#include <algorithm>
#include <set>

using namespace toehold;
namespace parts = toehold::test::parts;
using editing::Field;
using editing::FieldEdit;
using test::field_catalog;
using test::value_at;
using test::with;

namespace {

constexpr units::System us = units::System::us;
constexpr units::System si = units::System::si;

std::vector<Field> fields_of(const model::BaseDetail& detail, units::System system = us) {
    return editing::fields(detail, field_catalog(), system);
}

std::set<std::string> paths(const std::vector<Field>& fields) {
    std::set<std::string> all;
    for (const Field& field : fields) all.insert(field.path);
    return all;
}

std::string refusal(const model::BaseDetail& detail, const std::string& path, const std::string& text,
                    units::System system = us) {
    const FieldEdit edit = editing::set_field(detail, field_catalog(), system, path, text);
    CHECK_FALSE(edit.detail);
    return format::english(edit.refusal);
}

/// The field of that place in the list now: its path may hold an id that was changed.
std::string path_now(const model::BaseDetail& detail, std::size_t place) {
    const std::vector<Field> fields = fields_of(detail);
    REQUIRE(place < fields.size());
    return fields[place].path;
}

bool switches_a_kind(const Field& field) {
    const std::vector<std::string> ends{"/fastener", "/connection", "/shape", "/outline", "/below", "/size", "/flat"};
    return std::any_of(ends.begin(), ends.end(), [&](const std::string& end) { return field.path.ends_with(end); });
}

bool has_reference(const model::BaseDetail& detail) {
    const auto* const plate = std::get_if<model::PlateOnDeck>(&detail.mount);
    return plate != nullptr && plate->plate_reference;
}

}  // namespace

TEST_CASE("Every field of every kind of detail has its own path, a name, a help and a place", "[property]") {
    for (const test::Variant& variant : test::field_variants()) {
        const std::vector<Field> fields = fields_of(variant.detail);
        CHECK(paths(fields).size() == fields.size());
        for (const Field& field : fields) {
            INFO(field.path);
            CHECK_FALSE(field.group.empty());
            CHECK_FALSE(field.label.empty());
            CHECK(format::english(field.help).ends_with("."));
            CHECK((field.may_be_empty || !field.value.empty() || field.kind == editing::FieldKind::text));
            // Left open is a choice too.
            const std::size_t open = field.may_be_empty ? 1 : 0;
            if (field.kind == editing::FieldKind::choice) CHECK(field.choices.size() + open >= 2);
        }
    }
}

TEST_CASE("The fields of one heading stand together", "[property]") {
    for (const test::Variant& variant : test::field_variants()) {
        std::set<std::string> closed;
        std::string open;
        for (const Field& field : fields_of(variant.detail)) {
            if (format::english(field.group) == open) continue;
            INFO(field.path << " under " << format::english(field.group));
            CHECK(closed.insert(format::english(field.group)).second);
            open = format::english(field.group);
        }
    }
}

TEST_CASE("Two holes of one id are both within reach", "[unit]") {
    model::BaseDetail detail = test::square_base();
    on_deck(detail).plate.holes[1].id = "A";
    const std::vector<Field> fields = fields_of(detail);
    CHECK(paths(fields).size() == fields.size());
    CHECK(on_deck(with(detail, "plate/hole[A]/id~", "E")).plate.holes[1].id == "E");
}

TEST_CASE("What every field of the demo details shows, set back, changes nothing", "[property]") {
    std::vector<model::BaseDetail> details = test::demo_details();
    details.push_back(test::post_on_side());
    details.push_back(test::tube_on_side());
    for (const model::BaseDetail& detail : details) {
        INFO(detail.name);
        for (const Field& field : fields_of(detail)) {
            INFO(field.path << " shows \"" << field.value << "\"");
            const FieldEdit edit = editing::set_field(detail, field_catalog(), us, field.path, field.value);
            INFO(format::english(edit.refusal));
            REQUIRE(edit.detail);
            CHECK(*edit.detail == detail);
        }
    }
}

TEST_CASE("What fields show in SI, set back, is within what they show", "[property]") {
    const model::BaseDetail detail = test::demo_detail("heron-landing-bolted-angles");
    for (const Field& field : fields_of(detail, si)) {
        INFO(field.path << " shows \"" << field.value << "\"");
        const FieldEdit edit = editing::set_field(detail, field_catalog(), si, field.path, field.value);
        REQUIRE(edit.detail);
        const std::vector<Field> after = fields_of(*edit.detail, si);
        REQUIRE(test::find_field(after, field.path) != nullptr);
        CHECK(test::find_field(after, field.path)->value == field.value);
    }
}

TEST_CASE("Each field changes the written detail, and set back restores it", "[property]") {
    std::set<std::string> seen;
    for (const test::Variant& variant : test::field_variants()) {
        const std::vector<Field> fields = fields_of(variant.detail);
        const std::string before = xml::write_detail(variant.detail);
        for (std::size_t place = 0; place < fields.size(); ++place) {
            const Field& field = fields[place];
            if (!seen.insert(field.path).second) continue;
            const std::string text = test::another_value(field);
            INFO(field.path << " from \"" << field.value << "\" to \"" << text << "\"");
            const FieldEdit edit = editing::set_field(variant.detail, field_catalog(), us, field.path, text);
            INFO(format::english(edit.refusal));
            REQUIRE(edit.detail);
            CHECK(xml::write_detail(*edit.detail) != before);
            const bool same_fields = fields_of(*edit.detail).size() == fields.size();
            if (!same_fields || switches_a_kind(field)) continue;  // what the other kind had is gone
            if (has_reference(variant.detail) && !has_reference(*edit.detail)) continue;
            const model::BaseDetail back = with(*edit.detail, path_now(*edit.detail, place), field.value);
            // To within what the field shows.
            CHECK(back == with(variant.detail, field.path, field.value));
        }
    }
    CHECK(seen.size() > 250);
}

TEST_CASE("A list that grew and shrank again is as it was", "[property]") {
    const model::BaseDetail detail = test::square_base();
    for (const std::string path :
         {"plate/hole-count", "layers/shim-count", "framing/joists/count", "framing/rim-count", "framing/support-count",
          "framing/block-count", "framing/material-count", "loads/user-count", "remark-count"}) {
        const std::string now = value_at(detail, path);
        const model::BaseDetail more = with(detail, path, std::to_string(std::stoi(now) + 2));
        CHECK(value_at(more, path) == std::to_string(std::stoi(now) + 2));
        CHECK_FALSE(more == detail);
        CHECK(test::whats_broken(more).empty());
        CHECK(with(more, path, now) == detail);
    }
}

TEST_CASE("Anchor groups share out the holes and take them back", "[unit]") {
    const model::BaseDetail detail = test::square_base();
    const model::BaseDetail two = with(detail, "anchor-group-count", "2");
    REQUIRE(on_deck(two).anchors.size() == 2);
    CHECK(on_deck(two).anchors[1].holes == std::vector<std::string>{"D"});
    CHECK(model::anchor_group(two, "A") == &on_deck(two).anchors[0]);
    CHECK(model::anchor_group(two, "D") == &on_deck(two).anchors[1]);
    CHECK(with(two, "anchor-group-count", "1") == detail);
    CHECK(refusal(two, "anchor-group-count", "3") ==
          "Number of anchor groups cannot grow: the last group has no hole to spare.");
}

TEST_CASE("What names a part follows its new id", "[unit]") {
    const model::BaseDetail detail = with(test::square_base(), "anchor-group-count", "2");
    CHECK(on_deck(with(detail, "plate/hole[D]/id", "Z")).anchors[1].holes == std::vector<std::string>{"Z"});
    const model::BaseDetail renamed = with(detail, "framing/joist[J1]/id", "J9");
    CHECK(renamed.framing.blocks[0].from_end.joist == "J9");
    CHECK(renamed.framing.blocks[0].to_end.joist == "J2");
    CHECK(refusal(detail, "plate/hole[D]/id", "A") == "Id A is taken: it must differ from every other.");
    CHECK(refusal(detail, "framing/block[B1]/id", "J1") == "Id J1 is taken: it must differ from every other.");
    CHECK(refusal(detail, "framing/block[B1]/id", "a b").starts_with("Id takes a short name"));
}

TEST_CASE("A member that goes leaves no end of a block behind that names it", "[unit]") {
    const model::BaseDetail gone = with(test::square_base(), "framing/joists-given", "no");
    for (const model::Block& block : gone.framing.blocks) {
        CHECK(block.from_end.joist.empty());
        CHECK(block.to_end.joist.empty());
    }
    const model::BaseDetail one = with(test::square_base(), "framing/joists/count", "1");
    CHECK(one.framing.blocks[0].from_end.joist == "J1");
    CHECK(one.framing.blocks[0].to_end.joist.empty());
}

TEST_CASE("Quantities are taken in the reader's unit, and with any other", "[unit]") {
    const model::BaseDetail detail = test::square_base();
    const std::string path = "plate/thickness";
    CHECK(on_deck(with(detail, path, "3/8")).plate.thickness_in == 0.375);
    CHECK(on_deck(with(detail, path, " 10 mm ")).plate.thickness_in == 10.0 / 25.4);
    CHECK(value_at(with(detail, path, "10 mm"), path) == "10 mm");
    CHECK(with(detail, "guard/height", "3'-6\"").guard.height_in == 42.0);
    const FieldEdit metric = editing::set_field(detail, field_catalog(), si, path, "10");
    REQUIRE(metric.detail);
    CHECK(on_deck(*metric.detail).plate.thickness_in == 10.0 / 25.4);
    CHECK(format::english(metric.step) == "Change Plate: Thickness");
    // 50 plf is 50 x 4.4482216 N / 0.3048 m = 0.7297 kN/m (NIST SP 811).
    const model::BaseDetail line = with(detail, "loads/line", "yes");
    CHECK(value_at(line, "loads/line/push") == "50 plf");
    CHECK(with(line, "loads/line/push", "60").loads.line->push_lb_per_ft == 60.0);
    const FieldEdit push = editing::set_field(line, field_catalog(), si, "loads/line/push", "0.729695");
    REQUIRE(push.detail);
    CHECK_CLOSE(push.detail->loads.line->push_lb_per_ft, 50.0, 1e-5, 0.0);
    CHECK(with(line, "loads/line/spacing", "8 ft").loads.line->spacing_ft == 8.0);
}

TEST_CASE("A refusal is one sentence that says what the field takes", "[unit][bad-input]") {
    const model::BaseDetail detail = test::square_base();
    CHECK(
        refusal(detail, "plate/thickness", "thick") ==
        "Thickness takes a length with its unit, such as 3 3/8 in, 3'-0\" or 86 mm; a number alone counts as inches.");
    CHECK(refusal(detail, "plate/thickness", "1/4", si).ends_with("a number alone counts as millimeters."));
    CHECK(refusal(detail, "plate/thickness", "0") == "Thickness must be more than zero.");
    CHECK(refusal(detail, "plate/thickness", "") == "Thickness must be given.");
    CHECK(refusal(detail, "plate/thickness", "5/4").find("5/4 is written as it measures") != std::string::npos);
    CHECK(refusal(detail, "guard/plate-below-surface", "-1") == "Plate below the surface must not be negative.");
    CHECK(refusal(detail, "basis/load-duration", "lots") == "Load duration factor takes a plain number such as 1.6.");
    CHECK(refusal(detail, "framing/block[B1]/plies", "13") == "Pieces takes a whole number from 1 to 12.");
    CHECK(refusal(detail, "basis/method", "both") == "Method takes ASD, LRFD.");
    CHECK(refusal(detail, "anchors[1]/size", "lag-3/9").find("lag-3/8") != std::string::npos);
    CHECK(refusal(detail, "anchors[1]/holes", "A Q").find("Q is none") != std::string::npos);
    CHECK(refusal(detail, "name", std::string("a\x01")) == "Name takes text without control characters.");
    CHECK(refusal(detail, "no/such/field", "1") == "This detail has no field no/such/field.");
    for (const std::string text : {"1e999 in", "nan", "inf", "--1", "1,5", "\xff"}) {
        CHECK_FALSE(refusal(detail, "plate/thickness", text).empty());
    }
}

TEST_CASE("A choice is taken by its word or by its label, and an unknown one stays within reach", "[unit]") {
    model::BaseDetail detail = test::square_base();
    const std::vector<Field> fields = fields_of(detail);
    const Field* const size = test::find_field(fields, "anchors[1]/size");
    REQUIRE(size != nullptr);
    const auto half = std::find_if(size->choices.begin(), size->choices.end(),
                                   [](const editing::Choice& one) { return one.value == "lag-1/2"; });
    REQUIRE(half != size->choices.end());
    CHECK(format::english(half->label) == "lag-1/2: 1/2 in lag screw, ASME B18.2.1");
    CHECK(value_at(with(detail, size->path, format::english(half->label)), size->path) == "lag-1/2");
    CHECK(value_at(with(detail, "basis/method", "lrfd"), "basis/method") == "LRFD");
    on_deck(detail).plate.metal = "unobtainium";
    CHECK(with(detail, "plate/metal", "unobtainium") == detail);
}

TEST_CASE("Empty clears what may be left open, and the default is told", "[unit]") {
    const model::BaseDetail detail = with(test::square_base(), "basis/moisture", "dry");
    CHECK_FALSE(with(detail, "basis/moisture", "").basis.moisture);
    const std::vector<Field> fields = fields_of(detail);
    CHECK(format::english(test::find_field(fields, "basis/moisture")->help).ends_with("Empty: wet."));
    CHECK(format::english(test::find_field(fields, "basis/load-duration")->help).ends_with("Empty: 1.0."));
    CHECK_FALSE(on_deck(with(detail, "anchors[1]/washer", "")).anchors[0].washer);
    CHECK(on_deck(with(detail, "guard/plate-below-surface", "")).plate_below_surface_in == 0.0);
}

TEST_CASE("A plate that is changed is no longer its document's", "[unit]") {
    const model::BaseDetail detail = test::demo_detail("heron-landing-bolted-angles");
    REQUIRE(on_deck(detail).plate_reference);
    CHECK_FALSE(on_deck(with(detail, "plate/thickness", "1/2")).plate_reference);
    CHECK(on_deck(with(detail, "guard/height", "36")).plate_reference == on_deck(detail).plate_reference);
    CHECK_FALSE(on_deck(with(detail, "plate/from/file", "")).plate_reference);
    CHECK(on_deck(with(detail, "plate/from/file", "other.xml")).plate_reference->file == "other.xml");
}

TEST_CASE("A field says which parts it is of", "[unit]") {
    const std::vector<Field> fields = fields_of(test::square_base());
    CHECK(test::find_field(fields, "plate/hole[B]/x")->part == parts::anchor("B"));
    CHECK(test::find_field(fields, "framing/block[B2]/end[to]/joist")->part == parts::block("B2"));
    const Field* const group = test::find_field(fields, "anchors[1]/size");
    CHECK(group->part == parts::anchor("A"));
    CHECK(group->also == std::vector<model::PartId>{parts::anchor("B"), parts::anchor("C"), parts::anchor("D")});
    CHECK(format::english(group->group) == "Anchors A B C D");
}

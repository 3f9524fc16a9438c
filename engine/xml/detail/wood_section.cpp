#include "xml/detail/wood_section.h"

#include "format/phrase.h"
#include "model/lumber_size.h"
#include "xml/catalog/wood_values.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <optional>

namespace toehold::xml {
namespace {

using format::phrase;
using units::Kind;
using Volume = model::OwnWood::Volume;
using WetService = model::OwnWood::WetService;

constexpr std::array<Word<Volume>, 4> volume_words{{{"none", Volume::none},
                                                    {"depth", Volume::depth},
                                                    {"glulam", Volume::glulam},
                                                    {"glulam-southern-pine", Volume::glulam_southern_pine}}};
constexpr std::array<Word<WetService>, 4> wet_words{{{"dry-only", WetService::dry_only},
                                                     {"included", WetService::included},
                                                     {"glulam", WetService::glulam},
                                                     {"sawn", WetService::sawn}}};

/// A length that the size has already given, perhaps written too.
void check_same(ElementReader& reader, std::string_view attribute, double by_size_in) {
    constexpr double reading_in = 1.0 / 64.0;  // half of the 1/32 in that sizes are written to
    const std::optional<double> written_in = reader.optional_quantity(attribute, Kind::length, Sign::positive);
    if (!written_in || std::abs(*written_in - by_size_in) <= reading_in) return;
    reader.report(phrase("the size by name has another {}", format::verbatim(std::string(attribute))), attribute,
                  phrase("{}, the dressed size, or the size alone", format::Dimension{by_size_in}));
}

std::optional<model::DressedSize> read_size(ElementReader& reader, std::string& name) {
    name = reader.text("size");
    std::optional<model::DressedSize> size = model::dressed_size(name);
    if (!size && !name.empty())
        reader.report(phrase("no lumber is sold by this size"), "size", format::verbatim(model::common_sizes));
    return size;
}

void read_wood(ElementReader& reader, WoodSection& section) {
    if (reader.has("material")) {
        section.species = reader.id("material");
        return;
    }
    section.species = reader.id("species");
    section.grade = reader.id("grade");
}

void write_wood(Element& element, const WoodSection& section) {
    if (section.grade.empty()) {
        element.text("material", section.species);
    } else {
        element.text("species", section.species).text("grade", section.grade);
    }
}

void read_sides(ElementReader& reader, WoodSection& section) {
    section.width_in = reader.quantity("width", Kind::length, Sign::positive);
    section.depth_in = reader.quantity("depth", Kind::length, Sign::positive);
}

void write_sides(Element& element, const WoodSection& section) {
    element.quantity("width", section.width_in, Kind::length).quantity("depth", section.depth_in, Kind::length);
}

void set_sides(ElementReader& reader, WoodSection& section, double width_in, double depth_in) {
    section.width_in = width_in;
    section.depth_in = depth_in;
    check_same(reader, "width", width_in);
    check_same(reader, "depth", depth_in);
}

}  // namespace

WoodSection read_framing_section(ElementReader& reader) {
    WoodSection section;
    if (!reader.has("size")) {
        read_sides(reader, section);
    } else {
        const bool flat = reader.optional_yes_no("flat").value_or(false);
        const auto size = read_size(reader, section.size).value_or(model::DressedSize{1.0, 1.0});
        const double narrow_in = std::min(size.first_in, size.second_in);
        const double wide_in = std::max(size.first_in, size.second_in);
        set_sides(reader, section, flat ? wide_in : narrow_in, flat ? narrow_in : wide_in);
    }
    read_wood(reader, section);
    return section;
}

void write_framing_section(Element& element, const WoodSection& section) {
    if (model::is_size(section.size, section.width_in, section.depth_in)) {
        element.text("size", section.size);
        if (section.width_in > section.depth_in) element.yes_no("flat", true);
    } else {
        write_sides(element, section);
    }
    write_wood(element, section);
}

WoodSection read_post_section(ElementReader& reader) {
    WoodSection section;
    if (!reader.has("size")) {
        read_sides(reader, section);
    } else {
        const auto size = read_size(reader, section.size).value_or(model::DressedSize{1.0, 1.0});
        set_sides(reader, section, size.first_in, size.second_in);
    }
    read_wood(reader, section);
    return section;
}

void write_post_section(Element& element, const WoodSection& section) {
    const std::optional<model::DressedSize> size = model::dressed_size(section.size);
    const bool in_order = size && (size->first_in < size->second_in) == (section.width_in < section.depth_in);
    if (in_order && model::is_size(section.size, section.width_in, section.depth_in)) {
        element.text("size", section.size);
    } else {
        write_sides(element, section);
    }
    write_wood(element, section);
}

double read_board_thickness(ElementReader& reader, std::string& size) {
    if (!reader.has("size")) return reader.quantity("thickness", Kind::length, Sign::positive);
    const auto dressed = read_size(reader, size).value_or(model::DressedSize{1.0, 1.0});
    const double thickness_in = std::min(dressed.first_in, dressed.second_in);
    check_same(reader, "thickness", thickness_in);
    return thickness_in;
}

void write_board_thickness(Element& element, double thickness_in, const std::string& size) {
    const std::optional<model::DressedSize> dressed = model::dressed_size(size);
    if (dressed && std::min(dressed->first_in, dressed->second_in) == thickness_in) {
        element.text("size", size);
    } else {
        element.quantity("thickness", thickness_in, Kind::length);
    }
}

model::OwnWood read_material(ElementReader& reader) {
    model::OwnWood wood;
    wood.id = reader.id();
    wood.name = reader.text("name");
    wood.source = reader.text("source");
    read_wood_values(reader, wood);
    wood.bending_flat_psi = reader.quantity("bending-flat", Kind::stress, Sign::positive);
    wood.specific_gravity = reader.number("specific-gravity", Sign::positive);
    wood.volume = reader.choice<Volume>("volume-factor", volume_words);
    if (wood.volume == Volume::depth) wood.volume_exponent = reader.number("volume-exponent", Sign::positive);
    wood.wet_service = reader.choice<WetService>("wet-service", wet_words);
    return wood;
}

Element material_element(const model::OwnWood& wood) {
    Element element("material");
    element.text("id", wood.id).text("name", wood.name).text("source", wood.source);
    const auto stress = [&](std::string_view name, double psi) { element.quantity(name, psi, Kind::stress); };
    stress("bending", wood.bending_psi);
    stress("bending-flat", wood.bending_flat_psi);
    stress("tension", wood.tension_psi);
    stress("shear", wood.shear_psi);
    stress("compression-perp", wood.compression_perp_psi);
    stress("compression", wood.compression_psi);
    stress("modulus", wood.modulus_psi);
    stress("modulus-min", wood.modulus_min_psi);
    element.text("specific-gravity", exact_number(wood.specific_gravity));
    element.text("volume-factor", word_for<Volume>(wood.volume, volume_words));
    if (wood.volume == Volume::depth) element.text("volume-exponent", exact_number(wood.volume_exponent));
    element.text("wet-service", word_for<WetService>(wood.wet_service, wet_words));
    return element;
}

}  // namespace toehold::xml

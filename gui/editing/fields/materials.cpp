// Wood of the detail's own: glulam, LVL, PSL and the like by the values of their report.
#include "editing/fields/groups.h"
#include "editing/fields/pieces.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>

namespace toehold::editing {
namespace {

using model::OwnWood;
using units::Kind;

const std::array<Word<OwnWood::Volume>, 4> volumes{
    {{OwnWood::Volume::none, "none", phrase("None")},
     {OwnWood::Volume::depth, "depth", phrase("By depth: (12 in/d) to the exponent")},
     {OwnWood::Volume::glulam, "glulam", phrase("Glulam, by length, depth and breadth")},
     {OwnWood::Volume::glulam_southern_pine, "glulam-southern-pine", phrase("Glulam of southern pine")}}};
const std::array<Word<OwnWood::WetService>, 4> wet_services{
    {{OwnWood::WetService::dry_only, "dry-only", phrase("Dry service alone")},
     {OwnWood::WetService::included, "included", phrase("Values hold when wet")},
     {OwnWood::WetService::glulam, "glulam", phrase("Factors of glulam")},
     {OwnWood::WetService::sawn, "sawn", phrase("Factors of sawn lumber")}}};

/// Every species the detail names; those of a material have no grade beside them.
template <class Visit>
void each_wood(model::BaseDetail& detail, Visit&& visit) {
    model::Framing& framing = detail.framing;
    if (framing.joists) visit(framing.joists->species, framing.joists->grade);
    for (model::Rim& rim : framing.rims) visit(rim.species, rim.grade);
    for (model::Block& block : framing.blocks) visit(block.species, block.grade);
    if (auto* post = std::get_if<model::WoodPost>(&detail.post)) visit(post->species, post->grade);
}

OwnWood start_material(const model::Framing& framing) {
    OwnWood wood;
    int number = 1;
    const auto taken = [&](const std::string& id) {
        return std::any_of(framing.materials.begin(), framing.materials.end(),
                           [&](const OwnWood& one) { return one.id == id; });
    };
    while (taken(fmt::format("W{}", number))) ++number;
    wood.id = fmt::format("W{}", number);
    wood.name = "Engineered wood";
    wood.source = "report not yet named";
    wood.bending_psi = wood.bending_flat_psi = 1000.0;
    wood.tension_psi = wood.compression_psi = 500.0;
    wood.shear_psi = 100.0;
    wood.compression_perp_psi = 400.0;
    wood.modulus_psi = 1e6;
    wood.modulus_min_psi = 4e5;
    wood.specific_gravity = 0.42;
    return wood;
}

void take_last(model::BaseDetail& detail, const catalog::Catalog& catalog) {
    const std::string gone = detail.framing.materials.back().id;
    detail.framing.materials.pop_back();
    const Timber timber = start_timber({}, catalog);
    each_wood(detail, [&](std::string& species, std::string& grade) {
        if (!grade.empty() || species != gone) return;
        species = timber.species;
        grade = timber.grade;
    });
}

void factor(Form& form, const Named& name, double& value) {
    Field field = form.fresh(name, FieldKind::number);
    field.value = fmt::format("{}", value);
    form.add(std::move(field), [&value, label = name.label](const std::string& text) -> Outcome {
        const Reading<double> read = read_factor(label, text);
        if (!read.value) return {read.refusal};
        value = *read.value;
        return {};
    });
}

void one_material(Form& form, model::BaseDetail& detail, OwnWood& wood) {
    form.at({fmt::format("framing/material[{}]", wood.id), {}, phrase("Material {}", wood.id)});
    std::vector<std::string> taken;
    for (const OwnWood& other : detail.framing.materials) {
        if (&other != &wood) taken.push_back(other.id);
    }
    form.id({"id", phrase("Id"), phrase("A short name, unlike that of any other material.")}, wood.id, taken,
            [&detail, &wood](const std::string& old) {
                each_wood(detail, [&](std::string& species, const std::string& grade) {
                    if (grade.empty() && species == old) species = wood.id;
                });
            });
    form.required_text({"name", phrase("Name"), phrase("As people call it, for instance 1.9E LVL.")}, wood.name);
    form.required_text({"source", phrase("Source"), phrase("The report or stamp the values stand in.")}, wood.source);
    const auto stress = [&form](const char* step, Phrase label, Phrase help, double& value) {
        form.quantity({step, std::move(label), std::move(help)}, value, Kind::stress);
    };
    stress("bending", phrase("Bending"), phrase("F_b, load on the narrow face."), wood.bending_psi);
    stress("bending-flat", phrase("Bending, flat"), phrase("F_b, load on the wide face."), wood.bending_flat_psi);
    stress("tension", phrase("Tension"), phrase("F_t, along the grain."), wood.tension_psi);
    stress("shear", phrase("Shear"), phrase("F_v, the smaller of the two faces."), wood.shear_psi);
    stress("compression-perp", phrase("Bearing"), phrase("F_c-perp, the smaller of the two faces."),
           wood.compression_perp_psi);
    stress("compression", phrase("Compression"), phrase("F_c, along the grain."), wood.compression_psi);
    stress("modulus", phrase("Modulus"), phrase("E."), wood.modulus_psi);
    stress("modulus-min", phrase("Modulus for buckling"), phrase("E_min."), wood.modulus_min_psi);
    factor(
        form,
        {"specific-gravity", phrase("Specific gravity"), phrase("The equivalent one the report gives for fasteners.")},
        wood.specific_gravity);
    const std::size_t before = form.entries().size();
    form.word({"volume-factor", phrase("Volume factor"), phrase("What depth and size do to F_b, as the report says.")},
              wood.volume, volumes);
    form.after(before, [&wood] {
        const bool by_depth = wood.volume == OwnWood::Volume::depth;
        if (by_depth && wood.volume_exponent == 0.0) wood.volume_exponent = 1.0 / 9.0;
        if (!by_depth) wood.volume_exponent = 0.0;
    });
    if (wood.volume == OwnWood::Volume::depth) {
        factor(form, {"volume-exponent", phrase("Exponent"), phrase("Of 12 in over the depth, as the report says.")},
               wood.volume_exponent);
    }
    form.word({"wet-service", phrase("Wet service"), phrase("What moisture does to the values.")}, wood.wet_service,
              wet_services);
}

}  // namespace

void material_fields(Form& form, model::BaseDetail& detail) {
    form.at({"framing", {}, phrase("Wood by report")});
    form.list(
        {"material-count", phrase("Number of materials"),
         phrase("Glulam, LVL, PSL and the like, each by the values of its report; a new one begins with low values for "
                "you to replace; a smaller number takes the last.")},
        detail.framing.materials.size(), {0, 50},
        [&detail] {
            detail.framing.materials.push_back(start_material(detail.framing));
            return Phrase{};
        },
        [&detail, &catalog = form.catalog()] { take_last(detail, catalog); });
    for (OwnWood& wood : detail.framing.materials) one_material(form, detail, wood);
}

}  // namespace toehold::editing

#include "job/design.h"

#include "demand/loads/code_loads.h"
#include "job/post_order.h"
#include "job/sizing.h"
#include "model/lumber_size.h"
#include "units/quantity.h"

#include <algorithm>

namespace toehold::job {
namespace {

void choose_metals(Design& design, const catalog::Metal& post) {
    design.stainless = post.kind != catalog::MetalKind::carbon_steel;
    design.bolt_grade = design.stainless ? "f593-cw" : "a307";
    const bool molybdenum = post.id.starts_with("stainless-316");
    if (post.kind == catalog::MetalKind::carbon_steel) {
        design.plate_metal = design.backing_metal = "steel-a36";
        design.filler = "e70";
    } else if (post.kind == catalog::MetalKind::stainless_steel) {
        design.plate_metal = design.backing_metal = molybdenum ? "stainless-316" : "stainless-304";
        design.filler = molybdenum ? "e316l" : "e308l";
    } else {
        design.plate_metal = "aluminum-6061-t6";
        design.backing_metal = "stainless-316";
        design.filler = "er5356";
    }
}

/// Boards that a post may not stand on are cut out about the anchors, and the plate stands on packing there.
std::string packing_for(const catalog::DeckingMaterial& boards, const catalog::Metal& plate) {
    if (boards.may_bear) return {};
    if (plate.kind == catalog::MetalKind::aluminum) return "packing-aluminum";
    return plate.kind == catalog::MetalKind::stainless_steel ? "packing-stainless" : "packing-steel";
}

model::WoodPost wood_post(const Job& job) {
    constexpr double wall_in = 0.25, height_in = 10.0;
    const model::DressedSize size = model::dressed_size(job.post.section).value();
    model::WoodPost post{size.first_in, size.second_in, species_of(job), grade_of(job), false, {}, job.post.section};
    if (job.place == Place::deck_side) return post;
    post.shoe = {model::ShoeAttachment::welded,
                 size.first_in + 2.0 * wall_in,
                 size.second_in + 2.0 * wall_in,
                 wall_in,
                 height_in,
                 "steel-a36",
                 std::nullopt,
                 {},
                 model::ShoeForm::closed};
    return post;
}

model::Post post_of(const Job& job, const catalog::Catalog& catalog) {
    if (is_wood(job.post)) return wood_post(job);
    model::Post post = metal_section(job.post.section).value();
    std::visit(
        [&](auto& one) {
            if constexpr (requires { one.metal; }) one.metal = metal_of(job.post, catalog);
        },
        post);
    return post;
}

void choose_wood(const Job& job, Design& design) {
    const model::DressedSize joist = model::dressed_size(job.joist_size).value();
    design.joist_width_in = joist.first_in;
    design.joist_depth_in = joist.second_in;
    design.block_size = block_size(job.joist_size);
    const model::DressedSize block = model::dressed_size(design.block_size).value();
    design.block_width_in = block.first_in;
    design.block_depth_in = block.second_in;
    design.species = species_of(job);
    design.grade = grade_of(job);
}

void choose_boards(const Job& job, Design& design, const catalog::DeckingMaterial& boards) {
    constexpr double usual_composite_in = 0.95;
    if (job.decking_thickness) {
        const Boards told = boards_of(*job.decking_thickness).value();
        design.decking_in = told.thickness_in;
        design.decking_size = told.size;
    } else if (boards.kind == catalog::DeckingKind::wood) {
        design.decking_size = "5/4x6";
        design.decking_in = model::dressed_size(design.decking_size)->first_in;
    } else {
        design.decking_in = usual_composite_in;
    }
}

}  // namespace

Design design_for(const Job& job, const catalog::Catalog& catalog) {
    Design design;
    design.push_lb = code_push_lb(job);
    design.moment_lb_in = design.push_lb * job.guard_height_in;
    design.post = post_of(job, catalog);
    choose_wood(job, design);
    const catalog::DeckingMaterial& boards = *catalog::find(catalog.decking, job.decking);
    choose_boards(job, design, boards);
    choose_metals(design,
                  *catalog::find(catalog.metals, is_wood(job.post) ? "steel-a36" : metal_of(job.post, catalog)));
    design.bolts = job.access_below.value_or(true);
    design.wood_boards = boards.may_bear;
    if (job.place == Place::deck_side) {
        design.side = side_design(job, design);
        design.tension_lb = side_tension_lb(job, design, *design.side);
        return design;
    }
    design.packing = packing_for(boards, *catalog::find(catalog.metals, design.plate_metal));
    size_base(job, design, catalog);
    return design;
}

model::Guard guard_of(const Job& job) {
    return {job.guard_height_in, job.occupancy, job.tributary_length_in, job.handrail};
}

double code_push_lb(const Job& job) {
    model::BaseDetail detail;
    detail.guard = guard_of(job);
    return std::max(demand::code_concentrated_lb, demand::code_line_lb(detail).value_or(0.0));
}

model::BuildingCode code_of(const Job& job) {
    const bool dwelling = job.occupancy == model::Occupancy::one_and_two_family;
    return job.code.value_or(dwelling ? model::BuildingCode::irc_2021 : model::BuildingCode::ibc_2021);
}

std::string species_of(const Job& job) { return job.species.value_or("southern-pine"); }
std::string grade_of(const Job& job) { return job.grade.value_or("no-2"); }

std::string block_size(const std::string& joist_size) {
    const std::size_t sign = joist_size.find_first_of("xX");
    return sign == std::string::npos ? std::string() : "4x" + joist_size.substr(sign + 1);
}

std::optional<Boards> boards_of(const std::string& thickness) {
    const std::string size = thickness.find_first_of("xX") == std::string::npos ? thickness + "x6" : thickness;
    if (const auto dressed = model::dressed_size(size)) return Boards{dressed->first_in, size};
    const units::Parsed length = units::parse(thickness, units::Kind::length);
    if (!length.value || !(*length.value > 0.0)) return std::nullopt;
    return Boards{*length.value, {}};
}

double clear_bay_in(const Job& job, double joist_width_in) { return job.joist_spacing_in - joist_width_in; }

}  // namespace toehold::job

#include "model/validate_framing.h"

#include "model/placement.h"
#include "model/validate.h"
#include "model/validate_connection.h"
#include "model/validate_joists.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace toehold::model {
namespace {

using format::phrase;
using format::verbatim;

std::string path(const Member& member) {
    const std::string kind = member.kind == MemberKind::joist ? "joists/joist" : name(member.kind);
    return "framing/" + kind + "[" + member.id + "]";
}

void check_fastening(ProblemList& problems, const DeckingFastening& fastening) {
    problems.positive(phrase("diameter (in)"), fastening.diameter_in, 2.0);
    problems.positive(phrase("length (in)"), fastening.length_in, 24.0);
    problems.between(phrase("fasteners per crossing"), fastening.per_crossing, 1, 20);
    problems.positive(phrase("board width (in)"), fastening.board_width_in, 48.0);
    problems.between(phrase("lateral (lb)"), fastening.lateral_lb, 0.0, 1e5);
}

void check_packing(ProblemList& problems, const Layers& layers) {
    const Packing& packing = *layers.packing;
    problems.at("layers/packing");
    if (!layers.decking) {
        problems.add(phrase("packing without decking: it fills the thickness of the boards"),
                     phrase("a decking element; shims under the plate where there are no boards"));
    }
    const bool round = packing.shape == PackingShape::round;
    problems.positive(round ? phrase("diameter (in)") : phrase("width (in)"), packing.width_in, 48.0);
    if (!round) problems.positive(phrase("depth (in)"), packing.depth_in, 48.0);
    problems.between(phrase("hole (in)"), packing.hole_in, 0.0,
                     0.95 * (round ? packing.width_in : std::min(packing.width_in, packing.depth_in)));
    if (packing.places.size() > most_members)
        problems.add(phrase("too many pieces of packing"), phrase("at most {}", most_members),
                     verbatim(std::to_string(packing.places.size())));
    for (const Position place : packing.places) {
        problems.between(phrase("x (in)"), place.x_in, -largest_length_in, largest_length_in);
        problems.between(phrase("y (in)"), place.y_in, -largest_length_in, largest_length_in);
    }
}

void check_end(ProblemList& problems, const std::vector<Member>& all, const Block& block, std::size_t index,
               bool upper_end) {
    const BlockEnd& end = upper_end ? block.to_end : block.from_end;
    const double end_in = upper_end ? block.to_in : block.from_in;
    problems.at("framing/block[" + block.id + "]/end[" + (upper_end ? "to" : "from") + "]");
    check_connection(problems, end.connection, block.depth_in * block.stack);
    if (end.joist.empty()) return;
    const auto holder = std::find_if(all.begin(), all.end(), [&](const Member& one) { return one.id == end.joist; });
    if (holder == all.end()) {
        problems.add(phrase("no joist, rim or block has this id"), phrase("the id of the member the end meets"),
                     verbatim(end.joist));
    } else if (!meets(all[index], end_in, upper_end, *holder)) {
        const format::Phrase holder_name = part_name(part_of(*holder));
        problems.add(
            phrase("{} does not hold the block: its face is not at the block's end", holder_name),
            phrase("a block end within {} in of the near face of a member across it", brief(end_fit_in)),
            phrase("end at {} in, {} centered at {} in", brief(end_in), holder_name, brief(holder->across_in)));
    }
}

void check_block(ProblemList& problems, const Framing& framing, const std::vector<Member>& all, std::size_t index) {
    const Block& block = framing.blocks[index];
    const std::string element = path(all[index]);
    problems.at(element);
    if (block.id.empty()) problems.add(phrase("a block has no id"), phrase("a short name such as B1"));
    check_section(problems, block.width_in, block.depth_in);
    problems.between(phrase("plies"), block.plies, 1, most_block_plies);
    problems.between(phrase("stack"), block.stack, 1, 4);
    if (block.stack_fastened && block.stack == 1)
        problems.add(phrase("one piece is not fastened to another below it"), phrase("a stack of two or more"));
    problems.between(phrase("across (in)"), block.across_in, -largest_length_in, largest_length_in);
    check_ends(problems, block.from_in, block.to_in);
    check_end(problems, all, block, index, false);
    check_end(problems, all, block, index, true);
    const bool joists_described = framing.joists && !framing.joists->members.empty();
    if (joists_described && block.from_end.joist.empty() && block.to_end.joist.empty()) {
        problems.at(element).add(phrase("no joist holds this block"), phrase("an end that names its joist"));
    }
}

void check_ids(ProblemList& problems, const Framing& framing, const std::vector<Member>& all) {
    std::map<std::string, format::Phrase> taken;
    const auto take = [&](const std::string& id, const format::Phrase& part, const std::string& element) {
        const auto [first, fresh] = taken.emplace(id, part);
        if (fresh) return;
        problems.at(element).add(phrase("the id is already that of {}", first->second),
                                 phrase("ids that differ among joists, rims, supports and blocks"), verbatim(id));
    };
    for (const Member& member : all) take(member.id, part_name(part_of(member)), path(member));
    for (const JoistSupport& support : framing.supports)
        take(support.id, phrase("support {}", support.id), "framing/support[" + support.id + "]");
}

/// Two blocks side by side where one doubled block is meant, perhaps set in from the row of anchors over each.
bool doubled(const Member& block, const Member& other) {
    return other.kind == MemberKind::block && block.along == other.along && block.across_in != other.across_in;
}

void report_overlap(ProblemList& problems, const Member& block, const Member& other) {
    const format::Phrase message = phrase("the block overlaps {} in plan", part_name(part_of(other)));
    if (!doubled(block, other)) {
        problems.at(path(block)).add(message, phrase("members side by side"));
        return;
    }
    problems.at(path(block))
        .add(message,
             phrase("blocks at least {} in apart, center to center; for a doubled block, one block with plies=\"2\" "
                    "whose joint is not under a row of holes: move it or the row sideways by at least a quarter of its "
                    "width",
                    brief(0.5 * (block.width_in + other.width_in))),
             phrase("{} in apart", brief(std::abs(block.across_in - other.across_in))));
}

void check_overlaps(ProblemList& problems, const Framing& framing, const std::vector<Member>& all) {
    for (std::size_t block = 0; block < framing.blocks.size(); ++block) {
        for (std::size_t other = 0; other < all.size(); ++other) {
            if (other == block || !overlap(all[block], all[other])) continue;
            // Two blocks are told of once, at the later.
            if (all[other].kind == MemberKind::block && other > block) continue;
            report_overlap(problems, all[block], all[other]);
        }
    }
}

bool too_many(ProblemList& problems, const std::string& element, const format::Phrase& message, std::size_t count) {
    if (count <= most_members) return false;
    problems.at(element).add(message, phrase("at most {}", most_members), verbatim(std::to_string(count)));
    return true;
}

void check_material(ProblemList& problems, const OwnWood& wood) {
    problems.at("framing/material[" + wood.id + "]");
    if (wood.id.empty()) problems.add(phrase("a material has no id"), phrase("a short name such as LVL"));
    if (wood.source.empty()) {
        problems.add(phrase("the values of a material of your own need their source"),
                     phrase("the evaluation report or grade stamp they stand in"));
    }
    constexpr double largest_stress_psi = 2e4;
    constexpr double largest_modulus_psi = 5e6;
    problems.positive(phrase("bending (psi)"), wood.bending_psi, largest_stress_psi);
    problems.positive(phrase("flat bending (psi)"), wood.bending_flat_psi, largest_stress_psi);
    problems.positive(phrase("tension (psi)"), wood.tension_psi, largest_stress_psi);
    problems.positive(phrase("shear (psi)"), wood.shear_psi, largest_stress_psi);
    problems.positive(phrase("compression perpendicular to grain (psi)"), wood.compression_perp_psi,
                      largest_stress_psi);
    problems.positive(phrase("compression (psi)"), wood.compression_psi, largest_stress_psi);
    problems.positive(phrase("modulus (psi)"), wood.modulus_psi, largest_modulus_psi);
    problems.positive(phrase("minimum modulus (psi)"), wood.modulus_min_psi, wood.modulus_psi);
    problems.positive(phrase("specific gravity"), wood.specific_gravity, 1.2);
    if (wood.volume == OwnWood::Volume::depth) problems.positive(phrase("volume exponent"), wood.volume_exponent, 1.0);
}

void check_materials(ProblemList& problems, const Framing& framing) {
    for (const OwnWood& wood : framing.materials) check_material(problems, wood);
    for (std::size_t first = 0; first < framing.materials.size(); ++first) {
        for (std::size_t second = first + 1; second < framing.materials.size(); ++second) {
            if (framing.materials[first].id != framing.materials[second].id) continue;
            problems.at("framing/material[" + framing.materials[second].id + "]")
                .add(phrase("two materials have this id"), phrase("an id of its own for each material"));
        }
    }
}

bool too_many(ProblemList& problems, const Framing& framing) {
    const bool joists = framing.joists &&
                        too_many(problems, "framing/joists", phrase("too many joists"), framing.joists->members.size());
    const bool rims = too_many(problems, "framing", phrase("too many rims"), framing.rims.size());
    const bool supports = too_many(problems, "framing", phrase("too many supports"), framing.supports.size());
    const bool blocks = too_many(problems, "framing", phrase("too many blocks"), framing.blocks.size());
    return joists || rims || supports || blocks;
}

}  // namespace

void check_section(ProblemList& problems, double width_in, double depth_in) {
    problems.positive(phrase("width (in)"), width_in, 48.0);
    problems.positive(phrase("depth (in)"), depth_in, 48.0);
}

void check_plies(ProblemList& problems, int plies) { problems.between(phrase("plies"), plies, 1, 4); }

void check_ends(ProblemList& problems, double from_in, double to_in) {
    problems.between(phrase("from (in)"), from_in, -largest_length_in, largest_length_in);
    problems.between(phrase("to (in)"), to_in, -largest_length_in, largest_length_in);
    if (!(to_in > from_in)) {
        problems.add(phrase("the end is not beyond the beginning"), phrase("to greater than from"),
                     phrase("from {} in to {} in", brief(from_in), brief(to_in)));
    }
}

void check_decking(ProblemList& problems, const std::string& element, const Decking& decking) {
    problems.at(element).positive(phrase("thickness (in)"), decking.thickness_in, 12.0);
    problems.between(phrase("bearing (psi)"), decking.bearing_psi, 0.0, 1e5);
    problems.between(phrase("modulus (psi)"), decking.modulus_psi, 0.0, 1e8);
    if (decking.fastening) check_fastening(problems.at(element + "/fasteners"), *decking.fastening);
}

void check_layers(ProblemList& problems, const Layers& layers) {
    if (layers.decking) check_decking(problems, "layers/decking", *layers.decking);
    if (layers.packing) check_packing(problems, layers);
    if (layers.shims.size() > 20)
        problems.at("layers").add(phrase("too many shims"), phrase("at most 20"),
                                  verbatim(std::to_string(layers.shims.size())));
    for (const Shim& shim : layers.shims)
        problems.at("layers/shim").positive(phrase("thickness (in)"), shim.thickness_in, 12.0);
}

bool too_many_members(const Framing& framing) {
    ProblemList problems;
    return too_many(problems, framing);
}

void check_framing(ProblemList& problems, const Framing& framing) {
    if (too_many(problems, framing)) return;
    check_materials(problems, framing);
    const std::vector<Member> all = members(framing);
    if (framing.joists) check_joists(problems, *framing.joists);
    check_rims(problems, framing);
    check_supports(problems, framing);
    for (std::size_t index = 0; index < framing.blocks.size(); ++index) check_block(problems, framing, all, index);
    check_ids(problems, framing, all);
    check_overlaps(problems, framing, all);
    problems.at("framing/deck");
    if (framing.deck.dead_psf) problems.between(phrase("dead (psf)"), *framing.deck.dead_psf, 0.0, 500.0);
    if (framing.deck.live_psf) problems.between(phrase("live (psf)"), *framing.deck.live_psf, 0.0, 500.0);
}

}  // namespace toehold::model

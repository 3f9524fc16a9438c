#include "model/validate_framing.h"

#include "model/placement.h"

#include <algorithm>
#include <cmath>
#include <set>

namespace toehold::model {
namespace {

constexpr std::size_t most_members = 50;
constexpr double fit_in = 0.25;  // a block end this near to a joist's face meets it

void check_section(ProblemList& problems, double width_in, double depth_in) {
    problems.positive("width (in)", width_in, 48.0);
    problems.positive("depth (in)", depth_in, 48.0);
}

void check_joists(ProblemList& problems, const Joists& joists) {
    problems.at("framing/joists");
    check_section(problems, joists.width_in, joists.depth_in);
    if (joists.members.size() > most_members) {
        problems.add("too many joists", "at most " + std::to_string(most_members),
                     std::to_string(joists.members.size()));
    }
    std::set<std::string> ids;
    for (const Joist& joist : joists.members) {
        problems.at("framing/joists/joist[" + joist.id + "]");
        if (joist.id.empty()) problems.add("a joist has no id", "a short name such as J1");
        if (!ids.insert(joist.id).second) problems.add("two joists have the same id", "ids that differ", joist.id);
        problems.between("offset (in)", joist.offset_in, -largest_length_in, largest_length_in);
    }
}

void check_fasteners(ProblemList& problems, const EndGrainFasteners& fasteners) {
    problems.positive("diameter (in)", fasteners.diameter_in, 2.0);
    problems.positive("length (in)", fasteners.length_in, 24.0);
    problems.between("count", fasteners.count, 1, 60);
    problems.between("spread (in)", fasteners.spread_in, 0.0, 48.0);
    if (fasteners.count > 1 && !(fasteners.spread_in > 0.0)) {
        problems.add("more than one fastener needs the distance between the outermost two", "a spread above 0");
    }
}

void check_connector(ProblemList& problems, const ReportedConnector& connector) {
    problems.between("uplift (lb)", connector.uplift_lb, 0.0, 1e6);
    problems.between("down (lb)", connector.down_lb, 0.0, 1e6);
    problems.between("lateral (lb)", connector.lateral_lb, 0.0, 1e6);
    problems.between("couple arm (in)", connector.couple_arm_in, 0.0, 48.0);
}

const Joist* find_joist(const Framing& framing, const std::string& id) {
    if (!framing.joists) return nullptr;
    for (const Joist& joist : framing.joists->members) {
        if (joist.id == id) return &joist;
    }
    return nullptr;
}

/// Whether a block's end, at this coordinate along the block, meets the joist's near face.
bool meets(const Framing& framing, const Block& block, double end_in, bool upper_end, const Joist& joist) {
    if (framing.joists->along == block.along) return false;
    const double half = 0.5 * framing.joists->width_in;
    const double face = upper_end ? joist.offset_in - half : joist.offset_in + half;
    return std::abs(end_in - face) <= fit_in;
}

void check_end(ProblemList& problems, const Framing& framing, const Block& block, bool upper_end) {
    const BlockEnd& end = upper_end ? block.to_end : block.from_end;
    const double end_in = upper_end ? block.to_in : block.from_in;
    problems.at("framing/block[" + block.id + "]/end[" + (upper_end ? "to" : "from") + "]");
    if (const auto* fasteners = std::get_if<EndGrainFasteners>(&end.connection)) check_fasteners(problems, *fasteners);
    if (const auto* connector = std::get_if<ReportedConnector>(&end.connection)) check_connector(problems, *connector);
    if (end.joist.empty()) return;
    const Joist* joist = find_joist(framing, end.joist);
    if (joist == nullptr) {
        problems.add("no joist has this id", "the id of a joist under framing/joists", end.joist);
    } else if (!meets(framing, block, end_in, upper_end, *joist)) {
        problems.add(
            "the joist does not hold the block: its face is not at the block's end",
            "a block end within " + brief(fit_in) + " in of the joist's near face, across the joists",
            "end at " + brief(end_in) + " in, joist " + joist->id + " centred at " + brief(joist->offset_in) + " in");
    }
}

void check_block(ProblemList& problems, const Framing& framing, const Block& block) {
    problems.at("framing/block[" + block.id + "]");
    if (block.id.empty()) problems.add("a block has no id", "a short name such as B1");
    check_section(problems, block.width_in, block.depth_in);
    problems.between("from (in)", block.from_in, -largest_length_in, largest_length_in);
    problems.between("to (in)", block.to_in, -largest_length_in, largest_length_in);
    problems.between("across (in)", block.across_in, -largest_length_in, largest_length_in);
    if (!(block.to_in > block.from_in)) {
        problems.add("a block ends beyond where it begins", "to greater than from",
                     "from " + brief(block.from_in) + " in to " + brief(block.to_in) + " in");
    }
    check_end(problems, framing, block, false);
    check_end(problems, framing, block, true);
    const bool joists_described = framing.joists && !framing.joists->members.empty();
    if (joists_described && block.from_end.joist.empty() && block.to_end.joist.empty()) {
        problems.at("framing/block[" + block.id + "]").add("no joist holds this block", "an end that names its joist");
    }
}

bool overlap(const PlanRectangle& a, const PlanRectangle& b) {
    constexpr double touching_in = 1e-6;
    return std::min(a.x_max_in, b.x_max_in) - std::max(a.x_min_in, b.x_min_in) > touching_in &&
           std::min(a.y_max_in, b.y_max_in) - std::max(a.y_min_in, b.y_min_in) > touching_in;
}

}  // namespace

void check_layers(ProblemList& problems, const Layers& layers) {
    if (layers.decking) problems.at("layers/decking").positive("thickness (in)", layers.decking->thickness_in, 12.0);
    if (layers.shims.size() > 20)
        problems.at("layers").add("too many shims", "at most 20", std::to_string(layers.shims.size()));
    for (const Shim& shim : layers.shims)
        problems.at("layers/shim").positive("thickness (in)", shim.thickness_in, 12.0);
}

void check_framing(ProblemList& problems, const Framing& framing) {
    if (framing.joists) check_joists(problems, *framing.joists);
    if (framing.blocks.size() > most_members) {
        problems.at("framing").add("too many blocks", "at most " + std::to_string(most_members),
                                   std::to_string(framing.blocks.size()));
        return;
    }
    std::set<std::string> ids;
    for (const Block& block : framing.blocks) {
        check_block(problems, framing, block);
        if (!ids.insert(block.id).second) {
            problems.at("framing/block[" + block.id + "]")
                .add("two blocks have the same id", "ids that differ", block.id);
        }
    }
    const std::vector<Member> all = members(framing);
    for (std::size_t a = 0; a < framing.blocks.size(); ++a) {
        for (std::size_t b = a + 1; b < framing.blocks.size(); ++b) {
            if (!overlap(plan(all[a]), plan(all[b]))) continue;
            problems.at("framing/block[" + framing.blocks[b].id + "]")
                .add("the block overlaps block " + framing.blocks[a].id + " in plan", "blocks side by side");
        }
    }
}

}  // namespace toehold::model

// Layers, joists, rims, supports and blocks.
#include "format/figures.h"
#include "paper/report/blocks.h"
#include "paper/report/described.h"

#include <fmt/format.h>

#include <algorithm>

namespace toehold::paper::report {
namespace {

using units::System;

std::string wood_words(const std::optional<catalog::MemberMaterial>& wood) {
    return wood ? wood->species.name + " " + wood->grade.name : std::string("species not resolved");
}

std::string section_words(int plies, double width_in, double depth_in, System system) {
    const std::string one = length(width_in, system) + " wide, " + length(depth_in, system) + " deep";
    return plies > 1 ? fmt::format("{} pieces, each {}", plies, one) : one;
}

std::string axis(model::PlanAxis along) { return along == model::PlanAxis::x ? "x" : "y"; }

std::string fastening_words(const model::DeckingFastening& fastening, System system) {
    std::string words = fmt::format("; boards {} wide, {} fasteners {} x {} at each crossing of a joist",
                                    length(fastening.board_width_in, system), fastening.per_crossing,
                                    length(fastening.diameter_in, system), length(fastening.length_in, system));
    if (fastening.lateral_lb > 0.0)
        words += ", " + figure(fastening.lateral_lb, "lb", system) + " each sideways (" + fastening.report + ")";
    return words;
}

std::vector<std::string> joist_places(const std::vector<model::Joist>& joists, System system) {
    std::vector<std::string> places;
    places.reserve(joists.size());
    for (const model::Joist& joist : joists) {
        places.push_back(joist.id + " at " + length(joist.offset_in, system) +
                         (joist.plies > 1 ? fmt::format(" ({} pieces)", joist.plies) : ""));
    }
    return places;
}

}  // namespace

std::string decking_words(const catalog::Resolved& resolved, System system) {
    const model::Layers& layers = on_deck(resolved.detail).layers;
    std::string words = "none: the plate stands on the framing";
    if (layers.decking) {
        words = (on_deck(resolved).decking ? on_deck(resolved).decking->name : layers.decking->material) + ", " +
                length(layers.decking->thickness_in, system) + " thick";
        words += layers.decking->fastening ? fastening_words(*layers.decking->fastening, system)
                                           : std::string("; fastening not described, boards count as loose");
        if (!layers.decking->evidence.empty()) words += "; " + layers.decking->evidence;
    }
    for (std::size_t index = 0; index < layers.shims.size(); ++index) {
        const std::string material =
            index < on_deck(resolved).shims.size() ? on_deck(resolved).shims[index].name : layers.shims[index].material;
        words += "; packing " + length(layers.shims[index].thickness_in, system) + ", " + material;
    }
    return words;
}

std::string joists_words(const catalog::Resolved& resolved, System system) {
    const model::Joists& joists = *resolved.detail.framing.joists;
    std::string words =
        fmt::format("{}, {}; along {}, centre lines {}", section_words(1, joists.width_in, joists.depth_in, system),
                    wood_words(resolved.joists), axis(joists.along), listed(joist_places(joists.members, system)));
    if (!joists.from_in || !joists.to_in) return words + "; length not described";
    return words + fmt::format("; from {} to {}", length(*joists.from_in, system), length(*joists.to_in, system));
}

std::string rim_words(const catalog::Resolved& resolved, std::size_t rim, System system) {
    const model::Rim& one = resolved.detail.framing.rims.at(rim);
    return fmt::format("{}, {}; centre line at {}, from {} to {}; each joist to it: {}",
                       section_words(one.plies, one.width_in, one.depth_in, system), wood_words(resolved.rims.at(rim)),
                       length(one.at_in, system), length(one.from_in, system), length(one.to_in, system),
                       connection_words(one.connection, system));
}

std::string support_words(const model::JoistSupport& support, System system) {
    const bool ledger = support.kind == model::JoistSupport::Kind::ledger;
    return fmt::format("{} at {}{}; each joist to it: {}", ledger ? "ledger" : "beam", length(support.at_in, system),
                       ledger ? "" : ", bearing " + length(support.bearing_in, system),
                       connection_words(support.connection, system));
}

std::string block_words(const catalog::Resolved& resolved, std::size_t block, System system) {
    const model::Block& one = resolved.detail.framing.blocks.at(block);
    return fmt::format("{}, {}; along {} from {} to {}, centre line at {}",
                       section_words(one.plies, one.width_in, one.depth_in, system),
                       wood_words(resolved.blocks.at(block)), axis(one.along), length(one.from_in, system),
                       length(one.to_in, system), length(one.across_in, system));
}

std::vector<Alike> block_ends_alike(const model::Framing& framing, System system) {
    std::vector<Alike> all;
    for (const model::Block& block : framing.blocks) {
        for (const model::BlockEnd* end : {&block.from_end, &block.to_end}) {
            const std::optional<std::size_t> holder = model::find_member(framing, end->joist);
            const std::string at =
                holder ? "at " + model::subject(model::member(framing, *holder))
                       : std::string(end == &block.from_end ? "lower end" : "upper end") + ", meets nothing described";
            const std::string words = connection_words(end->connection, system), name = "block " + block.id + " " + at;
            const auto same = std::find_if(all.begin(), all.end(), [&](const Alike& a) { return a.words == words; });
            if (same == all.end()) {
                all.push_back({words, {name}});
            } else {
                same->ids.push_back(name);
            }
        }
    }
    return all;
}

}  // namespace toehold::paper::report

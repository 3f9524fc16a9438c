#include "model/placement.h"
#include "paper/site/instructions.h"
#include "paper/site/wording.h"
#include "paper/words.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <optional>
#include <utility>

namespace toehold::paper::site {
namespace {

constexpr double tight_in = 1.0 / 32.0;

struct BlockSet {
    std::vector<std::size_t> blocks;  ///< in framing.blocks, which is also their number among the members
};

bool alike(const model::Block& one, const model::Block& other) {
    constexpr double same_in = 1e-3;
    return std::abs(one.width_in - other.width_in) < same_in && std::abs(one.depth_in - other.depth_in) < same_in &&
           std::abs((one.to_in - one.from_in) - (other.to_in - other.from_in)) < same_in && one.plies == other.plies &&
           one.species == other.species && one.grade == other.grade;
}

std::vector<BlockSet> block_sets(const std::vector<model::Block>& blocks) {
    std::vector<BlockSet> sets;
    for (std::size_t index = 0; index < blocks.size(); ++index) {
        const auto same = std::find_if(sets.begin(), sets.end(), [&](const BlockSet& set) {
            return alike(blocks[set.blocks.front()], blocks[index]);
        });
        if (same == sets.end()) {
            sets.push_back({{index}});
        } else {
            same->blocks.push_back(index);
        }
    }
    return sets;
}

/// Clear distance between two members that run the same way, 0 where they touch or overlap.
double clear_in(const model::Member& one, const model::Member& other) {
    return std::max(0.0, std::abs(one.across_in - other.across_in) - 0.5 * (one.width_in + other.width_in));
}

/// What a builder can hook a tape to beside a block: a rim that runs its way, else a joist that does.
std::optional<model::Member> neighbour(const std::vector<model::Member>& members, const model::Member& block) {
    std::optional<model::Member> nearest;
    for (const model::Member& one : members) {
        if (one.kind == model::MemberKind::block || one.along != block.along) continue;
        const bool better = !nearest || (one.kind == nearest->kind ? clear_in(one, block) < clear_in(*nearest, block)
                                                                   : one.kind == model::MemberKind::rim);
        if (better) nearest = one;
    }
    return nearest;
}

std::string from_post(const model::Member& block, units::System system) {
    const bool along_x = block.along == model::PlanAxis::x;
    const double at_in = block.across_in;
    if (std::abs(at_in) < tight_in) return "centred under the post";
    const char* const side = along_x ? (at_in > 0.0 ? "outward" : "inward") : (at_in > 0.0 ? "right" : "left");
    return fmt::format("centre line {} {} of the post's centre", tape_words(std::abs(at_in), system), side);
}

/// Where a block stands beside what a tape can be hooked to: `clear of rim R1`, and how far.
struct Offset {
    std::string from, words;
};

Offset offset(const std::vector<model::Member>& members, const model::Member& block, units::System system) {
    const auto beside = neighbour(members, block);
    if (!beside) return {"Place", from_post(block, system)};
    const double clear = clear_in(*beside, block);
    return {std::string("Clear of ") + model::name(beside->kind) + " " + beside->id,
            clear < tight_in ? "tight against it" : tape_words(clear, system)};
}

/// `B1 and B2 between J1 and J2; B3 between J2 and J3`: what is the same for several is said once.
std::string grouped(const std::vector<std::pair<std::string, std::string>>& words_of_ids) {
    std::vector<std::pair<std::string, std::vector<std::string>>> groups;
    for (const auto& [id, words] : words_of_ids) {
        auto group = groups.begin();
        while (group != groups.end() && group->first != words) ++group;
        if (group == groups.end()) group = groups.insert(group, {words, {}});
        group->second.push_back(id);
    }
    std::string all;
    for (const auto& [words, ids] : groups) all += (all.empty() ? "" : "; ") + listed(ids) + " " + words;
    return all;
}

std::string holders(const model::Block& block) {
    if (block.from_end.joist.empty() && block.to_end.joist.empty()) return "where no holder is described: ASK";
    if (block.from_end.joist.empty() || block.to_end.joist.empty())
        return "with one end at " + block.from_end.joist + block.to_end.joist + ", the other not described: ASK";
    return "between " + block.from_end.joist + " and " + block.to_end.joist;
}

std::string holder_words(const model::Framing& framing, const BlockSet& set) {
    std::vector<std::pair<std::string, std::string>> words;
    for (const std::size_t index : set.blocks)
        words.emplace_back(framing.blocks.at(index).id, holders(framing.blocks.at(index)));
    return grouped(words) + ".";
}

/// A sentence for every face that blocks are measured from.
std::string offset_words(const std::vector<model::Member>& members, const BlockSet& set, units::System system) {
    std::vector<std::string> faces;
    for (const std::size_t index : set.blocks) {
        const std::string from = offset(members, members.at(index), system).from;
        if (std::find(faces.begin(), faces.end(), from) == faces.end()) faces.push_back(from);
    }
    std::string sentences;
    for (const std::string& face : faces) {
        std::vector<std::pair<std::string, std::string>> words;
        for (const std::size_t index : set.blocks) {
            const Offset one = offset(members, members.at(index), system);
            if (one.from == face) words.emplace_back(members.at(index).id, one.words);
        }
        sentences += " " + face + ": " + grouped(words) + ".";
    }
    return sentences;
}

std::string wood_words(const Reader& reader, std::size_t block) {
    const catalog::MemberMaterial& wood = catalog::wood(reader.resolved, block);
    return wood.species.name + " " + wood.grade.name +
           (reader.resolved.detail.framing.preservative_treated ? ", treated" : "");
}

Instruction instruction(const Reader& reader, const BlockSet& set, const std::vector<model::Member>& members) {
    const model::Member& first = members.at(set.blocks.front());
    std::vector<std::string> ids;
    for (const std::size_t index : set.blocks) ids.push_back(members.at(index).id);
    return {fmt::format("Block{} {}: {}, {} long.", ids.size() > 1 ? "s" : "", listed(ids),
                        lumber_words(first, reader.system), tape_words(model::length_in(first), reader.system)),
            fmt::format("{}. {}. {}{}", actual_words(first, reader.system), wood_words(reader, set.blocks.front()),
                        holder_words(reader.resolved.detail.framing, set), offset_words(members, set, reader.system))};
}

}  // namespace

Instructions block_instructions(const Reader& reader) {
    const std::vector<model::Member> members = model::members(reader.resolved.detail.framing);
    Instructions instructions;
    for (const BlockSet& set : block_sets(reader.resolved.detail.framing.blocks))
        instructions.push_back(instruction(reader, set, members));
    if (instructions.empty())
        instructions.push_back({"No blocks are described.", "Nothing under the boards is named to hold the base."});
    return instructions;
}

}  // namespace toehold::paper::site

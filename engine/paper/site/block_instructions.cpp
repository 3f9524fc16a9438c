#include "model/placement.h"
#include "paper/site/instructions.h"
#include "paper/site/wording.h"
#include "paper/words.h"

#include <algorithm>
#include <cmath>
#include <optional>
#include <utility>

namespace toehold::paper::site {
namespace {

using format::Phrase;
using format::phrase;
using model::PartId;

constexpr double tight_in = 1.0 / 32.0;

struct BlockSet {
    std::vector<std::size_t> blocks;  ///< in framing.blocks, which is also their number among the members
};

bool alike(const model::Block& one, const model::Block& other) {
    constexpr double same_in = 1e-3;
    return std::abs(one.width_in - other.width_in) < same_in && std::abs(one.depth_in - other.depth_in) < same_in &&
           std::abs((one.to_in - one.from_in) - (other.to_in - other.from_in)) < same_in && one.plies == other.plies &&
           one.stack == other.stack && one.species == other.species && one.grade == other.grade;
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
std::optional<model::Member> neighbor(const std::vector<model::Member>& members, const model::Member& block) {
    std::optional<model::Member> nearest;
    for (const model::Member& one : members) {
        if (one.kind == model::MemberKind::block || one.along != block.along) continue;
        const bool better = !nearest || (one.kind == nearest->kind ? clear_in(one, block) < clear_in(*nearest, block)
                                                                   : one.kind == model::MemberKind::rim);
        if (better) nearest = one;
    }
    return nearest;
}

/// Of a post outside its member the sheet's drawing has left and right exchanged, so that words say which they mean.
Phrase from_post(const model::Member& block, const Reader& reader) {
    const double at_in = block.across_in;
    const auto* const side = std::get_if<model::SideFastened>(&reader.resolved.detail.mount);
    if (std::abs(at_in) < tight_in)
        return side != nullptr ? phrase("centered on the post") : phrase("centered under the post");
    const bool outside_view = side != nullptr && side->face == model::MemberFace::outside;
    const std::string far = tape_words(std::abs(at_in), reader.system);
    if (block.along == model::PlanAxis::x) {
        return at_in > 0.0 ? phrase("center line {} outward of the center of the post", far)
                           : phrase("center line {} inward of the center of the post", far);
    }
    if (outside_view) {
        return at_in > 0.0 ? phrase("center line {} right of the center of the post, looking outward", far)
                           : phrase("center line {} left of the center of the post, looking outward", far);
    }
    return at_in > 0.0 ? phrase("center line {} right of the center of the post", far)
                       : phrase("center line {} left of the center of the post", far);
}

/// Where a block stands beside what a tape can be hooked to: clear of that member, or from the post where there is
/// none, and how far.
struct Offset {
    std::optional<PartId> from;
    Phrase words;
};

Offset offset(const std::vector<model::Member>& members, const model::Member& block, const Reader& reader) {
    const auto beside = neighbor(members, block);
    if (!beside) return {std::nullopt, from_post(block, reader)};
    const double clear = clear_in(*beside, block);
    return {model::part_of(*beside),
            clear < tight_in ? phrase("tight against it") : format::verbatim(tape_words(clear, reader.system))};
}

/// Words about a block, by its id.
using BlockWords = std::vector<std::pair<std::string, Phrase>>;

/// `B1 and B2 between J1 and J2; B3 between J2 and J3`: what is the same for several is said once.
Phrase grouped(const BlockWords& words_of_ids) {
    std::vector<std::pair<Phrase, std::vector<std::string>>> groups;
    for (const auto& [id, words] : words_of_ids) {
        auto group = groups.begin();
        while (group != groups.end() && !(group->first == words)) ++group;
        if (group == groups.end()) group = groups.insert(group, {words, {}});
        group->second.push_back(id);
    }
    Phrase all;
    for (const auto& [words, ids] : groups) {
        Phrase one = phrase("{} {}", listed(ids), words);
        all = all.empty() ? std::move(one) : phrase("{}; {}", std::move(all), std::move(one));
    }
    return all;
}

Phrase holders(const model::Block& block) {
    const std::string &from = block.from_end.joist, &to = block.to_end.joist;
    if (from.empty() && to.empty()) return phrase("where no holder is specified: ASK");
    if (from.empty() || to.empty())
        return phrase("with one end at {}, the other not specified: ASK", from.empty() ? to : from);
    return phrase("between {} and {}", from, to);
}

Phrase holder_words(const model::Framing& framing, const BlockSet& set) {
    BlockWords words;
    for (const std::size_t index : set.blocks)
        words.emplace_back(framing.blocks.at(index).id, holders(framing.blocks.at(index)));
    return phrase("{}.", grouped(words));
}

/// After the words given, a sentence for every face that blocks are measured from.
Phrase with_offsets(Phrase sentences, const std::vector<model::Member>& members, const BlockSet& set,
                    const Reader& reader) {
    std::vector<std::optional<PartId>> faces;
    for (const std::size_t index : set.blocks) {
        const std::optional<PartId> from = offset(members, members.at(index), reader).from;
        if (std::find(faces.begin(), faces.end(), from) == faces.end()) faces.push_back(from);
    }
    for (const std::optional<PartId>& face : faces) {
        BlockWords words;
        for (const std::size_t index : set.blocks) {
            const Offset one = offset(members, members.at(index), reader);
            if (one.from == face) words.emplace_back(members.at(index).id, one.words);
        }
        Phrase sentence = face ? phrase("Clear of {}: {}.", model::part_name(*face), grouped(words))
                               : phrase("Place: {}.", grouped(words));
        sentences = phrase("{} {}", std::move(sentences), std::move(sentence));
    }
    return sentences;
}

Phrase wood_words(const Reader& reader, std::size_t block) {
    const catalog::MemberMaterial& wood = catalog::wood(reader.resolved, block);
    return reader.resolved.detail.framing.preservative_treated
               ? phrase("{} {}, treated", wood.species.name, wood.grade.name)
               : phrase("{} {}", wood.species.name, wood.grade.name);
}

Instruction instruction(const Reader& reader, const BlockSet& set, const std::vector<model::Member>& members) {
    const model::Member& first = members.at(set.blocks.front());
    std::vector<std::string> ids;
    for (const std::size_t index : set.blocks) ids.push_back(members.at(index).id);
    const Phrase lumber = lumber_words(first, reader.system);
    const std::string length = tape_words(model::length_in(first), reader.system);
    Phrase words = phrase("{}. {}. {}", actual_words(first, reader.system), wood_words(reader, set.blocks.front()),
                          holder_words(reader.resolved.detail.framing, set));
    return {ids.size() == 1 ? phrase("Block {}: {}, {} long.", ids.front(), lumber, length)
                            : phrase("Blocks {}: {}, {} long.", listed(ids), lumber, length),
            with_offsets(std::move(words), members, set, reader)};
}

}  // namespace

Instructions block_instructions(const Reader& reader) {
    const std::vector<model::Member> members = model::members(reader.resolved.detail.framing);
    Instructions instructions;
    for (const BlockSet& set : block_sets(reader.resolved.detail.framing.blocks))
        instructions.push_back(instruction(reader, set, members));
    if (instructions.empty() && kind(reader.resolved.detail.mount) == model::MountKind::side_fastened) {
        instructions.push_back({phrase("No blocks are specified."),
                                phrase("No blocking behind the member is specified to keep it from rolling.")});
    } else if (instructions.empty()) {
        instructions.push_back(
            {phrase("No blocks are specified."), phrase("No framing under the boards is specified to hold the base.")});
    }
    return instructions;
}

}  // namespace toehold::paper::site

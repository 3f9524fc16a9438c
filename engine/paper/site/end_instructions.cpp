#include "model/member.h"
#include "paper/site/instructions.h"
#include "paper/site/wording.h"
#include "paper/words.h"

#include <fmt/format.h>

#include <algorithm>

namespace toehold::paper::site {
namespace {

/// Ends whose words are the same, of whatever block.
struct EndSet {
    Fastening words;
    std::vector<std::string> blocks;  ///< once for every end
    std::vector<std::string> places;  ///< `B1 at J2`
};

std::string holder_word(const model::Framing& framing, const std::string& id) {
    const auto number = model::find_member(framing, id);
    return number ? model::name(model::member(framing, *number).kind) : "member that holds it";
}

std::string place_words(const model::Block& block, const model::BlockEnd& end, bool upper) {
    if (!end.joist.empty()) return block.id + " at " + end.joist;
    return block.id + (upper ? " upper end" : " lower end");
}

void add_end(std::vector<EndSet>& sets, const Reader& reader, std::size_t index, bool upper) {
    const model::Framing& framing = reader.resolved.detail.framing;
    const model::Block& block = framing.blocks.at(index);
    const model::BlockEnd& end = upper ? block.to_end : block.from_end;
    Fastening words = fastening_words(end.connection, "block", holder_word(framing, end.joist),
                                      catalog::wood(reader.resolved, index).species.specific_gravity, reader.system);
    auto set = std::find_if(sets.begin(), sets.end(), [&](const EndSet& one) {
        return one.words.what == words.what && one.words.how == words.how;
    });
    if (set == sets.end()) {
        sets.push_back({std::move(words), {}, {}});
        set = sets.end() - 1;
    }
    set->blocks.push_back(block.id);
    set->places.push_back(place_words(block, end, upper));
}

std::string lead_words(const EndSet& set) {
    std::vector<std::string> ids = set.blocks;
    ids.erase(std::unique(ids.begin(), ids.end()), ids.end());
    const bool both_of_each = 2 * ids.size() == set.blocks.size();
    return both_of_each ? "Each end of " + listed(ids) : "Ends of " + listed(set.places);
}

bool described(const model::EndConnection& connection) { return !std::holds_alternative<std::monostate>(connection); }

/// Where joists are held, and whether the file says how.
struct JoistHolds {
    std::vector<std::string> described, not_described;
    void add(const std::string& where, const model::EndConnection& connection) {
        (site::described(connection) ? described : not_described).push_back(where);
    }
};

}  // namespace

Instructions block_end_instructions(const Reader& reader) {
    std::vector<EndSet> sets;
    for (std::size_t index = 0; index < reader.resolved.detail.framing.blocks.size(); ++index) {
        add_end(sets, reader, index, false);
        add_end(sets, reader, index, true);
    }
    Instructions instructions;
    for (const EndSet& set : sets) instructions.push_back({lead_words(set) + ": " + set.words.what, set.words.how});
    return instructions;
}

Instructions surrounding_instructions(const Reader& reader) {
    const model::Framing& framing = reader.resolved.detail.framing;
    JoistHolds holds;
    std::string words;
    for (const model::Rim& rim : framing.rims) {
        const auto number = model::find_member(framing, rim.id);
        if (number)
            words += fmt::format("Rim {}, {}. ", rim.id, lumber_words(model::member(framing, *number), reader.system));
        holds.add("rim " + rim.id, rim.connection);
    }
    for (const model::JoistSupport& support : framing.supports) {
        const bool ledger = support.kind == model::JoistSupport::Kind::ledger;
        holds.add((ledger ? "ledger " : "beam ") + support.id, support.connection);
    }
    if (!holds.described.empty()) words += "Joists fastened at " + listed(holds.described) + " as the report says. ";
    if (!holds.not_described.empty())
        words += "How joists are fastened at " + listed(holds.not_described) + " is not described: ASK. ";
    if (words.empty()) return {};
    words.pop_back();
    return {{"Counted on around it:", words}};
}

}  // namespace toehold::paper::site

#include "model/member.h"
#include "paper/site/instructions.h"
#include "paper/site/wording.h"
#include "paper/words.h"

#include <algorithm>

namespace toehold::paper::site {
namespace {

using format::Phrase;
using format::phrase;

/// Ends whose words are the same, of whatever block.
struct EndSet {
    Fastening words;
    std::vector<std::string> blocks;  ///< once for every end
    format::Listed places;            ///< `B1 at J2`
};

std::optional<model::MemberKind> holder_kind(const model::Framing& framing, const std::string& id) {
    const auto number = model::find_member(framing, id);
    if (!number) return std::nullopt;
    return model::member(framing, *number).kind;
}

Phrase place_words(const model::Block& block, const model::BlockEnd& end, bool upper) {
    if (!end.joist.empty()) return phrase("{} at {}", block.id, end.joist);
    return upper ? phrase("{} upper end", block.id) : phrase("{} lower end", block.id);
}

void add_end(std::vector<EndSet>& sets, const Reader& reader, std::size_t index, bool upper) {
    const model::Framing& framing = reader.resolved.detail.framing;
    const model::Block& block = framing.blocks.at(index);
    const model::BlockEnd& end = upper ? block.to_end : block.from_end;
    Fastening words = fastening_words(end.connection, holder_kind(framing, end.joist),
                                      catalog::wood(reader.resolved, index).species.specific_gravity, reader.system);
    auto set = std::find_if(sets.begin(), sets.end(), [&](const EndSet& one) {
        return one.words.what == words.what && one.words.how == words.how;
    });
    if (set == sets.end()) {
        sets.push_back({std::move(words), {}, {}});
        set = sets.end() - 1;
    }
    set->blocks.push_back(block.id);
    set->places.items.push_back(place_words(block, end, upper));
}

Phrase lead_words(const EndSet& set) {
    std::vector<std::string> ids = set.blocks;
    ids.erase(std::unique(ids.begin(), ids.end()), ids.end());
    const bool both_of_each = 2 * ids.size() == set.blocks.size();
    return both_of_each ? phrase("Each end of {}: {}", listed(ids), set.words.what)
                        : phrase("Ends of {}: {}", set.places, set.words.what);
}

/// Where joists are held, and whether the file says how.
struct JoistHolds {
    format::Listed specified, not_specified;
    void add(const model::PartId& where, const model::EndConnection& connection) {
        const bool known = !std::holds_alternative<std::monostate>(connection);
        (known ? specified : not_specified).items.push_back(model::part_name(where));
    }
};

/// The joists that blocks frame into, those of one size together.
struct JoistsAlike {
    Phrase lumber;
    std::vector<std::string> ids;
};

void add_joist(std::vector<JoistsAlike>& all, const Reader& reader, const std::string& id) {
    const model::Framing& framing = reader.resolved.detail.framing;
    const auto number = model::find_member(framing, id);
    if (!number || model::member(framing, *number).kind != model::MemberKind::joist) return;
    const Phrase lumber = lumber_words(model::member(framing, *number), reader.system);
    auto alike = std::find_if(all.begin(), all.end(), [&](const JoistsAlike& one) { return one.lumber == lumber; });
    if (alike == all.end()) alike = all.insert(all.end(), {lumber, {}});
    if (std::find(alike->ids.begin(), alike->ids.end(), id) == alike->ids.end()) alike->ids.push_back(id);
}

std::vector<JoistsAlike> joists_of_blocks(const Reader& reader) {
    std::vector<JoistsAlike> all;
    for (const model::Block& block : reader.resolved.detail.framing.blocks) {
        add_joist(all, reader, block.from_end.joist);
        add_joist(all, reader, block.to_end.joist);
    }
    return all;
}

}  // namespace

Instructions block_end_instructions(const Reader& reader) {
    std::vector<EndSet> sets;
    for (std::size_t index = 0; index < reader.resolved.detail.framing.blocks.size(); ++index) {
        add_end(sets, reader, index, false);
        add_end(sets, reader, index, true);
    }
    Instructions instructions;
    for (const EndSet& set : sets) instructions.push_back({lead_words(set), set.words.how});
    return instructions;
}

Instructions surrounding_instructions(const Reader& reader) {
    const model::Framing& framing = reader.resolved.detail.framing;
    JoistHolds holds;
    Phrase words;
    const auto add = [&words](Phrase sentence) {
        words = words.empty() ? std::move(sentence) : phrase("{} {}", std::move(words), std::move(sentence));
    };
    for (const JoistsAlike& joists : joists_of_blocks(reader)) {
        add(joists.ids.size() == 1 ? phrase("Joist {}, {}.", joists.ids.front(), joists.lumber)
                                   : phrase("Joists {}, {}.", listed(joists.ids), joists.lumber));
    }
    for (const model::Rim& rim : framing.rims) {
        if (const auto number = model::find_member(framing, rim.id))
            add(phrase("Rim {}, {}.", rim.id, lumber_words(model::member(framing, *number), reader.system)));
        holds.add({model::PartKind::rim, rim.id}, rim.connection);
    }
    for (const model::JoistSupport& support : framing.supports) {
        const bool ledger = support.kind == model::JoistSupport::Kind::ledger;
        holds.add({ledger ? model::PartKind::ledger : model::PartKind::beam, support.id}, support.connection);
    }
    if (!holds.specified.items.empty())
        add(phrase("Joists fastened at {} as the report says.", std::move(holds.specified)));
    if (!holds.not_specified.items.empty())
        add(phrase("How joists are fastened at {} is not specified: ASK.", std::move(holds.not_specified)));
    if (words.empty()) return {};
    return {{phrase("Existing framing this relies on:"), std::move(words)}};
}

}  // namespace toehold::paper::site

// The result on half a page, for who reads no further.
#include "paper/report/described.h"
#include "paper/report/results.h"
#include "paper/report/sections.h"
#include "paper/report/side/described_side.h"
#include "review/verdict.h"
#include "wording/verdict.h"

#include <algorithm>

namespace toehold::paper::report {
namespace {

using format::Phrase;
using format::phrase;

std::vector<Phrase> counts(const review::Review& review) {
    const std::size_t findings = review.findings.size();
    return {phrase("Checks made: {}. Results: {}, of which {}.", results_by_check(review).size(), review.checks.size(),
                   format::Listed{wording::count_items(review.facts.counts)}),
            findings == 0   ? phrase("No finding.")
            : findings == 1 ? phrase("1 finding, see section 7.")
                            : phrase("{} findings, see section 7.", findings),
            phrase("Nearest their limit or beyond it (D/C: demand over capacity):")};
}

/// Members that anchors are in, and those left without.
std::vector<Phrase> seats(const review::Review& review) {
    std::vector<model::PartId> members;
    std::vector<std::string> without;
    for (const catalog::Anchor& anchor : review.resolved.anchors) {
        if (!anchor.seat) {
            without.push_back(anchor.id);
            continue;
        }
        const model::PartId member = model::part_of(model::member(review.resolved.detail.framing, anchor.seat->member));
        if (!model::contains(members, member)) members.push_back(member);
    }
    const bool level = kind(review.resolved.detail.mount) == model::MountKind::side_fastened;
    if (members.empty()) return {level ? phrase("No anchor is in a member.") : phrase("No anchor is over framing.")};
    std::vector<Phrase> sentences{phrase("The anchors are in {}.", named_together(members))};
    if (!without.empty())
        sentences.push_back(level ? phrase("In no member: {}.", listed(without))
                                  : phrase("Not over framing: {}.", listed(without)));
    return sentences;
}

Phrase anchors_words(const review::Review& review) {
    std::vector<Alike> kinds;
    for (const catalog::Anchor& anchor : review.resolved.anchors) add_alike(kinds, anchor.name, anchor.id);
    format::Listed words;
    for (const Alike& kind : kinds) words.items.push_back(phrase("{} ({})", kind.words, listed(kind.ids)));
    return phrase("{}", std::move(words));
}

Phrase supports_words(const model::Framing& framing) {
    format::Listed names;
    for (const model::JoistSupport& support : framing.supports) {
        const bool ledger = support.kind == model::JoistSupport::Kind::ledger;
        names.items.push_back(model::part_name({ledger ? model::PartKind::ledger : model::PartKind::beam, support.id}));
    }
    for (const model::Rim& rim : framing.rims) names.items.push_back(model::part_name({model::PartKind::rim, rim.id}));
    return names.items.empty() ? phrase("The supports of the joists are not specified.")
                               : phrase("The joists are supported by {}.", std::move(names));
}

Phrase carries_words(const review::Review& review) {
    const catalog::Resolved& resolved = review.resolved;
    if (kind(resolved.detail.mount) == model::MountKind::side_fastened)
        return side_carries(resolved, post_words(resolved), anchors_words(review));
    return phrase("What carries: post, {}; weld, {}; plate, {} thick; anchors, {}.", post_words(resolved),
                  weld_words(resolved), format::Dimension{on_deck(resolved.detail).plate.thickness_in},
                  anchors_words(review));
}

std::vector<Phrase> what_carries(const review::Review& review) {
    const model::BaseDetail& detail = review.resolved.detail;
    std::vector<Phrase> sentences{carries_words(review)};
    for (Phrase& sentence : seats(review)) sentences.push_back(std::move(sentence));
    std::vector<std::string> blocks;
    for (const model::Block& block : detail.framing.blocks) blocks.push_back(block.id);
    if (blocks.empty()) return sentences;
    sentences.push_back(blocks.size() == 1 ? phrase("Block {} is held at its ends.", blocks.front())
                                           : phrase("Blocks {} are held at their ends.", listed(blocks)));
    sentences.push_back(supports_words(detail.framing));
    return sentences;
}

Table worst_rows(const Source& source) {
    constexpr std::size_t most_rows = 4;
    std::vector<CheckResults> nearest = results_by_check(source.review);
    std::erase_if(nearest, [](const CheckResults& check) {
        // A least distance often stands exactly at its limit.
        return review::is_dimension(check.worst()) && check.worst().status == checks::Status::holds;
    });
    if (nearest.size() > most_rows) nearest.erase(nearest.begin() + most_rows, nearest.end());
    return results_table(source.text(phrase("part")), nearest, source.locale());
}

}  // namespace

void add_summary(Blocks& blocks, const Source& source) {
    const review::Review& review = source.review;
    blocks.emplace_back(section(1, phrase("Summary"), "summary", source.locale()));
    const Phrase tension = review.demand ? wording::largest_tension(review) : wording::no_demand(review);
    blocks.emplace_back(paragraph(source.text(tension.empty() ? phrase("No anchor is specified.") : tension)));
    blocks.emplace_back(paragraph(sentences(what_carries(review), source.locale())));
    if (review.checks.empty()) {
        blocks.emplace_back(paragraph(source.text(phrase("No check could be made."))));
        return;
    }
    blocks.emplace_back(paragraph(sentences(counts(review), source.locale())));
    blocks.emplace_back(worst_rows(source));
}

}  // namespace toehold::paper::report

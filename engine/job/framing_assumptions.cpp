#include "job/framing.h"
#include "job/hardware.h"
#include "job/post_order.h"

namespace toehold::job {
namespace {

using format::Dimension;
using format::Phrase;
using format::phrase;

Phrase why_hardware() {
    return phrase(
        "No hardware is chosen yet. Choose some whose evaluation report allows at least this, and enter its values.");
}

void assume_hardware(const std::string& holder, const model::EndConnection& connection, Phrase why,
                     Assumptions& assumptions) {
    const auto& hardware = std::get<model::ReportedConnector>(connection);
    assumptions.element(holder + "/connector", words_of(hardware), std::move(why));
}

Phrase why_joists(const Job& job) {
    if (job.place == Place::corner) return phrase("Those of the last bays, the edge joist doubled; look at the deck.");
    if (job.place == Place::deck_side && is_wood(job.post))
        return phrase(
            "One on each side of the post for its ties, added where the deck has none there, and the next "
            "ones for the deck's load.");
    return phrase("Those that carry the base, and the next ones for the deck's load.");
}

void assume_joists(const Job& job, const model::Joists& joists, Assumptions& assumptions) {
    assumptions.element("framing/joists", phrase("{} joists drawn about the post", joists.members.size()),
                        why_joists(job));
    if (!job.species) {
        assumptions.attribute("framing/joists", "species",
                              phrase("The usual treated framing lumber; read it on the grade stamp."));
    }
    if (!job.grade)
        assumptions.attribute("framing/joists", "grade",
                              phrase("The grade most framing is sold by; read it on the stamp."));
}

void assume_rim(const Job& job, const model::Rim& rim, Assumptions& assumptions) {
    const std::string path = "framing/rim[" + rim.id + "]";
    if (job.place == Place::deck_side) {
        assumptions.element(path, phrase("a solid {} rim", rim.size),
                            phrase("A post bolted to its side twists it, and pieces nailed together twist more than "
                                   "one; look at the deck, and give what is there."));
    } else {
        assumptions.element(path, phrase("a single {} rim", rim.size),
                            phrase("Of the joists' size and wood; look at the deck."));
    }
    assume_hardware(path, rim.connection, why_hardware(), assumptions);
}

Phrase place_of(const model::JoistSupport& support) {
    return support.kind == model::JoistSupport::Kind::ledger
               ? phrase("a ledger {} behind the post", Dimension{-support.at_in})
               : phrase("a beam at {} along the joists, {} wide", Dimension{support.at_in},
                        Dimension{support.bearing_in});
}

Phrase why_beam(const Job& job) {
    switch (job.place) {
        case Place::between_joists:
        case Place::over_a_joist:
            return phrase("Just outside the outer blocks, clear of the nuts; measure it from the post.");
        case Place::beside_the_rim:
        case Place::corner:
            return phrase("A foot behind the post, clear of the nuts; measure it from the post.");
        case Place::deck_side:
            return phrase("A foot behind the rim, clear of the nuts; measure it from the post.");
        case Place::cantilever:
            break;
    }
    return phrase("So that the joists reach past it by a quarter of their span, the usual limit; measure it.");
}

Phrase why_ledger(const Job& job) {
    if (job.joist_span_in) return phrase("By the joists' span told, from the beam's place.");
    return phrase("No span was told: 8 ft, or less where the deck alone would take half of the joists' strength.");
}

void assume_supports(const Job& job, const model::Framing& framing, Assumptions& assumptions) {
    for (const model::JoistSupport& support : framing.supports) {
        const bool ledger = support.kind == model::JoistSupport::Kind::ledger;
        const std::string path = "framing/support[" + support.id + "]";
        assumptions.element(path, place_of(support), ledger ? why_ledger(job) : why_beam(job));
        assume_hardware(path, support.connection, why_hardware(), assumptions);
    }
}

void assume_blocks(const model::Framing& framing, Assumptions& assumptions) {
    for (const model::Block& block : framing.blocks) {
        const bool first = &block == &framing.blocks.front();
        const std::string path = "framing/block[" + block.id + "]";
        assumptions.element(
            path, phrase("a {} block on edge", block.size),
            first ? phrase("Centered under the row of anchors, as deep as the joists so that its ends are held over "
                           "their whole depth.")
                  : phrase("As block {}.", framing.blocks.front().id));
        assume_hardware(path + "/end[from]", block.from_end.connection,
                        first ? why_hardware() : phrase("As at block {}.", framing.blocks.front().id), assumptions);
        assume_hardware(path + "/end[to]", block.to_end.connection,
                        phrase("As at the lower end of block {}.", framing.blocks.front().id), assumptions);
    }
}

}  // namespace

void assume_framing(const Job& job, const model::Framing& framing, Assumptions& assumptions) {
    if (!job.treated)
        assumptions.attribute("framing", "treated",
                              phrase("Framing outdoors is treated; fasteners must then stand it."));
    assume_joists(job, framing.joists.value(), assumptions);
    for (const model::Rim& rim : framing.rims) assume_rim(job, rim, assumptions);
    assume_supports(job, framing, assumptions);
    assume_blocks(framing, assumptions);
}

}  // namespace toehold::job

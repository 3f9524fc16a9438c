#include "wording/proof_load.h"

#include "resistance/ultimate/calculation.h"
#include "resistance/ultimate/load_test.h"
#include "resistance/ultimate/wood.h"
#include "study/proof_load/proof_load.h"

#include <cmath>

namespace toehold::wording {
namespace {

namespace ultimate = resistance::ultimate;
using format::Citation;
using format::Phrase;
using format::phrase;
using format::Quantity;
using ultimate::Link;

constexpr double percent = 100.0;

Phrase source(std::string_view name, ultimate::Seen seen) {
    if (name.empty()) return phrase("assumed");
    return phrase("{} ({})", Citation{std::string(name)}, seen_word(seen));
}

const study::TestedLink& link_of(const study::Prediction& prediction, const study::FirstBreak& first) {
    return prediction.chain.links.at(first.link);
}

}  // namespace

Phrase link_name(Link link) {
    switch (link) {
        case Link::lag_withdrawal:
            return phrase("lag screw withdrawal");
        case Link::wood_screw_withdrawal:
            return phrase("wood screw withdrawal");
        case Link::nail_withdrawal:
            return phrase("nail withdrawal");
        case Link::lag_tension:
            return phrase("lag screw, tension of its root");
        case Link::bolt_tension:
            return phrase("bolt or screw, tension");
        case Link::fastener_lateral:
            return phrase("anchor, lateral");
        case Link::bearing_across_grain:
            return phrase("bearing across the grain");
        case Link::member_bending:
            return phrase("framing, bending");
        case Link::member_shear:
            return phrase("framing, shear with torsion");
        case Link::member_torsion:
            return phrase("framing, torsion");
        case Link::steel_plate_bending:
            return phrase("steel plate, bending");
        case Link::steel_post_bending:
            return phrase("steel post, bending");
        case Link::aluminum_bending:
            return phrase("aluminum, bending");
        case Link::fillet_weld:
            return phrase("weld of steel");
        case Link::wood_post_bending:
            return phrase("wood post, bending");
        case Link::head_pull_through:
            return phrase("head pulled through");
        case Link::tension_across_grain:
            return phrase("tension across the grain");
        case Link::shear_at_fasteners:
            return phrase("shear at fasteners");
        case Link::toe_nails:
            return phrase("toe-nails");
        case Link::aluminum_weld:
            return phrase("aluminum weld");
        case Link::reported_hardware:
            return phrase("hardware with values from its report");
    }
    return {};
}

Phrase seen_word(ultimate::Seen seen) {
    switch (seen) {
        case ultimate::Seen::in_text:
            return phrase("read");
        case ultimate::Seen::recomputed:
            return phrase("recomputed from what was read");
        case ultimate::Seen::memory:
            return phrase("from memory, to be confirmed");
        case ultimate::Seen::assumed:
            break;
    }
    return phrase("assumed");
}

Phrase moisture_word(const study::Prediction& prediction) {
    switch (prediction.moisture) {
        case model::Moisture::wet:
            return phrase("wet in service");
        case model::Moisture::dry:
            return phrase("dry in service");
        case model::Moisture::dried_in_service:
            break;
    }
    return phrase("dried in service");
}

Phrase link_basis(const study::TestedLink& link) {
    const ultimate::LinkBasis& basis = link.basis();
    const Phrase mean = source(basis.mean_source, basis.mean_seen);
    const Phrase scatter = source(basis.variation_source, basis.variation_seen);
    if (basis.density_power > 0.0) {
        return phrase("mean {}; scatter {:.0f}% beside its wood's density, {}", mean, percent * basis.variation,
                      scatter);
    }
    return phrase("mean {}; scatter {:.0f}%, {}", mean, percent * basis.variation, scatter);
}

Phrase left_out_because(const study::NoStrength& reason) {
    switch (reason.why) {
        case study::LeftOutFor::deforms_only:
            return phrase("presses in, does not break");
        case study::LeftOutFor::not_specified:
            return phrase("not specified in the file");
        case study::LeftOutFor::no_published_mean:
            break;
    }
    if (reason.link == Link::reported_hardware) return phrase("values from a report; no published mean");
    return phrase("no published mean");
}

Phrase common_scatter(const study::CommonScatter& scatter) {
    const double of = percent * scatter.variation;
    switch (scatter.cause) {
        case study::CommonCause::calculation:
            return phrase(
                "Error of the calculated forces, one factor for the whole base: {:.0f}%, plate bending twice "
                "that ({}).",
                of, Citation{"JCSS Probabilistic Model Code, part 3"});
        case study::CommonCause::moisture:
            return phrase("Moisture, one factor for all wood: {:.0f}%, assumed.", of);
        case study::CommonCause::workmanship:
            return phrase("Workmanship, one factor for fasteners and weld: {:.0f}%, assumed.", of);
        case study::CommonCause::density:
            break;
    }
    return phrase("Density of {}, one factor for every anchor in it: {:.0f}% ({}).", model::part_name(scatter.member),
                  of, Citation{"ASTM D2555-06"});
}

Phrase predicted(const study::Prediction& prediction) {
    const mechanics::Proportion& carries = prediction.carries;
    const Quantity test{study::test_push_lb, "lb"}, mean{std::round(prediction.mean_push_lb), "lb"};
    const Phrase moisture = moisture_word(prediction);
    const double share = percent * carries.share, low = percent * carries.interval.low,
                 high = percent * carries.interval.high;
    if (!upper_bound(prediction).empty())
        return phrase("Chance to carry {}, {}: at most {:.1f}% ({:.1f} to {:.1f}%). Mean breaking push at most {}.",
                      test, moisture, share, low, high, mean);
    return phrase("Chance to carry {}, {}: {:.1f}% ({:.1f} to {:.1f}%). Mean breaking push {}.", test, moisture, share,
                  low, high, mean);
}

Phrase upper_bound(const study::Prediction& prediction) {
    const study::LeftOutLink* const link = study::most_used_left_out(prediction.chain);
    if (link == nullptr || !(link->share > 1.0)) return {};
    return phrase("UPPER BOUND: {}, {}, is left out, and {} is {:.1f} times its design value. It may break first.",
                  link->title, model::part_name(link->part), Quantity{study::test_push_lb, "lb"}, link->share);
}

Phrase breaks_first(const study::Prediction& prediction) {
    const study::FirstBreak& first = prediction.first.front();
    const study::TestedLink& link = link_of(prediction, first);
    const Phrase part = model::part_name(link.part);
    const double low = percent * first.interval.low, high = percent * first.interval.high;
    if (link.yields())
        return phrase("Most often {}, {}, yields first: in {:.0f}% of the samples ({:.1f} to {:.1f}%).",
                      link_name(link.strength.link), part, percent * first.share, low, high);
    return phrase("Most often {}, {}, breaks first: in {:.0f}% of the samples ({:.1f} to {:.1f}%).",
                  link_name(link.strength.link), part, percent * first.share, low, high);
}

std::vector<Phrase> proof_assumptions(const study::ProofLoad& proof) {
    std::vector<Phrase> all;
    if (!proof.moisture_stated) all.push_back(phrase("Assumed wet in service (over 19%); not specified in the file."));
    all.push_back(
        phrase("The push is outward and level at the top of the guard, {} above {}, brought up in minutes. Nobody "
               "stands on the deck.",
               Quantity{proof.height_in, "in"}, proof.datum));
    all.push_back(
        phrase("Forces at the center of the ranges of stiffness, on framing that stands still or gives, whichever "
               "breaks the link first. They grow in proportion to the push; the deck's weight stays."));
    all.push_back(
        phrase("Mean strength of wet wood: the dry mean times the wet service factor of its design value "
               "({}); no published mean was found.",
               Citation{"NDS 2018"}));
    for (const study::CommonScatter& scatter : proof.in_service.chain.common) all.push_back(common_scatter(scatter));
    return all;
}

std::vector<Phrase> proof_cautions(const study::ProofLoad& proof) {
    std::vector<Phrase> all{
        phrase("The interval covers the drawing of {} samples alone, not how true the means and scatters are.",
               static_cast<long long>(proof.drawing.samples)),
        phrase("The first link that breaks or yields counts as failure. What the others would still carry is not "
               "counted."),
        phrase("Tension and lateral force on an anchor are counted each alone.")};
    if (!proof.in_service.chain.left_out.empty())
        all.push_back(phrase("A link that is left out may break first, and before the loads given here."));
    if (proof.line_lb)
        all.push_back(
            phrase("The code's line load puts {} on this post, more than its 200 lb: a test for that goes to {}.",
                   Quantity{*proof.line_lb, "lb"}, Quantity{ultimate::carried_over_design * *proof.line_lb, "lb"}));
    all.push_back(phrase("Held for 24 hours as {} asks, wood keeps about {:.0f}% of its strength in minutes ({}).",
                         Citation{"IBC 2018 1709.3.1"}, percent * ultimate::share_left_after(ultimate::held_seconds),
                         Citation{"Madison curve, 1951"}));
    all.push_back(phrase("A prediction is no design: it takes the place of no check, and of no test."));
    return all;
}

}  // namespace toehold::wording

#include "export/text/proof_text.h"

#include "export/text/columns.h"
#include "export/text/table.h"
#include "format/figures.h"
#include "study/proof_load/movement.h"
#include "study/proof_load/proof_load.h"
#include "wording/proof_load.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace toehold::exporting {
namespace {

using format::Locale;
using format::Phrase;
using format::phrase;
using study::Prediction;
using study::TestedLink;

constexpr double percent = 100.0;
constexpr std::size_t fewest_links = 6;  ///< shown, where there are so many

std::string say(const Phrase& words, const Locale& locale) { return format::text(words, locale); }

std::string heading(const Phrase& words, const Locale& locale) { return "\n" + paragraph(say(words, locale)); }

std::string load(double lb, const Locale& locale) {
    const double whole = std::round(lb);
    return format::figure_text(whole, "lb", locale.system);
}

Row loads_row(const Prediction& prediction, const Locale& locale) {
    const mechanics::Proportion& carries = prediction.carries;
    Row row{{say(wording::moisture_word(prediction), locale),
             say(phrase("{:.1f}% ({:.1f} to {:.1f}%)", percent * carries.share, percent * carries.interval.low,
                        percent * carries.interval.high),
                 locale),
             load(prediction.mean_push_lb, locale)},
            {}};
    for (const study::ShareOfTests& one : prediction.curve) row.cells.push_back(load(one.push_lb, locale));
    return row;
}

std::string loads_table(const study::ProofLoad& proof, const Locale& locale) {
    std::vector<Column> columns{{say(phrase("lumber"), locale)},
                                {say(phrase("carries {}", format::Quantity{study::test_push_lb, "lb"}), locale)},
                                {say(phrase("mean"), locale), Align::right}};
    for (const study::ShareOfTests& one : proof.in_service.curve)
        columns.push_back({say(phrase("{:.0f}% break below", percent * one.share), locale), Align::right});
    return table(columns, {loads_row(proof.in_service, locale), loads_row(proof.other, locale)});
}

double share_of(const Prediction& prediction, std::size_t link) {
    const auto found = std::find_if(prediction.first.begin(), prediction.first.end(),
                                    [link](const study::FirstBreak& first) { return first.link == link; });
    return found == prediction.first.end() ? 0.0 : found->share;
}

/// A multiple of what the design value allows has no unit.
std::string mean_cell(const TestedLink& link, const Locale& locale) {
    if (link.unit.empty()) return say(phrase("{:.2f} x allowable", link.mean), locale);
    return format::figure_text(link.mean, link.unit, locale.system);
}

Row link_row(const Prediction& prediction, std::size_t index, const Locale& locale) {
    const TestedLink& link = prediction.chain.links[index];
    const Phrase how = link.yields() ? phrase("yields") : phrase("breaks");
    const double share = share_of(prediction, index);
    return {{share > 0.0 ? say(phrase("{:.1f}%", percent * share), locale) : "-",
             say(wording::link_name(link.strength.link), locale), say(model::part_name(link.part), locale),
             say(how, locale), mean_cell(link, locale), load(link.breaks_at_lb, locale),
             say(link.framing_gives ? phrase("framing gives") : phrase("framing still"), locale)},
            {}};
}

std::string links_table(const Prediction& prediction, const Locale& locale) {
    std::vector<Row> rows;
    for (const study::FirstBreak& first : prediction.first) rows.push_back(link_row(prediction, first.link, locale));
    for (std::size_t link = 0; link < prediction.chain.chain.links.size() && rows.size() < fewest_links; ++link) {
        if (!(share_of(prediction, link) > 0.0)) rows.push_back(link_row(prediction, link, locale));
    }
    return table({{say(phrase("first"), locale), Align::right},
                  {say(phrase("link"), locale)},
                  {say(phrase("part"), locale)},
                  {""},
                  {say(phrase("mean strength"), locale), Align::right},
                  {say(phrase("at a push of"), locale), Align::right},
                  {say(phrase("state"), locale)}},
                 rows);
}

/// Of every kind of link shown, once.
std::string bases_text(const Prediction& prediction, const Locale& locale) {
    std::map<resistance::ultimate::Link, const TestedLink*> kinds;
    for (const study::FirstBreak& first : prediction.first) {
        const TestedLink& link = prediction.chain.links[first.link];
        kinds.emplace(link.strength.link, &link);
    }
    std::string text;
    for (const auto& [kind, link] : kinds) {
        text += paragraph(say(phrase("{}: {}.", wording::link_name(kind), wording::link_basis(*link)), locale), "  ");
    }
    return text;
}

struct LeftOutGroup {
    const study::LeftOutLink* worst = nullptr;
    std::size_t count = 0;
};

std::string left_out_text(const Prediction& prediction, const Locale& locale) {
    if (prediction.chain.left_out.empty()) return {};
    std::vector<LeftOutGroup> groups;
    for (const study::LeftOutLink& link : prediction.chain.left_out) {
        const auto group = std::find_if(groups.begin(), groups.end(), [&link](const LeftOutGroup& one) {
            return one.worst->check == link.check && one.worst->reason.why == link.reason.why;
        });
        if (group == groups.end()) {
            groups.push_back({&link, 1});
        } else {
            ++group->count;
        }
    }
    std::vector<Row> rows;
    rows.reserve(groups.size());
    for (const LeftOutGroup& group : groups) {
        rows.push_back({{say(group.worst->title, locale), std::to_string(group.count),
                         say(model::part_name(group.worst->part), locale),
                         group.worst->share > 0.0 ? format::ratio_text(group.worst->share) : "-",
                         say(wording::left_out_because(group.worst->reason), locale)},
                        {}});
    }
    return heading(phrase("Left out. Beside each, {} over its design value (load duration 1.0) where it is largest:",
                          format::Quantity{study::test_push_lb, "lb"}),
                   locale) +
           table({{say(phrase("link"), locale)},
                  {say(phrase("places"), locale), Align::right},
                  {say(phrase("part"), locale)},
                  {say(phrase("D/C"), locale), Align::right},
                  {say(phrase("why"), locale)}},
                 rows);
}

std::string list_text(const std::vector<Phrase>& all, const Locale& locale) {
    std::string text;
    for (const Phrase& one : all) text += paragraph(say(one, locale), "  - ");
    return text;
}

}  // namespace

std::string proof_text(const study::ProofLoad& proof, const std::string& detail, const Locale& locale) {
    const Prediction& main = proof.in_service;
    const Phrase bound = wording::upper_bound(main);
    return paragraph(say(phrase("Load test, predicted: {}", detail), locale)) + "\n" +
           paragraph(say(wording::predicted(main), locale)) + paragraph(say(wording::breaks_first(main), locale)) +
           (bound.empty() ? std::string() : paragraph(say(bound, locale))) + "\n" + loads_table(proof, locale) +
           heading(phrase("Links, by how often each is the first, {}:", wording::moisture_word(main)), locale) +
           links_table(main, locale) + bases_text(main, locale) + left_out_text(main, locale) +
           heading(phrase("Assumptions:"), locale) + list_text(wording::proof_assumptions(proof), locale) +
           heading(phrase("Cautions:"), locale) + list_text(wording::proof_cautions(proof), locale) + "\n" +
           paragraph(say(phrase("{} samples, seed {}.", static_cast<long long>(proof.drawing.samples),
                                std::to_string(proof.drawing.seed)),
                         locale));
}

std::string measured_text(const study::ComputedMovement& computed, const study::Compared& compared,
                          const Locale& locale) {
    const auto inches = [&locale](double value) {
        return format::figure_text(0.01 * std::round(100.0 * value), "in", locale.system);
    };
    std::vector<Row> rows;
    for (const mechanics::Reading& reading : compared.measured.readings) {
        rows.push_back(
            {{load(reading.push, locale), inches(reading.movement), inches(reading.push * computed.stiff.total()),
              inches(reading.push * computed.soft.total()), inches(reading.push * computed.central.post),
              inches(reading.push * computed.soft.base), inches(reading.push * computed.soft.framing)},
             {}});
    }
    const auto column = [&locale](const Phrase& words) { return Column{say(words, locale), Align::right}; };
    return heading(phrase("Built guard beside the computed one, movement at the height of the push:"), locale) +
           table({column(phrase("push")), column(phrase("measured")), column(phrase("stiffest")),
                  column(phrase("softest")), column(phrase("of it: post")), column(phrase("base")),
                  column(phrase("framing"))},
                 rows) +
           list_text(wording::compared(computed, compared), locale);
}

std::string sentences_text(const std::vector<Phrase>& sentences, const Locale& locale) {
    std::string text = "\n";
    for (const Phrase& one : sentences) text += paragraph(say(one, locale));
    return text;
}

}  // namespace toehold::exporting

// The forces on every anchor, by each way of finding them.
#include "wording/demand.h"
#include "catalog/anchor_view.h"
#include "demand/hardware_demand.h"
#include "review/review.h"

#include "format/figures.h"
#include "paper/report/sections.h"
#include "wording/verdict.h"

namespace toehold::paper::report {
namespace {

using drawing::Across;
using format::Phrase;
using format::phrase;

Table anchors_table(const Source& source) {
    const review::Review& review = source.review;
    const units::System system = source.locale().system;
    Table table;
    const auto column = [&](const Phrase& title, double share, Across across = Across::right) {
        table.columns.push_back({source.text(title), share, across});
    };
    column(phrase("anchor"), 0.07, Across::left);
    column(phrase("x"), 0.065);
    const auto& anchors = review.resolved.anchors;
    column(!anchors.empty() && catalog::lies_level(anchors.front()) ? phrase("z") : phrase("y"), 0.065);
    column(phrase("hand, to edge"), 0.08);
    column(phrase("hand, to row"), 0.08);
    column(phrase("rigid, nominal"), 0.085);
    column(phrase("flexible, nominal"), 0.085);
    column(phrase("least tension"), 0.085);
    column(phrase("TENSION USED"), 0.105);
    column(phrase("push toward"), 0.095);
    column(phrase("shear"), 0.08);
    column(phrase("proof tension"), 0.085);
    const auto lb = [system](double value) { return words_cell(format::number_text(value, "lb", system)); };
    for (std::size_t index = 0; index < review.demand->anchors.size(); ++index) {
        const demand::AnchorEnvelope& envelope = review.demand->anchors[index];
        const catalog::Anchor& anchor = review.resolved.anchors.at(index);
        Cell used = lb(envelope.tension_lb);
        used.bold = true;
        table.rows.push_back({{anchor.id, true},
                              words_cell(format::number_text(catalog::seen(anchor).x_in, "in", system)),
                              words_cell(format::number_text(catalog::seen(anchor).y_in, "in", system)),
                              lb(envelope.hand_edge_lb),
                              lb(envelope.hand_anchor_lb),
                              lb(envelope.rigid_tension_lb),
                              envelope.flexible_tension_lb ? lb(*envelope.flexible_tension_lb) : words_cell("-"),
                              lb(envelope.tension_low_lb),
                              used,
                              words_cell(format::degrees_text(format::degrees(envelope.direction_rad))),
                              lb(envelope.shear_lb),
                              lb(envelope.proof_tension_lb)});
    }
    return table;
}

/// Without rows where the mount has no ties.
Table ties_table(const Source& source) {
    const units::System system = source.locale().system;
    Table table;
    const auto column = [&](const Phrase& title, double share, Across across = Across::right) {
        table.columns.push_back({source.text(title), share, across});
    };
    column(phrase("tie"), 0.08, Across::left);
    column(phrase("x"), 0.1);
    column(phrase("z"), 0.1);
    column(phrase("LARGEST PULL"), 0.17);
    column(phrase("push toward"), 0.15);
    column(phrase("allowable"), 0.15);
    column(phrase("into"), 0.25, Across::left);
    for (const demand::TieDemand& tie : demand::tie_demands(source.review.resolved, *source.review.demand)) {
        Cell pull = words_cell(format::number_text(tie.tension_lb, "lb", system));
        pull.bold = true;
        table.rows.push_back({{tie.part.id, true},
                              words_cell(format::number_text(tie.x_in, "in", system)),
                              words_cell(format::number_text(tie.z_in, "in", system)),
                              pull,
                              words_cell(format::degrees_text(format::degrees(tie.direction_rad))),
                              words_cell(format::number_text(tie.allowable_lb, "lb", system)),
                              words_cell(source.text(model::part_name(tie.into)))});
    }
    return table;
}

}  // namespace

void add_demand(Blocks& blocks, const Source& source) {
    const review::Review& review = source.review;
    blocks.emplace_back(section(4, phrase("Demand at the anchors"), "demand", source.locale()));
    if (!review.demand) {
        blocks.emplace_back(paragraph(sentences(
            {wording::no_demand(review), phrase("Nothing that depends on a force could be checked; what the detail "
                                                "itself shows is in section 7.")},
            source.locale())));
        return;
    }
    blocks.emplace_back(anchors_table(source));
    if (Table ties = ties_table(source); !ties.rows.empty()) blocks.emplace_back(std::move(ties));
    blocks.emplace_back(fine_print(source.text(wording::anchor_legend(review, source.locale()))));
    for (const std::string& words : {sentences(wording::hand_shortfalls(review), source.locale()),
                                     sentences(wording::base_behavior(review), source.locale())}) {
        if (!words.empty()) blocks.emplace_back(paragraph(words));
    }
    add_accuracy(blocks, source);
    add_demand_figures(blocks, source);
}

}  // namespace toehold::paper::report

// The demand on every anchor, and what the hand calculation would have missed.
#include "catalog/anchor_view.h"
#include "demand/hardware_demand.h"
#include "export/text/columns.h"
#include "export/text/sections.h"
#include "export/text/table.h"
#include "format/figures.h"
#include "wording/demand.h"

namespace toehold::exporting {
namespace {

using demand::AnchorEnvelope;
using format::Locale;
using format::phrase;

/// Places are as anchors see them: across the rail of upright ones, up the face of those that lie level.
std::vector<Column> columns_of_anchors(const catalog::Anchor& first, const Locale& locale) {
    std::vector<Column> columns{{format::text(phrase("anchor"), locale)}};
    for (const format::Phrase& heading :
         {phrase("x"), catalog::lies_level(first) ? phrase("z") : phrase("y"), phrase("TENSION USED"),
          phrase("push toward"), phrase("least tension"), phrase("flexible, nominal"), phrase("rigid, nominal"),
          phrase("hand, to edge"), phrase("hand, to row"), phrase("lateral"), phrase("proof tension")}) {
        columns.push_back({format::text(heading, locale), Align::right});
    }
    return columns;
}

Row row(const catalog::Anchor& anchor, const AnchorEnvelope& envelope, units::System system) {
    const auto lb = [system](double value) { return format::number_text(value, "lb", system); };
    return {
        {anchor.id, format::number_text(catalog::seen(anchor).x_in, "in", system),
         format::number_text(catalog::seen(anchor).y_in, "in", system), lb(envelope.tension_lb),
         format::degrees_text(format::degrees(envelope.direction_rad)), lb(envelope.tension_low_lb),
         envelope.flexible_tension_lb ? lb(*envelope.flexible_tension_lb) : "-", lb(envelope.rigid_tension_lb),
         lb(envelope.hand_edge_lb), lb(envelope.hand_anchor_lb), lb(envelope.shear_lb), lb(envelope.proof_tension_lb)},
        {}};
}

/// Empty without ties.
std::string ties_table(const review::Review& review, const Locale& locale) {
    std::vector<Row> rows;
    const auto lb = [&locale](double value) { return format::number_text(value, "lb", locale.system); };
    for (const demand::TieDemand& tie : demand::tie_demands(review.resolved, *review.demand)) {
        rows.push_back({{tie.part.id, format::number_text(tie.x_in, "in", locale.system),
                         format::number_text(tie.z_in, "in", locale.system), lb(tie.tension_lb),
                         format::degrees_text(format::degrees(tie.direction_rad)), lb(tie.allowable_lb),
                         format::text(model::part_name(tie.into), locale)},
                        {}});
    }
    if (rows.empty()) return {};
    std::vector<Column> columns{{format::text(phrase("tie"), locale)}};
    for (const format::Phrase& heading :
         {phrase("x"), phrase("z"), phrase("LARGEST PULL"), phrase("push toward"), phrase("allowable")})
        columns.push_back({format::text(heading, locale), Align::right});
    columns.push_back({format::text(phrase("into"), locale)});
    return table(columns, rows);
}

}  // namespace

std::string anchors_section(const review::Review& review, const Locale& locale) {
    if (!review.demand) return {};
    const std::string ties = ties_table(review, locale);
    if (review.demand->anchors.empty() && ties.empty()) return {};
    std::vector<Row> rows;
    for (std::size_t index = 0; index < review.demand->anchors.size(); ++index) {
        rows.push_back(row(review.resolved.anchors.at(index), review.demand->anchors[index], locale.system));
    }
    std::string text = format::text(phrase("DEMAND ON EVERY ANCHOR"), locale) + "\n";
    if (!rows.empty()) text += table(columns_of_anchors(review.resolved.anchors.front(), locale), rows);
    text += ties + paragraph(format::text(wording::anchor_legend(review, locale), locale), "  ");
    for (const auto& sentences : {wording::hand_shortfalls(review), wording::base_behavior(review)}) {
        for (const format::Phrase& sentence : sentences) text += paragraph(format::text(sentence, locale), "  ");
    }
    return text;
}

}  // namespace toehold::exporting

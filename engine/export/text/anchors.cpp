// The demand on every anchor, and what the hand calculation would have missed.
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

std::vector<Column> columns_of_anchors(const Locale& locale) {
    std::vector<Column> columns{{format::text(phrase("anchor"), locale)}};
    for (const format::Phrase& heading :
         {phrase("x"), phrase("y"), phrase("TENSION USED"), phrase("push toward"), phrase("least tension"),
          phrase("flexible, nominal"), phrase("rigid, nominal"), phrase("hand, to edge"), phrase("hand, to row"),
          phrase("lateral"), phrase("proof tension")}) {
        columns.push_back({format::text(heading, locale), Align::right});
    }
    return columns;
}

Row row(const catalog::Anchor& anchor, const AnchorEnvelope& envelope, units::System system) {
    const auto lb = [system](double value) { return format::number_text(value, "lb", system); };
    return {
        {anchor.id, format::number_text(anchor.at.x_in, "in", system),
         format::number_text(anchor.at.y_in, "in", system), lb(envelope.tension_lb),
         format::degrees_text(format::degrees(envelope.direction_rad)), lb(envelope.tension_low_lb),
         envelope.flexible_tension_lb ? lb(*envelope.flexible_tension_lb) : "-", lb(envelope.rigid_tension_lb),
         lb(envelope.hand_edge_lb), lb(envelope.hand_anchor_lb), lb(envelope.shear_lb), lb(envelope.proof_tension_lb)},
        {}};
}

}  // namespace

std::string anchors_section(const review::Review& review, const Locale& locale) {
    if (!review.demand || review.demand->anchors.empty()) return {};
    std::vector<Row> rows;
    for (std::size_t index = 0; index < review.demand->anchors.size(); ++index) {
        rows.push_back(row(review.resolved.anchors.at(index), review.demand->anchors[index], locale.system));
    }
    std::string text = format::text(phrase("DEMAND ON EVERY ANCHOR"), locale) + "\n" +
                       table(columns_of_anchors(locale), rows) +
                       paragraph(format::text(wording::anchor_legend(locale), locale), "  ");
    for (const auto& sentences : {wording::hand_shortfalls(review), wording::base_behavior(review)}) {
        for (const format::Phrase& sentence : sentences) text += paragraph(format::text(sentence, locale), "  ");
    }
    return text;
}

}  // namespace toehold::exporting

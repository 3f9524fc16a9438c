// A bill as a table for a terminal and for a spreadsheet.
#include "drawing/annotation/labels.h"
#include "export/csv/cells.h"
#include "export/text/columns.h"
#include "export/text/table.h"
#include "format/figures.h"
#include "paper/bill/bill.h"
#include "paper/weight.h"
#include "review/schedule/marks.h"
#include "wording/marks.h"

#include <fmt/format.h>

#include <string_view>

namespace toehold::paper {
namespace {

using exporting::Align;
using exporting::csv_cell;
using exporting::csv_number;
using format::Locale;
using format::Phrase;
using format::phrase;

Phrase heading(BillKind kind) {
    switch (kind) {
        case BillKind::post:
            return phrase("POSTS");
        case BillKind::plate:
            return phrase("BASE PLATES");
        case BillKind::bracket:
            return phrase("BRACKET PLATES");
        case BillKind::bolt_plate:
            return phrase("PLATES UNDER HEADS AND NUTS");
        case BillKind::backing:
            return phrase("PLATES AND SHAPES UNDER THE WOOD");
        case BillKind::packing:
            return phrase("PACKING");
        case BillKind::anchor:
            return phrase("ANCHORS");
        case BillKind::washer:
            return phrase("WASHERS");
        case BillKind::block:
            return phrase("BLOCKS");
        case BillKind::connector:
            return phrase("CONNECTORS");
        case BillKind::fastener:
            return phrase("FASTENERS OF BLOCKS AND JOISTS");
    }
    return {};
}

std::string_view word(BillKind kind) {
    switch (kind) {
        case BillKind::post:
            return "post";
        case BillKind::plate:
            return "base_plate";
        case BillKind::bracket:
            return "bracket_plate";
        case BillKind::bolt_plate:
            return "bolt_plate";
        case BillKind::backing:
            return "backing";
        case BillKind::packing:
            return "packing";
        case BillKind::anchor:
            return "anchor";
        case BillKind::washer:
            return "washer";
        case BillKind::block:
            return "block";
        case BillKind::connector:
            return "connector";
        case BillKind::fastener:
            return "fastener";
    }
    return {};
}

exporting::Row row_of(const BillItem& item, const Locale& locale) {
    const auto say = [&locale](const Phrase& words) { return exporting::showable(format::text(words, locale)); };
    const Phrase name = item.material.empty() ? item.name : phrase("{}; {}", item.name, item.material);
    return {{std::to_string(item.quantity), say(name),
             item.length_in ? drawing::length_words(*item.length_in, locale.system) : std::string("-"),
             item.weight_lb ? weight_words(*item.weight_lb, locale.system) : std::string("-"),
             item.weight_lb ? weight_words(static_cast<double>(item.quantity) * *item.weight_lb, locale.system)
                            : std::string("-"),
             say(wording::marks(item.where))},
            {},
            {}};
}

}  // namespace

std::string bill_text(const Bill& bill, const Locale& locale) {
    const auto say = [&locale](const Phrase& words) { return format::text(words, locale); };
    std::vector<exporting::Row> rows;
    const BillItem* before = nullptr;
    for (const BillItem& item : bill.items) {
        rows.push_back(row_of(item, locale));
        if (before == nullptr || before->kind != item.kind) rows.back().above = say(heading(item.kind));
        before = &item;
    }
    std::string text = exporting::paragraph(say(phrase("{}: bill of materials", bill.project))) + "\n";
    text += exporting::table({{say(phrase("qty")), Align::right},
                              {say(phrase("item"))},
                              {say(phrase("length")), Align::right},
                              {say(phrase("each")), Align::right},
                              {say(phrase("all")), Align::right},
                              {say(phrase("where"))}},
                             rows);
    text += "\n";
    if (const double plates_lb = bill.plate_weight_lb(); plates_lb > 0.0)
        text += exporting::paragraph(
            say(phrase("Plates and shapes together: {}.", weight_words(plates_lb, locale.system))));
    for (const Phrase& note : bill.notes) text += exporting::paragraph(say(note), "  - ");
    return text;
}

std::string bill_csv(const Bill& bill) {
    std::string text = exporting::csv_line({"project", "kind", "quantity", "item", "material", "length (in)",
                                            "weight of one (lb)", "weight of all (lb)", "where"});
    for (const BillItem& item : bill.items) {
        const std::optional<double> all =
            item.weight_lb ? std::optional(static_cast<double>(item.quantity) * *item.weight_lb) : std::nullopt;
        text += exporting::csv_line(
            {csv_cell(bill.project), std::string(word(item.kind)), std::to_string(item.quantity),
             csv_cell(format::english(item.name)), csv_cell(format::english(item.material)), csv_number(item.length_in),
             csv_number(item.weight_lb), csv_number(all), csv_cell(review::joined_marks(item.where, " to "))});
    }
    return text;
}

}  // namespace toehold::paper

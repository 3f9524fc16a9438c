#include "export/text/study_text.h"

#include "export/text/columns.h"
#include "export/text/table.h"
#include "format/figures.h"
#include "study/study.h"
#include "wording/status.h"
#include "wording/studies.h"

#include <cmath>

namespace toehold::exporting {
namespace {

using format::Locale;
using format::Phrase;
using format::phrase;

std::string say(const Phrase& words, const Locale& locale) { return format::text(words, locale); }

std::string notes_text(const std::vector<Phrase>& notes, const Locale& locale) {
    std::string text;
    for (const Phrase& note : notes) text += paragraph(say(note, locale), "  ");
    return text.empty() ? text : "\n" + text;
}

std::string heading(const Phrase& words, const Locale& locale) { return paragraph(say(words, locale)) + "\n"; }

std::string ratio_cell(const study::Judged& judged, const Locale& locale) {
    if (!judged.known()) return "-";
    if (!judged.no_path.empty()) return say(phrase("no load path"), locale);
    return judged.governing ? format::ratio_text(judged.governing->ratio) : "-";
}

std::string verdict_cell(const study::Judged& judged, const Locale& locale) {
    return judged.known() ? say(wording::word(judged.verdict), locale) : say(phrase("no number"), locale);
}

std::string limit_cell(const study::Judged& judged, const Locale& locale) {
    return say(judged.known() ? wording::limit(judged.limit) : judged.refusal, locale);
}

std::string range_cell(const study::Field& field, const Locale& locale) {
    if (field.sizes.empty()) {
        return say(phrase("{0} to {1}", study::value_words(field, field.range.least, locale.system),
                          study::value_words(field, field.range.most, locale.system)),
                   locale);
    }
    std::string names;
    for (const study::Size& size : field.sizes) names += (names.empty() ? "" : ", ") + size.name;
    return names;
}

std::string side_cell(const study::Tornado& tornado, const study::Swing& swing, const study::SwingSide& side,
                      const Locale& locale) {
    if (side.value == swing.field.now && !side.judged.known()) return "-";
    const std::string value = study::value_words(swing.field, side.value, locale.system) + ": ";
    if (!side.judged.known()) return value + say(phrase("no number"), locale);
    std::string words = value + ratio_cell(side.judged, locale);
    if (side.judged.verdict != tornado.now.verdict) words += ", " + verdict_cell(side.judged, locale);
    return words;
}

std::string node_cell(const study::MapNode& node, const Locale& locale) {
    if (!node.judged.known()) return "?";
    const bool number = node.judged.no_path.empty() && node.judged.governing;
    const std::string ratio = number ? format::ratio_text(node.judged.governing->ratio) : "-";
    return node.judged.holds() ? ratio : ratio + " " + say(phrase("no"), locale);
}

std::string border_line(const study::HoldingMap& map, const study::MapBorder& border, const Locale& locale) {
    const bool upward = border.axis == study::MapAxis::up;
    const study::Field& along = upward ? map.up : map.across;
    const study::Field& line = upward ? map.across : map.up;
    const double at_line = upward ? map.across_values[border.column] : map.up_values[border.row];
    const Phrase limit = wording::limit(border.limit);
    return say(
        phrase("{} {}: {} {} holds, {} does not: {}", line.name, study::value_words(line, at_line, locale.system),
               along.name, study::value_words(along, border.holds, locale.system),
               study::value_words(along, border.fails, locale.system), limit),
        locale);
}

}  // namespace

std::string fields_text(const std::vector<study::Field>& fields, const Locale& locale) {
    std::vector<Row> rows;
    for (const study::Field& field : fields) {
        const std::string now = field.now ? study::value_words(field, *field.now, locale.system) : "-";
        rows.push_back(
            {{field.id, say(field.name, locale), now, range_cell(field, locale)}, {say(field.help, locale)}});
    }
    return heading(phrase("Inputs of this detail that a chart may run over:"), locale) +
           table({{say(phrase("field"), locale)},
                  {say(phrase("what it is"), locale)},
                  {say(phrase("now"), locale)},
                  {say(phrase("customary range"), locale)}},
                 rows);
}

std::string sweep_text(const study::Sweep& sweep, const Locale& locale) {
    std::vector<Row> rows;
    for (const study::SweepPoint& point : sweep.points) {
        rows.push_back({{study::value_words(sweep.field, point.value, locale.system), ratio_cell(point.judged, locale),
                         verdict_cell(point.judged, locale), limit_cell(point.judged, locale)},
                        {}});
    }
    return table({{say(sweep.field.name, locale), Align::right},
                  {say(phrase("D/C"), locale), Align::right},
                  {say(phrase("verdict"), locale)},
                  {say(phrase("first cause, or nearest its limit"), locale)}},
                 rows) +
           notes_text(wording::notes(sweep, locale.system), locale);
}

std::string tornado_text(const study::Tornado& tornado, const Locale& locale) {
    std::vector<Row> rows;
    for (const study::Swing& swing : tornado.swings) {
        rows.push_back(
            {{say(swing.field.name, locale), study::value_words(swing.field, *swing.field.now, locale.system),
              side_cell(tornado, swing, swing.down, locale), side_cell(tornado, swing, swing.up, locale),
              format::ratio_text(swing.size)},
             {}});
    }
    return table({{say(phrase("input"), locale)},
                  {say(phrase("now"), locale)},
                  {say(phrase("less: D/C"), locale)},
                  {say(phrase("more: D/C"), locale)},
                  {say(phrase("change"), locale), Align::right}},
                 rows) +
           notes_text(wording::notes(tornado, locale.system), locale);
}

std::string map_text(const study::HoldingMap& map, const Locale& locale) {
    std::vector<Column> columns{{say(map.up.name, locale), Align::right}};
    for (const double across : map.across_values)
        columns.push_back({study::value_words(map.across, across, locale.system), Align::right});
    std::vector<Row> rows;
    for (std::size_t row = map.up_values.size(); row-- > 0;) {
        Row one{{study::value_words(map.up, map.up_values[row], locale.system)}, {}};
        for (std::size_t column = 0; column < map.across_values.size(); ++column)
            one.cells.push_back(node_cell(map.at(column, row), locale));
        rows.push_back(std::move(one));
    }
    std::string text = heading(phrase("Demand over capacity over {} (down) and {} (across); \"no\": not ADEQUATE",
                                      map.up.name, map.across.name),
                               locale) +
                       table(columns, rows);
    std::string borders;
    for (const study::MapBorder& border : map.borders) borders += paragraph(border_line(map, border, locale), "  ");
    if (!borders.empty()) text += "\n" + borders;
    return text + notes_text(wording::notes(map, locale.system), locale);
}

}  // namespace toehold::exporting

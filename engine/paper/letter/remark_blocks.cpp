#include "paper/letter/remark_blocks.h"

#include "paper/letter/remark_target.h"
#include "review/review.h"
#include "wording/status.h"

#include <algorithm>
#include <iterator>
#include <utility>

namespace toehold::paper::letter {
namespace {

using format::Phrase;
using format::phrase;
using model::Remark;
using report::Blocks;
using report::Source;

/// Of every title among the results the worst, since a check may hold several distances against each other.
Table results_table(const RemarkTarget& target, const Source& source) {
    Table table;
    table.columns = report::with_measure({{source.text(phrase("result")), 0.27},
                                          {source.text(phrase("part")), 0.17},
                                          {source.text(phrase("clause")), 0.17}},
                                         source.locale());
    std::vector<Phrase> titles;
    for (const checks::CheckResult* result : target.results) {
        if (std::find(titles.begin(), titles.end(), result->title) != titles.end()) continue;
        titles.push_back(result->title);
        const auto alike = static_cast<std::size_t>(
            std::count_if(target.results.begin(), target.results.end(),
                          [result](const checks::CheckResult* other) { return other->title == result->title; }));
        std::vector<Cell> row = {
            report::words_cell(source.text(result->title)),
            report::words_cell(source.text(wording::worst_of(model::part_name(result->part), alike))),
            report::words_cell(format::text(result->clause, source.locale()))};
        table.rows.push_back(report::with_measure(std::move(row), report::measure(*result), source.locale()));
    }
    return table;
}

Table findings_table(const RemarkTarget& target, const Source& source) {
    Table table;
    table.columns = {{"", 0.1},
                     {source.text(phrase("about")), 0.15},
                     {source.text(phrase("finding")), 0.5},
                     {source.text(phrase("clause")), 0.25}};
    for (const checks::Finding* finding : target.findings)
        table.rows.push_back(report::finding_cells(*finding, source.locale()));
    return table;
}

std::string signature(const Remark& remark) {
    if (remark.by.empty()) return remark.date;
    return remark.date.empty() ? remark.by : remark.by + ", " + remark.date;
}

std::vector<std::string> authors(const std::vector<Remark>& remarks) {
    std::vector<std::string> names;
    for (const Remark& remark : remarks) {
        const bool known = std::find(names.begin(), names.end(), remark.by) != names.end();
        if (!remark.by.empty() && !known) names.push_back(remark.by);
    }
    return names;
}

}  // namespace

Facts::Fact reviewers(const std::vector<Remark>& remarks, const format::Locale& locale) {
    const std::vector<std::string> by = authors(remarks);
    return {written(by.size() == 1 ? phrase("REVIEWER") : phrase("REVIEWERS"), locale),
            written(by.empty() ? phrase("not named") : phrase("{}", listed(by)), locale)};
}

std::vector<Remark> in_state(const std::vector<Remark>& remarks, Remark::State state) {
    std::vector<Remark> found;
    std::copy_if(remarks.begin(), remarks.end(), std::back_inserter(found),
                 [state](const Remark& remark) { return remark.state == state; });
    return found;
}

void add_remark(Blocks& blocks, const Source& source, const Remark& remark, std::size_t number) {
    const RemarkTarget target = target_of(remark, source.review);
    const std::string mark = "C" + std::to_string(number);
    blocks.emplace_back(Heading{2, mark + "  " + source.text(target.title), "remark-" + std::to_string(number)});
    if (!target.results.empty()) blocks.emplace_back(results_table(target, source));
    if (!target.findings.empty()) blocks.emplace_back(findings_table(target, source));
    if (!target.gone.empty()) blocks.emplace_back(report::fine_print(source.text(target.gone)));
    Paragraph words = report::paragraph(remark.words);
    words.size = drawing::TextSize::normal;
    blocks.emplace_back(std::move(words));
    const std::string by = signature(remark);
    if (!by.empty()) blocks.emplace_back(report::fine_print(by));
}

Facts room_for_answer(const format::Locale& locale) { return {{{written(phrase("ANSWER"), locale), "\n\n"}}, 1}; }

}  // namespace toehold::paper::letter

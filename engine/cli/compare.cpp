#include "cli/commands.h"
#include "cli/console.h"
#include "cli/data_folder.h"
#include "cli/ordered_parallel_map.h"
#include "cli/plugins.h"
#include "cli/review_file.h"
#include "export/json/comparison_json.h"
#include "export/text/comparison_text.h"
#include "model/validate.h"
#include "paper/document.h"
#include "paper/papers.h"
#include "review/comparison.h"
#include "search/run/parallel.h"
#include "xml/detail/basis.h"

#include <array>

namespace toehold::cli {
namespace {

using format::Locale;

struct Input {
    std::string label;
    catalog::Resolved resolved;
    std::string sha256;
};

std::optional<Input> named_input(const std::string& file, const catalog::Catalog& catalog, const Locale& locale) {
    ResolvedFile input = resolve_file(file, catalog);
    complain(input.problems, locale);
    if (!input.resolved) return std::nullopt;
    return Input{name_of(file), std::move(*input.resolved), std::move(input.sha256)};
}

std::vector<xml::BasisSetting> settings_of(const std::vector<std::string>& words) {
    std::vector<xml::BasisSetting> settings;
    settings.reserve(words.size());
    for (const std::string& word : words) {
        const std::size_t equals = word.find('=');
        settings.push_back({word.substr(0, equals), word.substr(equals + 1)});
    }
    return settings;
}

std::string label_of(const std::string& file, const std::vector<xml::BasisSetting>& settings, const Locale& locale) {
    std::string label;
    for (const xml::BasisSetting& setting : settings) {
        if (&setting != &settings.front()) label += ", ";
        const format::Phrase value =
            setting.value.empty() ? format::phrase("left out") : format::verbatim(setting.value);
        label += setting.attribute + " " + format::text(value, locale);
    }
    return format::text(format::phrase("{} with {}", file, label), locale);
}

/// The same detail on another basis.
std::optional<Input> on_second_basis(const Input& first, const CompareCommand& command, const catalog::Catalog& catalog,
                                     const Locale& locale) {
    const std::vector<xml::BasisSetting> settings = settings_of(command.second_basis);
    model::BaseDetail detail = first.resolved.detail;
    xml::BasisRead read = xml::change_basis(detail.basis, settings);
    if (read.basis) {
        detail.basis = *read.basis;
        read.problems = model::validate(detail);
    }
    for (model::Problem& problem : read.problems) problem.file = "--second-basis";
    complain(read.problems, locale);
    if (!read.problems.empty()) return std::nullopt;
    catalog::Resolution resolution = catalog::resolve(detail, catalog);
    complain(resolution.problems, locale);
    if (!resolution.resolved) return std::nullopt;
    return Input{label_of(first.label, settings, locale), std::move(*resolution.resolved), first.sha256};
}

review::Comparison compared(const std::array<Input, 2>& inputs) {
    std::array<review::Review, 2> reviews;
    ordered_parallel_map(
        2, search::threads_for(2, 0),
        [&](std::size_t side) { return review::evaluate(inputs.at(side).resolved, inputs.at(side).sha256); },
        [&](std::size_t side, review::Review review) { reviews.at(side) = std::move(review); });
    return review::compare(reviews[0], inputs[0].label, reviews[1], inputs[1].label);
}

/// On paper the folders say nothing, unless they alone tell the two files apart.
review::Comparison named_for_paper(review::Comparison comparison, const CompareCommand& command, const Locale& locale) {
    const std::string first = name_on_paper(command.first), second = name_on_paper(command.second);
    if (command.second.empty()) {
        comparison.first.label = first;
        comparison.second.label = label_of(first, settings_of(command.second_basis), locale);
    } else if (first != second) {
        comparison.first.label = first;
        comparison.second.label = second;
    }
    return comparison;
}

}  // namespace

ExitStatus run(const CompareCommand& command, const Locale& spoken) {
    const Locale locale{command.system, spoken.catalogue};
    if (!command.wishes.output.empty() && ending_of(command.wishes.output) != "pdf") {
        complain(format::phrase("a comparison is written as .pdf, not as \"{}\"", command.wishes.output), locale);
        return ExitStatus::unusable_input;
    }
    if (!load_plugins(command.plugins, locale)) return ExitStatus::unusable_input;
    const auto catalog = load_catalog(command.data, locale);
    if (!catalog) return ExitStatus::unusable_input;
    std::optional<Input> first = named_input(command.first, *catalog, locale);
    std::optional<Input> second;
    if (!command.second.empty()) {
        second = named_input(command.second, *catalog, locale);
    } else if (first) {
        second = on_second_basis(*first, command, *catalog, locale);
    }
    if (!first || !second) return ExitStatus::unusable_input;
    const review::Comparison comparison = compared({std::move(*first), std::move(*second)});
    const ExitStatus status = comparison.verdict_turns() ? ExitStatus::not_adequate : ExitStatus::adequate;
    if (!command.wishes.output.empty()) {
        PaperWishes wishes = command.wishes;
        wishes.system = command.system;
        const std::string bytes = paper::pdf(paper::lay_out(paper::comparison_report(
            named_for_paper(comparison, command, locale), issue_of(wishes, command.first, locale))));
        return write_paper(wishes.output, bytes, locale) ? status : ExitStatus::internal_fault;
    }
    if (command.json) {
        print(exporting::comparison_json(comparison, command.all_rows));
    } else {
        print(exporting::comparison_text(comparison, {locale, command.all_rows}));
    }
    return status;
}

}  // namespace toehold::cli

#include "cli/commands.h"
#include "cli/console.h"
#include "cli/data_folder.h"
#include "cli/in_order.h"
#include "cli/plugins.h"
#include "cli/review_file.h"
#include "export/json/comparison_json.h"
#include "export/text/comparison_text.h"
#include "model/validate.h"
#include "review/comparison.h"
#include "xml/detail/basis.h"

#include <array>

namespace toehold::cli {
namespace {

struct Input {
    std::string label;
    catalog::Resolved resolved;
    std::string sha256;
};

std::optional<Input> named_input(const std::string& file, const catalog::Catalog& catalog) {
    ResolvedFile input = resolve_file(file, catalog);
    complain(input.problems);
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

std::string label_of(const std::string& file, const std::vector<xml::BasisSetting>& settings) {
    std::string label = file + " with ";
    for (const xml::BasisSetting& setting : settings) {
        if (&setting != &settings.front()) label += ", ";
        label.append(setting.attribute).append(" ").append(setting.value.empty() ? "left out" : setting.value);
    }
    return label;
}

/// The same detail on another basis.
std::optional<Input> on_second_basis(const Input& first, const CompareCommand& command,
                                     const catalog::Catalog& catalog) {
    const std::vector<xml::BasisSetting> settings = settings_of(command.second_basis);
    model::BaseDetail detail = first.resolved.detail;
    xml::BasisRead read = xml::change_basis(detail.basis, settings);
    if (read.basis) {
        detail.basis = *read.basis;
        read.problems = model::validate(detail);
    }
    for (model::Problem& problem : read.problems) problem.file = "--second-basis";
    complain(read.problems);
    if (!read.problems.empty()) return std::nullopt;
    catalog::Resolution resolution = catalog::resolve(detail, catalog);
    complain(resolution.problems);
    if (!resolution.resolved) return std::nullopt;
    return Input{label_of(first.label, settings), std::move(*resolution.resolved), first.sha256};
}

review::Comparison compared(const std::array<Input, 2>& inputs) {
    std::array<review::Review, 2> reviews;
    in_order(
        2, threads_for(2, 0),
        [&](std::size_t side) { return review::evaluate(inputs.at(side).resolved, inputs.at(side).sha256); },
        [&](std::size_t side, review::Review review) { reviews.at(side) = std::move(review); });
    return review::compare(reviews[0], inputs[0].label, reviews[1], inputs[1].label);
}

/// On paper the folders say nothing, unless they alone tell the two files apart.
review::Comparison named_for_paper(review::Comparison comparison, const CompareCommand& command) {
    const std::string first = issue_of({}, command.first).file, second = issue_of({}, command.second).file;
    if (command.second.empty()) {
        comparison.first.label = first;
        comparison.second.label.replace(0, command.first.size(), first);
    } else if (first != second) {
        comparison.first.label = first;
        comparison.second.label = second;
    }
    return comparison;
}

}  // namespace

ExitStatus run(const CompareCommand& command) {
    if (!command.wishes.output.empty() && ending_of(command.wishes.output) != "pdf") {
        complain("a comparison is written as .pdf, and not as \"" + command.wishes.output + "\"");
        return ExitStatus::unusable_input;
    }
    if (!load_plugins(command.plugins)) return ExitStatus::unusable_input;
    const auto catalog = load_catalog(command.data);
    if (!catalog) return ExitStatus::unusable_input;
    std::optional<Input> first = named_input(command.first, *catalog);
    std::optional<Input> second;
    if (!command.second.empty()) {
        second = named_input(command.second, *catalog);
    } else if (first) {
        second = on_second_basis(*first, command, *catalog);
    }
    if (!first || !second) return ExitStatus::unusable_input;
    const review::Comparison comparison = compared({std::move(*first), std::move(*second)});
    const ExitStatus status = comparison.verdict_turns() ? ExitStatus::not_adequate : ExitStatus::adequate;
    if (!command.wishes.output.empty()) {
        PaperWishes wishes = command.wishes;
        wishes.system = command.system;
        const std::string bytes = paper::pdf(paper::lay_out(
            paper::comparison_report(named_for_paper(comparison, command), issue_of(wishes, command.first))));
        return write_paper(wishes.output, bytes) ? status : ExitStatus::internal_fault;
    }
    if (command.json) {
        print(exporting::comparison_json(comparison, command.all_rows));
    } else {
        print(exporting::comparison_text(comparison, {command.system, command.all_rows}));
    }
    return status;
}

}  // namespace toehold::cli

#include "checks/registry.h"
#include "cli/commands.h"
#include "cli/console.h"
#include "cli/data_folder.h"
#include "cli/inputs.h"
#include "cli/ordered_parallel_map.h"
#include "cli/plugins.h"
#include "cli/progress.h"
#include "cli/resolve_project.h"
#include "cli/review_file.h"
#include "cli/summary.h"
#include "export/csv/review_csv.h"
#include "export/json/project_json.h"
#include "export/json/review_json.h"
#include "export/text/project_text.h"
#include "export/text/review_text.h"
#include "review/review.h"
#include "search/remedies/remedies.h"
#include "search/run/parallel.h"
#include "xml/document/file.h"

#include <algorithm>
#include <functional>
#include <set>

namespace toehold::cli {
namespace {

using format::Locale;
using format::phrase;

constexpr std::string_view every_check = "all";

/// What is printed of each review, and what is not worth computing for it.
struct Form {
    std::string before, between, after;  ///< around the texts of the reviews
    std::function<std::string(const std::string& file, const review::Review& review)> text;
    std::function<std::string(const std::string& file, const review::ProjectReview& review)> project_text;
    bool whole = true;     ///< with assumptions and remedies, each of which costs further reviews
    bool summary = false;  ///< a table at the end instead of texts
};

struct Outcome {
    std::string text;
    SummaryRow row;
    model::Problems problems;
    std::string fault;  ///< of the program; empty: none
    ExitStatus status = ExitStatus::adequate;
};

std::string explanation(const review::Review& review, const CheckCommand& command, const Locale& locale) {
    if (command.explain != every_check) {
        std::string text = exporting::explain_text(review, command.explain, locale);
        if (text.empty())
            text = format::text(phrase("Check {} has no result for this detail.", command.explain), locale) + "\n";
        return text;
    }
    std::string text;
    std::set<std::string> explained;
    for (const checks::CheckResult& result : review.checks) {
        if (!explained.insert(result.id).second) continue;
        text += (text.empty() ? "" : "\n") + exporting::explain_text(review, result.id, locale);
    }
    return text.empty() ? format::text(phrase("No check has a result for this detail."), locale) + "\n" : text;
}

Form csv_form(const CheckCommand& command) {
    Form form;
    form.whole = false;
    const bool anchors = command.csv == CsvTable::anchors;
    form.before = anchors ? exporting::anchors_csv_heading() : exporting::checks_csv_heading();
    form.text = [anchors](const std::string& file, const review::Review& review) {
        const exporting::FiledReview filed{name_of(file), &review};
        return anchors ? exporting::anchors_csv_rows(filed) : exporting::checks_csv_rows(filed);
    };
    form.project_text = [text = form.text](const std::string& file, const review::ProjectReview& review) {
        std::string rows;
        for (const review::PostReview& one : review.posts) rows += text(file + ", " + one.post.id, one.review);
        return rows;
    };
    return form;
}

/// Several documents become one array, so that what is printed is always one JSON value.
Form json_form(bool several) {
    Form form;
    if (several) form.before = "[\n", form.between = ",\n", form.after = "]\n";
    form.text = [](const std::string&, const review::Review& review) { return exporting::review_json(review); };
    form.project_text = [](const std::string&, const review::ProjectReview& review) {
        return exporting::project_json(review);
    };
    return form;
}

Form text_form(const CheckCommand& command, bool several, const Locale& locale) {
    Form form;
    if (several) form.between = "\n" + std::string(100, '=') + "\n\n";
    form.whole = command.explain.empty();
    form.text = [&command, locale](const std::string&, const review::Review& review) {
        if (!command.explain.empty()) return explanation(review, command, locale);
        return exporting::review_text(review, exporting::TextOptions{locale, command.all_rows});
    };
    form.project_text = [&command, locale](const std::string&, const review::ProjectReview& review) {
        if (command.explain.empty()) return exporting::project_text(review, {locale, command.all_rows}, command.full);
        std::string text;
        for (const review::PostReview& one : review.posts) {
            text += (text.empty() ? "" : "\n") + one.post.id + "\n" + explanation(one.review, command, locale);
        }
        return text;
    };
    return form;
}

Form form_of(const CheckCommand& command, bool several, const Locale& locale) {
    if (command.csv != CsvTable::none) return csv_form(command);
    if (command.json) return json_form(several);
    if (!several || command.full || !command.explain.empty()) return text_form(command, several, locale);
    Form form;
    form.whole = false;
    form.summary = true;
    form.text = [](const std::string&, const review::Review&) { return std::string(); };
    form.project_text = [](const std::string&, const review::ProjectReview&) { return std::string(); };
    return form;
}

Outcome unusable(Outcome outcome, model::Problems problems) {
    outcome.status = ExitStatus::unusable_input;
    outcome.row.trouble = problems.empty() ? format::Phrase() : problems.front().message;
    outcome.problems = std::move(problems);
    return outcome;
}

/// A project's row is its worst post's.
Headline headline_of(const review::ProjectReview& review) {
    const auto worst = std::find_if(review.posts.begin(), review.posts.end(), [&review](const review::PostReview& one) {
        return one.review.verdict == review.verdict;
    });
    return worst == review.posts.end() ? Headline{} : headline(worst->review);
}

Outcome try_project(const std::string& file, const catalog::Catalog& catalog, const Form& form) {
    Outcome outcome;
    outcome.row.file = name_of(file);
    ResolvedProject input = resolve_project(file, catalog);
    if (!input.project) return unusable(std::move(outcome), std::move(input.problems));
    const review::ProjectReview review = review::review_project(*input.project, input.posts, input.sha256);
    outcome.text = form.project_text(file, review);
    outcome.row.headline = headline_of(review);
    if (review.verdict != review::Verdict::adequate) outcome.status = ExitStatus::not_adequate;
    return outcome;
}

/// Throws what `review` throws.
Outcome try_review(const std::string& file, const catalog::Catalog& catalog, const Form& form) {
    Outcome outcome;
    outcome.row.file = name_of(file);
    ResolvedFile input = resolve_file(file, catalog);
    if (!input.resolved) return unusable(std::move(outcome), std::move(input.problems));
    review::Review review =
        form.whole ? review::review(*input.resolved, input.sha256) : review::evaluate(*input.resolved, input.sha256);
    if (form.whole) review.remedies = search::find_remedies(review, catalog);
    outcome.text = form.text(file, review);
    outcome.row.headline = headline(review);
    if (review.verdict != review::Verdict::adequate) outcome.status = ExitStatus::not_adequate;
    return outcome;
}

/// One bad file does not stop the rest.
Outcome review_file(const std::string& file, const catalog::Catalog& catalog, const Form& form) {
    try {
        const bool project = file != standard_input && xml::document_kind(file) == xml::DocumentKind::project;
        return project ? try_project(file, catalog, form) : try_review(file, catalog, form);
    } catch (const std::exception& error) {
        Outcome outcome;
        outcome.row = {name_of(file), std::nullopt, phrase("program fault")};
        outcome.fault = error.what();
        outcome.status = ExitStatus::internal_fault;
        return outcome;
    }
}

ExitStatus review_all(const std::vector<std::string>& files, const catalog::Catalog& catalog, const Form& form,
                      std::size_t jobs, const Locale& locale) {
    ExitStatus status = ExitStatus::adequate;
    std::vector<SummaryRow> rows;
    std::string_view before = form.before;
    Progress progress(locale, files.size());
    const auto work = [&](std::size_t index) { return review_file(files[index], catalog, form); };
    const auto take = [&](std::size_t index, Outcome outcome) {
        progress.clear();
        complain(outcome.problems, locale);
        if (!outcome.fault.empty()) {
            complain(phrase("{}: program fault, not a fault of the detail: {}", outcome.row.file, outcome.fault),
                     locale);
        }
        if (outcome.row.headline && !form.summary) {
            print(before);
            print(outcome.text);
            before = form.between;
        }
        status = worse(status, outcome.status);
        rows.push_back(std::move(outcome.row));
        progress.show(index + 1);
    };
    ordered_parallel_map(files.size(), search::threads_for(files.size(), jobs), work, take);
    progress.clear();
    if (before == form.before) print(form.before);  // none could be printed
    print(form.summary ? summary_text(rows, locale) : form.after);
    return status;
}

bool is_check(const std::string& id) {
    const auto& all = checks::registered_checks();
    return std::any_of(all.begin(), all.end(), [&id](const checks::Check& check) { return check.id == id; });
}

}  // namespace

ExitStatus run(const CheckCommand& command, const Locale& spoken) {
    const Locale locale{command.system, spoken.catalogue};
    if (!load_plugins(command.plugins, locale)) return ExitStatus::unusable_input;
    if (!command.explain.empty() && command.explain != every_check && !is_check(command.explain)) {
        complain(phrase("there is no check \"{}\"; toehold list checks names them", command.explain), locale);
        return ExitStatus::unusable_input;
    }
    const auto inputs = find_inputs(command.files, locale);
    if (!inputs) return ExitStatus::unusable_input;
    const Form form = form_of(command, inputs->several, locale);
    if (form.summary && (command.all_rows || command.system != units::System::us)) {
        complain(phrase("--all and --si need whole reviews; several files give a summary, or every review with --full"),
                 locale);
        return ExitStatus::unusable_input;
    }
    const auto catalog = load_catalog(command.data, locale);
    if (!catalog) return ExitStatus::unusable_input;
    return review_all(inputs->files, *catalog, form, command.jobs, locale);
}

}  // namespace toehold::cli

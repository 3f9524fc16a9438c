#include "cli/check/forms.h"

#include "cli/review_file.h"
#include "export/csv/posts_csv.h"
#include "export/csv/review_csv.h"
#include "export/json/project_json.h"
#include "export/json/review_json.h"
#include "export/json/submittals_json.h"
#include "export/text/project_text.h"
#include "export/text/review_text.h"

#include <set>

namespace toehold::cli {
namespace {

using format::Locale;
using format::phrase;

/// The worked steps asked for; empty: there is no such result.
std::string explained(const std::vector<checks::CheckResult>& results, const CheckCommand& command,
                      const Locale& locale) {
    if (command.explain != every_check) return exporting::explain_text(results, command.explain, locale);
    std::string text;
    std::set<std::string> ids;
    for (const checks::CheckResult& result : results) {
        if (!ids.insert(result.id).second) continue;
        text += (text.empty() ? "" : "\n") + exporting::explain_text(results, result.id, locale);
    }
    return text;
}

std::string nothing_to_explain(const CheckCommand& command, const Locale& locale) {
    if (command.explain == every_check)
        return format::text(phrase("No check has a result for this detail."), locale) + "\n";
    return format::text(phrase("Check {} has no result for this detail.", command.explain), locale) + "\n";
}

std::string explanation(const review::Review& review, const CheckCommand& command, const Locale& locale) {
    const std::string text = explained(review.checks, command, locale);
    return text.empty() ? nothing_to_explain(command, locale) : text;
}

/// Of every post, and of the rail of every line of guard, that has such a result.
std::string explanation(const review::ProjectReview& review, const CheckCommand& command, const Locale& locale) {
    std::string text;
    const auto add = [&text](const std::string& name, const std::string& steps) {
        if (!steps.empty()) text += (text.empty() ? "" : "\n") + name + "\n" + steps;
    };
    for (const review::PostReview& one : review.posts) add(one.post.id, explained(one.review.checks, command, locale));
    for (const review::LineReview& line : review.lines) add(line.id, explained(line.checks, command, locale));
    return text.empty() ? nothing_to_explain(command, locale) : text;
}

/// One row an anchor or a result.
Form rows_form(const CheckCommand& command) {
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

/// One row a post; a detail alone is one.
Form posts_form() {
    Form form;
    form.whole = false;
    form.before = exporting::posts_csv_heading();
    form.text = [](const std::string& file, const review::Review& review) {
        return exporting::posts_csv_row(name_of(file), review);
    };
    form.project_text = [](const std::string& file, const review::ProjectReview& review) {
        return exporting::posts_csv_rows(name_of(file), review);
    };
    return form;
}

/// One row a file, sorted when all are there.
Form summary_form(const std::function<std::string(const std::vector<SummaryRow>& rows)>& summary) {
    Form form;
    form.whole = false;
    form.summary = summary;
    form.text = [](const std::string&, const review::Review&) { return std::string(); };
    form.project_text = [](const std::string&, const review::ProjectReview&) { return std::string(); };
    return form;
}

/// Several documents become one array, so that what is printed is always one JSON value.
Form json_form(bool several) {
    Form form;
    form.text = [](const std::string& file, const review::Review& review) {
        return exporting::review_json(review, name_of(file));
    };
    form.project_text = [](const std::string& file, const review::ProjectReview& review) {
        return exporting::project_json(review, name_of(file));
    };
    if (!several) return form;
    form.before = "[\n", form.between = ",\n", form.after = "]\n";
    form.unusable_text = [](const std::string& file, const model::Problems& problems) {
        return exporting::unusable_json(name_of(file), problems);
    };
    form.stopped_text = [](const std::vector<SummaryRow>& rows) {
        std::vector<std::string> left;
        for (const SummaryRow& row : rows) {
            if (!row.begun) left.push_back(row.file);
        }
        return exporting::stopped_json(rows.size() - left.size(), left);
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
        return explanation(review, command, locale);
    };
    return form;
}

}  // namespace

Form form_of(const CheckCommand& command, bool several, const Locale& locale) {
    if (command.csv == CsvTable::files) return summary_form(summary_csv);
    if (command.csv == CsvTable::posts) return posts_form();
    if (command.csv != CsvTable::none) return rows_form(command);
    if (command.json) return json_form(several);
    if (!several || command.full || !command.explain.empty()) return text_form(command, several, locale);
    return summary_form([locale](const std::vector<SummaryRow>& rows) { return summary_text(rows, locale); });
}

}  // namespace toehold::cli

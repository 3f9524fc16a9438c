#include "editing/job/job_form.h"

#include <algorithm>

namespace toehold::editing {
namespace {

std::optional<job::Started> made_of(const job::Job& job, const catalog::Catalog& catalog) {
    if (!job::problems(job, catalog).empty()) return std::nullopt;
    return job::start(job, catalog);
}

}  // namespace

JobForm::JobForm(const catalog::Catalog& catalog) : catalog_(catalog), questions_(job::questions(catalog)) { make(); }

std::string JobForm::answer(const job::Question& question) const {
    const auto refused = refused_.find(question.id);
    return refused != refused_.end() ? refused->second.text : question.answer(job_);
}

format::Phrase JobForm::refusal(const job::Question& question) const {
    if (const auto refused = refused_.find(question.id); refused != refused_.end()) return refused->second.accepted;
    const auto problem = std::find_if(problems_.begin(), problems_.end(),
                                      [&](const model::Problem& one) { return one.element == question.id; });
    if (problem == problems_.end()) return {};
    return problem->accepted.empty() ? problem->message : problem->accepted;
}

void JobForm::take(const job::Question& question, const std::string& text) {
    refused_.erase(question.id);
    if (const std::optional<format::Phrase> accepted = question.take(job_, text))
        refused_[question.id] = {text, *accepted};
    make();
}

void JobForm::make() {
    problems_ = job::problems(job_, catalog_);
    const bool any_refused = std::any_of(questions_.begin(), questions_.end(), [this](const job::Question& question) {
        return asked(question) && refused_.count(question.id) > 0;
    });
    started_.reset();
    if (!any_refused && problems_.empty()) started_ = job::start(job_, catalog_);
}

std::pair<format::Phrase, format::Phrase> JobForm::why_not() const {
    for (const job::Question& question : questions_) {
        if (!asked(question)) continue;
        if (const format::Phrase wanted = refusal(question); !wanted.empty()) return {question.title, wanted};
    }
    if (problems_.empty()) return {};
    return {format::verbatim(problems_.front().element), problems_.front().message};
}

std::optional<job::Started> JobForm::with(const job::Question& question, const std::string& text) const {
    job::Job other = job_;
    if (question.take(other, text)) return std::nullopt;
    return made_of(other, catalog_);
}

}  // namespace toehold::editing

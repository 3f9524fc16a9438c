#include "editing/fields/groups.h"
#include "model/validate_remarks.h"

#include <fmt/format.h>

#include <array>

namespace toehold::editing {
namespace {

using State = model::Remark::State;

const std::array<Word<State>, 2> states{
    {{State::open, "open", phrase("Open")}, {State::settled, "settled", phrase("Settled")}}};

void about_field(Form& form, model::Remark& remark) {
    Field field = form.fresh({"about", phrase("About"),
                              phrase("Name of the check or the finding, as in the brackets beside it. Empty: the "
                                     "whole detail.")},
                             FieldKind::text);
    field.value = remark.about;
    field.may_be_empty = true;
    form.add(std::move(field), [&remark](const std::string& text) -> Outcome {
        if (trimmed(text).empty()) {
            remark.about.clear();
            return {};
        }
        const Reading<std::string> read = read_id(phrase("About"), text, {});
        if (!read.value) return {read.refusal};
        remark.about = *read.value;
        return {};
    });
}

void words_field(Form& form, model::Remark& remark) {
    form.required_text({"words", phrase("Words"), phrase("What is to be said, at most 4000 characters.")},
                       remark.words);
}

void date_field(Form& form, model::Remark& remark) {
    Field field =
        form.fresh({"date", phrase("Date"), phrase("Day, such as 2026-11-25. Empty: none.")}, FieldKind::text);
    field.value = remark.date;
    field.may_be_empty = true;
    form.add(std::move(field), [&remark](const std::string& text) -> Outcome {
        const std::string day = trimmed(text);
        if (!day.empty() && !model::is_iso_day(day)) return {phrase("Date takes YYYY-MM-DD, such as 2026-11-25.")};
        remark.date = day;
        return {};
    });
}

void one_remark(Form& form, model::Remark& remark, std::size_t number) {
    form.at({fmt::format("remarks/remark[{}]", number), {}, phrase("Remark {}", number)});
    words_field(form, remark);
    about_field(form, remark);
    form.text({"subject", phrase("Subject"), phrase("As the result names it, such as anchor A. Empty: every subject.")},
              remark.subject);
    form.text({"by", phrase("By"), phrase("Who says it. Empty: not specified.")}, remark.by);
    date_field(form, remark);
    form.word({"state", phrase("State"), phrase("Whether it still asks for an answer.")}, remark.state, states);
}

}  // namespace

void detail_fields(Form& form, model::BaseDetail& detail) {
    form.at({"", {}, phrase("Detail")});
    form.text({"name", phrase("Name"), phrase("What the detail is called on every sheet.")}, detail.name);
    form.text({"note", phrase("Note"), phrase("Anything a reader should know.")}, detail.note);
    form.text({"project", phrase("Project"), phrase("What the detail belongs to. Empty: not specified.")},
              detail.project);
}

void remark_fields(Form& form, std::vector<model::Remark>& remarks) {
    form.at({"", {}, phrase("Remarks")});
    form.list(
        {"remark-count", phrase("Number of remarks"),
         phrase("A reviewer's, kept beside the detail; nothing is computed from them. One begins with words for "
                "you to replace; a smaller number takes the last.")},
        remarks.size(), {0, static_cast<int>(model::most_remarks)},
        [&remarks] {
            remarks.push_back({{}, {}, "not yet written", {}, {}, State::open});
            return Phrase{};
        },
        [&remarks] { remarks.pop_back(); });
    for (std::size_t index = 0; index < remarks.size(); ++index) one_remark(form, remarks[index], index + 1);
}

}  // namespace toehold::editing

#include "window/project/line_checks.h"

#include "review/line/line_review.h"
#include "session/project_words.h"
#include "window/panels/checks/checks_list.h"
#include "window/text.h"
#include "wording/line.h"

#include <wx/clipbrd.h>
#include <wx/sizer.h>
#include <wx/translation.h>

#include <map>
#include <numeric>
#include <utility>

namespace toehold::window {
namespace {

/// A rail's parts are drawn by their own names.
CheckIndex index_of(const std::vector<checks::CheckResult>& results) {
    CheckIndex index;
    std::map<std::string, int> alike;
    for (const checks::CheckResult& result : results) {
        const std::string name = result.id + "|" + result.aspect + "|" + model::key(result.part);
        index.keys.push_back(name + "|" + std::to_string(alike[name]++));
        index.parts.push_back({result.part});
    }
    return index;
}

}  // namespace

LineChecks::LineChecks(wxWindow* parent, session::ProjectSession& session, std::function<format::Locale()> locale)
    : wxPanel(parent), session_(session), locale_(std::move(locale)) {
    SetName("line-checks-panel");
    list_ = new ChecksList(this, {[] {}, [this](std::size_t result) { open_or_close(result); }, [this] { copy(); }});
    list_->SetName("line-checks");
    list_->is_open = [this](std::size_t result) {
        return result < index_.keys.size() && open_.count(index_.keys[result]) > 0;
    };
    list_->is_marked = [this](const CheckRow& row) {
        return !session_.selected().empty() && row.result < results_.size() &&
               results_[row.result].part == model::PartId{model::PartKind::post, session_.selected()};
    };
    auto* column = new wxBoxSizer(wxVERTICAL);
    column->Add(list_, wxSizerFlags(1).Expand());
    SetSizer(column);
}

const std::vector<CheckRow>& LineChecks::shown() const { return list_->shown(); }

void LineChecks::refresh() {
    std::vector<std::string> above;
    std::vector<format::Phrase> below;
    results_.clear();
    if (const review::LineReview* line = session_.line_review(); line != nullptr) {
        if (!session_.review_is_current())
            above.push_back(utf8(_("Out of date: these are of the project as it was before.")));
        above.push_back(format::text(wording::line_title(*line), locale_()));
        for (const format::Phrase& one : session::line_sentences(*line)) above.push_back(format::text(one, locale_()));
        results_ = line->checks;
        below = session::resting_sentences(*line);
    } else {
        above.push_back(utf8(session_.line() == nullptr ? _("The project describes no guard line.")
                                                        : _("The guard line has not been reviewed yet.")));
    }
    index_ = index_of(results_);
    std::vector<std::size_t> all(results_.size());
    std::iota(all.begin(), all.end(), std::size_t{0});
    std::vector<CheckRow> shown = rows(results_, index_, all, open_, above);
    for (const format::Phrase& one : below) shown.push_back({RowKind::message, 0, 0, format::text(one, locale_())});
    style();
    list_->show(std::move(shown), &results_);
}

void LineChecks::style() {
    RowStyle style;
    style.theme = theme_;
    style.font = GetFont();
    style.locale = locale_();
    style.stale = !session_.review_is_current();
    list_->set_style(style);
}

void LineChecks::open_or_close(std::size_t result) {
    if (result >= index_.keys.size()) return;
    if (open_.erase(index_.keys[result]) == 0) open_.insert(index_.keys[result]);
    refresh();
}

void LineChecks::copy() const {
    const CheckRow* const row = list_->current();
    if (row == nullptr || row->kind == RowKind::message || !wxTheClipboard->Open()) return;
    const checks::CheckResult& result = results_[row->result];
    wxTheClipboard->SetData(new wxTextDataObject(
        text_of(result.title, locale_()) + ", " + subject_name(result, locale_()) + ": " +
        figure(result.demand, result.unit, locale_()) + " / " + figure(result.capacity, result.unit, locale_())));
    wxTheClipboard->Close();
}

void LineChecks::apply_theme(const Theme& theme) {
    theme_ = theme;
    window::apply_theme(*this, theme);
    style();
}

}  // namespace toehold::window

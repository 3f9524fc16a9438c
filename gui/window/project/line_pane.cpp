#include "window/project/line_pane.h"

#include "drawing/line/line_drawings.h"
#include "drawing/scene/shapes.h"
#include "window/controls/scene_pane.h"
#include "window/text.h"

#include <wx/choice.h>
#include <wx/sizer.h>
#include <wx/stattext.h>
#include <wx/translation.h>

#include <algorithm>
#include <cmath>
#include <utility>

namespace toehold::window {
namespace {

/// Around what is drawn of the post.
drawing::Scene selection_mark(const drawing::Scene& scene, const std::string& post) {
    drawing::Scene marks;
    const std::optional<drawing::Box> box = post_box(scene, post);
    if (!box) return marks;
    constexpr double off_mm = 2.0;
    const auto corner = [&](double x, double y, double x_mm, double y_mm) {
        return drawing::Place{{x, y}, {x_mm, y_mm}};
    };
    drawing::Path path;
    path.contours = {
        {corner(box->low.x, box->low.y, -off_mm, -off_mm), corner(box->high.x, box->low.y, off_mm, -off_mm),
         corner(box->high.x, box->high.y, off_mm, off_mm), corner(box->low.x, box->high.y, -off_mm, off_mm)}};
    path.closed = true;
    path.pen = drawing::Pen::selection;
    marks.items.emplace_back(std::move(path));
    return marks;
}

double distance(const drawing::Box& box, drawing::Point at) {
    const double x = std::max({box.low.x - at.x, 0.0, at.x - box.high.x});
    const double y = std::max({box.low.y - at.y, 0.0, at.y - box.high.y});
    return std::hypot(x, y);
}

}  // namespace

std::optional<drawing::Box> post_box(const drawing::Scene& scene, const std::string& post) {
    std::optional<drawing::Box> box;
    for (const drawing::Item& item : scene.items) {
        const auto* const path = std::get_if<drawing::Path>(&item);
        if (path == nullptr || path->part != model::PartId{model::PartKind::post, post}) continue;
        for (const auto& contour : path->contours) {
            for (const drawing::Place& place : contour) {
                if (!box) box = drawing::Box{place.at, place.at};
                box->low = {std::min(box->low.x, place.at.x), std::min(box->low.y, place.at.y)};
                box->high = {std::max(box->high.x, place.at.x), std::max(box->high.y, place.at.y)};
            }
        }
    }
    return box;
}

std::string nearest_post(const drawing::Scene& scene, drawing::Point at, double reach_in) {
    std::string nearest;
    double least = reach_in;
    for (const drawing::Item& item : scene.items) {
        const auto* const path = std::get_if<drawing::Path>(&item);
        if (path == nullptr || path->part.kind != model::PartKind::post || path->part.id == nearest) continue;
        const double away = distance(*post_box(scene, path->part.id), at);
        if (away >= least) continue;
        least = away;
        nearest = path->part.id;
    }
    return nearest;
}

LinePane::LinePane(wxWindow* parent, session::ProjectSession& session, std::function<format::Locale()> locale,
                   const std::function<void()>& open)
    : wxPanel(parent), session_(session), locale_(std::move(locale)) {
    SetName("line-pane");
    lines_ = new wxChoice(this, wxID_ANY);
    lines_->SetName("line-choice");
    lines_->Bind(wxEVT_CHOICE, [this](wxCommandEvent& event) {
        const auto at = static_cast<std::size_t>(event.GetSelection());
        if (at < session_.project().guard_lines.size()) session_.show_line(session_.project().guard_lines[at].id);
    });
    none_ = new wxStaticText(this, wxID_ANY, _("The project describes no guard line: every post is reviewed alone."));
    plan_ = scene_pane("line-plan", plan_scene_, open);
    elevation_ = scene_pane("line-elevation", elevation_scene_, open);
    auto* column = new wxBoxSizer(wxVERTICAL);
    column->Add(lines_, wxSizerFlags().Border(wxALL, FromDIP(gap::small)));
    column->Add(none_, wxSizerFlags().Border(wxALL, FromDIP(gap::normal)));
    column->Add(plan_, wxSizerFlags(3).Expand());
    column->Add(elevation_, wxSizerFlags(2).Expand());
    SetSizer(column);
}

ScenePane* LinePane::scene_pane(const wxString& name, const drawing::Scene& shown, const std::function<void()>& open) {
    auto* pane = new ScenePane(this, name);
    pane->pressed = [this, &shown](drawing::Point at, double reach_in) {
        constexpr double near = 4.0;  // posts stand far apart
        const std::string post = nearest_post(shown, at, near * reach_in);
        pressed_a_post_ = !post.empty();
        if (pressed_a_post_) session_.select(post);
    };
    pane->Bind(wxEVT_LEFT_DCLICK, [this, open](wxMouseEvent&) {
        if (pressed_a_post_) open();
    });
    pane->SetToolTip(_("A press selects a post; a double click opens its base"));
    return pane;
}

void LinePane::fill_lines() {
    const std::vector<model::GuardLine>& all = session_.project().guard_lines;
    wxArrayString names;
    int now = wxNOT_FOUND;
    for (const model::GuardLine& one : all) {
        if (&one == session_.line()) now = static_cast<int>(names.size());
        names.Add(text_of(format::phrase("Guard line {}", one.id), locale_()));
    }
    if (lines_->GetStrings() != names) lines_->Set(names);
    lines_->SetSelection(now);
    lines_->Show(all.size() > 1);
    none_->Show(all.empty());
    plan_->Show(!all.empty());
    elevation_->Show(!all.empty());
}

void LinePane::refresh() {
    fill_lines();
    const model::GuardLine* const line = session_.line();
    drawn_ = line == nullptr ? std::string() : line->id;
    if (line != nullptr) {
        // Shares of an earlier state would be read as those of the line drawn.
        const review::LineReview* const known = session_.review_is_current() ? session_.line_review() : nullptr;
        const drawing::LineSubject subject{session_.project(), *line, known, locale_()};
        plan_scene_ = drawing::line_plan(subject);
        elevation_scene_ = drawing::line_elevation(subject);
        plan_->show(plan_scene_);
        elevation_->show(elevation_scene_);
    }
    mark_selection();
    Layout();
}

void LinePane::refresh_selection() {
    const model::GuardLine* const line = session_.line();
    if (line != nullptr && line->id == drawn_) return mark_selection();
    refresh();
}

void LinePane::mark_selection() {
    plan_->mark(selection_mark(plan_scene_, session_.selected()));
    elevation_->mark(selection_mark(elevation_scene_, session_.selected()));
}

void LinePane::apply_theme(const Theme& theme) {
    window::apply_theme(*this, theme);
    window::apply_theme(*none_, theme);
    plan_->set_ground(theme.ground);
    elevation_->set_ground(theme.ground);
}

}  // namespace toehold::window

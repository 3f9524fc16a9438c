#include "window/frame/panes.h"

#include "job/job.h"
#include "session/session.h"
#include "window/charts/charts_page.h"
#include "window/panels/assumed/assumed_panel.h"
#include "window/panels/checks/checks_panel.h"
#include "window/panels/fields/fields_panel.h"
#include "window/panels/notes/notes_panel.h"
#include "window/panels/verdict_strip.h"
#include "window/sheet/canvas.h"
#include "window/sheet/place_bar.h"
#include "window/sheet/tool_row.h"
#include "window/sizes/sizes_page.h"

#include <wx/frame.h>
#include <wx/infobar.h>
#include <wx/notebook.h>
#include <wx/panel.h>
#include <wx/sizer.h>
#include <wx/translation.h>

#include <algorithm>
#include <array>

namespace toehold::window {

namespace {

const wxSize beside_sheet(430, 380);  // of a pane, DIP

}  // namespace

Panes::Panes(wxFrame& frame, session::Session& session, const wxString& remembered, std::function<void()> closed)
    : session_(session) {
    notice_ = new wxInfoBar(&frame);
    notice_->SetName("notice");
    board_ = new wxPanel(&frame);
    manager_.SetManagedWindow(board_);
    add_to_board(session);
    verdict_ = new VerdictStrip(&frame, [&session] { return verdict_words(session); });
    auto* column = new wxBoxSizer(wxVERTICAL);
    column->Add(notice_, wxSizerFlags().Expand());
    column->Add(board_, wxSizerFlags(1).Expand());
    column->Add(verdict_, wxSizerFlags().Expand());
    frame.SetSizer(column);
    // The panes take a share of the board, which must have its size before they are first set.
    frame.Layout();
    arrange();
    first_layout_ = manager_.SavePerspective();
    if (!remembered.empty()) manager_.LoadPerspective(remembered, false);
    arrange();
    manager_.Bind(wxEVT_AUI_PANE_CLOSE, [&frame, closed = std::move(closed)](wxAuiManagerEvent& event) {
        event.Skip();
        frame.CallAfter(closed);
    });
}

void Panes::end() {
    session_.stop_listening(listening_);
    manager_.UnInit();
}

void Panes::add_to_board(session::Session& session) {
    fields_ = new FieldsPanel(board_, field_source(session));
    listening_ = session.listen([this](session::Change change) {
        if (change != session::Change::results && change != session::Change::file) fields_->update_soon();
        if (change != session::Change::selection && verdict_ != nullptr) verdict_->refresh();
    });
    review_ = make_review_pane(session);
    manager_.AddPane(make_pages(session), wxAuiPaneInfo().Name("sheet").CenterPane().PaneBorder(false));
    const wxAuiPaneInfo beside = wxAuiPaneInfo()
                                     .Right()
                                     .CloseButton(true)
                                     .Floatable(false)
                                     .BestSize(board_->FromDIP(beside_sheet))
                                     .MinSize(board_->FromDIP(wxSize(300, 140)));
    manager_.AddPane(review_, wxAuiPaneInfo(beside).Name("review").Position(0));
    manager_.AddPane(fields_, wxAuiPaneInfo(beside).Name("fields").Position(1));
}

wxPanel* Panes::make_sheet_pane(session::Session& session) {
    auto* pane = new wxPanel(pages_);
    sheet_ = new SheetCanvas(pane, session);
    sheet_->SetName("sheet");
    tools_ = new ToolRow(pane, session, *sheet_);
    place_ = new PlaceBar(pane, session);
    tools_->MoveBeforeInTabOrder(sheet_);
    auto* column = new wxBoxSizer(wxVERTICAL);
    const int side = pane->FromDIP(gap::small);
    column->Add(tools_, wxSizerFlags().Expand().Border(wxLEFT | wxRIGHT, side));
    column->Add(sheet_, wxSizerFlags(1).Expand());
    column->Add(place_, wxSizerFlags().Expand().Border(wxLEFT | wxRIGHT, side));
    pane->SetSizer(column);
    return pane;
}

wxNotebook* Panes::make_pages(session::Session& session) {
    pages_ = new wxNotebook(board_, wxID_ANY);
    pages_->SetName("pages");
    wxPanel* drawings = make_sheet_pane(session);
    sizes_ = new SizesPage(pages_, session);
    charts_ = new ChartsPage(pages_, session);
    // As below, of pages that have not had a size yet.
    const std::array<wxWindow*, 3> all{drawings, sizes_, charts_};
    pages_->SetSize(board_->FromDIP(wxSize(900, 620)));
    for (wxWindow* page : all) {
        page->SetSize(pages_->GetClientSize());
        page->Layout();
    }
    pages_->AddPage(drawings, _("Drawings"));
    pages_->AddPage(sizes_, _("Sizes"));
    pages_->AddPage(charts_, _("Charts"));
    pages_->Bind(wxEVT_NOTEBOOK_PAGE_CHANGED, [this](wxBookCtrlEvent& event) {
        event.Skip();
        page_has_come();
    });
    return pages_;
}

Page Panes::page() const { return static_cast<Page>(std::max(0, pages_->GetSelection())); }

void Panes::show(Page page) {
    pages_->SetSelection(static_cast<std::size_t>(page));
    page_has_come();
}

void Panes::page_has_come() {
    switch (page()) {
        case Page::drawings:
            return sheet_->SetFocus();
        case Page::sizes:
            return sizes_->shown();
        case Page::charts:
            return charts_->shown();
    }
}

void Panes::find_sizes() {
    show(Page::sizes);
    sizes_->begin();
}

void Panes::list_assumed(const job::Started& started) {
    if (assumed_ != nullptr) return;
    assumed_ = new AssumedPanel(review_, session_, started, [this](const std::string& path) { show_field(path); });
    assumed_->apply_theme(theme_);
    assumed_->SetSize(review_->GetClientSize());
    assumed_->Layout();
    review_->AddPage(assumed_, _("Assumed"), true);
}

void Panes::show_field(const std::string& path) {
    if (!manager_.GetPane("fields").IsShown()) toggle("fields");
    fields_->go_to(path);
}

wxNotebook* Panes::make_review_pane(session::Session& session) {
    auto* book = new wxNotebook(board_, wxID_ANY);
    book->SetName("review");
    checks_ = new ChecksPanel(book, session);
    notes_ = new NotesPanel(book, session);
    book->AddPage(checks_, _("Checks"));
    book->AddPage(notes_, _("Findings and remedies"));
    // The toolkit complains of scroll bars in pages that have not had a size yet.
    for (wxWindow* page : std::array<wxWindow*, 2>{checks_, notes_}) {
        page->SetSize(board_->FromDIP(beside_sheet));
        page->Layout();
    }
    return book;
}

/// A layout remembers captions too, in the language it was saved in.
void Panes::arrange() {
    manager_.GetPane("fields").Caption(_("PROPERTIES"));
    manager_.GetPane("review").Caption(_("REVIEW"));
    manager_.GetPane("sheet").Show();
    manager_.Update();
}

void Panes::apply_theme(const Theme& theme) {
    theme_ = theme;
    const std::array<wxWindow*, 5> surfaces{board_, pages_, tools_, place_, tools_->GetParent()};
    for (wxWindow* surface : surfaces) {
        surface->SetBackgroundColour(theme.paper);
        surface->SetForegroundColour(theme.ink);
    }
    window::apply_theme(manager_, theme);
    sheet_->set_ground(theme.ground);
    fields_->apply_theme(theme);
    checks_->apply_theme(theme);
    notes_->apply_theme(theme);
    sizes_->apply_theme(theme);
    charts_->apply_theme(theme);
    if (assumed_ != nullptr) assumed_->apply_theme(theme);
    verdict_->apply_theme(theme);
    manager_.Update();
}

bool Panes::fields_shown() { return manager_.GetPane("fields").IsShown(); }
bool Panes::review_shown() { return manager_.GetPane("review").IsShown(); }
void Panes::toggle_fields() { toggle("fields"); }
void Panes::toggle_review() { toggle("review"); }

void Panes::toggle(const wxString& name) {
    wxAuiPaneInfo& pane = manager_.GetPane(name);
    pane.Show(!pane.IsShown());
    manager_.Update();
}

void Panes::show_checks() { show_page(0); }

void Panes::show_notes() {
    show_page(1);
    notes_->SetFocus();
}

void Panes::show_page(std::size_t page) {
    manager_.GetPane("review").Show();
    manager_.Update();
    review_->ChangeSelection(page);
}

wxString Panes::layout() { return manager_.SavePerspective(); }

void Panes::reset_layout() {
    manager_.LoadPerspective(first_layout_, false);
    arrange();
}

}  // namespace toehold::window

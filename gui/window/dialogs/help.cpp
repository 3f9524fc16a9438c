#include "window/dialogs/help.h"

#include "window/dialogs/help_text.h"
#include "window/frame/language.h"
#include "window/text.h"
#include "window/theme/theme.h"

#include <wx/frame.h>
#include <wx/html/htmlwin.h>
#include <wx/notebook.h>
#include <wx/sizer.h>
#include <wx/translation.h>

#include <array>

namespace toehold::window {

namespace {

constexpr std::array pages{HelpPage::method, HelpPage::sources, HelpPage::keys};

wxString title_of(HelpPage page) {
    switch (page) {
        case HelpPage::method:
            return _("Method in brief");
        case HelpPage::sources:
            return _("Sources and editions");
        case HelpPage::keys:
            return _("Keys");
    }
    return {};
}

wxString themed(std::string_view text, const Theme& theme) {
    const auto html = [](const wxColour& colour) { return colour.GetAsString(wxC2S_HTML_SYNTAX); };
    return "<html><body bgcolor=\"" + html(theme.paper) + "\" text=\"" + html(theme.ink) + "\" link=\"" +
           html(theme.demand) + "\">" + text_of(text) + "</body></html>";
}

class HelpFrame : public wxFrame {
  public:
    HelpFrame(wxWindow* parent, const Theme& theme)
        : wxFrame(parent, wxID_ANY, _("Help"), wxDefaultPosition, parent->FromDIP(wxSize(760, 640)),
                  wxDEFAULT_FRAME_STYLE | wxFRAME_FLOAT_ON_PARENT) {
        SetName("help");
        give_icon(*this);
        book_ = new wxNotebook(this, wxID_ANY);
        SetBackgroundColour(theme.paper);
        for (const HelpPage page : pages) {
            auto* html = new wxHtmlWindow(book_, wxID_ANY);
            html->SetStandardFonts(11, "DejaVu Sans", "DejaVu Sans Mono");
            html->SetBorders(FromDIP(gap::wide));
            html->SetPage(themed(speaks_french() ? help_text_french(page) : help_text_english(page), theme));
            book_->AddPage(html, title_of(page));
        }
        auto* column = new wxBoxSizer(wxVERTICAL);
        column->Add(book_, wxSizerFlags(1).Expand());
        SetSizer(column);
        Bind(wxEVT_CHAR_HOOK, [this](wxKeyEvent& event) {
            if (event.GetKeyCode() == WXK_ESCAPE) {
                Close();
            } else {
                event.Skip();
            }
        });
    }
    void turn_to(HelpPage page) {
        book_->ChangeSelection(static_cast<std::size_t>(page));
        book_->GetCurrentPage()->SetFocus();
    }

  private:
    wxNotebook* book_ = nullptr;
};

}  // namespace

void show_help(wxWindow* parent, const Theme& theme, HelpPage page) {
    auto* frame = dynamic_cast<HelpFrame*>(wxWindow::FindWindowByName("help", parent));
    if (frame == nullptr) frame = new HelpFrame(parent, theme);
    frame->turn_to(page);
    frame->Show();
    frame->Raise();
}

}  // namespace toehold::window

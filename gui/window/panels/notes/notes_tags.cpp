#include "window/panels/notes/notes_tags.h"

#include "window/theme/status_marks.h"
#include "window/theme/theme.h"

#include <wx/button.h>
#include <wx/dc.h>
#include <wx/html/winpars.h>
#include <wx/intl.h>

namespace toehold::window {
namespace {

int number(const wxHtmlTag& tag, const wxString& name) {
    int value = 0;
    return tag.GetParamAsInt(name, &value) ? value : 0;
}

class MarkCell : public wxHtmlCell {
  public:
    MarkCell(const wxString& words, checks::Status status, drawing::Ground ground, bool stale, const wxSize& of_words)
        : words_(words), status_(status), ground_(ground), stale_(stale) {
        m_Width = of_words.x + 16;
        m_Height = of_words.y + 10;
    }
    void Draw(wxDC& dc, int x, int y, int, int, wxHtmlRenderingInfo&) override {
        const wxRect place(x + m_PosX, y + m_PosY, m_Width, m_Height);
        const wxRect inner = place.Deflate(3, 3);
        const MarkSize size{inner.width / pixels_per_mm, inner.height / pixels_per_mm};
        paint_mark(dc, framed(words_.utf8_string(), status_, size, drawing::TextSize::small), place, ground_);
        if (!stale_) return;
        const wxColour over = theme_of(ground_).paper;
        dc.SetPen(*wxTRANSPARENT_PEN);
        dc.SetBrush(wxBrush(wxColour(over.Red(), over.Green(), over.Blue(), 120)));
        dc.DrawRectangle(place);
    }
    wxString ConvertToText(wxHtmlSelection*) const override { return words_ + " "; }

  private:
    wxString words_;
    checks::Status status_;
    drawing::Ground ground_;
    bool stale_;
};

/// A thin line across the page, on a line of its own.
class RuleCell : public wxHtmlCell {
  public:
    explicit RuleCell(drawing::Ground ground) : ground_(ground) { m_Height = 5; }
    void Draw(wxDC& dc, int x, int y, int, int, wxHtmlRenderingInfo&) override {
        dc.SetPen(wxPen(theme_of(ground_).ink, 1));
        dc.DrawLine(x + m_PosX, y + m_PosY + 2, x + m_PosX + m_Width, y + m_PosY + 2);
    }
    void Layout(int width) override {
        m_Width = width;
        wxHtmlCell::Layout(width);
    }
    wxString ConvertToText(wxHtmlSelection*) const override { return {}; }

  private:
    drawing::Ground ground_;
};

class NotesTags : public wxHtmlWinTagHandler {
  public:
    explicit NotesTags(std::function<void(int)> apply) : apply_(std::move(apply)) {}
    wxString GetSupportedTags() override { return "MARK,RULE,APPLY"; }
    bool HandleTag(const wxHtmlTag& tag) override {
        if (tag.GetName() == "RULE") {
            add_rule(static_cast<drawing::Ground>(number(tag, "ground")));
        } else {
            m_WParser->GetContainer()->InsertCell(tag.GetName() == "MARK" ? mark(tag) : button(tag));
        }
        return false;
    }

  private:
    void add_rule(drawing::Ground ground) {
        m_WParser->CloseContainer();
        m_WParser->OpenContainer()->InsertCell(new RuleCell(ground));
        m_WParser->CloseContainer();
        m_WParser->OpenContainer();
    }
    wxHtmlCell* mark(const wxHtmlTag& tag) {
        const wxString words = tag.GetParam("words");
        wxFont font = m_WParser->GetWindowInterface()->GetHTMLWindow()->GetFont();
        m_WParser->GetDC()->SetFont(font.MakeBold());
        const wxSize size = m_WParser->GetDC()->GetTextExtent(words);
        m_WParser->GetDC()->SetFont(*m_WParser->CreateCurrentFont());
        return new MarkCell(words, static_cast<checks::Status>(number(tag, "status")),
                            static_cast<drawing::Ground>(number(tag, "ground")), number(tag, "out of date") != 0, size);
    }
    wxHtmlCell* button(const wxHtmlTag& tag) {
        const int index = number(tag, "index");
        wxWindow* page = m_WParser->GetWindowInterface()->GetHTMLWindow();
        auto* press = new wxButton(page, wxID_ANY, _("Apply"));
        press->SetName(wxString::Format("apply-remedy-%d", index));
        press->SetToolTip(_("Make this change. It can be undone."));
        const Theme theme = theme_of(static_cast<drawing::Ground>(number(tag, "ground")));
        press->SetBackgroundColour(theme.band);
        press->SetForegroundColour(theme.ink);
        press->Enable(number(tag, "enabled") != 0);
        press->Bind(wxEVT_BUTTON, [apply = apply_, index](wxCommandEvent&) { apply(index); });
        return new wxHtmlWidgetCell(press);
    }
    std::function<void(int)> apply_;
};

}  // namespace

void add_notes_tags(wxHtmlWindow& page, std::function<void(int)> apply) {
    page.GetParser()->AddTagHandler(new NotesTags(std::move(apply)));  // the parser owns it
}

}  // namespace toehold::window

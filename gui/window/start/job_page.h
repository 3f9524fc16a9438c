#pragma once
// The questions of a job with their answers, beside a plan of what they make and the list of what was assumed.
#include "editing/job/job_form.h"
#include "window/theme/theme.h"

#include <wx/panel.h>

#include <functional>
#include <vector>

class wxButton;
class wxControl;
class wxScrolledWindow;
class wxStaticText;

namespace toehold::window {

class FlowList;
class PictureChoice;
class ScenePane;

class JobPage : public wxPanel {
  public:
    /// What the page asks for once the answers make a detail.
    struct Asks {
        std::function<void(const job::Started&)> open;        ///< as it is
        std::function<void(const job::Started&)> find_sizes;  ///< and look for what holds at once
    };
    /// The catalog outlives the page.
    JobPage(wxWindow* parent, const catalog::Catalog& catalog, const Theme& theme, format::Locale locale, Asks asks);

    /// The keys go to the first question.
    void begin();

  private:
    /// A question's line: its control, and the words of refusal under it.
    struct Line {
        std::size_t question = 0;  ///< in the form's order
        wxControl* control = nullptr;
        wxStaticText* title = nullptr;
        wxStaticText* refusal = nullptr;
    };
    wxSizer* questions_side();
    wxSizer* preview_side();
    wxSizer* buttons();
    void add_place(wxSizer& column);
    void add_line(wxSizer& column, std::size_t question);
    void answered(std::size_t question, const wxString& words);
    void refresh();
    void refresh_lines();
    void refresh_places();
    int assumed_row(wxDC& dc, std::size_t row, const wxRect& area, bool paint) const;

    const catalog::Catalog& catalog_;
    Theme theme_;
    format::Locale locale_;
    Asks asks_;
    editing::JobForm form_;
    std::size_t place_question_ = 0;
    std::vector<Line> lines_;
    wxScrolledWindow* scrolled_ = nullptr;
    PictureChoice* places_ = nullptr;
    wxStaticText* place_words_ = nullptr;
    ScenePane* plan_ = nullptr;
    FlowList* assumed_ = nullptr;
    wxStaticText* assumed_title_ = nullptr;
    wxStaticText* why_not_ = nullptr;
    wxButton* open_ = nullptr;
    wxButton* find_ = nullptr;
};

}  // namespace toehold::window

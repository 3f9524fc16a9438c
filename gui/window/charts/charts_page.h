#pragma once
// Charts of the detail: ratios over one input, the inputs that matter most, what holds over two. A press on a point
// shows its detail, which can be taken or dropped.
#include "drawing/charts/chart.h"
#include "solving/studies.h"
#include "window/theme/theme.h"

#include <wx/panel.h>

#include <memory>
#include <vector>

class wxBoxSizer;
class wxChoice;
class wxStaticText;
class wxTextCtrl;

namespace toehold::session {
class Session;
}

namespace toehold::window {

class ChartPane;
class PreviewCard;
class ProgressLine;

class ChartsPage : public wxPanel {
  public:
    /// The session outlives the page.
    ChartsPage(wxWindow* parent, session::Session& session);
    ~ChartsPage() override;
    ChartsPage(const ChartsPage&) = delete;
    ChartsPage& operator=(const ChartsPage&) = delete;

    void apply_theme(const Theme& theme);
    /// The page has come into sight: what it has not drawn yet it draws.
    void shown();
    void receive(const solving::StudyNews& news);

  private:
    /// An input with the values it is to take.
    struct Axis {
        wxStaticText* title = nullptr;
        wxChoice* field = nullptr;
        wxTextCtrl* values = nullptr;
    };
    void add_controls(wxSizer& row);
    [[nodiscard]] Axis axis(wxSizer& row, const wxString& title, const wxString& name);
    void fill_fields();
    /// nullptr: the list is empty.
    [[nodiscard]] const study::Field* chosen(const Axis& axis) const;
    void suggest_values(Axis& axis) const;
    [[nodiscard]] std::string asked_of(const Axis& axis) const;
    void show_axes();
    void draw();
    void picked(const drawing::Spot& spot);
    void take(const model::BaseDetail& detail);
    void refresh_state();
    void stand();
    [[nodiscard]] bool fits() const;

    session::Session& session_;
    std::shared_ptr<ChartsPage*> alive_;  ///< news that come after the page has gone find nobody
    solving::Studies studies_;
    Theme theme_ = theme_of(drawing::Ground::paper);
    std::vector<study::Field> fields_;  ///< of the detail when the lists were filled
    std::shared_ptr<const catalog::Resolved> fields_of_;
    solving::StudyNews news_;  ///< the last, of the number asked for
    std::uint64_t number_ = 0;
    bool running_ = false;
    std::size_t details_ = 0;  ///< of the first part of what is drawn; what follows looks between them
    wxChoice* kind_ = nullptr;
    Axis across_, up_;
    wxStaticText* state_ = nullptr;
    ProgressLine* line_ = nullptr;
    ChartPane* pane_ = nullptr;
    wxStaticText* notes_ = nullptr;
    PreviewCard* card_ = nullptr;
    wxBoxSizer* sides_ = nullptr;
    int listening_ = 0;
};

}  // namespace toehold::window

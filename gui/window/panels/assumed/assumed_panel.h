#pragma once
// What nobody told when the detail was started from its job: each value with the reason it was taken, until the detail
// has another.
#include "job/job.h"
#include "session/session.h"
#include "window/theme/theme.h"

#include <wx/panel.h>

#include <functional>
#include <string>
#include <vector>

class wxStaticText;

namespace toehold::window {

class FlowList;

class AssumedPanel : public wxPanel {
  public:
    /// `show_field` is asked to bring a field of the properties into sight.
    AssumedPanel(wxWindow* parent, session::Session& session, job::Started started,
                 std::function<void(const std::string& path)> show_field);
    ~AssumedPanel() override;
    AssumedPanel(const AssumedPanel&) = delete;
    AssumedPanel& operator=(const AssumedPanel&) = delete;

    void apply_theme(const Theme& theme);

  private:
    void refresh();
    int draw_row(wxDC& dc, std::size_t row, const wxRect& area, bool paint) const;

    session::Session& session_;
    job::Started started_;
    std::vector<bool> still_;
    Theme theme_ = theme_of(drawing::Ground::paper);
    wxStaticText* head_ = nullptr;
    FlowList* list_ = nullptr;
    int listening_ = 0;
};

}  // namespace toehold::window

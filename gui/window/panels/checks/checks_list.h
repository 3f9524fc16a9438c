#pragma once
// The list of checks as a control: rows of panels/check_rows.h painted as panels/check_painting.h says, reached by
// keyboard and pointer. It knows no session; the panel around it does.
#include "review/review.h"
#include "window/panels/checks/check_painting.h"

#include <wx/vlbox.h>

#include <functional>

namespace toehold::window {

class ChecksList : public wxVListBox {
  public:
    /// What the list asks of the panel around it.
    struct Asks {
        std::function<void()> moved;                     ///< another row is the current one
        std::function<void(std::size_t)> open_or_close;  ///< of a result
        std::function<void()> copy;
    };
    ChecksList(wxWindow* parent, Asks asks);

    /// `results` must outlive the next call; nullptr: only messages are among the rows.
    void show(std::vector<CheckRow> rows, const std::vector<checks::CheckResult>* results);
    void set_style(const RowStyle& style);
    /// Whether a result is open, and whether it is about what is selected: asked while painting.
    std::function<bool(std::size_t)> is_open;
    std::function<bool(const CheckRow&)> is_marked;

    [[nodiscard]] const std::vector<CheckRow>& shown() const { return rows_; }
    /// The current row; nullptr: none.
    [[nodiscard]] const CheckRow* current() const;
    /// Makes a row the current one and scrolls it into sight, its lines too as far as there is room.
    void go_to(int row);

  protected:
    void OnDrawItem(wxDC& dc, const wxRect& rect, std::size_t row) const override;
    void OnDrawBackground(wxDC& dc, const wxRect& rect, std::size_t row) const override;
    void OnDrawSeparator(wxDC& dc, wxRect& rect, std::size_t row) const override;
    wxCoord OnMeasureItem(std::size_t row) const override;

  private:
    [[nodiscard]] const checks::CheckResult* result_of(const CheckRow& row) const;
    [[nodiscard]] RowStyle style_of(const CheckRow& row) const;
    void on_key(wxKeyEvent& event);
    void on_press(wxMouseEvent& event);
    void to_the_left();
    void to_the_right();

    Asks asks_;
    std::vector<CheckRow> rows_;
    const std::vector<checks::CheckResult>* results_ = nullptr;
    RowStyle style_;
    mutable std::vector<int> heights_;  ///< measured so far at `measured_width_`; 0: not yet
    mutable int measured_width_ = 0;
};

}  // namespace toehold::window

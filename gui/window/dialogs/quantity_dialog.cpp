#include "window/dialogs/quantity_dialog.h"

#include "editing/fields.h"
#include "window/text.h"
#include "window/theme/theme.h"

#include <wx/button.h>
#include <wx/choice.h>
#include <wx/dialog.h>
#include <wx/sizer.h>
#include <wx/stattext.h>
#include <wx/textctrl.h>

#include <cmath>

namespace toehold::window {

namespace {

constexpr int most_count = 99;

class QuantityDialog : public wxDialog {
  public:
    QuantityDialog(wxWindow* parent, const wxString& title, const std::vector<Row>& rows, units::System system)
        : wxDialog(parent, wxID_ANY, title), rows_(rows), system_(system) {
        auto* grid = new wxFlexGridSizer(2, wxSize(FromDIP(gap::wide), FromDIP(gap::normal)));
        grid->AddGrowableCol(1);
        for (const Row& row : rows_) add(*grid, row);
        refusal_ = new wxStaticText(this, wxID_ANY, "");
        refusal_->SetName("refusal");
        auto* page = new wxBoxSizer(wxVERTICAL);
        page->Add(grid, wxSizerFlags().Expand().Border(wxALL, FromDIP(gap::wide)));
        page->Add(refusal_, wxSizerFlags().Expand().Border(wxLEFT | wxRIGHT, FromDIP(gap::wide)));
        page->Add(CreateButtonSizer(wxOK | wxCANCEL), wxSizerFlags().Expand().Border(wxALL, FromDIP(gap::wide)));
        SetSizerAndFit(page);
        SetName("quantities");
        Bind(
            wxEVT_BUTTON, [this](wxCommandEvent&) { finish(); }, wxID_OK);
        // The toolkit takes the focus of a choice away again while the dialog is being shown.
        CallAfter([this] { fields_.front()->SetFocus(); });
    }

    [[nodiscard]] const std::vector<double>& values() const { return values_; }

  private:
    void add(wxSizer& grid, const Row& row) {
        grid.Add(new wxStaticText(this, wxID_ANY, row.label), wxSizerFlags().CenterVertical());
        wxControl* field = nullptr;
        if (row.kind == Row::Kind::choice) {
            auto* choice = new wxChoice(this, wxID_ANY);
            for (const wxString& words : row.choices) choice->Append(words);
            choice->SetSelection(static_cast<int>(row.start));
            field = choice;
        } else {
            const wxString text = row.kind == Row::Kind::count
                                      ? wxString::Format("%d", static_cast<int>(row.start))
                                      : text_of(editing::shown(row.start, row.quantity, system_));
            field = new wxTextCtrl(this, wxID_ANY, text);
        }
        field->SetName(wxString::Format("value-%zu", fields_.size()));
        grid.Add(field, wxSizerFlags().Expand());
        fields_.push_back(field);
    }

    [[nodiscard]] std::optional<double> value(std::size_t number) const {
        const Row& row = rows_[number];
        if (row.kind == Row::Kind::choice) return static_cast<wxChoice*>(fields_[number])->GetSelection();
        const std::string text = utf8(static_cast<wxTextCtrl*>(fields_[number])->GetValue());
        if (row.kind == Row::Kind::quantity) return editing::typed(text, row.quantity, system_);
        const std::optional<double> count = units::parse_number(text);
        if (!count || *count != std::floor(*count) || *count < row.least || *count > most_count) return std::nullopt;
        return count;
    }

    [[nodiscard]] wxString accepted(const Row& row) const {
        if (row.kind == Row::Kind::count) {
            return wxString::Format(_("Enter a whole number from %d to %d."), row.least, most_count);
        }
        return wxString::Format(_("Not readable. Enter %s."), text_of(units::accepted(row.quantity)));
    }

    void finish() {
        values_.clear();
        for (std::size_t number = 0; number < rows_.size(); ++number) {
            const std::optional<double> read = value(number);
            if (!read) {
                refusal_->SetLabel(accepted(rows_[number]));
                refusal_->Wrap(FromDIP(320));
                GetSizer()->Fit(this);
                fields_[number]->SetFocus();
                return;
            }
            values_.push_back(*read);
        }
        EndModal(wxID_OK);
    }

    std::vector<Row> rows_;
    units::System system_;
    std::vector<wxControl*> fields_;
    wxStaticText* refusal_ = nullptr;
    std::vector<double> values_;
};

}  // namespace

std::optional<std::vector<double>> ask_quantities(wxWindow* parent, const wxString& title, const std::vector<Row>& rows,
                                                  units::System system) {
    QuantityDialog dialog(parent, title, rows, system);
    dialog.CentreOnParent();
    if (dialog.ShowModal() != wxID_OK) return std::nullopt;
    return dialog.values();
}

}  // namespace toehold::window

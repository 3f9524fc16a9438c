#include "window/dialogs/plate_list.h"

#include "drawing/render/painter.h"
#include "model/placement.h"
#include "units/quantity.h"
#include "window/frame/application.h"
#include "window/text.h"

#include <wx/dc.h>
#include <wx/dialog.h>
#include <wx/graphics.h>
#include <wx/sizer.h>
#include <wx/translation.h>

#include <algorithm>
#include <memory>

namespace toehold::window {

namespace {

constexpr int row_height = 84;  // DIP

drawing::Place place(const model::Position& at) { return {{at.x_in, at.y_in}, {}}; }

/// The bare plate: outline and holes.
drawing::Scene plate_scene(const model::Plate& plate) {
    drawing::Scene scene;
    drawing::Path outline;
    outline.closed = true;
    outline.pen = drawing::Pen::outline;
    outline.fill = drawing::Fill::plate;
    outline.contours.emplace_back();
    scene.bounds = {{1e9, 1e9}, {-1e9, -1e9}};
    for (const model::Position& corner : model::polygon(plate.outline)) {
        outline.contours.front().push_back(place(corner));
        scene.bounds.low = {std::min(scene.bounds.low.x, corner.x_in), std::min(scene.bounds.low.y, corner.y_in)};
        scene.bounds.high = {std::max(scene.bounds.high.x, corner.x_in), std::max(scene.bounds.high.y, corner.y_in)};
    }
    scene.items.emplace_back(std::move(outline));
    for (const model::Hole& hole : plate.holes) {
        const auto* round = std::get_if<model::RoundHole>(&hole.shape);
        drawing::Circle circle;
        circle.center = place(hole.center);
        circle.radius_in = 0.5 * (round != nullptr ? round->diameter_in : std::get<model::Slot>(hole.shape).width_in);
        circle.fill = drawing::Fill::paper;
        circle.pen = drawing::Pen::thin;
        scene.items.emplace_back(circle);
    }
    return scene;
}

double longest_side(const model::Plate& plate) {
    const drawing::Box box = plate_scene(plate).bounds;
    return std::max(box.high.x - box.low.x, box.high.y - box.low.y);
}

class PlateDialog : public wxDialog {
  public:
    PlateDialog(wxWindow* parent, const Application& application)
        : wxDialog(parent, wxID_ANY, _("Stock plates"), wxDefaultPosition, wxDefaultSize,
                   wxDEFAULT_DIALOG_STYLE | wxRESIZE_BORDER) {
        SetName("plate-dialog");
        list_ = new PlateList(this, application.catalog(), application.theme());
        list_->Bind(wxEVT_LISTBOX_DCLICK, [this](wxCommandEvent&) { EndModal(wxID_OK); });
        auto* column = new wxBoxSizer(wxVERTICAL);
        column->Add(list_, wxSizerFlags(1).Expand().Border(wxALL, FromDIP(gap::wide)));
        column->Add(CreateButtonSizer(wxOK | wxCANCEL), wxSizerFlags().Expand().Border(wxALL, FromDIP(gap::normal)));
        SetSizerAndFit(column);
        list_->SetFocus();
    }
    [[nodiscard]] const model::Plate* chosen() const { return list_->chosen(); }

  private:
    PlateList* list_ = nullptr;
};

}  // namespace

PlateList::PlateList(wxWindow* parent, const catalog::Catalog& catalog, const Theme& theme)
    : plates_(catalog.stock_plates), catalog_(catalog), theme_(theme) {
    for (const model::Plate& plate : plates_) largest_in_ = std::max(largest_in_, longest_side(plate));
    Create(parent, wxID_ANY, wxDefaultPosition, wxDefaultSize, wxBORDER_SIMPLE);
    SetName("plates");
    SetBackgroundColour(theme_.paper);
    SetMinSize(FromDIP(wxSize(460, 4 * row_height)));
    SetItemCount(plates_.size());
    if (!plates_.empty()) SetSelection(0);
}

const model::Plate* PlateList::chosen() const {
    const int number = GetSelection();
    return number == wxNOT_FOUND ? nullptr : &plates_[static_cast<std::size_t>(number)];
}

wxCoord PlateList::OnMeasureItem(std::size_t /*number*/) const { return FromDIP(row_height); }

void PlateList::OnDrawBackground(wxDC& dc, const wxRect& area, std::size_t number) const {
    dc.SetPen(*wxTRANSPARENT_PEN);
    dc.SetBrush(wxBrush(theme_.paper));
    dc.DrawRectangle(area);
    if (IsSelected(number)) {
        dc.SetBrush(wxBrush(mixed(theme_.ink, theme_.paper, 0.08)));
        dc.SetPen(wxPen(theme_.ink));
        dc.DrawRectangle(wxRect(area).Deflate(FromDIP(2)));
    }
    dc.SetPen(wxPen(theme_.line));
    dc.DrawLine(area.GetBottomLeft(), area.GetBottomRight());
}

void PlateList::draw_plate(wxDC& dc, const wxRect& area, const model::Plate& plate) const {
    const std::unique_ptr<wxGraphicsContext> context(wxGraphicsContext::CreateFromUnknownDC(dc));
    if (!context) return;
    const drawing::Scene scene = plate_scene(plate);
    drawing::View view;
    view.center_in = {0.5 * (scene.bounds.low.x + scene.bounds.high.x),
                      0.5 * (scene.bounds.low.y + scene.bounds.high.y)};
    view.center = {area.x + 0.5 * area.width, area.y + 0.5 * area.height};
    view.units_per_in = (area.height - FromDIP(gap::wide)) / largest_in_;
    drawing::paint(static_cast<cairo_t*>(context->GetNativeContext()), scene, view, theme_.ground);
}

void PlateList::OnDrawItem(wxDC& dc, const wxRect& area, std::size_t number) const {
    const model::Plate& plate = plates_[number];
    const int side = area.height;
    draw_plate(dc, wxRect(area.x + FromDIP(gap::small), area.y, side, side), plate);
    const catalog::Metal* metal = catalog::find(catalog_.metals, plate.metal);
    const int left = area.x + side + FromDIP(20);
    dc.SetTextForeground(theme_.ink);
    dc.SetFont(lettering(points::lead, true));
    dc.DrawText(text_of(plate.name), left, area.y + FromDIP(gap::wide));
    dc.SetFont(lettering(points::body));
    dc.SetTextForeground(theme_.faded);
    dc.DrawText(wxString::Format(_("%s thick, %s, %zu holes"), text_of(units::fraction_in(plate.thickness_in)),
                                 text_of(metal != nullptr ? metal->name : plate.metal), plate.holes.size()),
                left, area.y + FromDIP(36));
    dc.DrawText(text_of(plate.id), left, area.y + FromDIP(54));
}

std::optional<model::Plate> ask_stock_plate(wxWindow* parent, const Application& application) {
    PlateDialog dialog(parent, application);
    dialog.CentreOnParent();
    if (dialog.ShowModal() != wxID_OK || dialog.chosen() == nullptr) return std::nullopt;
    return *dialog.chosen();
}

}  // namespace toehold::window

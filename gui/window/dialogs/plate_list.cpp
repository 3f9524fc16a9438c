#include "window/dialogs/plate_list.h"

#include "drawing/render/painter.h"
#include "model/placement.h"
#include "units/quantity.h"
#include "window/paths.h"

#include <wx/dc.h>
#include <wx/graphics.h>
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

}  // namespace

PlateList::PlateList(wxWindow* parent, const catalog::Catalog& catalog, drawing::Ground ground)
    : plates_(catalog.stock_plates), catalog_(catalog), look_(look(ground)) {
    for (const model::Plate& plate : plates_) largest_in_ = std::max(largest_in_, longest_side(plate));
    Create(parent, wxID_ANY, wxDefaultPosition, wxDefaultSize, wxBORDER_SIMPLE);
    SetName("plates");
    SetBackgroundColour(look_.paper);
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
    dc.SetBrush(wxBrush(look_.paper));
    dc.DrawRectangle(area);
    if (IsSelected(number)) {
        dc.SetBrush(wxBrush(mixed(look_.ink, look_.paper, 0.08)));
        dc.SetPen(wxPen(look_.ink));
        dc.DrawRectangle(wxRect(area).Deflate(FromDIP(2)));
    }
    dc.SetPen(wxPen(look_.line));
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
    view.units_per_in = (area.height - FromDIP(14)) / largest_in_;
    drawing::paint(static_cast<cairo_t*>(context->GetNativeContext()), scene, view, look_.ground);
}

void PlateList::OnDrawItem(wxDC& dc, const wxRect& area, std::size_t number) const {
    const model::Plate& plate = plates_[number];
    const int side = area.height;
    draw_plate(dc, wxRect(area.x + FromDIP(6), area.y, side, side), plate);
    const catalog::Metal* metal = catalog::find(catalog_.metals, plate.metal);
    const int left = area.x + side + FromDIP(20);
    dc.SetTextForeground(look_.ink);
    dc.SetFont(lettering(10.5, true));
    dc.DrawText(shown_text(plate.name), left, area.y + FromDIP(14));
    dc.SetFont(lettering(9.0));
    dc.SetTextForeground(look_.faded);
    dc.DrawText(wxString::Format(_("%s thick, %s, %zu holes"), shown_text(units::fraction_in(plate.thickness_in)),
                                 shown_text(metal != nullptr ? metal->name : plate.metal), plate.holes.size()),
                left, area.y + FromDIP(36));
    dc.DrawText(shown_text(plate.id), left, area.y + FromDIP(54));
}

}  // namespace toehold::window

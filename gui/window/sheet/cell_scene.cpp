#include "window/sheet/cell_scene.h"

#include "drawing/annotation/overlay.h"
#include "editing/hand_tools.h"
#include "editing/sheet_words.h"
#include "format/figures.h"
#include "format/phrase.h"
#include "session/session.h"
#include "window/sheet/lettering.h"
#include "window/sheet/readout.h"
#include "window/text.h"

#include <wx/intl.h>
#include <wx/string.h>

#include <algorithm>
#include <cmath>

namespace toehold::window {

using drawing::Scene;

namespace {

constexpr double heavy_mm = 3.5;  ///< length of the heavy end
constexpr double arrow_mm = 4.0;  ///< from the line, the way one looks
constexpr double head_mm = 1.4;

drawing::Path section_line(drawing::Place from, drawing::Place to, drawing::Pen pen) {
    drawing::Path path;
    path.contours = {{from, to}};
    path.pen = pen;
    return path;
}

drawing::Point sum(drawing::Point a, drawing::Point b, double times) { return {a.x + times * b.x, a.y + times * b.y}; }

/// One end of the mark: `out` leads away from the plan, `look` the way the section is seen; unit vectors of paper.
void mark_end(Scene& plan, drawing::Point at, drawing::Point out, drawing::Point look) {
    const drawing::Place end{at, sum({}, out, heavy_mm)};
    plan.items.emplace_back(section_line({at, {}}, end, drawing::Pen::cut));
    const drawing::Point tip = sum(end.paper_mm, look, arrow_mm);
    plan.items.emplace_back(section_line(end, {at, tip}, drawing::Pen::outline));
    drawing::Path head;
    const drawing::Point back = sum(tip, look, -2 * head_mm);
    head.contours = {{{at, tip}, {at, sum(back, out, head_mm * 0.6)}, {at, sum(back, out, -head_mm * 0.6)}}};
    head.closed = true;
    head.pen = drawing::Pen::outline;
    plan.items.emplace_back(head);
    drawing::Text letter;
    letter.at = {at, sum(tip, look, 2.0)};
    letter.words = "A";
    letter.bold = true;
    letter.across = drawing::Across::middle;
    letter.upright = drawing::Upright::middle;
    letter.on_paper = true;
    plan.items.emplace_back(letter);
}

/// Where the section is cut: a chain line heavy at its ends, which pass the plan's bounds, arrows the way one looks,
/// letters A.
void mark_section(Scene& plan, const drawing::SectionPlane& plane) {
    // A section that shows y to the right is seen from +x, one that shows x to the right from -y.
    const bool along_y = plane.along == model::PlanAxis::y;
    const drawing::Point out = along_y ? drawing::Point{0, 1} : drawing::Point{1, 0};
    const drawing::Point look = along_y ? drawing::Point{-1, 0} : drawing::Point{0, 1};
    const drawing::Point low =
        along_y ? drawing::Point{plane.at_in, plan.bounds.low.y} : drawing::Point{plan.bounds.low.x, plane.at_in};
    const drawing::Point high =
        along_y ? drawing::Point{plane.at_in, plan.bounds.high.y} : drawing::Point{plan.bounds.high.x, plane.at_in};
    plan.items.emplace_back(section_line({low, {}}, {high, {}}, drawing::Pen::center));
    mark_end(plan, low, {-out.x, -out.y}, look);
    mark_end(plan, high, out, look);
}

Scene plan_scene(const session::Session& session, const drawing::Subject& subject, const Wishes& wishes) {
    drawing::PlanOptions options;
    options.dimensions = session.display().dimensions;
    options.framing = session.display().framing;
    options.measured = wishes.measured;
    auto scene = drawing::plan(subject, options);
    mark_section(scene, wishes.plane);
    return scene;
}

Scene rose_scene(const session::Session& session, const drawing::Overlay& overlay) {
    const auto& selection = session.selection();
    const auto anchor = std::find_if(selection.begin(), selection.end(),
                                     [](const model::PartId& part) { return part.kind == model::PartKind::anchor; });
    return drawing::polar_envelope(session.polar_curves(), overlay,
                                   anchor == selection.end() ? model::PartId{} : *anchor);
}

/// Two significant figures for what is no whole number, as scales are read.
std::string scale_figure(double ratio) {
    return format::number_text(ratio >= 10 ? std::round(ratio) : std::round(ratio * 10) / 10);
}

std::string rose_scale(const session::Session& session) {
    if (session.display().method == drawing::Method::hand)
        return format::text(editing::sheet_words(session.detail()).by_hand, session.locale());
    double largest = 0.0;
    for (const auto& curve : session.polar_curves())
        for (const double tension : curve.tension_lb) largest = std::max(largest, tension);
    if (largest <= 0.0) return utf8(_("no tension yet"));
    return format::text(format::phrase("outer circle {}", format::Quantity{largest, "lb"}), session.locale());
}

}  // namespace

Scene cell_scene(CellKind kind, const session::Session& session, const drawing::Overlay& overlay,
                 const Wishes& wishes) {
    const drawing::Subject subject{session.detail(), session.resolved(), &overlay, session.locale()};
    switch (kind) {
        case CellKind::plan:
            return plan_scene(session, subject, wishes);
        case CellKind::section:
            return drawing::section(subject, wishes.plane);
        case CellKind::elevation:
            return drawing::elevation(subject);
        case CellKind::rose:
            return rose_scene(session, overlay);
    }
    return {};
}

std::string cell_title(CellKind kind, const session::Session& session, const Wishes& wishes) {
    const auto titled = [&session](editing::Sheet sheet) {
        return format::text(editing::sheet_title(session.detail(), sheet), session.locale());
    };
    switch (kind) {
        case CellKind::plan:
            return titled(editing::Sheet::plan);
        case CellKind::section: {
            const char* axis = wishes.plane.along == model::PlanAxis::y ? "x = " : "y = ";
            const auto at = readout(wishes.plane.at_in, session.display().system);
            return titled(editing::Sheet::section) + "  " + axis + at;
        }
        case CellKind::elevation:
            return titled(editing::Sheet::elevation);
        case CellKind::rose:
            return format::text(editing::sheet_words(session.detail()).rose, session.locale());
    }
    return {};
}

std::string cell_scale(CellKind kind, const session::Session& session, const drawing::View& view) {
    if (kind == CellKind::rose) return rose_scale(session);
    const double paper_per_thing = view.units_per_in / (25.4 * view.units_per_mm);
    return utf8(paper_per_thing >= 1 ? wxString::Format(_("SCALE %s : 1"), scale_figure(paper_per_thing))
                                     : wxString::Format(_("SCALE 1 : %s"), scale_figure(1 / paper_per_thing)));
}

Scene title_scene(const std::string& title, const std::string& scale, double width, double height) {
    using drawing::TextSize;
    constexpr double left = 2.5, rest = 3.0;
    const double room = width - 2 * left;
    Scene scene;
    scene.name = title;
    // Title and scale share a line: the title lettered large with a heavy rule under it, the scale small at its right.
    const double line = height * 0.32;
    auto head = letters({left, line + 0.9}, fitted(title, TextSize::normal, room), TextSize::normal);
    head.bold = true;
    const double head_width = std::min(room, width_mm(head.words, TextSize::normal) * 1.12);
    const double left_over = room - head_width - rest;
    scene.items.emplace_back(head);
    scene.items.emplace_back(rule({left, line}, {left + head_width, line}, drawing::Pen::outline));
    if (left_over > 12)
        scene.items.emplace_back(letters({left + head_width + rest, line + 0.9},
                                         fitted(scale, TextSize::small, left_over), TextSize::small));
    return scene;
}

}  // namespace toehold::window

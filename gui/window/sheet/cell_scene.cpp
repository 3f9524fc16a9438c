#include "window/sheet/cell_scene.h"

#include "drawing/parts.h"
#include "format/figures.h"
#include "window/sheet/lettering.h"
#include "window/sheet/readout.h"
#include "window/sheet/section_mark.h"
#include "window/utf8.h"

#include <wx/intl.h>
#include <wx/string.h>

#include <algorithm>
#include <cmath>

namespace toehold::window {

using drawing::Scene;

namespace {

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
                                     [](const std::string& part) { return !drawing::id_of(part, "anchor").empty(); });
    return drawing::polar_envelope(session.petals(), overlay, anchor == selection.end() ? std::string{} : *anchor);
}

/// Two significant figures for what is no whole number, as scales are read.
std::string scale_figure(double ratio) {
    return format::number_text(ratio >= 10 ? std::round(ratio) : std::round(ratio * 10) / 10);
}

std::string rose_scale(const session::Session& session) {
    if (session.display().method == drawing::Method::hand) return utf8(_("by hand: square pushes only"));
    double largest = 0.0;
    for (const auto& petal : session.petals())
        for (const double tension : petal.tension_lb) largest = std::max(largest, tension);
    if (largest <= 0.0) return utf8(_("no tension yet"));
    return utf8(_("outer circle ")) + format::figure_text(largest, "lb", session.display().system);
}

}  // namespace

Scene cell_scene(CellKind kind, const session::Session& session, const drawing::Overlay& overlay,
                 const Wishes& wishes) {
    const drawing::Subject subject{session.detail(), session.resolved(), &overlay, session.display().system};
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
    switch (kind) {
        case CellKind::plan:
            return utf8(_("PLAN"));
        case CellKind::section: {
            const char* axis = wishes.plane.along == model::PlanAxis::y ? "x = " : "y = ";
            const auto at = readout(wishes.plane.at_in, session.display().system);
            return utf8(_("SECTION A-A")) + "  " + axis + at;
        }
        case CellKind::elevation:
            return utf8(_("ELEVATION"));
        case CellKind::rose:
            return utf8(_("UPLIFT ROSE"));
    }
    return {};
}

std::string cell_scale(CellKind kind, const session::Session& session, const drawing::View& view) {
    if (kind == CellKind::rose) return rose_scale(session);
    const double paper_per_thing = view.units_per_in / (25.4 * view.units_per_mm);
    return utf8(_("SCALE ")) +
           (paper_per_thing >= 1 ? scale_figure(paper_per_thing) + " : 1" : "1 : " + scale_figure(1 / paper_per_thing));
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

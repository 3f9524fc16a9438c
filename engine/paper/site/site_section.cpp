#include "drawing/annotation/labels.h"
#include "drawing/annotation/symbols.h"
#include "drawing/scene/shapes.h"
#include "drawing/section/sheet.h"
#include "paper/site/extent.h"
#include "paper/site/side/side_drawings.h"
#include "paper/site/site_drawings.h"
#include "paper/site/tape_chain.h"
#include "paper/site/wording.h"
#include "paper/words.h"

#include <algorithm>
#include <utility>

namespace toehold::paper::site {
namespace {

using drawing::Fill;
using drawing::Pen;
using drawing::Point;
using drawing::Scene;
using drawing::SectionSheet;

drawing::SectionPlane plane_of(const SiteSubject& subject) {
    const auto& holes = on_deck(subject.resolved.detail).plate.holes;
    return drawing::section_plane(subject.resolved.detail,
                                  holes.empty() ? model::PartId() : model::anchor_part(holes.front().id));
}

/// A short stub of the post, since the drawing is about what is below.
SectionSheet sheet_of(const drawing::Subject& drawn, const SiteSubject& subject) {
    constexpr double stub_in = 1.6;
    SectionSheet sheet = drawing::section_sheet(drawn, plane_of(subject));
    sheet.shown.high.y = std::min(sheet.shown.high.y, on_deck(subject.resolved.detail).plate.thickness_in + stub_in);
    return sheet;
}

Fill wood_fill(const drawing::Profile& one) {
    if (one.end_grain) return Fill::wood_end;
    return one.cut ? Fill::wood_cut : Fill::wood_side;
}

void add_framing(Scene& scene, const SectionSheet& sheet) {
    for (const drawing::Profile& one : sheet.framing)
        drawing::add_broken_rectangle(scene, one.box, sheet.shown, one.cut ? Pen::cut : Pen::holds, wood_fill(one),
                                      one.part);
}

struct Named {
    std::string words;
    model::PartId part;
    double at_in = 0.0;  ///< height
    double along_in = 0.0;
};

/// From the plate down.
std::vector<Named> layers(const SectionSheet& sheet, const format::Locale& locale) {
    using format::phrase;
    const model::BaseDetail& detail = sheet.subject.detail;
    const double inside_in = sheet.shown.low.x + 0.05 * drawing::width(sheet.shown);
    const auto figure = [&](double in) { return drawing::length_figure(in, locale.system); };
    std::vector<Named> named;
    if (!sheet.plate.empty())
        named.push_back({format::text(phrase("plate {}", figure(on_deck(detail).plate.thickness_in)), locale),
                         {model::PartKind::plate},
                         0.5 * on_deck(detail).plate.thickness_in,
                         sheet.plate.front().low_in});
    double top_in = 0.0;
    const auto add = [&](const format::Phrase& name, const model::PartId& part, double thickness_in) {
        named.push_back({format::text(name, locale), part, top_in - 0.5 * thickness_in, inside_in});
        top_in -= thickness_in;
    };
    if (const auto& decking = on_deck(detail).layers.decking)
        add(phrase("boards {}", figure(decking->thickness_in)), {model::PartKind::decking}, decking->thickness_in);
    for (std::size_t index = 0; index < on_deck(detail).layers.shims.size(); ++index) {
        const double thickness_in = on_deck(detail).layers.shims[index].thickness_in;
        add(phrase("shim {}: {}", index + 1, figure(thickness_in)), model::shim_part(index), thickness_in);
    }
    return named;
}

void add_layer_names(Scene& scene, const SectionSheet& sheet, const format::Locale& locale) {
    constexpr double line_mm = 4.4, off_mm = 1.6, first_mm = 5.0;
    double up_mm = first_mm;
    for (const Named& one : layers(sheet, locale)) {
        const drawing::Place end{{sheet.shown.low.x, 0.0}, {-off_mm, up_mm}};
        scene.items.emplace_back(
            drawing::line(end, drawing::standing({one.along_in, one.at_in}), Pen::holds, one.part));
        drawing::Text text;
        text.at = drawing::moved_mm(end, -0.8, 0.0);
        text.words = one.words;
        text.across = drawing::Across::right;
        text.upright = drawing::Upright::middle;
        text.part = one.part;
        scene.items.emplace_back(std::move(text));
        up_mm -= line_mm;
    }
}

/// Heights of one anchor: layers, and how far it reaches into the wood.
std::vector<drawing::DimensionEnd> reach(const SectionSheet& sheet, const drawing::CutHole& hole) {
    std::vector<double> heights = {0.0, -sheet.layers_in};
    if (hole.anchor != nullptr && hole.anchor->seat) {
        heights.push_back(-sheet.layers_in - hole.anchor->embedment_in);
    } else if (hole.anchor != nullptr) {
        heights.push_back(drawing::stations(sheet, *hole.anchor).tip_in);
    }
    std::vector<drawing::DimensionEnd> ends;
    for (const double height : drawing::distinct(std::move(heights))) ends.push_back({height, hole.at_in});
    return ends;
}

void add_reach(Scene& scene, const SectionSheet& sheet, double mm_per_in, units::System system) {
    if (sheet.holes.empty()) return;
    add_tape_chain(scene, {drawing::Measure::upright, true, sheet.shown.high.x, reach(sheet, sheet.holes.back())},
                   {1.2, mm_per_in, system});
}

/// Under each member that is cut; aside, or lower, where another's name stands already.
void add_names(Scene& scene, const SectionSheet& sheet, double mm_per_in) {
    Taken taken(mm_per_in);
    taken.take_texts(scene);
    for (const drawing::Profile& one : sheet.framing) {
        const drawing::Box shown = drawing::common(one.box, sheet.shown);
        if (!one.cut || !drawing::has_area(shown)) continue;
        drawing::Text text;
        text.words = one.member.id;
        text.bold = true;
        text.across = drawing::Across::middle;
        text.upright = drawing::Upright::top;
        text.on_paper = true;
        text.part = one.part;
        const Point foot{drawing::middle(shown).x, one.end_grain ? sheet.shown.low.y : shown.low.y};
        taken.add_where_free(scene, std::move(text),
                             {drawing::standing(foot, {0.0, -1.2}), drawing::standing(foot, {3.0, -1.2}),
                              drawing::standing(foot, {-3.0, -1.2}), drawing::standing(foot, {5.0, -1.2}),
                              drawing::standing(foot, {0.0, -5.2})});
    }
}

}  // namespace

Scene site_section(const SiteSubject& subject, double mm_per_in) {
    if (is_on_a_side(subject)) return joint_section(subject, mm_per_in);
    const drawing::Subject drawn{subject.resolved.detail, &subject.resolved, nullptr, subject.locale};
    const SectionSheet sheet = sheet_of(drawn, subject);
    Scene scene;
    scene.name = "Section";
    scene.bounds = sheet.shown;
    add_framing(scene, sheet);
    drawing::add_layers(scene, sheet);
    drawing::add_post_foot(scene, sheet);
    drawing::add_cut_plate(scene, sheet);
    drawing::add_anchors(scene, sheet);
    add_reach(scene, sheet, mm_per_in, subject.locale.system);
    add_layer_names(scene, sheet, subject.locale);
    add_names(scene, sheet, mm_per_in);
    return scene;
}

format::Phrase site_section_caption(const SiteSubject& subject) {
    using format::phrase;
    if (is_on_a_side(subject)) return phrase("Cut through the post; outward: right.");
    const drawing::Subject drawn{subject.resolved.detail, &subject.resolved, nullptr, subject.locale};
    const SectionSheet sheet = drawing::section_sheet(drawn, plane_of(subject));
    std::vector<std::string> ids;
    for (const drawing::CutHole& hole : sheet.holes) ids.push_back(hole.id);
    const bool outward = sheet.plane.along == model::PlanAxis::y;
    if (ids.empty())
        return outward ? phrase("Cut at the post; outward: right.") : phrase("Cut at the post, along the guard.");
    return outward ? phrase("Cut at {}; outward: right.", listed(ids))
                   : phrase("Cut at {}, along the guard.", listed(ids));
}

}  // namespace toehold::paper::site

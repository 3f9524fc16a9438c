#include "drawing/render/text.h"

#include "drawing/render/subscripts.h"
#include "drawing/scene/shapes.h"

#include <pango/pangocairo.h>
#include <numbers>

namespace toehold::drawing::render {
namespace {

constexpr const char* families = "DejaVu Sans, Sans";

}  // namespace

void ReleaseLayout::operator()(PangoLayout* layout) const { g_object_unref(layout); }

void keep_widths(PangoLayout* layout) {
    cairo_font_options_t* options = cairo_font_options_create();
    cairo_font_options_set_hint_metrics(options, CAIRO_HINT_METRICS_OFF);
    cairo_font_options_set_hint_style(options, CAIRO_HINT_STYLE_SLIGHT);
    cairo_font_options_set_antialias(options, CAIRO_ANTIALIAS_GRAY);
    PangoContext* context = pango_layout_get_context(layout);
    pango_cairo_context_set_font_options(context, options);
    // Whole units are pixels on a screen, but points on paper: letters would stand unevenly.
    pango_context_set_round_glyph_positions(context, FALSE);
    cairo_font_options_destroy(options);
}

void use_font(PangoLayout* layout, double height, bool bold) {
    PangoFontDescription* font = pango_font_description_new();
    pango_font_description_set_family_static(font, families);
    pango_font_description_set_weight(font, bold ? PANGO_WEIGHT_BOLD : PANGO_WEIGHT_NORMAL);
    pango_font_description_set_absolute_size(font, height * PANGO_SCALE);
    pango_layout_set_font_description(layout, font);
    pango_font_description_free(font);
}

void use_words(PangoLayout* layout, const std::string& words, bool math) {
    pango_layout_set_attributes(layout, nullptr);
    if (!math) {
        pango_layout_set_text(layout, words.c_str(), static_cast<int>(words.size()));
        return;
    }
    const std::string markup = math_markup(words);
    pango_layout_set_markup(layout, markup.c_str(), static_cast<int>(markup.size()));
}

namespace {

PangoAlignment alignment(Across across) {
    switch (across) {
        case Across::left:
            return PANGO_ALIGN_LEFT;
        case Across::middle:
            return PANGO_ALIGN_CENTER;
        case Across::right:
            return PANGO_ALIGN_RIGHT;
    }
    return PANGO_ALIGN_LEFT;
}

/// The box of the capitals in the layout's own units, and the step from the text's place to the layout's corner.
struct Setting {
    double width = 0.0, top = 0.0, bottom = 0.0;
    Point step;
};

Setting setting(PangoLayout* layout, const Canvas& canvas, const Text& text) {
    PangoRectangle logical{};
    pango_layout_get_extents(layout, nullptr, &logical);
    const double first = pango_units_to_double(pango_layout_get_baseline(layout));
    const int lines = pango_layout_get_line_count(layout);
    const double line = lines > 0 ? pango_units_to_double(logical.height) / lines : 0.0;
    Setting set;
    set.width = pango_units_to_double(logical.width);
    set.top = first - capital_height * units(canvas, text_height_mm(text.size));
    set.bottom = first + (lines - 1) * line;
    set.step.x = text.across == Across::left ? 0.0 : text.across == Across::middle ? -0.5 * set.width : -set.width;
    set.step.y = text.upright == Upright::top      ? -set.top
                 : text.upright == Upright::bottom ? -set.bottom
                                                   : -0.5 * (set.top + set.bottom);
    return set;
}

/// A patch of paper with round corners, a little larger than the capitals.
void lay_paper(const Canvas& canvas, const Setting& set) {
    const double around = units(canvas, 0.7);
    const double left = set.step.x - around, right = set.step.x + set.width + around;
    const double top = set.step.y + set.top - around, bottom = set.step.y + set.bottom + around;
    const double half_pi = std::numbers::pi / 2.0;
    cairo_new_path(canvas.cairo);
    cairo_arc(canvas.cairo, right - around, top + around, around, -half_pi, 0.0);
    cairo_arc(canvas.cairo, right - around, bottom - around, around, 0.0, half_pi);
    cairo_arc(canvas.cairo, left + around, bottom - around, around, half_pi, 2.0 * half_pi);
    cairo_arc(canvas.cairo, left + around, top + around, around, 2.0 * half_pi, 3.0 * half_pi);
    cairo_close_path(canvas.cairo);
    Colour colour = ground_colour(canvas.ground);
    colour.opacity = 0.88;
    use_colour(canvas, colour);
    cairo_fill(canvas.cairo);
}

}  // namespace

TextPainter::TextPainter(const Canvas& canvas) : canvas_(canvas), layout_(pango_cairo_create_layout(canvas.cairo)) {
    keep_widths(layout_.get());
}

double TextPainter::set_words(const Text& text) {
    use_font(layout_.get(), units(canvas_, text_height_mm(text.size)), text.bold);
    use_words(layout_.get(), text.words, text.math);
    PangoRectangle logical{};
    pango_layout_get_extents(layout_.get(), nullptr, &logical);
    return pango_units_to_double(logical.width) / canvas_.view.units_per_mm;
}

void TextPainter::paint(const Text& described) {
    const Point somewhere = to_surface(canvas_.view, described.at);
    if (!meet({somewhere, somewhere}, grown(canvas_.visible, units(canvas_, 150.0)))) return;
    const Text text = described.aside ? placed(described, set_words(described), canvas_.view) : described;
    const Point place = to_surface(canvas_.view, text.at);
    cairo_save(canvas_.cairo);
    cairo_translate(canvas_.cairo, place.x, place.y);
    cairo_rotate(canvas_.cairo, -text.angle_deg * std::numbers::pi / 180.0);
    pango_cairo_update_layout(canvas_.cairo, layout_.get());
    set_words(text);
    pango_layout_set_alignment(layout_.get(), alignment(text.across));
    const Setting set = setting(layout_.get(), canvas_, text);
    if (text.on_paper) lay_paper(canvas_, set);
    use_colour(canvas_, stroke(text.pen, canvas_.ground).colour);
    cairo_move_to(canvas_.cairo, set.step.x, set.step.y);
    pango_cairo_show_layout(canvas_.cairo, layout_.get());
    cairo_restore(canvas_.cairo);
}

}  // namespace toehold::drawing::render

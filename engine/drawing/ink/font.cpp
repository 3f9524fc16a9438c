#include "drawing/ink/font.h"

#include "drawing/ink/markup.h"

#include <pango/pangocairo.h>

namespace toehold::drawing::ink {
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

}  // namespace toehold::drawing::ink

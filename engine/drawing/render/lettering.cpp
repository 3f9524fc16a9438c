#include "drawing/render/lettering.h"

#include "drawing/render/palette.h"
#include "drawing/render/text.h"

#include <pango/pangocairo.h>

namespace toehold::drawing {
namespace {

/// Layout units for a millimetre: the text library rounds to 1/1024 of a unit, and hints as if a unit were a pixel.
constexpr double units_per_mm = 20.0;

/// Words set one after another with one font.
class Ruler {
  public:
    explicit Ruler(const Lettering& lettering) : math_(lettering.math) {
        PangoContext* context = pango_font_map_create_context(pango_cairo_font_map_get_default());
        layout_.reset(pango_layout_new(context));
        g_object_unref(context);
        render::keep_widths(layout_.get());
        render::use_font(layout_.get(), units_per_mm * text_height_mm(lettering.size), lettering.bold);
    }

    [[nodiscard]] double width_mm(const std::string& words) const {
        if (words.empty()) return 0.0;
        render::use_words(layout_.get(), words, math_);
        PangoRectangle logical{};
        pango_layout_get_extents(layout_.get(), nullptr, &logical);
        return pango_units_to_double(logical.width) / units_per_mm;
    }

  private:
    bool math_;
    render::Layout layout_;
};

bool continues_a_character(char byte) { return (static_cast<unsigned char>(byte) & 0xC0U) == 0x80U; }

/// How many bytes of a word fit, whole characters, at least one.
std::size_t fitting_bytes(const Ruler& ruler, const std::string& word, double width_mm) {
    std::size_t fits = 0;
    for (std::size_t end = 1; end <= word.size(); ++end) {
        if (end < word.size() && continues_a_character(word[end])) continue;
        if (fits > 0 && ruler.width_mm(word.substr(0, end)) > width_mm) break;
        fits = end;
    }
    return fits;
}

/// A word too wide for any line is cut; its last piece goes on as the line.
std::string cut_to_pieces(std::vector<std::string>& lines, const Ruler& ruler, std::string word, double width_mm) {
    while (ruler.width_mm(word) > width_mm) {
        const std::size_t bytes = fitting_bytes(ruler, word, width_mm);
        if (bytes == word.size()) break;
        lines.push_back(word.substr(0, bytes));
        word.erase(0, bytes);
    }
    return word;
}

void break_one(std::vector<std::string>& lines, const Ruler& ruler, const std::string& words, double width_mm) {
    if (ruler.width_mm(words) <= width_mm) {
        lines.push_back(words);
        return;
    }
    std::string line;
    for (std::size_t from = 0; from <= words.size();) {
        const std::size_t blank = std::min(words.find(' ', from), words.size());
        std::string word = words.substr(from, blank - from);
        from = blank + 1;
        std::string longer = line;
        longer += line.empty() ? "" : " ";
        longer += word;
        if (ruler.width_mm(longer) <= width_mm) {
            line = std::move(longer);
            continue;
        }
        if (!line.empty()) lines.push_back(std::move(line));
        line = cut_to_pieces(lines, ruler, std::move(word), width_mm);
    }
    lines.push_back(std::move(line));
}

}  // namespace

double text_width_mm(const std::string& words, const Lettering& lettering) { return Ruler(lettering).width_mm(words); }

std::vector<std::string> broken_into_lines(const std::string& words, double width_mm, const Lettering& lettering) {
    const Ruler ruler(lettering);
    std::vector<std::string> lines;
    for (std::size_t from = 0; from <= words.size();) {
        const std::size_t feed = std::min(words.find('\n', from), words.size());
        break_one(lines, ruler, words.substr(from, feed - from), width_mm);
        from = feed + 1;
    }
    return lines;
}

double capitals_mm(TextSize size) { return render::capital_height * text_height_mm(size); }

double line_spacing_mm(TextSize size) {
    constexpr double spacing = 1.32;  // of the font's height: a little open, for figures
    return spacing * text_height_mm(size);
}

}  // namespace toehold::drawing

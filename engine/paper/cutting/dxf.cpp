#include "paper/cutting/dxf.h"

#include <fmt/format.h>

namespace toehold::paper::dxf {
namespace {

/// Group codes of the format.
enum Code {
    start = 0,
    text_value = 1,
    name = 2,
    style_name = 7,
    layer_name = 8,
    variable = 9,
    x = 10,
    second_x = 11,
    size = 40,
    bulge_value = 42,
    color = 62,
    vertices_follow = 66,
    flags = 70,
    across_flag = 72,
    upright_flag = 73,
    comment = 999
};

class Tags {
  public:
    explicit Tags(int decimals) : decimals_(decimals) {}
    void add(int code, std::string_view words) { text_ += fmt::format("{:>3}\r\n{}\r\n", code, words); }
    void add(int code, int number) { add(code, std::to_string(number)); }
    void add(int code, double number) { add(code, figure(number)); }
    /// A point's three coordinates, ten codes apart.
    void add(int code, drawing::Point at) {
        constexpr int step = 10;
        add(code, at.x);
        add(code + step, at.y);
        add(code + 2 * step, 0.0);
    }
    [[nodiscard]] std::string text() && { return std::move(text_); }

  private:
    /// Never `-0`.
    [[nodiscard]] std::string figure(double number) const {
        std::string words = fmt::format("{:.{}f}", number, decimals_);
        if (words.front() == '-' && words.find_first_of("123456789") == std::string::npos) words.erase(0, 1);
        return words;
    }
    int decimals_;
    std::string text_;
};

constexpr unsigned not_a_character = 0xFFFD;

/// One character of UTF-8 from `index` on, which it moves past; a broken one is the sign for that.
unsigned next_character(std::string_view utf8, std::size_t& index) {
    const auto byte = [&](std::size_t at) { return static_cast<unsigned>(static_cast<unsigned char>(utf8[at])); };
    const unsigned first = byte(index++);
    if (first < 0x80U) return first;
    const int more = first >= 0xF0U ? 3 : first >= 0xE0U ? 2 : first >= 0xC0U ? 1 : 0;
    if (more == 0) return not_a_character;
    unsigned character = first & (0x3FU >> static_cast<unsigned>(more));
    for (int count = 0; count < more; ++count, ++index) {
        if (index >= utf8.size() || (byte(index) & 0xC0U) != 0x80U) return not_a_character;
        character = (character << 6U) | (byte(index) & 0x3FU);
    }
    return character;
}

/// On one line of ASCII; a character beyond it as `\U+` and its number, and two `%` apart, for together they open a
/// code.
std::string in_ascii(std::string_view utf8) {
    constexpr unsigned blank = 0x20, last = 0x7E, four_digits = 0xFFFF;
    std::string ascii;
    for (std::size_t index = 0; index < utf8.size();) {
        const unsigned character = next_character(utf8, index);
        if (character < blank || character == last + 1) {
            ascii += ' ';
        } else if (character == '%' && ascii.ends_with('%')) {
            ascii += " %";
        } else if (character <= last) {
            ascii += static_cast<char>(character);
        } else {
            ascii += fmt::format("\\U+{:04X}", character <= four_digits ? character : not_a_character);
        }
    }
    return ascii;
}

void add_header(Tags& tags, const Drawing& drawing) {
    tags.add(start, "SECTION");
    tags.add(name, "HEADER");
    tags.add(variable, "$ACADVER");
    tags.add(text_value, "AC1009");
    tags.add(variable, "$EXTMIN");
    tags.add(x, drawing.extents.low);
    tags.add(variable, "$EXTMAX");
    tags.add(x, drawing.extents.high);
    tags.add(variable, "$LUNITS");  // decimal
    tags.add(flags, 2);
    tags.add(start, "ENDSEC");
}

void add_line_types(Tags& tags) {
    constexpr int description = 3, alignment = 72, dashes = 73, pattern_length = 40, align_by_ends = 65;
    tags.add(start, "TABLE");
    tags.add(name, "LTYPE");
    tags.add(flags, 1);
    tags.add(start, "LTYPE");
    tags.add(name, "CONTINUOUS");
    tags.add(flags, 0);
    tags.add(description, "Solid line");
    tags.add(alignment, align_by_ends);
    tags.add(dashes, 0);
    tags.add(pattern_length, 0.0);
    tags.add(start, "ENDTAB");
}

void add_layers(Tags& tags, const std::vector<Layer>& layers) {
    constexpr int line_type = 6;
    tags.add(start, "TABLE");
    tags.add(name, "LAYER");
    tags.add(flags, static_cast<int>(layers.size()) + 1);
    const auto add_layer = [&](std::string_view layer, int index) {
        tags.add(start, "LAYER");
        tags.add(name, layer);
        tags.add(flags, 0);
        tags.add(color, index);
        tags.add(line_type, "CONTINUOUS");
    };
    add_layer("0", Layer{}.color);
    for (const Layer& layer : layers) add_layer(layer.name, layer.color);
    tags.add(start, "ENDTAB");
}

void add_style(Tags& tags) {
    constexpr int font = 3, big_font = 4, width = 41, slant = 50, generation = 71, last_height = 42;
    tags.add(start, "TABLE");
    tags.add(name, "STYLE");
    tags.add(flags, 1);
    tags.add(start, "STYLE");
    tags.add(name, "STANDARD");
    tags.add(flags, 0);
    tags.add(size, 0.0);
    tags.add(width, 1.0);
    tags.add(slant, 0.0);
    tags.add(generation, 0);
    tags.add(last_height, 1.0);
    tags.add(font, "txt");
    tags.add(big_font, "");
    tags.add(start, "ENDTAB");
}

void add_entity(Tags& tags, const Line& line) {
    tags.add(start, "LINE");
    tags.add(layer_name, line.layer);
    tags.add(x, line.from);
    tags.add(second_x, line.to);
}

void add_entity(Tags& tags, const Circle& circle) {
    tags.add(start, "CIRCLE");
    tags.add(layer_name, circle.layer);
    tags.add(x, circle.center);
    tags.add(size, circle.radius);
}

void add_entity(Tags& tags, const ClosedPolyline& polyline) {
    constexpr int closed = 1;
    tags.add(start, "POLYLINE");
    tags.add(layer_name, polyline.layer);
    tags.add(vertices_follow, 1);
    tags.add(x, drawing::Point{});
    tags.add(flags, closed);
    for (const Vertex& vertex : polyline.vertices) {
        tags.add(start, "VERTEX");
        tags.add(layer_name, polyline.layer);
        tags.add(x, vertex.at);
        if (vertex.bulge != 0.0) tags.add(bulge_value, fmt::format("{:.12f}", vertex.bulge));
    }
    tags.add(start, "SEQEND");
    tags.add(layer_name, polyline.layer);
}

void add_entity(Tags& tags, const Words& words) {
    constexpr int center = 1, middle = 2;
    tags.add(start, "TEXT");
    tags.add(layer_name, words.layer);
    tags.add(x, words.at);
    tags.add(size, words.height);
    tags.add(text_value, in_ascii(words.words));
    tags.add(style_name, "STANDARD");
    if (!words.centered) return;
    tags.add(across_flag, center);
    tags.add(upright_flag, middle);
    tags.add(second_x, words.at);
}

}  // namespace

std::string bytes(const Drawing& drawing) {
    Tags tags(drawing.decimals);
    for (const std::string& words : drawing.comments) tags.add(comment, in_ascii(words));
    add_header(tags, drawing);
    tags.add(start, "SECTION");
    tags.add(name, "TABLES");
    add_line_types(tags);
    add_layers(tags, drawing.layers);
    add_style(tags);
    tags.add(start, "ENDSEC");
    tags.add(start, "SECTION");
    tags.add(name, "ENTITIES");
    for (const Entity& entity : drawing.entities) {
        std::visit([&](const auto& of) { add_entity(tags, of); }, entity);
    }
    tags.add(start, "ENDSEC");
    tags.add(start, "EOF");
    return std::move(tags).text();
}

}  // namespace toehold::paper::dxf

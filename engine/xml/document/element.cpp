#include "xml/document/element.h"

#include "xml/document/characters.h"

#include <fmt/format.h>

#include <algorithm>

namespace toehold::xml {
namespace {

/// Line breaks and tabs as references: written raw, a reader must turn them into blanks (XML 1.0, section 3.3.3).
std::string escaped(std::string_view value) {
    std::string result;
    for (const char character : cleaned(value)) {
        switch (character) {
            case '&':
                result += "&amp;";
                break;
            case '<':
                result += "&lt;";
                break;
            case '>':
                result += "&gt;";
                break;
            case '"':
                result += "&quot;";
                break;
            case '\n':
                result += "&#10;";
                break;
            case '\r':
                result += "&#13;";
                break;
            case '\t':
                result += "&#9;";
                break;
            default:
                result += character;
        }
    }
    return result;
}

constexpr std::size_t comment_columns = 110;

/// A hyphen after a hyphen would end the comment.
std::string harmless(std::string_view words) {
    std::string result;
    for (const char character : cleaned(words)) {
        if (character == '-' && !result.empty() && result.back() == '-') result += ' ';
        result += character;
    }
    return result + (result.ends_with('-') ? " " : "");
}

/// Words wrapped at blanks, later lines under the first word.
void append_comment(std::string& text, std::string_view comment, const std::string& indent) {
    const std::string margin = indent + "     ";
    std::string line = indent + "<!--";
    const std::string words = harmless(comment);
    for (std::size_t at = 0; at < words.size();) {
        const std::size_t end = std::min(words.find_first_of(" \n\t", at), words.size());
        if (line.size() + 1 + end - at > comment_columns && line.size() > margin.size()) {
            text += line + "\n";
            line = indent + "    ";
        }
        if (end > at) line += " " + words.substr(at, end - at);
        at = end + 1;
    }
    text += line + " -->\n";
}

void append(std::string& text, const Element& element, std::size_t depth) {
    const std::string indent(2 * depth, ' ');
    for (const std::string& comment : element.comments) append_comment(text, comment, indent);
    text += indent + "<" + element.name;
    for (const auto& [name, value] : element.attributes) text += fmt::format(" {}=\"{}\"", name, escaped(value));
    if (element.children.empty()) {
        text += "/>\n";
        return;
    }
    text += ">\n";
    for (const Element& child : element.children) append(text, child, depth + 1);
    text += indent + "</" + element.name + ">\n";
}

}  // namespace

Element& Element::text(std::string_view attribute, std::string_view value) {
    attributes.emplace_back(attribute, value);
    return *this;
}

Element& Element::optional_text(std::string_view attribute, std::string_view value) {
    return value.empty() ? *this : text(attribute, value);
}

Element& Element::quantity(std::string_view attribute, double value, units::Kind kind) {
    return text(attribute, units::exact(value, kind));
}

Element& Element::optional_quantity(std::string_view attribute, std::optional<double> value, units::Kind kind) {
    return value ? quantity(attribute, *value, kind) : *this;
}

Element& Element::given_quantity(std::string_view attribute, double value, units::Kind kind) {
    return value == 0.0 ? *this : quantity(attribute, value, kind);
}

Element& Element::yes_no(std::string_view attribute, bool value) { return text(attribute, value ? "yes" : "no"); }

Element& Element::child(Element element) {
    children.push_back(std::move(element));
    return *this;
}

Element& Element::comment(std::string words) {
    comments.push_back(std::move(words));
    return *this;
}

std::string exact_number(double value) { return fmt::format("{}", value); }

std::string element_text(const Element& element, std::size_t depth) {
    std::string text;
    append(text, element, depth);
    return text;
}

std::string document_text(const Element& root) {
    std::string text = "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n";
    append(text, root, 0);
    return text;
}

}  // namespace toehold::xml

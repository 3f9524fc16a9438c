#include "xml/markup_rules.h"

#include "xml/characters.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <optional>
#include <string>
#include <vector>

namespace toehold::xml {
namespace {

constexpr std::size_t most_problems = 20;

bool is_name_start(char character) {
    const auto byte = static_cast<unsigned char>(character);
    return (byte >= 'a' && byte <= 'z') || (byte >= 'A' && byte <= 'Z') || byte == '_' || byte == ':' || byte >= 0x80;
}

bool is_name_part(char character) {
    return is_name_start(character) || (character >= '0' && character <= '9') || character == '-' || character == '.';
}

/// The reference between `&` and `;`: one of the five names, or the number of a permitted character.
bool is_reference(std::string_view reference) {
    if (reference == "lt" || reference == "gt" || reference == "amp" || reference == "quot" || reference == "apos") {
        return true;
    }
    if (reference.empty() || reference.front() != '#') return false;
    reference.remove_prefix(1);
    const bool hexadecimal = !reference.empty() && reference.front() == 'x';
    if (hexadecimal) reference.remove_prefix(1);
    std::uint32_t code_point = 0;
    const char* const end = reference.data() + reference.size();
    const auto parsed = std::from_chars(reference.data(), end, code_point, hexadecimal ? 16 : 10);
    return parsed.ec == std::errc() && parsed.ptr == end && is_xml_character(code_point);
}

bool same_letters(std::string_view text, std::string_view lower_case) {
    return std::equal(text.begin(), text.end(), lower_case.begin(), lower_case.end(), [](char a, char b) {
        return (a >= 'A' && a <= 'Z' ? static_cast<char>(a - 'A' + 'a') : a) == b;
    });
}

class MarkupScanner {
  public:
    explicit MarkupScanner(std::string_view text) : text_(text) {}

    model::Problems run() {
        while (!stopped_ && !done()) {
            if (problems_.size() >= most_problems) return std::move(problems_);
            next();
        }
        if (!stopped_) check_end();
        return std::move(problems_);
    }

  private:
    struct Tag {
        std::string_view name;
        int line = 0;
    };
    struct Attribute {
        std::string_view name, value;
    };

    [[nodiscard]] bool done() const { return at_ >= text_.size(); }
    [[nodiscard]] std::string_view rest() const { return text_.substr(at_); }
    [[nodiscard]] bool sees(std::string_view mark) const { return rest().starts_with(mark); }

    void advance(std::size_t count) {
        const std::string_view passed = rest().substr(0, count);
        line_ += static_cast<int>(std::count(passed.begin(), passed.end(), '\n'));
        at_ += passed.size();
    }

    void report(const std::string& message, std::string_view found = {}, const std::string& accepted = {}) {
        problems_.push_back({{}, line_, path(), excerpt(found), accepted, message});
    }
    /// Nothing after this can be understood.
    void stop(const std::string& message, std::string_view found = {}, const std::string& accepted = {}) {
        report(message, found, accepted);
        stopped_ = true;
    }

    /// Where we are, as the readers name it: the elements open, without the root.
    [[nodiscard]] std::string path() const {
        std::string result;
        for (std::size_t index = 1; index < open_.size(); ++index) {
            result += (index > 1 ? "/" : "") + std::string(open_[index].name);
        }
        return result;
    }

    void next() {
        if (sees("<!--")) return comment();
        if (sees("<![CDATA[")) return stop("text does not belong here", rest().substr(0, 20), "elements and comments");
        if (sees("<!")) return stop("a DOCTYPE or other declaration is not accepted", rest().substr(0, 20));
        if (sees("<?")) return declaration();
        if (sees("</")) return closing_tag();
        if (sees("<")) return opening_tag();
        characters();
    }

    void comment() {
        advance(4);
        const std::size_t end = rest().find("--");
        if (end == std::string_view::npos) return stop("a comment is not closed", {}, "-->");
        advance(end);
        if (!sees("-->")) return stop("\"--\" is not allowed inside a comment");
        advance(3);
    }

    void characters() {
        const std::string_view text = rest().substr(0, rest().find('<'));
        const std::string_view words = trimmed(text);
        const auto blanks = static_cast<std::size_t>(words.empty() ? 0 : words.data() - text.data());
        advance(blanks);
        if (!words.empty()) report("text does not belong here", words, "elements and comments");
        advance(text.size() - blanks);
    }

    void declaration() {
        if (at_ != 0 || !sees("<?xml") || rest().size() < 6 || !is_blank(rest()[5])) {
            return stop("a processing instruction is not accepted", rest().substr(0, 20));
        }
        advance(5);
        std::size_t given = 0;
        while (!stopped_) {
            skip_blanks();
            if (sees("?>")) break;
            const std::optional<Attribute> attribute = read_attribute();
            if (attribute) check_declared(*attribute, given);
        }
        if (stopped_) return;
        if (given == 0) return stop("the XML declaration does not say its version", {}, "version=\"1.0\"");
        advance(2);
    }

    /// `given`: how many of the three attributes, which have their order, are behind us.
    void check_declared(const Attribute& attribute, std::size_t& given) {
        constexpr std::array<std::string_view, 3> names{"version", "encoding", "standalone"};
        const auto* const found = std::find(names.begin(), names.end(), attribute.name);
        const auto place = static_cast<std::size_t>(found - names.begin());
        if (found == names.end() || place < given || (given == 0 && place != 0)) {
            return stop("this does not belong in the XML declaration", attribute.name, "version, then encoding");
        }
        given = place + 1;
        if (place == 0 && attribute.value != "1.0") report("this version of XML is not read", attribute.value, "1.0");
        if (place == 1 && !same_letters(attribute.value, "utf-8")) {
            report("this encoding is not read", attribute.value, "UTF-8");
        }
        if (place == 2 && attribute.value != "yes" && attribute.value != "no") {
            report("standalone is yes or no", attribute.value, "yes, no");
        }
    }

    void opening_tag() {
        advance(1);
        const Tag tag{name(), line_};
        if (tag.name.empty()) return stop("\"<\" begins no element here", rest().substr(0, 20));
        if (open_.empty() && ++roots_ > 1)
            return stop("a second element at the top", tag.name, "one element at the top");
        open_.push_back(tag);
        if (open_.size() > max_element_depth) {
            return stop("elements are nested too deeply", tag.name, "at most " + std::to_string(max_element_depth));
        }
        attributes(tag);
    }

    void attributes(const Tag& tag) {
        std::vector<std::string_view> names;
        while (!stopped_) {
            const bool blank = skip_blanks();
            if (done()) return stop("the file ends inside <" + std::string(tag.name) + ">");
            if (sees(">")) return advance(1);
            if (sees("/>")) {
                open_.pop_back();
                return advance(2);
            }
            if (!blank) report("a blank is missing before the next attribute", rest().substr(0, 20));
            const std::optional<Attribute> attribute = read_attribute();
            if (!attribute) return;
            if (std::find(names.begin(), names.end(), attribute->name) != names.end()) {
                report("the attribute " + std::string(attribute->name) + " is given twice", attribute->value);
            }
            names.push_back(attribute->name);
            if (names.size() > max_attributes) return stop("an element has too many attributes", tag.name);
        }
    }

    void closing_tag() {
        advance(2);
        const std::string closed(name());
        skip_blanks();
        if (!sees(">")) return stop("the closing tag is not complete", closed, "</" + closed + ">");
        if (open_.empty()) return stop("a closing tag without its opening tag", "</" + closed + ">");
        if (open_.back().name != closed) return stop(unclosed(open_.back()), "</" + closed + ">");
        advance(1);
        open_.pop_back();
    }

    static std::string unclosed(const Tag& tag) {
        return "<" + std::string(tag.name) + "> of line " + std::to_string(tag.line) + " is not closed";
    }

    /// name = "value" at the cursor; stops the scan when there is none.
    std::optional<Attribute> read_attribute() {
        Attribute attribute;
        attribute.name = name();
        if (attribute.name.empty()) {
            stop("an attribute's name is expected here", rest().substr(0, 20));
            return std::nullopt;
        }
        skip_blanks();
        const std::string written(attribute.name);
        if (!sees("=")) {
            stop("the attribute " + written + " has no value", rest().substr(0, 20), written + "=\"...\"");
            return std::nullopt;
        }
        advance(1);
        skip_blanks();
        const char quote = done() ? '\0' : rest().front();
        const std::size_t end = quote == '"' || quote == '\'' ? rest().find(quote, 1) : std::string_view::npos;
        if (end == std::string_view::npos) {
            stop("the value of " + written + " is not in quotes", rest().substr(0, 20), written + "=\"...\"");
            return std::nullopt;
        }
        attribute.value = rest().substr(1, end - 1);
        check_value(attribute);
        advance(end + 1);
        return attribute;
    }

    void check_value(const Attribute& attribute) {
        const std::string of = "the value of " + std::string(attribute.name);
        if (attribute.value.find('<') != std::string_view::npos) {
            return stop(of + " holds \"<\"; is a closing quote missing?", attribute.value, "&lt;");
        }
        if (attribute.value.find_first_of("\n\r\t") != std::string_view::npos) {
            report(of + " holds a line break or a tab", attribute.value, "&#10; for a line break, &#9; for a tab");
        }
        std::string_view value = attribute.value;
        for (std::size_t at = value.find('&'); at != std::string_view::npos; at = value.find('&')) {
            value.remove_prefix(at + 1);
            const std::size_t end = value.find(';');
            if (end == std::string_view::npos || !is_reference(value.substr(0, end))) {
                return report(of + " holds \"&\" that begins no known reference", attribute.value,
                              "&amp; for a plain \"&\"");
            }
        }
    }

    std::string_view name() {
        if (done() || !is_name_start(rest().front())) return {};
        const std::string_view all = rest();
        const auto* const end = std::find_if_not(all.begin(), all.end(), is_name_part);
        const auto length = static_cast<std::size_t>(end - all.begin());
        advance(length);
        return all.substr(0, length);
    }

    bool skip_blanks() {
        const std::size_t before = at_;
        while (!done() && is_blank(rest().front())) advance(1);
        return at_ != before;
    }

    void check_end() {
        if (!open_.empty()) return report("the file ends too early: " + unclosed(open_.back()));
        if (roots_ == 0 && problems_.empty()) report("the file is empty: it holds no element");
    }

    std::string_view text_;
    std::size_t at_ = 0;
    int line_ = 1;
    int roots_ = 0;
    bool stopped_ = false;
    std::vector<Tag> open_;
    model::Problems problems_;
};

}  // namespace

model::Problems check_markup(std::string_view text) { return MarkupScanner(text).run(); }

}  // namespace toehold::xml

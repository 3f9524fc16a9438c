#include "xml/detail/remarks.h"

#include "model/validate_remarks.h"
#include "xml/detail/parts.h"

#include <algorithm>
#include <array>

namespace toehold::xml {
namespace {

using format::phrase;

using State = model::Remark::State;

constexpr std::array<Word<State>, 2> states{{{"open", State::open}, {"settled", State::settled}}};

model::Remark read_remark(ElementReader& reader) {
    model::Remark remark;
    remark.about = reader.optional_id("about");
    remark.subject = reader.optional_text("subject");
    remark.by = reader.optional_text("by");
    remark.date = reader.optional_text("date");
    if (reader.has("date") && !model::is_iso_day(remark.date)) {
        reader.report(phrase("invalid date; use YYYY-MM-DD"), "date", phrase("a day such as 2026-11-25"));
    }
    remark.state = reader.optional_choice<State>("state", states).value_or(State::open);
    remark.words = reader.text("words");
    return remark;
}

Element remark_element(const model::Remark& remark) {
    Element element("remark");
    element.optional_text("about", remark.about).optional_text("subject", remark.subject);
    element.optional_text("by", remark.by).optional_text("date", remark.date);
    return element.text("state", word_for<State>(remark.state, states)).text("words", remark.words);
}

constexpr auto nowhere = std::string_view::npos;

struct Markup {
    std::size_t begin = 0, end = 0;  ///< of `<` and behind `>`
    std::string_view name;           ///< of an element; empty: a comment or an instruction
    bool closes = false;             ///< `</name>`
    bool is_whole = false;           ///< `<name/>`
};

/// Behind the `>` that ends the tag: one in a value does not.
std::size_t end_of_tag(std::string_view text, std::size_t begin) {
    char quote = 0;
    for (std::size_t at = begin; at < text.size(); ++at) {
        const char character = text[at];
        if (quote != 0) {
            if (character == quote) quote = 0;
        } else if (character == '"' || character == '\'') {
            quote = character;
        } else if (character == '>') {
            return at + 1;
        }
    }
    return nowhere;
}

std::size_t behind(std::string_view text, std::size_t begin, std::string_view mark) {
    const std::size_t found = text.find(mark, begin);
    return found == nowhere ? nowhere : found + mark.size();
}

std::optional<Markup> next_markup(std::string_view text, std::size_t from) {
    Markup markup;
    markup.begin = text.find('<', from);
    if (markup.begin == nowhere) return std::nullopt;
    const std::string_view rest = text.substr(markup.begin);
    if (rest.starts_with("<!--")) {
        markup.end = behind(text, markup.begin + 4, "-->");
    } else if (rest.starts_with("<?")) {
        markup.end = behind(text, markup.begin, "?>");
    } else {
        markup.closes = rest.starts_with("</");
        const std::string_view named = rest.substr(markup.closes ? 2 : 1);
        markup.name = named.substr(0, named.find_first_of(" \t\r\n/>"));
        markup.end = end_of_tag(text, markup.begin);
        markup.is_whole = markup.end != nowhere && text[markup.end - 2] == '/';
    }
    return markup.end == nowhere ? std::nullopt : std::optional(markup);
}

struct Span {
    std::size_t begin = 0, end = 0;
};

/// From the document's own remarks' first byte to behind their last; empty, before the root's end, where it has none.
std::optional<Span> place_of_remarks(std::string_view text) {
    std::optional<std::size_t> begin;
    for (auto markup = next_markup(text, 0); markup; markup = next_markup(text, markup->end)) {
        if (markup->name == "remarks" && !markup->closes) begin = markup->begin;
        if (markup->name == "remarks" && begin && (markup->closes || markup->is_whole)) {
            return Span{*begin, markup->end};
        }
        if (markup->name == "base-detail" && markup->closes) return Span{markup->begin, markup->begin};
    }
    return std::nullopt;
}

/// With the blanks before it, where nothing else stands before it on its line, and with the line end behind it.
Span whole_lines(std::string_view text, Span span) {
    const std::size_t before = text.find_last_not_of(" \t", span.begin - 1);
    if (before != nowhere && text[before] == '\n') span.begin = before + 1;
    const bool is_somewhere = span.begin < span.end;
    if (is_somewhere && text.substr(span.end).starts_with("\r\n")) span.end += 2;
    if (is_somewhere && text.substr(span.end).starts_with('\n')) ++span.end;
    return span;
}

}  // namespace

std::vector<model::Remark> read_remarks(ElementReader& reader) {
    std::vector<model::Remark> remarks;
    for (ElementReader& item : reader.children("remark")) remarks.push_back(read_remark(item));
    return remarks;
}

Element remarks_element(const std::vector<model::Remark>& remarks) {
    Element element("remarks");
    for (const model::Remark& remark : remarks) element.child(remark_element(remark));
    return element;
}

std::optional<std::string> with_remarks(std::string_view document, const std::vector<model::Remark>& remarks) {
    const std::optional<Span> place = place_of_remarks(document);
    if (!place || place->begin == 0) return std::nullopt;
    const Span span = whole_lines(document, *place);
    std::string text(document.substr(0, span.begin));
    if (!text.ends_with('\n')) text += '\n';
    if (!remarks.empty()) text += element_text(remarks_element(remarks), 1);
    return text.append(document.substr(span.end));
}

}  // namespace toehold::xml

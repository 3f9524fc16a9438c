#include "xml/document/strict_document.h"

#include "xml/document/characters.h"
#include "xml/document/file.h"

#include <fmt/format.h>
#include <libxml/parser.h>
#include <libxml/parserInternals.h>
#include <libxml/SAX2.h>
#include <tinyxml2.h>

#include <algorithm>
#include <string>
#include <vector>

namespace toehold::xml {
namespace {

using format::phrase;
using format::verbatim;

constexpr std::string_view byte_order_mark = "\xEF\xBB\xBF";
constexpr std::size_t most_problems = 20;

struct Sentence {
    format::Phrase message, accepted = {};
};

/// Of the library's codes. Each fault that a person makes has a sentence; the rest share one.
Sentence sentence_for(int code) {
    switch (code) {
        case XML_ERR_XMLDECL_NOT_STARTED:
        case XML_ERR_XMLDECL_NOT_FINISHED:
        case XML_ERR_VERSION_MISSING:
        case XML_ERR_ENCODING_NAME:
        case XML_ERR_STANDALONE_VALUE:
            return {phrase("the XML declaration is not valid"), verbatim("<?xml version=\"1.0\" encoding=\"UTF-8\"?>")};
        case XML_ERR_UNKNOWN_VERSION:
            return {phrase("this version of XML is not supported"), verbatim("1.0")};
        case XML_ERR_UNKNOWN_ENCODING:
        case XML_ERR_UNSUPPORTED_ENCODING:
        case XML_ERR_INVALID_ENCODING:
            return {phrase("this encoding is not supported"), verbatim("UTF-8")};
        case XML_ERR_RESERVED_XML_NAME:
        case XML_ERR_PI_NOT_STARTED:
        case XML_ERR_PI_NOT_FINISHED:
            return {phrase("a processing instruction is not allowed")};
        case XML_ERR_DOCTYPE_NOT_FINISHED:
            return {phrase("a DOCTYPE is not allowed")};
        case XML_ERR_COMMENT_NOT_FINISHED:
            return {phrase("a comment is not closed"), verbatim("-->")};
        case XML_ERR_HYPHEN_IN_COMMENT:
            return {phrase("\"--\" is not allowed inside a comment")};
        case XML_ERR_LT_IN_ATTRIBUTE:
            return {phrase("\"<\" is not allowed in a value; is a closing quote missing?"), verbatim("&lt;")};
        case XML_ERR_ATTRIBUTE_NOT_STARTED:
        case XML_ERR_ATTRIBUTE_NOT_FINISHED:
            return {phrase("a value is not in quotes"), verbatim("name=\"value\"")};
        case XML_ERR_ATTRIBUTE_WITHOUT_VALUE:
            return {phrase("an attribute has no value"), verbatim("name=\"value\"")};
        case XML_ERR_ATTRIBUTE_REDEFINED:
            return {phrase("an attribute is given twice")};
        case XML_ERR_SPACE_REQUIRED:
            return {phrase("a blank is missing between two attributes")};
        case XML_ERR_INVALID_HEX_CHARREF:
        case XML_ERR_INVALID_DEC_CHARREF:
        case XML_ERR_INVALID_CHARREF:
        case XML_ERR_INVALID_CHAR:  // of a numbered reference: other characters were looked at before
        case XML_ERR_ENTITYREF_NO_NAME:
        case XML_ERR_ENTITYREF_SEMICOL_MISSING:
        case XML_ERR_UNDECLARED_ENTITY:
        case XML_WAR_UNDECLARED_ENTITY:
            return {phrase("\"&\" does not begin a known reference"), phrase("&amp; for a plain \"&\"")};
        case XML_ERR_NAME_REQUIRED:
            return {phrase("a name is missing or not valid")};
        default:
            return {phrase("this is not well-formed XML")};
    }
}

bool is_absent_or(const xmlChar* declared, const char* accepted) {
    return declared == nullptr || xmlStrcasecmp(declared, reinterpret_cast<const xmlChar*>(accepted)) == 0;
}

/// Listens to the library while it reads, and keeps its first complaint, and ours about what is well formed but not
/// allowed in our documents.
class FormCheck {
  public:
    explicit FormCheck(std::string_view text)
        : text_(text), context_(xmlCreateMemoryParserCtxt(text.data(), static_cast<int>(text.size()))) {
        if (context_ == nullptr) throw std::bad_alloc();
        *context_->sax = handler();
        context_->userData = this;
        xmlCtxtUseOptions(context_, XML_PARSE_NONET);
    }
    FormCheck(const FormCheck&) = delete;
    FormCheck& operator=(const FormCheck&) = delete;
    ~FormCheck() { xmlFreeParserCtxt(context_); }

    model::Problems run() {
        xmlParseDocument(context_);
        return std::move(problems_);
    }

  private:
    struct Tag {
        std::string name;
        int line = 0;
    };

    static FormCheck& of(void* self) { return *static_cast<FormCheck*>(self); }

    static xmlSAXHandler handler() {
        xmlSAXHandler sax{};
        sax.initialized = XML_SAX2_MAGIC;
        sax.startDocument = [](void* self) { of(self).declaration(); };
        sax.internalSubset = [](void* self, const xmlChar*, const xmlChar*, const xmlChar*) {
            of(self).stop(phrase("a DOCTYPE is not allowed"));
        };
        sax.processingInstruction = [](void* self, const xmlChar*, const xmlChar*) {
            of(self).stop(phrase("a processing instruction is not allowed"));
        };
        sax.startElementNs = [](void* self, const xmlChar* name, const xmlChar* prefix, const xmlChar*, int namespaces,
                                const xmlChar**, int attributes, int, const xmlChar**) {
            of(self).opening_tag(name, prefix,
                                 static_cast<std::size_t>(namespaces) + static_cast<std::size_t>(attributes));
        };
        sax.endElementNs = [](void* self, const xmlChar*, const xmlChar*, const xmlChar*) { of(self).closing_tag(); };
        sax.characters = [](void* self, const xmlChar* text, int length) { of(self).characters(text, length); };
        sax.ignorableWhitespace = sax.characters;
        sax.cdataBlock = [](void* self, const xmlChar*, int) {
            of(self).stop(phrase("a CDATA section is not allowed"));
        };
        sax.serror = [](void* self, xmlErrorPtr error) { of(self).fault(*error); };
        return sax;
    }

    [[nodiscard]] std::size_t offset() const {
        const long consumed = xmlByteConsumed(context_);
        return consumed < 0 ? text_.size() : std::min(static_cast<std::size_t>(consumed), text_.size());
    }
    [[nodiscard]] int line() const { return xmlSAX2GetLineNumber(context_); }

    /// Where we are, as the readers name it: the elements open, without the root.
    [[nodiscard]] std::string path() const {
        std::string result;
        for (std::size_t index = 1; index < open_.size(); ++index) result += (index > 1 ? "/" : "") + open_[index].name;
        return result;
    }

    void report(int line, const format::Phrase& message, std::string_view found = {},
                const format::Phrase& accepted = {}) {
        if (stopped_) return;
        problems_.push_back(
            {{}, line, path(), found.empty() ? format::Phrase() : verbatim(excerpt(found)), accepted, message});
        if (problems_.size() >= most_problems) stop();
    }
    /// What comes after this is not read.
    void stop(const format::Phrase& message, std::string_view found = {}, const format::Phrase& accepted = {}) {
        report(line(), message, found, accepted);
        stop();
    }
    void stop() {
        stopped_ = true;
        xmlStopParser(context_);
    }

    void declaration() {
        if (!is_absent_or(context_->version, "1.0")) fault(XML_ERR_UNKNOWN_VERSION);
        const xmlChar* const encoding =
            context_->input->encoding != nullptr ? context_->input->encoding : context_->encoding;
        if (!is_absent_or(encoding, "UTF-8")) fault(XML_ERR_UNSUPPORTED_ENCODING);
    }

    void opening_tag(const xmlChar* name, const xmlChar* prefix, std::size_t attributes) {
        in_text_ = false;
        const std::string_view before = text_.substr(0, offset());
        const std::string_view tag = before.substr(std::min(before.rfind('<'), before.size()));
        const int first_line = line() - static_cast<int>(std::count(tag.begin(), tag.end(), '\n'));
        const std::string written = reinterpret_cast<const char*>(name);
        open_.push_back(
            {prefix == nullptr ? written : fmt::format("{}:{}", reinterpret_cast<const char*>(prefix), written),
             first_line});
        if (open_.size() > max_element_depth) {
            stop(phrase("elements are nested too deeply"), written, phrase("at most {}", max_element_depth));
        } else if (attributes > max_attributes) {
            stop(phrase("an element has too many attributes"), written, phrase("at most {}", max_attributes));
        } else {
            check_values(tag, first_line);
        }
    }

    /// A line break or a tab in a value is a blank to one program and itself to another.
    void check_values(std::string_view tag, int line) {
        char quote = 0;
        for (std::size_t at = 0; at < tag.size(); ++at) {
            const char character = tag[at];
            if (quote == 0 && (character == '"' || character == '\'')) {
                quote = character;
            } else if (character == quote) {
                quote = 0;
            } else if (quote != 0 && is_blank(character) && character != ' ') {
                report(line, phrase("a value holds a line break or a tab"), tag.substr(tag.rfind(quote, at)),
                       phrase("&#10; for a line break, &#9; for a tab"));
                return;
            }
            if (character == '\n') ++line;
        }
    }

    void closing_tag() {
        in_text_ = false;
        open_.pop_back();
    }

    void characters(const xmlChar* start, int length) {
        const std::string_view text(reinterpret_cast<const char*>(start), static_cast<std::size_t>(length));
        const std::string_view words = trimmed(text);
        if (words.empty() || std::exchange(in_text_, true)) return;
        const auto breaks = std::count(words.data(), text.data() + text.size(), '\n');
        report(line() - static_cast<int>(breaks), phrase("text is not allowed here"), words,
               phrase("elements and comments"));
    }

    void fault(const xmlError& error) {
        // Of a name's prefix only: the element reader refuses the name.
        if (error.domain == XML_FROM_NAMESPACE || error.level < XML_ERR_ERROR) return;
        fault(error.code);
    }

    /// The library's: nothing after it can be understood.
    void fault(int code) {
        const std::string_view rest = trimmed(text_.substr(offset()));
        const std::string_view found = rest.substr(0, rest.find('\n'));
        if (code == XML_ERR_DOCUMENT_EMPTY && rest.empty()) return stop(phrase("the file holds no element"));
        if (code == XML_ERR_DOCUMENT_EMPTY)
            return stop(phrase("text is not allowed here"), found, phrase("elements and comments"));
        if (code == XML_ERR_DOCUMENT_END) {
            if (rest.starts_with('<'))
                return stop(phrase("a second element at the top"), found, phrase("one element at the top"));
            return stop(phrase("text is not allowed here"), found, phrase("elements and comments"));
        }
        if (code == XML_ERR_TAG_NAME_MISMATCH) return stop(unclosed(), found);
        if (code == XML_ERR_NAME_REQUIRED && found.starts_with('/')) return stop(unclosed(), found);
        if (rest.empty() && code != XML_ERR_COMMENT_NOT_FINISHED)
            return stop(open_.empty() ? phrase("the file ends too early")
                                      : phrase("the file ends too early: {}", unclosed()));
        const bool is_reference = code == XML_ERR_NAME_REQUIRED && offset() > 0 && text_[offset() - 1] == '&';
        const Sentence sentence = sentence_for(is_reference ? XML_ERR_ENTITYREF_NO_NAME : code);
        stop(sentence.message, found, sentence.accepted);
    }

    [[nodiscard]] format::Phrase unclosed() const {
        if (open_.empty()) return phrase("a closing tag without its opening tag");
        return phrase("<{}> of line {} is not closed", open_.back().name, open_.back().line);
    }

    std::string_view text_;
    xmlParserCtxtPtr context_;
    bool stopped_ = false;
    bool in_text_ = false;  ///< of a text that was reported: the library may bring it in pieces
    std::vector<Tag> open_;
    model::Problems problems_;
};

model::Problem problem(int line, const format::Phrase& message, const format::Phrase& found = {}) {
    return {{}, line, {}, found, {}, message};
}

int line_at(std::string_view text, std::size_t offset) {
    return 1 + static_cast<int>(std::count(text.begin(), text.begin() + static_cast<std::ptrdiff_t>(offset), '\n'));
}

/// The library compares each attribute of an element with all before it: a tag that would take it seconds is found
/// here. A tag holds no `<`, and each attribute a `=`.
std::optional<std::size_t> overfull_tag(std::string_view text) {
    constexpr std::size_t most_equals = 10000;
    std::size_t equals = 0;
    for (std::size_t at = 0; at < text.size(); ++at) {
        if (text[at] == '<') equals = 0;
        if (text[at] == '=' && ++equals > most_equals) return at;
    }
    return std::nullopt;
}

model::Problems check_text(std::string_view text) {
    if (text.size() > max_document_bytes) {
        return {problem(0, phrase("the text is larger than {} MB", max_document_megabytes))};
    }
    if (const std::optional<std::size_t> bad = first_bad_byte(text)) {
        const auto byte = static_cast<unsigned char>(text[*bad]);
        if (byte == 0 || byte >= 0x80)
            return {problem(line_at(text, *bad), phrase("not valid UTF-8 (is this UTF-16?)"))};
        return {problem(line_at(text, *bad), phrase("a control character is not allowed"),
                        verbatim(fmt::format("U+{:04X}", byte)))};
    }
    if (trimmed(text).empty()) return {problem(line_at(text, text.size()), phrase("the file holds no element"))};
    if (const std::optional<std::size_t> tag = overfull_tag(text)) {
        return {problem(line_at(text, *tag), phrase("an element has too many attributes"))};
    }
    return FormCheck(text).run();
}

}  // namespace

StrictDocument parse_strictly(std::string_view text) {
    // The library's own state, made ready before a second thread may need it.
    [[maybe_unused]] static const bool ready = (xmlInitParser(), true);
    StrictDocument document;
    if (text.starts_with(byte_order_mark)) text.remove_prefix(byte_order_mark.size());
    document.problems = check_text(text);
    if (!document.problems.empty()) return document;

    auto tree = std::make_shared<tinyxml2::XMLDocument>();
    if (tree->Parse(text.data(), text.size()) != tinyxml2::XML_SUCCESS) {
        document.problems = {problem(tree->ErrorLineNum(), phrase("this is not well-formed XML"))};
        return document;
    }
    document.root = tree->RootElement();
    document.tree = std::move(tree);
    return document;
}

}  // namespace toehold::xml

#include "xml/strict_document.h"

#include "xml/characters.h"
#include "xml/markup_rules.h"
#include "xml/text_file.h"

#include <tinyxml2.h>

#include <algorithm>

namespace toehold::xml {
namespace {

constexpr std::string_view byte_order_mark = "\xEF\xBB\xBF";

model::Problem problem(int line, const std::string& message, const std::string& accepted = {}) {
    return {{}, line, {}, {}, accepted, message};
}

model::Problems check_text(std::string_view text) {
    if (text.size() > max_document_bytes) {
        return {problem(0, "the text is larger than " + std::to_string(max_document_megabytes) + " MB")};
    }
    const std::optional<std::size_t> bad = first_bad_byte(text);
    if (!bad) return {};
    const auto line = 1 + std::count(text.begin(), text.begin() + static_cast<std::ptrdiff_t>(*bad), '\n');
    return {problem(static_cast<int>(line), "a byte that is no UTF-8, or a control character", "text in UTF-8")};
}

}  // namespace

StrictDocument parse_strictly(std::string_view text) {
    StrictDocument document;
    if (text.starts_with(byte_order_mark)) text.remove_prefix(byte_order_mark.size());
    document.problems = check_text(text);
    if (document.problems.empty()) document.problems = check_markup(text);
    if (!document.problems.empty()) return document;

    auto tree = std::make_shared<tinyxml2::XMLDocument>();
    if (tree->Parse(text.data(), text.size()) != tinyxml2::XML_SUCCESS) {
        document.problems = {problem(tree->ErrorLineNum(), "this is not well-formed XML")};
        return document;
    }
    document.root = tree->RootElement();
    document.tree = std::move(tree);
    if (document.root == nullptr) document.problems = {problem(1, "the file is empty: it holds no element")};
    return document;
}

}  // namespace toehold::xml

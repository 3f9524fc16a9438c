#include "xml/detail_file.h"
#include "xml/text_file.h"

namespace toehold::xml {
namespace {

/// Name of the first element; a later fault does not matter, so that a damaged document is still called by its kind.
std::string_view root_name(std::string_view text) {
    while (true) {
        const std::size_t start = text.find('<');
        if (start == std::string_view::npos) return {};
        text.remove_prefix(start);
        const bool comment = text.starts_with("<!--");
        if (!comment && !text.starts_with("<?")) break;
        const std::string_view mark = comment ? "-->" : "?>";
        const std::size_t end = text.find(mark, 2);
        if (end == std::string_view::npos) return {};
        text.remove_prefix(end + mark.size());
    }
    text.remove_prefix(1);
    return text.substr(0, text.find_first_of(" \t\r\n/>"));
}

}  // namespace

DocumentKind document_kind(const std::filesystem::path& file) {
    const TextRead read = read_text(file);
    if (!read.text) return DocumentKind::unknown;
    const std::string_view name = root_name(*read.text);
    if (name == "base-detail") return DocumentKind::detail;
    if (name == "project") return DocumentKind::project;
    if (name == "plates") return DocumentKind::plates;
    return name == "catalog" ? DocumentKind::catalog : DocumentKind::unknown;
}

}  // namespace toehold::xml

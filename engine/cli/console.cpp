#include "cli/console.h"

#include "export/text/columns.h"
#include "xml/document/file.h"

#include <array>
#include <cerrno>
#include <cstdio>
#include <cstring>

namespace toehold::cli {
namespace {

[[noreturn]] void fail(int error) { throw OutputError(std::strerror(error)); }

}  // namespace

void print(std::string_view text) {
    if (text.empty()) return;
    errno = 0;
    if (std::fwrite(text.data(), 1, text.size(), stdout) != text.size()) fail(errno);
}

void finish_printing() {
    errno = 0;
    if (std::fflush(stdout) != 0 || std::ferror(stdout) != 0) fail(errno);
}

void complain(const format::Phrase& sentence, const format::Locale& locale) {
    // Nothing is left to tell, and nobody to tell it to, when standard error fails.
    std::fprintf(stderr, "toehold: %s\n", exporting::showable(format::text(sentence, locale)).c_str());
}

ExitStatus complain(const model::Problems& problems, const format::Locale& locale) {
    for (const model::Problem& problem : problems) complain(format::verbatim(model::sentence(problem, locale)), locale);
    return problems.empty() ? ExitStatus::adequate : ExitStatus::unusable_input;
}

std::optional<std::string> read_standard_input() {
    std::string text;
    std::array<char, 65536> piece{};
    while (text.size() <= xml::max_document_bytes) {
        const std::size_t size = std::fread(piece.data(), 1, piece.size(), stdin);
        text.append(piece.data(), size);
        if (size < piece.size()) break;
    }
    if (std::ferror(stdin) != 0) return std::nullopt;
    return text;
}

}  // namespace toehold::cli

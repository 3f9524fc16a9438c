#include "cli/inputs.h"

#include "cli/console.h"
#include "xml/document/file.h"

#include <algorithm>
#include <filesystem>

namespace toehold::cli {
namespace {

namespace fs = std::filesystem;
using format::phrase;

std::optional<std::vector<fs::path>> documents_of(const fs::path& folder, const format::Locale& locale) {
    std::vector<fs::path> documents;
    std::error_code error;
    for (fs::directory_iterator entry(folder, error), end; !error && entry != end; entry.increment(error)) {
        std::error_code unknown;
        if (entry->path().extension() == ".xml" && !entry->is_directory(unknown)) documents.push_back(entry->path());
    }
    if (error) {
        complain(phrase("{}: the folder cannot be read: {}", folder.string(), error.message()), locale);
        return std::nullopt;
    }
    std::sort(documents.begin(), documents.end());
    return documents;
}

/// Why a document of a folder is passed over; empty: it is a base detail or a project, or nothing can be told of it:
/// then its review says what is wrong, and the folder counts as one with a file that cannot be used.
format::Phrase passed_over(const fs::path& document) {
    switch (xml::document_kind(document)) {
        case xml::DocumentKind::detail:
        case xml::DocumentKind::project:
            return {};
        case xml::DocumentKind::plates:
            return phrase("a plate document");
        case xml::DocumentKind::catalog:
            return phrase("a catalog");
        case xml::DocumentKind::unknown:
            break;
    }
    if (xml::root_element(document).empty()) return {};
    return phrase("not a base detail or project");
}

bool add_folder(const fs::path& folder, std::vector<std::string>& files, const format::Locale& locale) {
    const auto documents = documents_of(folder, locale);
    if (!documents) return false;
    const std::size_t before = files.size();
    for (const fs::path& document : *documents) {
        const format::Phrase reason = passed_over(document);
        if (reason.empty()) files.push_back(document.string());
        if (!reason.empty()) complain(phrase("{}: skipped: {}", document.string(), reason), locale);
    }
    if (files.size() == before)
        complain(phrase("{}: no base detail or project in this folder", folder.string()), locale);
    return files.size() > before;
}

}  // namespace

std::optional<Inputs> find_inputs(const std::vector<std::string>& names, const format::Locale& locale) {
    Inputs inputs;
    inputs.several = names.size() > 1;
    bool sound = true;
    for (const std::string& name : names) {
        std::error_code unknown;
        if (!fs::is_directory(name, unknown)) {
            inputs.files.push_back(name);
            continue;
        }
        inputs.several = true;
        sound = add_folder(name, inputs.files, locale) && sound;
    }
    return sound ? std::optional(inputs) : std::nullopt;
}

}  // namespace toehold::cli

#include "cli/inputs.h"

#include "cli/console.h"
#include "xml/document/file.h"

#include <algorithm>
#include <filesystem>

namespace toehold::cli {
namespace {

namespace fs = std::filesystem;

std::optional<std::vector<fs::path>> documents_of(const fs::path& folder) {
    std::vector<fs::path> documents;
    std::error_code error;
    for (fs::directory_iterator entry(folder, error), end; !error && entry != end; entry.increment(error)) {
        std::error_code unknown;
        if (entry->path().extension() == ".xml" && !entry->is_directory(unknown)) documents.push_back(entry->path());
    }
    if (error) {
        complain(folder.string() + ": the folder cannot be read: " + error.message());
        return std::nullopt;
    }
    std::sort(documents.begin(), documents.end());
    return documents;
}

/// Why a document of a folder is passed over; empty: it is a base detail or a project, or cannot be read, which its
/// review says.
std::string passed_over(const fs::path& document) {
    switch (xml::document_kind(document)) {
        case xml::DocumentKind::detail:
        case xml::DocumentKind::project:
            return {};
        case xml::DocumentKind::plates:
            return "a plate document";
        case xml::DocumentKind::catalog:
            return "a catalog";
        case xml::DocumentKind::unknown:
            break;
    }
    return xml::read_text(document).text ? "no base detail or project" : "";
}

bool add_folder(const fs::path& folder, std::vector<std::string>& files) {
    const auto documents = documents_of(folder);
    if (!documents) return false;
    const std::size_t before = files.size();
    for (const fs::path& document : *documents) {
        const std::string reason = passed_over(document);
        if (reason.empty()) files.push_back(document.string());
        if (!reason.empty()) complain(document.string() + ": passed over: " + reason);
    }
    if (files.size() == before) complain(folder.string() + ": the folder holds no base detail or project");
    return files.size() > before;
}

}  // namespace

std::optional<Inputs> find_inputs(const std::vector<std::string>& names) {
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
        sound = add_folder(name, inputs.files) && sound;
    }
    return sound ? std::optional(inputs) : std::nullopt;
}

}  // namespace toehold::cli

#include "catalog/resolve.h"
#include "cli/commands.h"
#include "cli/console.h"
#include "cli/data_folder.h"
#include "cli/resolve_project.h"
#include "xml/catalog/catalog_file.h"
#include "xml/detail/detail_file.h"
#include "xml/detail/plates_file.h"
#include "xml/document/file.h"

#include <algorithm>

namespace toehold::cli {
namespace {

namespace fs = std::filesystem;

/// The catalogs are read once, and only when a detail needs them.
class CatalogOnDemand {
  public:
    explicit CatalogOnDemand(std::string folder) : folder_(std::move(folder)) {}
    [[nodiscard]] const std::optional<catalog::Catalog>& get() {
        if (!tried_) catalog_ = load_catalog(folder_);
        tried_ = true;
        return catalog_;
    }

  private:
    std::string folder_;
    bool tried_ = false;
    std::optional<catalog::Catalog> catalog_;
};

ExitStatus validate_detail(const std::string& file, CatalogOnDemand& catalogs) {
    const xml::DetailRead read = xml::read_detail(file);
    if (!read.detail || !read.problems.empty()) return worse(complain(read.problems), ExitStatus::unusable_input);
    const auto& catalog = catalogs.get();
    if (!catalog) return ExitStatus::unusable_input;
    catalog::Resolution resolution = catalog::resolve(*read.detail, *catalog);
    xml::locate(resolution.problems, file, read.lines);
    if (!resolution.resolved) return worse(complain(resolution.problems), ExitStatus::unusable_input);
    print(file + ": sound base detail \"" + read.detail->name + "\", SHA-256 " + read.sha256 + "\n");
    return ExitStatus::adequate;
}

ExitStatus validate_project(const std::string& file, CatalogOnDemand& catalogs) {
    const auto& catalog = catalogs.get();
    if (!catalog) return ExitStatus::unusable_input;
    const ResolvedProject resolved = resolve_project(file, *catalog);
    if (!resolved.project) return worse(complain(resolved.problems), ExitStatus::unusable_input);
    print(file + ": sound project \"" + resolved.project->name + "\" of " + std::to_string(resolved.posts.size()) +
          " posts, SHA-256 " + resolved.sha256 + "\n");
    return ExitStatus::adequate;
}

ExitStatus validate_plates(const std::string& file) {
    const xml::PlatesRead read = xml::read_plates(file);
    if (!read.problems.empty()) return complain(read.problems);
    print(file + ": sound plate document\n");
    for (const model::Plate& plate : read.plates) {
        print("  " + plate.id + "  SHA-256 " + xml::plate_sha256(plate) + "\n");
    }
    return ExitStatus::adequate;
}

ExitStatus validate_data_folder(const fs::path& folder) {
    const xml::CatalogRead read = xml::read_catalog(folder);
    if (read.problems.empty()) print(folder.string() + ": sound data folder\n");
    return complain(read.problems);
}

/// Rows of one catalog refer to rows of others, so its whole folder is read; only its own problems are said.
ExitStatus validate_catalog(const std::string& file) {
    std::error_code error;
    xml::CatalogRead read = xml::read_catalog(fs::absolute(file, error).parent_path().parent_path());
    const fs::path name = fs::path(file).filename();
    model::Problems own;
    std::copy_if(read.problems.begin(), read.problems.end(), std::back_inserter(own),
                 [&name](const model::Problem& problem) { return fs::path(problem.file).filename() == name; });
    if (own.empty()) print(file + ": sound catalog\n");
    return complain(own);
}

ExitStatus validate(const std::string& file, CatalogOnDemand& catalogs) {
    std::error_code error;
    if (fs::is_directory(file, error)) return validate_data_folder(file);
    switch (xml::document_kind(file)) {
        case xml::DocumentKind::plates:
            return validate_plates(file);
        case xml::DocumentKind::catalog:
            return validate_catalog(file);
        case xml::DocumentKind::project:
            return validate_project(file, catalogs);
        case xml::DocumentKind::detail:
        case xml::DocumentKind::unknown:
            break;  // the reader of details says why an unknown one is none
    }
    return validate_detail(file, catalogs);
}

}  // namespace

ExitStatus run(const ValidateCommand& command) {
    CatalogOnDemand catalogs(command.data);
    ExitStatus status = ExitStatus::adequate;
    for (const std::string& file : command.files) status = worse(status, validate(file, catalogs));
    return status;
}

}  // namespace toehold::cli

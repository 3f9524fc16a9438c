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
using format::Locale;
using format::phrase;

void say(const format::Phrase& line, const Locale& locale) { print(format::text(line, locale) + "\n"); }

/// The catalogs are read once, and only when a detail needs them.
class CatalogOnDemand {
  public:
    CatalogOnDemand(std::string folder, Locale locale) : folder_(std::move(folder)), locale_(std::move(locale)) {}
    [[nodiscard]] const std::optional<catalog::Catalog>& get() {
        if (!tried_) catalog_ = load_catalog(folder_, locale_);
        tried_ = true;
        return catalog_;
    }

  private:
    std::string folder_;
    Locale locale_;
    bool tried_ = false;
    std::optional<catalog::Catalog> catalog_;
};

ExitStatus validate_detail(const std::string& file, CatalogOnDemand& catalogs, const Locale& locale) {
    const xml::DetailRead read = xml::read_detail(file);
    if (!read.detail || !read.problems.empty())
        return worse(complain(read.problems, locale), ExitStatus::unusable_input);
    const auto& catalog = catalogs.get();
    if (!catalog) return ExitStatus::unusable_input;
    catalog::Resolution resolution = catalog::resolve(*read.detail, *catalog);
    xml::locate(resolution.problems, file, read.lines);
    if (!resolution.resolved) return worse(complain(resolution.problems, locale), ExitStatus::unusable_input);
    say(phrase("{}: valid base detail \"{}\", SHA-256 {}", file, read.detail->name, read.sha256), locale);
    return ExitStatus::adequate;
}

ExitStatus validate_project(const std::string& file, CatalogOnDemand& catalogs, const Locale& locale) {
    const auto& catalog = catalogs.get();
    if (!catalog) return ExitStatus::unusable_input;
    const ResolvedProject resolved = resolve_project(file, *catalog);
    if (!resolved.project) return worse(complain(resolved.problems, locale), ExitStatus::unusable_input);
    say(phrase("{}: valid project \"{}\", posts: {}, SHA-256 {}", file, resolved.project->name, resolved.posts.size(),
               resolved.sha256),
        locale);
    return ExitStatus::adequate;
}

ExitStatus validate_plates(const std::string& file, const Locale& locale) {
    const xml::PlatesRead read = xml::read_plates(file);
    if (!read.problems.empty()) return complain(read.problems, locale);
    say(phrase("{}: valid plate document", file), locale);
    for (const model::Plate& plate : read.plates) {
        print("  " + plate.id + "  SHA-256 " + xml::plate_sha256(plate) + "\n");
    }
    return ExitStatus::adequate;
}

ExitStatus validate_data_folder(const fs::path& folder, const Locale& locale) {
    const xml::CatalogRead read = xml::read_catalog(folder);
    if (read.problems.empty()) say(phrase("{}: valid data folder", folder.string()), locale);
    return complain(read.problems, locale);
}

/// Rows of one catalog refer to rows of others, so its whole folder is read; only its own problems are said.
ExitStatus validate_catalog(const std::string& file, const Locale& locale) {
    std::error_code error;
    xml::CatalogRead read = xml::read_catalog(fs::absolute(file, error).parent_path().parent_path());
    const fs::path name = fs::path(file).filename();
    model::Problems own;
    std::copy_if(read.problems.begin(), read.problems.end(), std::back_inserter(own),
                 [&name](const model::Problem& problem) { return fs::path(problem.file).filename() == name; });
    if (own.empty()) say(phrase("{}: valid catalog", file), locale);
    return complain(own, locale);
}

ExitStatus validate(const std::string& file, CatalogOnDemand& catalogs, const Locale& locale) {
    std::error_code error;
    if (fs::is_directory(file, error)) return validate_data_folder(file, locale);
    switch (xml::document_kind(file)) {
        case xml::DocumentKind::plates:
            return validate_plates(file, locale);
        case xml::DocumentKind::catalog:
            return validate_catalog(file, locale);
        case xml::DocumentKind::project:
            return validate_project(file, catalogs, locale);
        case xml::DocumentKind::detail:
        case xml::DocumentKind::unknown:
            break;  // the reader of details says why an unknown one is none
    }
    return validate_detail(file, catalogs, locale);
}

}  // namespace

ExitStatus run(const ValidateCommand& command, const Locale& locale) {
    CatalogOnDemand catalogs(command.data, locale);
    ExitStatus status = ExitStatus::adequate;
    for (const std::string& file : command.files) status = worse(status, validate(file, catalogs, locale));
    return status;
}

}  // namespace toehold::cli

// The bill of materials, printed.
#include "paper/bill/bill.h"
#include "cli/commands.h"
#include "cli/console.h"
#include "cli/data_folder.h"
#include "cli/resolve_project.h"
#include "cli/review_file.h"

#include <utility>

namespace toehold::cli {
namespace {

/// A base detail as a project of one post.
ResolvedProject as_project(const std::string& file, const catalog::Catalog& catalog) {
    ResolvedFile input = resolve_file(file, catalog);
    ResolvedProject project;
    project.sha256 = input.sha256;
    project.problems = std::move(input.problems);
    if (!input.resolved) return project;
    project.project = model::project_of(input.resolved->detail);
    project.posts.push_back({project.project->posts.front(), std::move(*input.resolved)});
    return project;
}

}  // namespace

ExitStatus run(const BillCommand& command, const format::Locale& spoken) {
    const format::Locale locale{command.system, spoken.catalogue};
    const auto catalog = load_catalog(command.data, locale);
    if (!catalog) return ExitStatus::unusable_input;
    const ResolvedProject input =
        is_project(command.file) ? resolve_project(command.file, *catalog) : as_project(command.file, *catalog);
    complain(input.problems, locale);
    if (!input.project) return ExitStatus::unusable_input;
    const paper::Bill bill = paper::bill_of_materials(*input.project, input.posts, locale.system);
    print(command.csv ? paper::bill_csv(bill) : paper::bill_text(bill, locale));
    return ExitStatus::adequate;
}

}  // namespace toehold::cli

#include "catalog/resolve.h"
#include "checks/registry.h"
#include "cli/commands.h"
#include "cli/console.h"
#include "cli/data_folder.h"
#include "cli/plugins.h"
#include "output/json.h"
#include "output/text.h"
#include "review/remedies.h"
#include "review/review.h"
#include "xml/detail_file.h"

#include <algorithm>
#include <set>

namespace toehold::cli {
namespace {

constexpr std::string_view standard_input = "-";
constexpr std::string_view every_check = "all";

std::string name_of(const std::string& file) { return file == standard_input ? "standard input" : file; }

xml::DetailRead read(const std::string& file) {
    if (file != standard_input) return xml::read_detail(file);
    const auto text = read_standard_input();
    if (text) return xml::read_detail_text(*text, name_of(file));
    xml::DetailRead unread;
    unread.problems.push_back({name_of(file), 0, "", "", "", "cannot be read"});
    return unread;
}

/// The review of a file; absent, with its problems said, when the file cannot be used.
std::optional<review::Review> review_file(const std::string& file, const catalog::Catalog& catalog) {
    const xml::DetailRead read_file = read(file);
    if (!read_file.detail || !read_file.problems.empty()) {
        complain(read_file.problems);
        return std::nullopt;
    }
    catalog::Resolution resolution = catalog::resolve(*read_file.detail, catalog);
    if (!resolution.resolved) {
        xml::locate(resolution.problems, name_of(file), read_file.lines);
        complain(resolution.problems);
        return std::nullopt;
    }
    review::Review result = review::review(*resolution.resolved, read_file.sha256);
    result.remedies = review::find_remedies(result, catalog);
    return result;
}

std::string explanation(const review::Review& review, const CheckCommand& command) {
    if (command.explain != every_check) {
        std::string text = output::explain_text(review, command.explain, command.system);
        if (text.empty()) text = "The check " + command.explain + " has no result for this detail.\n";
        return text;
    }
    std::string text;
    std::set<std::string> explained;
    for (const checks::CheckResult& result : review.checks) {
        if (!explained.insert(result.id).second) continue;
        text += (text.empty() ? "" : "\n") + output::explain_text(review, result.id, command.system);
    }
    return text.empty() ? "No check has a result for this detail.\n" : text;
}

std::string text_of(const review::Review& review, const CheckCommand& command) {
    if (command.json) return output::review_json(review);
    if (!command.explain.empty()) return explanation(review, command);
    return output::review_text(review, output::TextOptions{command.system, command.all_rows});
}

/// Several documents become one array, so that what is printed is always one JSON value.
struct Joints {
    std::string before, between, after;
};

Joints joints(const CheckCommand& command) {
    if (command.files.size() < 2) return {};
    if (command.json) return {"[\n", ",\n", "]\n"};
    return {"", "\n" + std::string(100, '=') + "\n\n", ""};
}

bool is_check(const std::string& id) {
    const auto& all = checks::registered_checks();
    return std::any_of(all.begin(), all.end(), [&id](const checks::Check& check) { return check.id == id; });
}

}  // namespace

ExitStatus run(const CheckCommand& command) {
    if (!load_plugins(command.plugins)) return ExitStatus::unusable_input;
    if (!command.explain.empty() && command.explain != every_check && !is_check(command.explain)) {
        complain("there is no check \"" + command.explain + "\"; toehold list checks names them");
        return ExitStatus::unusable_input;
    }
    const auto catalog = load_catalog(command.data);
    if (!catalog) return ExitStatus::unusable_input;
    const Joints joint = joints(command);
    ExitStatus status = ExitStatus::adequate;
    std::string_view before;
    print(joint.before);
    for (const std::string& file : command.files) {
        const auto review = review_file(file, *catalog);
        if (!review) {
            status = worse(status, ExitStatus::unusable_input);
            continue;
        }
        print(before);
        print(text_of(*review, command));
        before = joint.between;
        if (review->verdict != review::Verdict::adequate) status = worse(status, ExitStatus::not_adequate);
    }
    print(joint.after);
    return status;
}

}  // namespace toehold::cli

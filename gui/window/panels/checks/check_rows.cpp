#include "window/panels/checks/check_rows.h"

#include "drawing/marked_parts.h"
#include "review/groups.h"

#include <algorithm>
#include <map>

namespace toehold::window {

CheckIndex index_checks(const std::vector<checks::CheckResult>& results, const model::BaseDetail& detail) {
    CheckIndex index;
    std::map<std::string, int> alike;
    for (const checks::CheckResult& result : results) {
        const std::string name = result.id + "|" + model::key(result.part);
        index.keys.push_back(name + "|" + std::to_string(alike[name]++));
        index.parts.push_back(drawing::marked_parts(result.part, detail));
    }
    return index;
}

bool concerns(const CheckIndex& index, std::size_t result, const std::vector<model::PartId>& selection) {
    const std::vector<model::PartId>& parts = index.parts[result];
    return std::any_of(parts.begin(), parts.end(),
                       [&selection](const model::PartId& part) { return model::contains(selection, part); });
}

std::vector<std::size_t> filtered(const std::vector<checks::CheckResult>& results, const CheckIndex& index,
                                  CheckFilter filter, const std::vector<model::PartId>& selection) {
    std::vector<std::size_t> shown;
    for (std::size_t at = 0; at < results.size(); ++at) {
        if (filter == CheckFilter::not_holding && results[at].status == checks::Status::holds) continue;
        if (filter == CheckFilter::of_selection && !concerns(index, at, selection)) continue;
        shown.push_back(at);
    }
    return shown;
}

std::vector<CheckRow> rows(const std::vector<checks::CheckResult>& results, const CheckIndex& index,
                           const std::vector<std::size_t>& shown, const std::set<std::string>& open,
                           const std::vector<std::string>& messages) {
    std::vector<CheckRow> list;
    list.reserve(messages.size() + shown.size());
    for (const std::string& message : messages) list.push_back({RowKind::message, 0, 0, message});
    for (const review::Group& group : review::grouped(results, shown)) {
        const std::size_t at = group.worst();
        const auto add = [&](RowKind kind, std::size_t step) { list.push_back({kind, at, step, {}, group.results}); };
        add(RowKind::result, 0);
        if (open.count(index.keys[at]) == 0) continue;
        add(RowKind::covers, 0);
        for (std::size_t step = 0; step < results[at].steps.size(); ++step) add(RowKind::step, step);
        add(RowKind::conclusion, 0);
        if (!results[at].note.empty()) add(RowKind::note, 0);
    }
    return list;
}

int next_not_holding(const std::vector<CheckRow>& rows, const std::vector<checks::CheckResult>& results, int from) {
    const int count = static_cast<int>(rows.size());
    for (int step = 1; step <= count; ++step) {
        const int at = (from + step) % count;
        const CheckRow& row = rows[static_cast<std::size_t>(at)];
        if (row.kind == RowKind::result && results[row.result].status != checks::Status::holds) return at;
    }
    return -1;
}

}  // namespace toehold::window

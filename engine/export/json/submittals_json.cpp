#include "export/json/submittals_json.h"

#include <nlohmann/json.hpp>

namespace toehold::exporting {
namespace {

using Json = nlohmann::ordered_json;

std::string dumped(const Json& json) {
    constexpr int indent = 2;
    return json.dump(indent, ' ', false, Json::error_handler_t::replace) + "\n";
}

}  // namespace

std::string unusable_json(const std::string& file, const model::Problems& problems) {
    Json all = Json::array();
    for (const model::Problem& problem : problems) {
        all.push_back({{"file", problem.file},
                       {"line", problem.line > 0 ? Json(problem.line) : Json(nullptr)},
                       {"element", problem.element},
                       {"message", format::english(problem.message)},
                       {"sentence", model::sentence(problem)}});
    }
    return dumped({{"schema", "toehold.unusable/1"}, {"file", file}, {"problems", all}});
}

std::string stopped_json(std::size_t done, const std::vector<std::string>& left) {
    return dumped({{"schema", "toehold.stopped/1"}, {"done", done}, {"not_reviewed", left}});
}

}  // namespace toehold::exporting

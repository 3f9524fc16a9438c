#include "export/json/table_json.h"

#include <nlohmann/json.hpp>

namespace toehold::exporting {

std::string table_json(const std::vector<std::string_view>& keys, const std::vector<std::vector<std::string>>& rows) {
    using Json = nlohmann::ordered_json;
    Json all = Json::array();
    for (const std::vector<std::string>& row : rows) {
        Json object;
        for (std::size_t column = 0; column < keys.size(); ++column) object[std::string(keys[column])] = row.at(column);
        all.push_back(std::move(object));
    }
    constexpr int indent = 2;
    return all.dump(indent, ' ', false, Json::error_handler_t::replace) + "\n";
}

}  // namespace toehold::exporting

#pragma once
// A result of a check as JSON, alike in every document that has one.
#include "format/phrase.h"

#include <nlohmann/json.hpp>

#include <vector>

namespace toehold::checks {
struct CheckResult;
}
namespace toehold::model {
struct PartId;
}

namespace toehold::exporting::as_json {

/// In English.
[[nodiscard]] nlohmann::ordered_json sentences(const std::vector<format::Phrase>& all);
/// What a result is about, to be compared and not read: kind, id, and where it is not the whole part, which.
[[nodiscard]] nlohmann::ordered_json part(const model::PartId& part);
/// With its worked steps. An infinite number is written as null.
[[nodiscard]] nlohmann::ordered_json check(const checks::CheckResult& result);

}  // namespace toehold::exporting::as_json

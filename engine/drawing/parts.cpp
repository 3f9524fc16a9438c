#include "drawing/parts.h"

#include "drawing/marked_parts.h"

#include <algorithm>

namespace toehold::drawing {
namespace {

/// Ledgers and beams are one kind on drawings.
std::string name_of(const model::PartId& part) {
    const bool support = part.kind == model::PartKind::ledger || part.kind == model::PartKind::beam;
    return support ? "support " + part.id : model::key(part);
}

std::vector<std::string> names_of(const std::vector<model::PartId>& parts) {
    std::vector<std::string> names;
    for (const model::PartId& part : parts) names.push_back(name_of(part));
    return names;
}

/// A result that does not carry its part yet has the part's key.
std::vector<std::string> names_of(const model::PartId& part, const std::string& key, const model::BaseDetail& detail) {
    if (part.kind != model::PartKind::none) return names_of(marked_parts(part, detail));
    return names_of(marked_parts(model::find_part(model::parts(detail), key).value_or(model::PartId{}), detail));
}

}  // namespace

std::string anchor_part(std::string_view id) { return "anchor " + std::string(id); }

std::string id_of(std::string_view part, std::string_view kind) {
    const bool has_id =
        part.size() > kind.size() + 1 && part.substr(0, kind.size()) == kind && part[kind.size()] == ' ';
    return has_id ? std::string(part.substr(kind.size() + 1)) : std::string();
}

bool contains(const std::vector<std::string>& parts, std::string_view part) {
    return std::find(parts.begin(), parts.end(), part) != parts.end();
}

std::vector<std::string> parts(const model::BaseDetail& detail) { return names_of(model::parts(detail)); }

std::vector<std::string> parts_of(const checks::CheckResult& result, const model::BaseDetail& detail) {
    return names_of(result.part, result.subject, detail);
}

std::vector<std::string> parts_of(const checks::Finding& finding, const model::BaseDetail& detail) {
    return names_of(finding.part, finding.subject, detail);
}

}  // namespace toehold::drawing

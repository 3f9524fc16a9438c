#include "review/memory/used.h"

#include "catalog/named_rows.h"
#include "review/memory/values.h"
#include "review/review.h"

#include <algorithm>

namespace toehold::review {
namespace {

using format::Phrase;
using format::phrase;

bool has(const Review& review, std::string_view id) {
    return std::any_of(review.checks.begin(), review.checks.end(),
                       [id](const checks::CheckResult& result) { return result.id == id; }) ||
           std::any_of(review.findings.begin(), review.findings.end(),
                       [id](const checks::Finding& finding) { return finding.id == id; });
}

bool cites(const std::string& clause, std::string_view source) { return clause.find(source) != std::string::npos; }

/// A clause is how a step names its source. That of the whole result names the check's standards, whatever was used.
bool cites(const Review& review, std::string_view source) {
    return std::any_of(review.checks.begin(), review.checks.end(),
                       [source](const checks::CheckResult& result) {
                           return std::any_of(result.steps.begin(), result.steps.end(),
                                              [source](const auto& step) { return cites(step.clause, source); });
                       }) ||
           std::any_of(review.findings.begin(), review.findings.end(),
                       [source](const checks::Finding& finding) { return cites(finding.clause, source); });
}

bool has_metal(const catalog::Resolved& resolved, catalog::MetalKind kind) {
    return resolved.post_metal.kind == kind || catalog::foot_metal(resolved).kind == kind;
}

bool has_engineered_wood(const catalog::Resolved& resolved) {
    const auto is = [](const catalog::MemberMaterial& wood) { return wood.grade.engineered.has_value(); };
    return std::any_of(resolved.blocks.begin(), resolved.blocks.end(), is) ||
           std::any_of(resolved.rims.begin(), resolved.rims.end(), is) || (resolved.joists && is(*resolved.joists));
}

bool concerned(const catalog::Resolved& resolved, Concerns concerns) {
    switch (concerns) {
        case Concerns::aluminum:
            return has_metal(resolved, catalog::MetalKind::aluminum);
        case Concerns::stainless:
            return has_metal(resolved, catalog::MetalKind::stainless_steel);
        case Concerns::engineered_wood:
            return has_engineered_wood(resolved);
        case Concerns::lrfd:
            return resolved.detail.basis.method == model::Method::lrfd;
        case Concerns::anything:
            break;
    }
    return true;
}

bool rests_on(const Review& review, const FromMemory& value) {
    if (!concerned(review.resolved, value.concerns)) return false;
    if (value.used_by.empty()) return cites(review, value.source);
    return std::any_of(value.used_by.begin(), value.used_by.end(),
                       [&review](std::string_view id) { return has(review, id); });
}

void add(std::vector<Phrase>& all, Phrase one) {
    if (std::find(all.begin(), all.end(), one) == all.end()) all.push_back(std::move(one));
}

}  // namespace

std::vector<Phrase> from_memory(const Review& review) {
    std::vector<Phrase> all;
    for (const FromMemory& value : from_memory()) {
        if (rests_on(review, value))
            add(all, phrase("{} ({})", value.value, format::Citation{std::string(value.source)}));
    }
    for (const catalog::NamedRow& row : catalog::named_rows(review.resolved)) {
        if (row.source.evidence == catalog::Evidence::from_memory) add(all, phrase("catalog values of {}", row.name));
    }
    return all;
}

Phrase memory_caution(const Review& review) {
    const std::vector<Phrase> values = from_memory(review);
    if (values.empty()) return {};
    Phrase list = values.front();
    for (std::size_t next = 1; next < values.size(); ++next) list = phrase("{}; {}", std::move(list), values[next]);
    return phrase("Used here from memory, to be confirmed before this review is relied on: {}.", std::move(list));
}

}  // namespace toehold::review

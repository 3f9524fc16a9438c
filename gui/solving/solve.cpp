#include "solving/solve.h"

#include "demand/mount.h"
#include "model/validate.h"
#include "search/remedies/remedies.h"
#include "xml/detail/detail_file.h"
#include "xml/document/file.h"

#include <exception>
#include <utility>

namespace toehold::solving {
namespace {

constexpr int polar_directions = 72;

Quick quick_of(const catalog::Resolved& resolved, std::optional<double> direction_rad) {
    demand::Preview preview(resolved);
    Quick quick;
    quick.polar = preview.polar_envelope(polar_directions);
    const double direction = direction_rad.value_or(quick.polar.largest_direction_rad);
    quick.push = preview.push(preview.worst_case(direction), direction);
    quick.cases = preview.cases();
    return quick;
}

Result with_review(const Result& resolved, Stage stage, review::Review review) {
    Result result = resolved;
    result.stage = stage;
    result.failure = review.no_demand;
    result.review = std::make_shared<const review::Review>(std::move(review));
    return result;
}

}  // namespace

Result resolve(const Request& request, Stage stage, const catalog::Catalog& catalog) {
    Result result;
    result.revision = request.revision;
    result.stage = stage;
    result.problems = model::validate(request.detail);
    if (!result.problems.empty()) return result;
    catalog::Resolution resolution = catalog::resolve(request.detail, catalog);
    result.problems = std::move(resolution.problems);
    if (resolution.resolved)
        result.resolved = std::make_shared<const catalog::Resolved>(std::move(*resolution.resolved));
    return result;
}

Result solve_quick(const Request& request, const catalog::Catalog& catalog) {
    Result result;
    result.revision = request.revision;
    try {
        result = resolve(request, Stage::quick, catalog);
        if (result.resolved)
            result.quick = std::make_shared<const Quick>(quick_of(*result.resolved, request.direction_rad));
    } catch (const demand::NoDemand& none) {
        result.failure = none.why;
    } catch (const std::exception& fault) {
        result.failure = format::verbatim(fault.what());
    }
    return result;
}

void review_in_stages(const Request& request, const catalog::Catalog& catalog, const review::Stop& stop,
                      const std::function<void(Result)>& hand_over) {
    Result result;
    result.revision = request.revision;
    result.stage = Stage::evaluated;
    try {
        result = resolve(request, Stage::evaluated, catalog);
        if (!result.resolved) {
            hand_over(std::move(result));
            return;
        }
        if (stop()) return;
        // Of the file as it would be saved now.
        const std::string digest = xml::sha256(xml::write_detail(request.detail));
        review::Review review = review::evaluate(*result.resolved, digest);
        if (stop()) return;
        result = with_review(result, Stage::evaluated, review);
        hand_over(result);
        review::add_assumptions(review, stop);
        if (stop()) return;
        review.remedies = search::find_remedies(review, catalog, stop);
        if (stop()) return;
        hand_over(with_review(result, Stage::complete, std::move(review)));
    } catch (const std::exception& fault) {
        result.failure = format::verbatim(fault.what());
        hand_over(std::move(result));
    }
}

Result solve_review(const Request& request, const catalog::Catalog& catalog) {
    Result last;
    review_in_stages(
        request, catalog, [] { return false; }, [&last](Result result) { last = std::move(result); });
    return last;
}

}  // namespace toehold::solving

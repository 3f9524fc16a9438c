#include "export/json/line_json.h"

#include "export/json/check_json.h"
#include "export/json/keys.h"
#include "format/figures.h"
#include "review/line/line_review.h"
#include "wording/line.h"

namespace toehold::exporting {
namespace {

using Json = nlohmann::ordered_json;

Json place(const review::PushPlace& place) {
    return {{"from", place.from},
            {"to", place.to},
            {"along_in", place.along_in},
            {"span_in", place.span_in},
            {"direction_deg", format::degrees(place.direction_rad)}};
}

Json lone(const review::PostShare& post) {
    if (!post.lone || !post.lone_verdict) return nullptr;
    return {{"verdict", key(*post.lone_verdict)},
            {"check", post.lone->check},
            {"subject", model::key(post.lone->part)},
            {"ratio", post.lone->ratio}};
}

Json post_share(const review::PostShare& post, bool solved) {
    return {{"post", post.post},
            {"role", std::string(model::word(post.role))},
            {"share", solved ? Json(post.share) : Json(nullptr)},
            {"push_stood", solved ? place(post.stood) : Json(nullptr)},
            {"counted", post.counted},
            {"line_length_in", solved ? Json(post.line_length_in) : Json(nullptr)},
            {"half_spans_in", post.half_spans_in},
            {"reviewed_length_in", post.reviewed_in},
            {"lone", lone(post)}};
}

Json movement(const review::LineMovementAt& at) {
    return {{"subject", model::key(at.part)},
            {"rail_in", at.movement.rail_in},
            {"connection_in", at.movement.connection_in},
            {"posts_in", at.movement.posts_in},
            {"bases_and_framing_in", at.movement.bases_in},
            {"total_in", at.movement.total_in()},
            {"limit_in", at.limit_in ? Json(*at.limit_in) : Json(nullptr)}};
}

Json proof(const review::LineReview& line) {
    if (!line.proof) return nullptr;
    return {{"frames", line.proof->frames}, {"residual", line.proof->residual}};
}

Json line(const review::LineReview& line) {
    const bool solved = line.rail && line.unsolved.empty();
    Json posts = Json::array(), checks = Json::array(), movements = Json::array();
    for (const review::PostShare& post : line.posts) posts.push_back(post_share(post, solved));
    for (const checks::CheckResult& result : line.checks) checks.push_back(as_json::check(result));
    for (const review::LineMovementAt& at : line.movements) movements.push_back(movement(at));
    return {{"id", line.id},
            {"sharing", line.sharing},
            {"rail_described", line.rail},
            {"rail_continuous", line.continuous},
            {"verdict", key(line.verdict)},
            {"reason", format::english(wording::line_reason(line))},
            {"push_lb", line.push_lb},
            {"posts", posts},
            {"checks", checks},
            {"movement", movements},
            {"not_solved", format::english(line.unsolved)},
            {"rests_on", as_json::sentences(line.rests_on)},
            {"assumptions", as_json::sentences(line.assumptions)},
            {"roles", roles_json(review::roles_of(line))},
            {"load_along_rail", line.load_along},
            {"proof", proof(line)}};
}

}  // namespace

Json roles_json(const std::vector<model::RoleCount>& counts) {
    Json all = Json::array();
    for (const model::RoleCount& count : counts)
        all.push_back({{"role", std::string(model::word(count.role))}, {"quantity", count.posts}});
    return all;
}

Json lines_json(const std::vector<review::LineReview>& lines) {
    Json all = Json::array();
    for (const review::LineReview& one : lines) all.push_back(line(one));
    return all;
}

}  // namespace toehold::exporting

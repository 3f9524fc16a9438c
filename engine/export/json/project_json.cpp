#include "export/json/project_json.h"

#include "export/json/check_json.h"
#include "export/json/keys.h"
#include "export/json/line_json.h"
#include "export/json/review_json.h"
#include "review/assumptions.h"
#include "review/schedule/marks.h"
#include "review/schedule/post_schedule.h"

#include <nlohmann/json.hpp>

namespace toehold::exporting {
namespace {

using Json = nlohmann::ordered_json;

Json post(const review::PostReview& one) {
    return {{"id", one.post.id},
            {"x_in", one.post.at.x_in},
            {"y_in", one.post.at.y_in},
            {"mount", one.post.mount},
            {"verdict", key(one.review.verdict)},
            {"shares_framing_with", one.shares_with},
            {"faces", std::string(model::word(one.post.facing))},
            // Its own text, read again: one place says what a review's document holds.
            {"review", Json::parse(review_json(one.review))}};
}

Json shared(const review::SharedMember& one) {
    return {{"part", {{"kind", model::kind_word(one.part.kind)}, {"id", one.part.id}}}, {"posts", one.posts}};
}

/// Posts that are alike. An infinite ratio, or one of what is not specified, is null.
Json schedule_row(const review::ScheduleRow& row) {
    const review::Cause& cause = row.cause;
    return {{"marks", review::joined_marks(row.marks, " to ")},
            {"posts", row.marks},
            {"quantity", row.posts.size()},
            {"mount", row.mount},
            {"faces", std::string(model::word(row.facing))},
            {"verdict", key(row.verdict)},
            {"first_cause",
             {{"id", cause.id},
              {"title", format::english(cause.title)},
              {"subject", model::key(cause.part)},
              {"ratio", cause.ratio ? Json(*cause.ratio) : Json(nullptr)}}},
            {"largest_tension_lb", row.tension ? Json(row.tension->tension_lb) : Json(nullptr)},
            {"share", row.share ? Json(*row.share) : Json(nullptr)}};
}

}  // namespace

std::string project_json(const review::ProjectReview& review, std::string_view file) {
    Json posts = Json::array(), members = Json::array(), schedule = Json::array();
    for (const review::ScheduleRow& row : review::post_schedule(review)) schedule.push_back(schedule_row(row));
    for (const review::PostReview& one : review.posts) posts.push_back(post(one));
    for (const review::SharedMember& one : review.shared) members.push_back(shared(one));
    Json document = {{"schema", "toehold.project/1"},
                     {"project", review.project},
                     {"input_sha256", review.input_sha256},
                     {"verdict", key(review.verdict)},
                     {"posts", posts},
                     {"shared_framing", members},
                     {"loads_act_together", review.pushes_together},
                     {"assumptions", as_json::sentences(review.assumptions)},
                     {"schedule", schedule},
                     {"lines", lines_json(review.lines)},
                     {"roles", roles_json(review.roles)}};
    if (!file.empty()) document["file"] = file;
    constexpr int indent = 2;
    return document.dump(indent, ' ', false, Json::error_handler_t::replace) + "\n";
}

}  // namespace toehold::exporting

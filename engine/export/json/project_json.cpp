#include "export/json/project_json.h"

#include "export/json/keys.h"
#include "export/json/review_json.h"
#include "review/assumptions.h"

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
            // Its own text, read again: one place says what a review's document holds.
            {"review", Json::parse(review_json(one.review))}};
}

Json shared(const review::SharedMember& one) {
    return {{"part", {{"kind", model::kind_word(one.part.kind)}, {"id", one.part.id}}}, {"posts", one.posts}};
}

Json sentences(const std::vector<format::Phrase>& phrases) {
    Json all = Json::array();
    for (const format::Phrase& phrase : phrases) all.push_back(format::english(phrase));
    return all;
}

}  // namespace

std::string project_json(const review::ProjectReview& review) {
    Json posts = Json::array(), members = Json::array();
    for (const review::PostReview& one : review.posts) posts.push_back(post(one));
    for (const review::SharedMember& one : review.shared) members.push_back(shared(one));
    const Json document = {{"schema", "toehold.project/1"},
                           {"project", review.project},
                           {"input_sha256", review.input_sha256},
                           {"verdict", key(review.verdict)},
                           {"posts", posts},
                           {"shared_framing", members},
                           {"loads_act_together", review.pushes_together},
                           {"assumptions", sentences(review.assumptions)}};
    constexpr int indent = 2;
    return document.dump(indent, ' ', false, Json::error_handler_t::replace) + "\n";
}

}  // namespace toehold::exporting

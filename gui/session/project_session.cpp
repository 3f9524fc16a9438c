#include "session/project_session.h"

#include "review/project_review.h"

#include <algorithm>
#include <utility>

namespace toehold::session {
namespace {

bool holds(const model::GuardLine& line, const std::string& post) {
    return std::find(line.posts.begin(), line.posts.end(), post) != line.posts.end();
}

}  // namespace

ProjectSession::ProjectSession(const catalog::Catalog& catalog, model::Project project, Review review,
                               std::function<void(Change)> told)
    : catalog_(catalog), service_(std::move(review)), told_(std::move(told)), history_(std::move(project)) {
    ask();
}

void ProjectSession::project_has_changed() {
    message_ = {};
    if (model::find_post(project(), selected_) == nullptr) selected_.clear();
    ask();
    told_(Change::project);
}

void ProjectSession::change(const format::Phrase& step, model::Project next) {
    if (next == project()) return;
    history_.apply(step, std::move(next));
    project_has_changed();
}

void ProjectSession::undo() {
    if (!history_.can_undo()) return;
    history_.undo();
    project_has_changed();
}

void ProjectSession::redo() {
    if (!history_.can_redo()) return;
    history_.redo();
    project_has_changed();
}

void ProjectSession::mark_saved() {
    history_.mark_saved();
    told_(Change::file);
}

void ProjectSession::replace(model::Project project) {
    history_ = editing::ProjectHistory(std::move(project));
    selected_.clear();
    fresh_.clear();
    stale_.clear();
    review_.reset();
    project_has_changed();
    told_(Change::file);
}

void ProjectSession::select(const std::string& post) {
    if (post == selected_ || (!post.empty() && model::find_post(project(), post) == nullptr)) return;
    selected_ = post;
    if (const model::GuardLine* shown = line(); shown != nullptr) line_ = shown->id;
    told_(Change::selection);
}

const model::GuardLine* ProjectSession::line() const {
    const std::vector<model::GuardLine>& lines = project().guard_lines;
    const auto shown = std::find_if(lines.begin(), lines.end(), [this](const auto& one) { return one.id == line_; });
    if (shown != lines.end() && (selected_.empty() || holds(*shown, selected_))) return &*shown;
    const auto with_post =
        std::find_if(lines.begin(), lines.end(), [this](const auto& one) { return holds(one, selected_); });
    if (with_post != lines.end()) return &*with_post;
    if (shown != lines.end()) return &*shown;
    return lines.empty() ? nullptr : &lines.front();
}

void ProjectSession::show_line(const std::string& id) {
    line_ = id;
    const auto& lines = project().guard_lines;
    const auto wanted = std::find_if(lines.begin(), lines.end(), [&id](const auto& one) { return one.id == id; });
    if (wanted != lines.end() && !selected_.empty() && !holds(*wanted, selected_)) selected_.clear();
    told_(Change::selection);
}

void ProjectSession::order_by(ScheduleOrder order) {
    if (order == order_) return;
    order_ = order;
    told_(Change::display);
}

void ProjectSession::show_in(units::System system) {
    if (system == system_) return;
    system_ = system;
    told_(Change::display);
}

void ProjectSession::ask() {
    // What the review before found of a post stands until the new one has come to it.
    for (const auto& one : stale_) {
        if (outcome_in(fresh_, one->post) == nullptr) fresh_.push_back(one);
    }
    stale_ = std::exchange(fresh_, {});
    progress_ = {};
    progress_.posts = project().posts.size();
    state_ = State::running;
    number_ = service_.begin(project());
}

void ProjectSession::begin() {
    ask();
    told_(Change::results);
}

void ProjectSession::stop() {
    if (state_ != State::running) return;
    service_.stop();
    state_ = State::stopped;
    told_(Change::results);
}

void ProjectSession::receive(const solving::ProjectNews& news) {
    if (news.number != number_ || state_ != State::running) return;
    progress_ = news;
    if (news.reviewed && outcome_in(fresh_, news.reviewed->post) == nullptr)
        fresh_.push_back(std::make_shared<const solving::PostOutcome>(*news.reviewed));
    if (news.review != nullptr) {
        review_ = news.review;
        fresh_.clear();
        for (const review::PostReview& one : review_->posts)
            fresh_.push_back(
                std::make_shared<const solving::PostOutcome>(solving::outcome_of(one.post.id, one.review)));
        stale_.clear();
        state_ = State::done;
    } else if (news.last()) {
        state_ = State::failed;
    }
    told_(Change::results);
}

const review::LineReview* ProjectSession::line_review() const {
    const model::GuardLine* const shown = line();
    if (review_ == nullptr || shown == nullptr) return nullptr;
    for (const review::LineReview& one : review_->lines) {
        if (one.id == shown->id) return &one;
    }
    return nullptr;
}

void ProjectSession::say(format::Phrase message) {
    message_ = std::move(message);
    told_(Change::display);
}

}  // namespace toehold::session

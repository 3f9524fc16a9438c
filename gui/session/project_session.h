#pragma once
// One project on the session: its history, the post selected, the schedule in the order wished, and the newest results.
// GUI thread only, no toolkit in it.
#include "editing/history.h"
#include "format/phrase.h"
#include "model/problem.h"
#include "solving/projects.h"
#include "units/quantity.h"

#include <cstddef>
#include <cstdint>
#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <vector>

namespace toehold::review {
struct LineReview;
struct PostShare;
}  // namespace toehold::review

namespace toehold::session {

enum class ScheduleOrder {
    plan,        ///< as the project lists its posts
    first_cause  ///< posts that fail first, those of one cause together, the most of them first
};

/// A post in the schedule. Holds what it shows: the session may have gone on before it is painted.
struct ScheduleEntry {
    std::string post, mount;
    std::shared_ptr<const solving::PostOutcome> outcome = nullptr;  ///< absent: not reviewed yet
    bool stale = false;                                             ///< of an earlier state of the project
    /// The largest of the guard lines it stands in; absent: none says.
    std::shared_ptr<const review::PostShare> share = nullptr;
    /// Above the first post of a group: `Anchor withdrawal: 12 posts`. Empty: it goes on.
    format::Phrase heading;
};

using PostOutcomes = std::vector<std::shared_ptr<const solving::PostOutcome>>;
/// Of that post; nullptr: none.
[[nodiscard]] std::shared_ptr<const solving::PostOutcome> outcome_in(const PostOutcomes& outcomes,
                                                                     const std::string& post);

class ProjectSession {
  public:
    /// What changed, so that a window redraws no more than it must.
    enum class Change { project, selection, results, display, file };
    enum class State {
        running,  ///< a review of the project as it stands runs
        stopped,  ///< by the reader: what was not reviewed is not
        done,     ///< all that is shown is of the project as it stands
        failed    ///< it cannot be reviewed: `problems` or `failure` says why
    };
    /// The review beside the window.
    struct Review {
        std::function<std::uint64_t(model::Project)> begin;
        std::function<void()> stop;
    };
    /// `told` is called after every change here. The catalog outlives this. A review begins at once.
    ProjectSession(const catalog::Catalog& catalog, model::Project project, Review review,
                   std::function<void(Change)> told);

    // --- the project ---
    [[nodiscard]] const model::Project& project() const { return history_.now(); }
    [[nodiscard]] const catalog::Catalog& catalog() const { return catalog_; }
    [[nodiscard]] const editing::ProjectHistory& history() const { return history_; }
    /// One step of history; its review begins.
    void change(const format::Phrase& step, model::Project next);
    void undo();
    void redo();
    void mark_saved();
    /// Another project in this one's place, without a past.
    void replace(model::Project project);

    // --- what is shown ---
    [[nodiscard]] const std::string& selected() const { return selected_; }  ///< mark; empty: none
    void select(const std::string& post);
    /// The guard line with the post selected, else the one shown before, else the first; nullptr: the project has none.
    [[nodiscard]] const model::GuardLine* line() const;
    void show_line(const std::string& id);
    [[nodiscard]] ScheduleOrder order() const { return order_; }
    void order_by(ScheduleOrder order);
    [[nodiscard]] units::System system() const { return system_; }
    void show_in(units::System system);

    // --- results ---
    [[nodiscard]] State state() const { return state_; }
    void begin();  ///< the review anew
    void stop();
    void receive(const solving::ProjectNews& news);
    [[nodiscard]] const solving::ProjectNews& progress() const { return progress_; }  ///< of the newest review
    [[nodiscard]] const model::Problems& problems() const { return progress_.problems; }
    [[nodiscard]] const format::Phrase& failure() const { return progress_.failure; }
    [[nodiscard]] std::vector<ScheduleEntry> schedule() const;
    /// Newest, perhaps of an earlier state; nullptr: none yet.
    [[nodiscard]] const review::ProjectReview* review() const { return review_.get(); }
    [[nodiscard]] bool review_is_current() const { return review_ != nullptr && state_ == State::done; }
    /// Of the line shown; nullptr: none yet.
    [[nodiscard]] const review::LineReview* line_review() const;

    // --- words for the status line ---
    [[nodiscard]] const format::Phrase& message() const { return message_; }
    void say(format::Phrase message);

  private:
    void ask();
    void project_has_changed();

    const catalog::Catalog& catalog_;
    Review service_;
    std::function<void(Change)> told_;
    editing::ProjectHistory history_;
    std::string selected_, line_;
    ScheduleOrder order_ = ScheduleOrder::plan;
    units::System system_ = units::System::us;
    State state_ = State::running;
    std::uint64_t number_ = 0;  ///< of the newest review
    solving::ProjectNews progress_;
    PostOutcomes fresh_, stale_;  ///< of the newest review, and of the one before
    std::shared_ptr<const review::ProjectReview> review_;
    format::Phrase message_;
};

}  // namespace toehold::session

#pragma once
// One detail on the session: its history, what is selected, which push is looked at, and the newest results. The
// window's panes read it and act through it; none of them knows another. GUI thread only, no toolkit in it.
#include "drawing/annotation/overlay.h"
#include "editing/history.h"
#include "format/phrase.h"
#include "model/part.h"
#include "model/problem.h"
#include "units/quantity.h"

#include <cstdint>
#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace toehold::catalog {
struct Catalog;
struct Resolved;
}  // namespace toehold::catalog
namespace toehold::editing {
struct Edit;
}
namespace toehold::review {
struct Remedy;
struct Review;
}  // namespace toehold::review
namespace toehold::solving {
struct Quick;
struct Request;
struct Result;
}  // namespace toehold::solving

namespace toehold::session {

/// What has changed, so that a pane redraws no more than it must. A new message counts as `display`.
enum class Change { detail, selection, display, results, file };

/// What the drawings show.
struct Display {
    drawing::Method method = drawing::Method::flexible;
    std::optional<double> direction_rad;  ///< of the push looked at; absent: the governing one
    bool pressure = true, bent = false, marks = true, dimensions = true, framing = true;
    bool holds = false;  ///< where the selected part may stand so that every check passes
    units::System system = units::System::us;
    friend bool operator==(const Display&, const Display&) = default;
};

/// How far the results are those of the detail as it stands.
enum class Freshness {
    none,     ///< nothing solved yet, or the detail cannot be solved
    stale,    ///< of an earlier state of the detail
    quick,    ///< demand of this detail at nominal stiffness; checks of an earlier one
    current,  ///< all of this detail
};

class Session {
  public:
    /// `submit` hands a request to a solve service; results come back through `receive`, on the GUI thread.
    /// `translations`: for the reader's language; absent: English.
    Session(const catalog::Catalog& catalog, model::BaseDetail detail, std::function<void(solving::Request)> submit,
            std::shared_ptr<const format::Catalogue> translations = nullptr);

    // --- the detail ---
    [[nodiscard]] const model::BaseDetail& detail() const;
    [[nodiscard]] const catalog::Catalog& catalog() const;
    [[nodiscard]] const editing::History& history() const;
    /// One step of history, and a request to solve. `moving`: the hand is still on it.
    void change(const format::Phrase& step, model::BaseDetail next, const std::string& merge_key = {},
                bool moving = false);
    /// An edit that was refused changes nothing and returns false; `message` has the sentence.
    bool apply(const editing::Edit& edit, const std::string& merge_key = {});
    void rest();  ///< the hand lets go: seals the step and asks for the full review
    void undo();
    void redo();
    void mark_saved();
    /// Another detail in this one's place, without a past: after opening or reverting.
    void replace(model::BaseDetail detail);

    // --- selection: whole parts, as `model::parts` lists them ---
    [[nodiscard]] const std::vector<model::PartId>& selection() const;  ///< in the order selected
    void select(std::vector<model::PartId> parts);
    void toggle(const model::PartId& part);

    // --- what is shown ---
    [[nodiscard]] const Display& display() const;
    /// The reader's units and language, for every sentence of the engine.
    [[nodiscard]] format::Locale locale() const { return {display_.system, translations_}; }
    void show(const Display& display);
    void turn_push(std::optional<double> direction_rad);

    // --- results ---
    [[nodiscard]] Freshness freshness() const;
    [[nodiscard]] const model::Problems& problems()
        const;  ///< of the detail as it stands, from `validate` and `resolve`
    [[nodiscard]] const format::Phrase& failure() const;
    [[nodiscard]] const catalog::Resolved* resolved() const;  ///< of the detail as it stands; nullptr: it cannot be
    [[nodiscard]] const solving::Quick* quick() const;        ///< newest, perhaps stale
    [[nodiscard]] const review::Review* review() const;       ///< newest, perhaps stale
    [[nodiscard]] bool review_is_complete() const;            ///< with assumptions and remedies
    /// For the drawings, from all of this. Ratios and capacities are there only while the review is of the detail as
    /// it stands. Forces a few frames behind a moving hand are not marked stale; behind a resting one they are.
    [[nodiscard]] drawing::Overlay overlay() const;
    [[nodiscard]] std::vector<drawing::PolarCurve> polar_curves() const;  ///< by the method shown; none by hand
    void receive(const solving::Result& result);
    /// Makes a remedy's detail the detail, as one step. A remedy of an earlier state would take back what came after
    /// it: then nothing is done, and `message` says so.
    void apply_remedy(const review::Remedy& remedy);

    // --- words for the status line ---
    [[nodiscard]] const format::Phrase& message() const;
    void say(format::Phrase message);

    // --- who wants to know ---
    /// Called after every change, in the order listened. The returned number ends it.
    int listen(std::function<void(Change)> listener);
    void stop_listening(int number);

  private:
    void notify(Change change);
    void request();
    void detail_has_changed(bool moving);
    void take_quick(const solving::Result& result);
    void take_review(const solving::Result& result);
    [[nodiscard]] const review::Review* current_review() const;
    [[nodiscard]] std::optional<double> direction_asked_for() const;

    const catalog::Catalog& catalog_;
    std::function<void(solving::Request)> submit_;
    std::shared_ptr<const format::Catalogue> translations_;
    editing::History history_;
    std::uint64_t revision_ = 0;
    std::uint64_t first_revision_ = 1;  ///< answers before it are of a detail that was replaced
    bool moving_ = false;
    std::vector<model::PartId> selection_;
    Display display_;
    std::shared_ptr<const catalog::Resolved> resolved_;
    model::Problems problems_;
    std::shared_ptr<const solving::Quick> quick_;
    std::shared_ptr<const catalog::Resolved> quick_resolved_;  ///< what `quick_` is of
    std::uint64_t quick_revision_ = 0;                         ///< 0: none yet
    std::shared_ptr<const review::Review> review_;
    std::uint64_t review_revision_ = 0;
    bool review_is_complete_ = false;
    format::Phrase failure_;
    format::Phrase message_;
    std::vector<std::pair<int, std::function<void(Change)>>> listeners_;
    int next_listener_ = 1;
};

}  // namespace toehold::session

#pragma once
// Where the thing in hand may stand so that every check passes: asked for when a hand takes it, or, where the display
// wants it, of what is selected. GUI thread only, no toolkit in it.
#include "editing/handles.h"
#include "format/phrase.h"
#include "session/session.h"
#include "solving/regions.h"

#include <cstdint>
#include <functional>
#include <memory>
#include <optional>

namespace toehold::session {

class WhereItHolds {
  public:
    /// The search beside the window.
    struct Search {
        std::function<std::uint64_t(model::BaseDetail, editing::Dragged)> begin;
        std::function<void()> stop;
    };
    /// The session outlives this. `told` is called after every change of what is known.
    WhereItHolds(Session& session, Search search, std::function<void()> told);
    ~WhereItHolds();
    WhereItHolds(const WhereItHolds&) = delete;
    WhereItHolds& operator=(const WhereItHolds&) = delete;

    /// A hand has taken the handle; of the detail as it stands now.
    void take(const editing::Handle& handle);
    void let_go();
    void receive(std::shared_ptr<const solving::RegionNews> news);

    /// What is known; nullptr: nothing yet, or nothing is asked.
    [[nodiscard]] const solving::RegionNews* known() const { return known_.get(); }
    /// Something is asked and its last answer has not come.
    [[nodiscard]] bool waits() const { return waits_; }
    /// What is shaded and what not yet, for the status line; empty: nothing is asked, or it cannot be looked for.
    [[nodiscard]] format::Phrase words() const;
    /// The detail when it was asked.
    [[nodiscard]] const model::BaseDetail& detail() const { return detail_; }

  private:
    void ask(std::optional<editing::Dragged> dragged);
    void ask_of_selection();

    Session& session_;
    Search search_;
    std::function<void()> told_;
    std::optional<editing::Dragged> asked_;
    model::BaseDetail detail_;
    std::uint64_t number_ = 0;
    bool in_hand_ = false;
    bool waits_ = false;
    std::shared_ptr<const solving::RegionNews> known_;
    int listening_ = 0;
};

}  // namespace toehold::session

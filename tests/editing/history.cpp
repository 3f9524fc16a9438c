// Undo and redo against a list of states kept by hand.
#include "editing/history.h"

#include "editing/samples.h"
#include "support/compare.h"

#include <random>

using toehold::editing::History;
using toehold::model::BaseDetail;

namespace {

BaseDetail named(const std::string& name) {
    BaseDetail detail;
    detail.name = name;
    return detail;
}

/// The plainest history there can be: what every state was, and where we are.
struct States {
    std::vector<BaseDetail> all;
    std::size_t at = 0;
    BaseDetail saved;
};

}  // namespace

TEST_CASE("a new history has no past and nothing unsaved", "[unit]") {
    History history(named("start"));
    CHECK_FALSE(history.can_undo());
    CHECK_FALSE(history.can_redo());
    CHECK(history.undo_name().empty());
    CHECK(history.redo_name().empty());
    CHECK_FALSE(history.changed());
    history.undo();
    history.redo();
    CHECK(history.now().name == "start");
}

TEST_CASE("steps are undone and done again under their names", "[unit]") {
    History history(named("start"));
    history.apply(toehold::format::verbatim("First"), named("1"));
    history.apply(toehold::format::verbatim("Second"), named("2"));
    CHECK(toehold::format::english(history.undo_name()) == "Second");
    history.undo();
    CHECK(history.now().name == "1");
    CHECK(toehold::format::english(history.undo_name()) == "First");
    CHECK(toehold::format::english(history.redo_name()) == "Second");
    history.redo();
    CHECK(history.now().name == "2");
    history.undo();
    history.apply(toehold::format::verbatim("Other"), named("3"));
    CHECK_FALSE(history.can_redo());
    history.undo();
    CHECK(history.now().name == "1");
}

TEST_CASE("a drag is one step until it is sealed", "[unit]") {
    History history(named("start"));
    history.apply(toehold::format::verbatim("Move hole A"), named("1"), "hole A");
    history.apply(toehold::format::verbatim("Move hole A"), named("2"), "hole A");
    history.apply(toehold::format::verbatim("Move hole A"), named("3"), "hole A");
    history.seal();
    history.apply(toehold::format::verbatim("Move hole A"), named("4"), "hole A");
    history.undo();
    CHECK(history.now().name == "3");
    history.undo();
    CHECK(history.now().name == "start");
    CHECK_FALSE(history.can_undo());
}

TEST_CASE("a drag that comes back to where it began is no step", "[unit]") {
    History history(named("start"));
    history.apply(toehold::format::verbatim("Move hole A"), named("1"), "hole A");
    history.apply(toehold::format::verbatim("Move hole A"), named("start"), "hole A");
    CHECK_FALSE(history.can_undo());
    CHECK_FALSE(history.changed());
    history.apply(toehold::format::verbatim("Move hole A"), named("start"), "hole A");
    CHECK_FALSE(history.can_undo());
}

TEST_CASE("undo ends a drag", "[unit]") {
    History history(named("start"));
    history.apply(toehold::format::verbatim("Move"), named("1"), "key");
    history.apply(toehold::format::verbatim("Turn"), named("2"), "other");
    history.undo();
    history.apply(toehold::format::verbatim("Move"), named("3"), "key");
    history.undo();
    CHECK(history.now().name == "1");
}

TEST_CASE("saving is remembered through undo and redo", "[unit]") {
    History history(named("start"));
    history.apply(toehold::format::verbatim("One"), named("1"), "key");
    history.mark_saved();
    CHECK_FALSE(history.changed());
    history.apply(toehold::format::verbatim("One"), named("2"), "key");
    CHECK(history.changed());
    history.undo();
    CHECK(history.now().name == "1");
    CHECK_FALSE(history.changed());
    history.undo();
    CHECK(history.changed());
    history.apply(toehold::format::verbatim("Away from the saved state"), named("3"));
    history.undo();
    CHECK(history.changed());
    history.mark_saved();
    CHECK_FALSE(history.changed());
}

TEST_CASE("any row of steps, undos and redos follows a plain list of states", "[property]") {
    std::mt19937 random(20240611);
    for (int run = 0; run < 200; ++run) {
        States states{{named("0")}, 0, named("0")};
        History history(named("0"));
        int made = 0;
        for (int step = 0; step < 60; ++step) {
            switch (random() % 5) {
                case 0:
                    history.undo();
                    if (states.at > 0) --states.at;
                    break;
                case 1:
                    history.redo();
                    if (states.at + 1 < states.all.size()) ++states.at;
                    break;
                case 2:
                    history.mark_saved();
                    states.saved = states.all[states.at];
                    break;
                default:
                    states.all.resize(states.at + 1);
                    states.all.push_back(named(std::to_string(++made)));
                    ++states.at;
                    history.apply(toehold::format::verbatim("Step " + std::to_string(made)), states.all.back());
            }
            REQUIRE(history.now() == states.all[states.at]);
            REQUIRE(history.can_undo() == (states.at > 0));
            REQUIRE(history.can_redo() == (states.at + 1 < states.all.size()));
            // Every state has a name of its own here, so that the saved one is known by it.
            REQUIRE(history.changed() == (states.saved != states.all[states.at]));
        }
    }
}

// The fields of a guard line and its posts: what they set, and what they refuse.
#include "editing/project/project_fields.h"

#include "support/compare.h"
#include "support/three_posts.h"

#include <algorithm>

using namespace toehold;
using test::shipped_catalog;

namespace {

editing::ProjectFieldEdit set(const model::Project& project, const std::string& path, const std::string& text) {
    return editing::set_project_field(project, shipped_catalog(), units::System::us, path, text);
}

model::Project after(const model::Project& project, const std::string& path, const std::string& text) {
    editing::ProjectFieldEdit edit = set(project, path, text);
    INFO(path << " = " << text << ": " << format::english(edit.refusal));
    REQUIRE(edit.project);
    CHECK_FALSE(edit.step.empty());
    return std::move(*edit.project);
}

/// With a rail in one piece over its posts.
model::Project railed() { return after(test::three_posts(), "line[L1]/described", "yes"); }

std::string value(const model::Project& project, const std::string& path) {
    for (const editing::Field& field : editing::project_fields(project, shipped_catalog(), units::System::us)) {
        if (field.path == path) return field.value;
    }
    return "no such field";
}

}  // namespace

TEST_CASE("Every field of a project can be set to what it shows, and nothing changes", "[property]") {
    model::Project project = after(railed(), "line[L1]/rail/connection-described", "yes");
    const auto fields = editing::project_fields(project, shipped_catalog(), units::System::us);
    REQUIRE(fields.size() > 20);
    for (const editing::Field& field : fields) {
        INFO(field.path);
        CHECK(std::count_if(fields.begin(), fields.end(), [&](const auto& one) { return one.path == field.path; }) ==
              1);
        CHECK(after(project, field.path, field.value) == project);
    }
}

TEST_CASE("A rail is described, shares, and is taken away with its sharing", "[unit]") {
    const model::Project none = test::three_posts();
    CHECK(value(none, "line[L1]/sharing") == "no such field");
    const model::Project railed = ::railed();
    REQUIRE(railed.guard_lines.front().rail);
    CHECK(railed.guard_lines.front().rail->run == model::RailRun::continuous);
    CHECK_FALSE(railed.guard_lines.front().sharing);
    const model::Project shared = after(railed, "line[L1]/sharing", "yes");
    CHECK(shared.guard_lines.front().sharing);
    CHECK(after(shared, "line[L1]/described", "no") == none);
}

TEST_CASE("A rail's section, splices and connection are set in the reader's units", "[unit]") {
    model::Project project = after(railed(), "line[L1]/rail/width", "1 1/2");
    project = after(project, "line[L1]/rail/splices", "24, 60 in");
    project = after(project, "line[L1]/rail/connection-described", "yes");
    project = after(project, "line[L1]/rail/connection/report", "invented for this test");
    project = after(project, "line[L1]/rail/connection/across", "900 lbf");
    project = after(project, "line[L1]/rail/connection/stiffness", "5000 lb/in");
    const model::Rail& rail = *project.guard_lines.front().rail;
    const auto& tube = std::get<model::RectangularTube>(rail.section);
    CHECK(tube.width_in == 1.5);
    CHECK(tube.depth_in == 1.5);  // a square tube stays one
    CHECK(rail.splices_in == std::vector{24.0, 60.0});
    CHECK(value(project, "line[L1]/rail/splices") == "24 in, 60 in");
    CHECK(rail.connection->across_lb == 900.0);
    CHECK(rail.connection->stiffness_lb_per_in == 5000.0);
    CHECK(after(project, "line[L1]/rail/splices", "").guard_lines.front().rail->splices_in.empty());
    const model::Project wood = after(project, "line[L1]/rail/shape", "wood");
    CHECK(std::holds_alternative<model::WoodRail>(wood.guard_lines.front().rail->section));
}

TEST_CASE("A post moves along the rail, alone, to a distance from the one before", "[closed-form]") {
    const model::Project project = test::three_posts();  // at 0, 48 and 96 in
    CHECK(value(project, "post[P1]/spacing") == "no such field");
    CHECK(value(project, "post[P2]/spacing") == "48 in");
    const model::Project moved = after(project, "post[P2]/spacing", "40 in");
    CHECK_CLOSE(moved.posts[1].at.x_in, 40.0, 1e-12, 0.0);
    CHECK(moved.posts[1].at.y_in == 0.0);
    CHECK(moved.posts[2] == project.posts[2]);
    CHECK(moved.framing == project.framing);
    CHECK(value(moved, "post[P3]/spacing") == "56 in");
}

TEST_CASE("A mark that changes is followed by its guard line, and the post keeps its place", "[unit]") {
    const editing::ProjectFieldEdit edit = set(test::three_posts(), "post[P2]/mark", "P2A");
    REQUIRE(edit.project);
    CHECK(format::english(edit.step) == "Rename P2 to P2A");
    CHECK(edit.project->posts[1].id == "P2A");
    CHECK(edit.project->guard_lines.front().posts == std::vector<std::string>{"P1", "P2A", "P3"});
    CHECK(value(*edit.project, "post[P2A]/spacing") == "48 in");
}

TEST_CASE("What would make a project that no file may hold is refused with its reason", "[bad-input]") {
    const model::Project project = test::three_posts();
    CHECK_FALSE(set(project, "post[P2]/x", "0 in").project);  // where P1 stands
    CHECK(format::english(set(project, "post[P2]/x", "0 in").refusal).find("stands") != std::string::npos);
    CHECK_FALSE(set(project, "post[P2]/mark", "P1").project);
    CHECK_FALSE(set(project, "post[P2]/mount", "another").project);
    CHECK_FALSE(set(project, "post[P2]/spacing", "-4 in").project);
    CHECK_FALSE(set(project, "post[P9]/x", "0 in").project);
    CHECK_FALSE(set(railed(), "line[L1]/rail/splices", "24 in, soon").project);
    CHECK_FALSE(set(railed(), "line[L1]/rail/splices", "60 in, 24 in").project);   // not in order
    CHECK_FALSE(set(railed(), "line[L1]/rail/splices", "24 in, 900 in").project);  // beyond the rail
    CHECK_FALSE(set(railed(), "line[L1]/rail/wall", "2 in").project);              // more than half of the tube
}

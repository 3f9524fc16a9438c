// What is wrong with a guard line, one sentence for each rule.
#include "model/validate_line.h"

#include "support/problems.h"

using namespace toehold;
using test::tells_at;

namespace {

constexpr const char* line_element = "guard-lines/guard-line[L1]";
constexpr const char* rail_element = "guard-lines/guard-line[L1]/rail";

/// Four posts 48 in apart, one of them round a corner, with a rail that goes on over them and everything stated.
model::Project sound() {
    model::Project all;
    all.posts = {
        {"P1", {0.0, 0.0}, "M"}, {"P2", {48.0, 0.0}, "M"}, {"P3", {96.0, 0.0}, "M"}, {"P4", {96.0, -48.0}, "M"}};
    all.posts[3].facing = model::PostFacing::plus_x;
    const model::RailConnection screws{"two screws", "invented", 600.0, 400.0, 300.0, 20000.0};
    model::Rail rail;
    rail.section = model::RectangularTube{1.5, 1.5, 0.12, "steel-a500-b"};
    rail.run = model::RailRun::continuous;
    rail.connection = screws;
    rail.corners_rigid = true;
    rail.splices_in = {24.0, 72.0};
    model::GuardLine line;
    line.id = "L1";
    line.posts = {"P1", "P2", "P3", "P4"};
    line.rail = rail;
    line.first_wall = model::WallEnd{30.0, screws};
    line.infill = model::Infill{model::InfillKind::pickets, 0.3};
    line.sharing = true;
    all.guard_lines = {line};
    return all;
}

model::GuardLine& line_of(model::Project& all) { return all.guard_lines.front(); }

/// Whether the changed project says just this, here.
template <class Change>
bool says(const Change& change, const std::string& element, const std::string& words) {
    model::Project all = sound();
    change(all);
    model::ProblemList list;
    model::check_guard_lines(list, all);
    const model::Problems problems = list.take();
    INFO(test::sentences(problems));
    CHECK(problems.size() == 1);
    return tells_at(problems, element, words);
}

}  // namespace

TEST_CASE("a sound guard line has no problem", "[unit]") {
    model::ProblemList list;
    model::check_guard_lines(list, sound());
    const model::Problems problems = list.take();
    INFO(test::sentences(problems));
    CHECK(problems.empty());
}

TEST_CASE("posts of a rail are there, each once, and not too near or far", "[bad-input]") {
    CHECK(says([](auto& all) { line_of(all).posts[3] = "P9"; }, line_element, "no post has this id"));
    CHECK(says(
        [](auto& all) {
            all.posts[3].at = {101.95, 0.0};
            all.posts[3].facing = model::PostFacing::plus_y;
        },
        line_element, "posts P3 and P4 cannot carry one rail"));
    CHECK(says([](auto& all) { all.posts[3].at = {96.0, -240.1}; }, line_element, "posts P3 and P4 cannot carry"));
    CHECK(says(
        [](auto& all) {
            line_of(all).posts = {"P1", "P2", "P1"};
            line_of(all).rail->splices_in.clear();
        },
        line_element, "passes the same post twice"));
}

TEST_CASE("a rail goes down no steeper than 50 degrees", "[bad-input]") {
    // 48 in level: tan 50 degrees x 48 = 57.20 in.
    CHECK(says([](auto& all) { all.posts[3].rise_in = -57.3; }, line_element, "too steep from post P3 to post P4"));
    model::Project all = sound();
    all.posts[3].rise_in = -57.1;
    model::ProblemList list;
    model::check_guard_lines(list, all);
    CHECK(list.take().empty());
}

TEST_CASE("posts of one rail face to one side of it", "[bad-input]") {
    CHECK(says([](auto& all) { all.posts[1].facing = model::PostFacing::minus_y; }, "posts/post-at[P2]",
               "faces to the other side of rail L1"));
    CHECK(says([](auto& all) { all.posts[3].facing = model::PostFacing::minus_x; }, "posts/post-at[P4]",
               "faces to the other side of rail L1"));
    CHECK(says([](auto& all) { all.posts[1].facing = model::PostFacing::plus_x; }, "posts/post-at[P2]",
               "faces along rail L1, which passes it"));
    // A post at the end that faces along its rail takes no side.
    model::Project all = sound();
    all.posts[0].facing = model::PostFacing::minus_x;
    model::ProblemList list;
    model::check_guard_lines(list, all);
    CHECK(list.take().empty());
}

TEST_CASE("a rail does not turn back on itself, and no stretch of it is in two lines", "[bad-input]") {
    const auto last_at = [](model::Position at) {
        return [at](model::Project& all) {
            all.posts[3].at = at;
            all.posts[3].facing = model::PostFacing::minus_y;
            line_of(all).rail->splices_in.clear();
        };
    };
    CHECK(says(last_at({60.0, 0.0}), line_element, "turns back on itself at post P3"));
    // 36 in back and 20 in aside: the rail turns by 180 - 29.05 degrees; 21 in aside: by 149.74.
    CHECK(says(last_at({60.0, -20.0}), line_element, "turns back on itself at post P3"));
    model::Project all = sound();
    last_at({60.0, -21.0})(all);
    model::ProblemList list;
    model::check_guard_lines(list, all);
    CHECK(list.take().empty());
    CHECK(says(
        [](auto& project) {
            project.guard_lines.push_back({"L2", {"P3", "P2"}});
        },
        "guard-lines/guard-line[L2]", "the rail from post P3 to post P2 is in line L1 too"));
}

TEST_CASE("splices stand within the line, in order, and not at a post", "[bad-input]") {
    const std::string first = std::string(rail_element) + "/splice[1]",
                      second = std::string(rail_element) + "/splice[2]";
    const auto splices = [](std::vector<double> at) {
        return [at](model::Project& all) { line_of(all).rail->splices_in = at; };
    };
    CHECK(says(splices({20.0, 160.0}), second, "not within the line"));
    CHECK(says(splices({72.0, 20.0}), second, "not in order"));
    CHECK(says(splices({48.5}), first, "stands at post P2"));
    CHECK(says(
        [](auto& all) {
            line_of(all).rail->run = model::RailRun::broken;
            line_of(all).rail->corners_rigid = false;
        },
        rail_element, "only a continuous rail has splices"));
    CHECK(says(
        [](auto& all) {
            line_of(all).rail->run = model::RailRun::between;
            line_of(all).rail->splices_in.clear();
        },
        rail_element, "only a continuous rail carries moment round its corners"));
}

TEST_CASE("sections, connections, walls and infill have values that can be", "[bad-input]") {
    const std::string connection = std::string(rail_element) + "/connection";
    CHECK(says([](auto& all) { line_of(all).rail->connection->report.clear(); }, connection, "need their source"));
    CHECK(says([](auto& all) { line_of(all).rail->connection->along_lb = -1.0; }, connection, "along (lb)"));
    CHECK(says([](auto& all) { line_of(all).rail->connection->stiffness_lb_per_in = 9.9; }, connection, "stiffness"));
    CHECK(says(
        [](auto& all) {
            line_of(all).rail->section = model::RoundTube{1.5, 0.8, "steel-a500-b"};
        },
        rail_element, "wall is not thinner"));
    CHECK(says(
        [](auto& all) {
            line_of(all).rail->section = model::WoodRail{5.5, 0.0, "southern-pine", "no-2"};
        },
        rail_element, "depth (in)"));
    CHECK(says(
        [](auto& all) {
            line_of(all).rail->section = model::SolidBar{1.0, 2.0, true, "steel-a36"};
        },
        rail_element, "round bar is not round"));
    CHECK(says(
        [](auto& all) {
            auto& tube = std::get<model::RectangularTube>(line_of(all).rail->section);
            tube.stub = model::Stub{1.0, 1.0, 0.0, 6.0, "steel-a36"};
        },
        rail_element, "stands on no stub"));
    CHECK(says([](auto& all) { line_of(all).first_wall->reach_in = 0.0; },
               std::string(line_element) + "/wall-end[first]", "reach (in)"));
    CHECK(says([](auto& all) { line_of(all).infill->solid_ratio = 1.2; }, std::string(line_element) + "/infill",
               "solid ratio"));
}

TEST_CASE("sharing and walls need a rail; a line without one merely groups its posts", "[bad-input]") {
    CHECK(says(
        [](auto& all) {
            line_of(all).rail.reset();
            line_of(all).first_wall.reset();
        },
        line_element, "the line has none"));
    CHECK(says(
        [](auto& all) {
            line_of(all).rail.reset();
            line_of(all).sharing = false;
        },
        std::string(line_element) + "/wall-end[first]", "a wall holds a rail"));
    model::Project all = sound();
    all.guard_lines = {{"L1", {"P1", "P2", "P3", "P4", "P1"}}};  // only a program can say it: files name each post once
    all.posts[1].facing = model::PostFacing::minus_y;
    model::ProblemList list;
    model::check_guard_lines(list, all);
    CHECK(list.take().empty());
}

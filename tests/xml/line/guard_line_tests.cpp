// Guard lines in a project file: everything they can say, written and read again; old files; refusals.
#include "model/line_geometry.h"
#include "support/random/detail.h"
#include "xml/detail/project_file.h"
#include "xml/samples.h"

#include <catch2/catch.hpp>

using namespace toehold;

namespace {

namespace fs = std::filesystem;

const fs::path first_of_version_2 = fs::path(TOEHOLD_TEST_FOLDER) / "files" / "version_2" / "three-posts.xml";

/// The old file with posts at a corner and on a stair, and a line that says all it can.
std::string with_line(const std::string& line) {
    const std::string old = test::bytes_of(first_of_version_2);
    const std::size_t posts = old.find("  <posts>"), loads = old.find("  <loads");
    return old.substr(0, posts) + R"(  <posts>
    <post-at id="P1" x="0 in" y="0 in" faces="+y" mount="line-post"/>
    <post-at id="P2" x="48 in" y="0 in" mount="line-post"/>
    <post-at id="P3" x="48 in" y="-36 in" faces="+x" rise="-21 in" mount="line-post"/>
    <post-at id="P4" x="9 ft" y="0 in" faces="-y" mount="line-post"/>
    <post-at id="P5" x="9 ft" y="-4 ft" faces="-x" mount="line-post"/>
  </posts>
  <guard-lines>
)" + line + "\n  </guard-lines>\n" +
           old.substr(loads);
}

const char* const whole_line = R"(<guard-line id="L1" posts="P1 P2 P3" sharing="yes">
  <rail shape="rectangular-tube" width="2 in" depth="1 1/2 in" wall="1/8 in" metal="steel-a500-b" run="continuous" corners="rigid">
    <certificate yield="52 ksi" ultimate="62 ksi" source="mill certificate 12, invented"/>
    <connection name="two screws" report="invented" across="600 lbf" along="400 lbf" vertical="300 lbf" stiffness="20000 lb/in"/>
    <splice at="1 ft"/>
    <splice at="66 in"/>
  </rail>
  <wall-end at="last" reach="20 in"/>
  <wall-end at="first" reach="30 in"><connection name="bracket" report="invented" across="500 lbf"/></wall-end>
  <infill kind="pickets" solid-ratio="0.28"/>
</guard-line>)";

xml::ProjectRead read(const std::string& line) { return xml::read_project_text(with_line(line), "project.xml"); }

model::Project sound(const std::string& line) {
    const xml::ProjectRead found = read(line);
    INFO(test::sentences(found.problems));
    REQUIRE(found.project);
    return *found.project;
}

/// The line with one piece of text replaced is refused with one problem: these words, at this element and its line.
void refuses(const std::string& from, const std::string& to, const std::string& element, const std::string& words) {
    const std::string line = test::changed(whole_line, from, to);
    const xml::ProjectRead found = read(line);
    CHECK_FALSE(found.project);
    const model::Problem problem = test::only_problem(found.problems);
    INFO(test::sentences(found.problems));
    CHECK(test::tells(found.problems, words));
    CHECK(problem.element == element);
    CHECK(problem.line > 0);
    CHECK_FALSE(problem.accepted.empty());
}

}  // namespace

TEST_CASE("a guard line says its rail, walls and infill", "[unit]") {
    const model::Project project = sound(whole_line);
    REQUIRE(project.guard_lines.size() == 1);
    const model::GuardLine& line = project.guard_lines.front();
    CHECK(line.sharing);
    REQUIRE(line.rail);
    const auto tube = std::get<model::RectangularTube>(line.rail->section);
    CHECK(tube.width_in == 2.0);
    CHECK(tube.depth_in == 1.5);
    REQUIRE(tube.certificate);
    CHECK(tube.certificate->yield_psi == 52000.0);
    CHECK(line.rail->run == model::RailRun::continuous);
    CHECK(line.rail->corners_rigid);
    CHECK(line.rail->splices_in == std::vector<double>{12.0, 66.0});
    REQUIRE(line.rail->connection);
    CHECK(*line.rail->connection == model::RailConnection{"two screws", "invented", 600.0, 400.0, 300.0, 20000.0});
    REQUIRE(line.first_wall);
    CHECK(line.first_wall->reach_in == 30.0);
    CHECK(line.first_wall->connection->across_lb == 500.0);
    CHECK(line.first_wall->connection->along_lb == 0.0);
    REQUIRE(line.last_wall);
    CHECK_FALSE(line.last_wall->connection);
    CHECK(line.infill == model::Infill{model::InfillKind::pickets, 0.28});
    using model::PostFacing;
    CHECK(project.posts[0].facing == PostFacing::plus_y);
    CHECK(project.posts[2].facing == PostFacing::plus_x);
    CHECK(project.posts[2].rise_in == -21.0);
    CHECK(project.posts[3].facing == PostFacing::minus_y);
    CHECK(project.posts[4].facing == PostFacing::minus_x);
}

TEST_CASE("every kind of rail is written and read again, and fits the schema", "[process]") {
    const model::Project base = sound(whole_line);
    const std::vector<model::RailSection> sections{model::RectangularTube{1.5, 1.5, 0.12, "steel-a500-b"},
                                                   model::RectangularTube{2.0, 1.0, 0.12, "steel-a500-b"},
                                                   model::RoundTube{1.66, 0.14, "steel-a500-b"},
                                                   model::SolidBar{2.0, 0.5, false, "steel-a36"},
                                                   model::SolidBar{1.0, 1.0, true, "steel-a36"},
                                                   model::WoodRail{5.5, 1.5, "southern-pine", "no-2", "2x6"},
                                                   model::WoodRail{1.5, 3.5, "southern-pine", "no-2", "2x4"},
                                                   model::WoodRail{5.25, 1.4375, "southern-pine", "no-2"}};
    const test::TemporaryFolder folder;
    for (std::size_t index = 0; index < sections.size(); ++index) {
        CAPTURE(index);
        model::Project project = base;
        project.guard_lines[0].rail->section = sections[index];
        if (index % 2 == 1) {
            project.guard_lines[0].rail->run = index % 4 == 1 ? model::RailRun::broken : model::RailRun::between;
            project.guard_lines[0].rail->corners_rigid = false;
            project.guard_lines[0].rail->splices_in.clear();
            project.guard_lines[0].rail->connection.reset();
            project.guard_lines[0].last_wall.reset();
            project.guard_lines[0].infill = model::Infill{static_cast<model::InfillKind>(index % 5), std::nullopt};
            project.guard_lines[0].sharing = false;
        }
        const std::string text = xml::write_project(project);
        const xml::ProjectRead again = xml::read_project_text(text, "project.xml");
        INFO(test::sentences(again.problems));
        CHECK(again.project == project);
        const fs::path file = folder.path() / (std::to_string(index) + ".xml");
        test::put_bytes(file, text);
        CHECK(test::run("xmllint --nonet --noout --schema " TOEHOLD_DATA_FOLDER "/schema/project.xsd " +
                        file.string()) == 0);
    }
}

TEST_CASE("a file of version 2 as it first was is read as ever", "[unit]") {
    const xml::ProjectRead old = xml::read_project(first_of_version_2);
    INFO(test::sentences(old.problems));
    REQUIRE(old.project);
    CHECK(old.project->guard_lines == std::vector<model::GuardLine>{{"L1", {"P1", "P2"}}, {"L2", {"P2", "P3"}}});
    for (const model::PlacedPost& post : old.project->posts) {
        CHECK(post.facing == model::PostFacing::plus_y);
        CHECK(post.rise_in == 0.0);
    }
    // Nothing new stands in what is written of it.
    const std::string text = xml::write_project(*old.project);
    for (const char* const word : {"faces", "rise", "sharing", "<rail", "<wall-end", "<infill"})
        CHECK(text.find(word) == std::string::npos);
    CHECK(text.find(R"(<guard-line id="L1" posts="P1 P2"/>)") != std::string::npos);
    CHECK(text.find(R"(<post-at id="P1" x="0 in" y="0 in" mount="line-post" rail-length="24 in"/>)") !=
          std::string::npos);
}

TEST_CASE("the shipped guard round the pier is thirty posts of four kinds", "[unit]") {
    const fs::path file = fs::path(TOEHOLD_DATA_FOLDER) / "projects" / "heron-landing-guard.xml";
    const xml::ProjectRead found = xml::read_project(file);
    INFO(test::sentences(found.problems));
    REQUIRE(found.project);
    CHECK(found.project->posts.size() == 30);
    CHECK(found.project->mounts.size() == 4);
    using model::PostRole;
    CHECK(model::count_roles(*found.project) ==
          std::vector<model::RoleCount>{{PostRole::line, 26}, {PostRole::corner, 2}, {PostRole::end, 2}});
    CHECK(xml::read_project_text(xml::write_project(*found.project), file).project == found.project);
}

TEST_CASE("a lone post that faces another way is no base detail of version 1", "[unit]") {
    model::Project project = model::project_of(test::random_detail(7));
    CHECK(model::is_lone_detail(project));
    project.posts.front().facing = model::PostFacing::minus_x;
    CHECK_FALSE(model::is_lone_detail(project));
    project.posts.front().facing = model::PostFacing::plus_y;
    project.posts.front().rise_in = 7.0;
    CHECK_FALSE(model::is_lone_detail(project));
}

TEST_CASE("a guard line that cannot be read says why, with element, value and what would do", "[bad-input]") {
    const std::string line = "guard-lines/guard-line[L1]", rail = line + "/rail";
    refuses(R"(shape="rectangular-tube")", R"(shape="twin-bars")", rail, "twin-bars");
    refuses(R"(run="continuous")", R"(run="welded")", rail, "broken");
    refuses(R"(corners="rigid")", R"(corners="stiff")", rail, "hinged");
    refuses(R"(along="400 lbf")", R"(along="400 in")", rail + "/connection", "400 in");
    refuses(R"(<splice at="66 in"/>)", R"(<splice at="-6 in"/>)", rail + "/splice[2]", "-6 in");
    refuses(R"(<splice at="66 in"/>)", R"(<splice at="48.2 in"/>)", rail + "/splice[2]", "stands at post P2");
    refuses(R"(<wall-end at="last" reach="20 in"/>)", R"(<wall-end at="last" reach="0 in"/>)", line + "/wall-end[last]",
            "reach");
    refuses(R"(kind="pickets")", R"(kind="planks")", line + "/infill", "panels");
    refuses(R"(sharing="yes")", R"(sharing="perhaps")", line, "perhaps");
}

TEST_CASE("what belongs to no rail or post is refused", "[bad-input]") {
    const auto tells = [](const std::string& text, const std::string& words) {
        const xml::ProjectRead found = xml::read_project_text(text, "project.xml");
        INFO(test::sentences(found.problems));
        CHECK_FALSE(found.project);
        return test::tells(found.problems, words);
    };
    const std::string line = whole_line;
    CHECK(tells(with_line(test::changed(line, R"(run="continuous")", "")), "run"));
    CHECK(tells(with_line(test::changed(line, R"(at="last")", R"(at="first")")), "wall-end"));
    CHECK(tells(with_line(test::changed(line, "<infill", R"(<stub width="1 in"/><infill)")), "stub"));
    CHECK(tells(with_line(test::changed(line, R"(posts="P1 P2 P3")", R"(posts="P1 P2 P5")")),
                "faces to the other side of rail L1"));
    const std::string text = with_line(line);
    CHECK(tells(test::changed(text, R"(faces="+x")", R"(faces="north")"), "+y"));
    CHECK(tells(test::changed(text, R"(rise="-21 in")", R"(rise="-21 lbf")"), "rise"));
    CHECK(tells(test::changed(text, R"(rise="-21 in")", R"(rise="-50 in")"), "too steep from post P2 to post P3"));
}

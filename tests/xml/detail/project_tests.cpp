// Projects, version 2 of the format: written and read again, version 1 read as a project of one post, and refusals.
#include "support/random/detail.h"
#include "xml/detail/project_file.h"
#include "xml/samples.h"

#include <catch2/catch.hpp>

using namespace toehold;

namespace {

const std::filesystem::path shipped =
    std::filesystem::path(TOEHOLD_DATA_FOLDER) / "projects" / "heron-landing-three-posts.xml";

std::string shipped_text() { return test::bytes_of(shipped); }

/// Whether the shipped project with one piece of text replaced is refused with these words.
bool refused(const std::string& from, const std::string& to, const std::string& words) {
    const xml::ProjectRead read = xml::read_project_text(test::changed(shipped_text(), from, to), shipped);
    INFO(test::sentences(read.problems));
    CHECK_FALSE(read.project);
    return test::tells(read.problems, words);
}

}  // namespace

TEST_CASE("the shipped project is written and read again whole", "[unit]") {
    const xml::ProjectRead read = xml::read_project(shipped);
    INFO(test::sentences(read.problems));
    REQUIRE(read.project);
    CHECK(read.project->posts.size() == 3);
    CHECK(read.project->posts[0].rail_length_ft == 2.0);
    CHECK_FALSE(read.project->posts[1].rail_length_ft);
    CHECK(read.project->guard_lines == std::vector<model::GuardLine>{{"L1", {"P1", "P2", "P3"}}});
    const std::string text = xml::write_project(*read.project);
    const xml::ProjectRead again = xml::read_project_text(text, shipped);
    INFO(test::sentences(again.problems));
    CHECK(again.project == read.project);
}

TEST_CASE("what is written of a project fits its schema", "[process]") {
    const xml::ProjectRead read = xml::read_project(shipped);
    REQUIRE(read.project);
    const test::TemporaryFolder folder;
    test::put_bytes(folder.path() / "project.xml", xml::write_project(*read.project));
    CHECK(test::run("xmllint --nonet --noout --schema " TOEHOLD_DATA_FOLDER "/schema/project.xsd " +
                    (folder.path() / "project.xml").string()) == 0);
}

TEST_CASE("a detail of version 1 is a project of one post, and is written as version 1 again", "[property]") {
    CHECK(rc::check([] {
        const model::BaseDetail detail = *test::sound_detail();
        const std::string text = xml::write_detail(detail);
        const xml::ProjectRead read = xml::read_project_text(text, "detail.xml");
        RC_ASSERT(read.project.has_value());
        RC_ASSERT(read.project->posts.size() == 1U);
        model::BaseDetail expected = detail;
        expected.project.clear();  // the name of what the detail belongs to is the project's own business
        RC_ASSERT(xml::write_project(*read.project) == xml::write_detail(expected));
    }));
}

TEST_CASE("random mounts at places are written and read again", "[property]") {
    CHECK(rc::check([] {
        const model::BaseDetail one = *test::sound_detail(), two = *test::sound_detail();
        model::Project project = model::project_of(one);
        project.framing = {};  // each mount then stands on its layers alone, wherever it is
        project.mounts = {{"M1", one.post, one.mount}, {"M2", two.post, two.mount}};
        project.posts = {{"P1", {0.0, 0.0}, "M1"}, {"P2", {*rc::gen::inRange(1, 900) / 7.0, -3.0}, "M2", 2.5}};
        project.guard_lines = {{"L1", {"P2", "P1"}}};
        const xml::ProjectRead read = xml::read_project_text(xml::write_project(project), "project.xml");
        // What the two mounts share may not suit both; then the problems are the model's, told of the right file.
        if (read.project) RC_ASSERT(*read.project == project);
        RC_ASSERT(read.problems.empty() == model::validate(project).empty());
    }));
}

TEST_CASE("a project that cannot be used says why, with the place", "[bad-input]") {
    CHECK(refused(R"(y="0 in" mount="line-post"/>)", R"(y="0 in" mount="corner"/>)", "no mount has this id"));
    CHECK(refused(R"(x="48 in")", R"(x="0 in")", "stands where post P1 stands"));
    CHECK(refused(R"(posts="P1 P2 P3")", R"(posts="P1 P9")", "no post has this id"));
    CHECK(refused(R"(posts="P1 P2 P3")", R"(posts="P1")", "fewer than two posts"));
    CHECK(refused("urn:toehold:project:2", "urn:toehold:project:3", "version"));
    CHECK(refused(R"(<guard height="42 in" occupancy="other" tributary-length="4 ft"/>)",
                  R"(<guard height="42 in" plate-below-surface="1 in"/>)", "belongs to a mount"));
    CHECK(refused("<posts>", R"(<posts><post-at id="P1" x="9 in" y="0 in" mount="line-post"/>)", "P1"));
}

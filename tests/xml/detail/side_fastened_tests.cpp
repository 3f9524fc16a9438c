// A post fastened to the side of a member, in the file: where each attribute lands, and what is refused with its line.
#include "support/compare.h"
#include "support/random/detail.h"
#include "xml/detail/differences.h"
#include "xml/detail/project_file.h"
#include "xml/samples.h"

#include <catch2/catch.hpp>

using namespace toehold;
using namespace toehold::model;
using test::changed;

namespace {

std::string beside_rim() { return test::bytes_of(test::good_file("post-beside-the-rim.xml")); }
std::string on_stringer() { return test::bytes_of(test::good_file("tube-on-a-stringer.xml")); }

BaseDetail read(const std::string& text) {
    const xml::DetailRead read = xml::read_detail_text(text, "detail.xml");
    INFO(test::sentences(read.problems));
    REQUIRE(read.detail);
    return *read.detail;
}

/// What the file is told with one piece of its text replaced.
Problems told(const std::string& text, const std::string& from, const std::string& to) {
    const xml::DetailRead read = xml::read_detail_text(changed(text, from, to), "detail.xml");
    CHECK_FALSE(read.detail);
    return read.problems;
}

bool refused(const std::string& text, const std::string& from, const std::string& to, const std::string& words) {
    const Problems problems = told(text, from, to);
    INFO(test::sentences(problems));
    return test::tells(problems, words);
}

bool refused(const std::string& from, const std::string& to, const std::string& words) {
    return refused(beside_rim(), from, to, words);
}

/// Both mounts in one project: a post beside the rim at its place, and a plate on the deck.
Project mixed_project() {
    Project project = project_of(read(beside_rim()));
    BaseDetail plain = read(test::plain_detail());
    project.mounts.insert(project.mounts.begin(), {"M1", plain.post, plain.mount});
    project.posts.push_back({"P2", {24.0, -40.0}, "M1"});
    return project;
}

}  // namespace

TEST_CASE("a tie that a bolt hangs is at that bolt, and is written without a place of its own", "[unit]") {
    const std::string written = xml::write_detail(read(beside_rim()));
    CHECK(written.find("report=\"invented, table 1\" bolt=\"U\" tension") != std::string::npos);
    CHECK(refused("bolt=\"U\"", "bolt=\"V\"", "no bolt of the mount hangs the tie"));
    CHECK(refused("bolt=\"U\"", "bolt=\"L\"", "no bolt of the mount hangs the tie"));
}

TEST_CASE("every attribute of a post on a member's side lands where the model says", "[unit]") {
    const BaseDetail detail = read(beside_rim());
    const auto& post = std::get<WoodPost>(detail.post);
    CHECK(post.notched);
    CHECK_FALSE(is_described(post.shoe));
    const SideFastened& mount = on_side(detail);
    CHECK(mount.member == "R1");
    CHECK(mount.face == MemberFace::outside);
    CHECK(mount.post_bottom_below_top_in == 9.0);
    CHECK(mount.boards_brace_member);
    CHECK(mount.places == std::vector<SidePlace>{{"U", 0.0, 2.0}, {"L", 0.25, 6.5}, {"M", -0.25, 4.25}});
    REQUIRE(mount.anchors.size() == 2);
    CHECK(mount.anchors[0].holes == std::vector<std::string>{"U", "M"});
    CHECK(mount.anchors[0].head_plate == BackingPlate{2.5, 3.0, 0.1875, "steel-a36"});
    CHECK(mount.anchors[0].into.empty());
    CHECK(mount.anchors[1].into == "B1");
    REQUIRE(mount.ties.size() == 2);
    CHECK(mount.ties[0] == TensionTie{"T1", "hold-down on the joist's side", "invented, table 1", 0.0, 2.0, 1800.0,
                                      0.125, "J2", "U", 1.25});
    CHECK(mount.ties[1].below_top_in == -0.5);
    CHECK_CLOSE(mount.ties[1].deflection_in, 2.0 / 25.4, 1e-15, 0.0);
    CHECK(mount.layers == std::vector<SideLayer>{{"shim-hardwood", 0.25}, {"shim-stainless", 0.25, 1.0, 8.0}});
    CHECK(mount.notch == PostNotch{1.0, 0.0});
    REQUIRE(mount.decking);
    CHECK(mount.decking->fastening == DeckingFastening{0.216, 3.0, 2, 5.5, 0.0, ""});
    CHECK(below_surface_in(detail) == 1.0);
}

TEST_CASE("a bracket and a stringer's slope are read; what is left out has the model's default", "[unit]") {
    const SideFastened mount = on_side(read(on_stringer()));
    CHECK(mount.face == MemberFace::inside);
    CHECK_FALSE(mount.boards_brace_member);
    CHECK_FALSE(mount.decking);
    CHECK(mount.bracket == BracketPlate{6.0, 6.0, 1.0, 0.375, "steel-a36", 0.1875, "e70", 0.125});
    CHECK(mount.stringer == StringerSlope{35.5, 8.0, "blocks to the other stringer at 4 ft"});
    CHECK(on_side(read(changed(on_stringer(), " hole-over=\"1/8 in\"", ""))).bracket->hole_over_in == 0.0625);
    CHECK(on_side(read(changed(on_stringer(), " braced-by=\"blocks to the other stringer at 4 ft\"", "")))
              .stringer->braced_by.empty());
}

TEST_CASE("a tie that is not chosen yet needs no report; one that is does", "[unit]") {
    const std::string no_report = changed(beside_rim(), " report=\"invented, table 2\"", "");
    CHECK(test::tells(xml::read_detail_text(no_report, "detail.xml").problems, "the tie's values need their source"));
    const SideFastened mount = on_side(read(changed(no_report, "name=\"strap\"", "name=\"strap\" chosen=\"no\"")));
    CHECK(mount.ties[0].chosen);
    CHECK_FALSE(mount.ties[1].chosen);
    CHECK(mount.ties[1].report.empty());
}

TEST_CASE("every shipped situation is read, and is the same when it was written and read again", "[unit]") {
    std::size_t count = 0;
    for (const auto& entry : std::filesystem::directory_iterator(TOEHOLD_DATA_FOLDER "/situations/side")) {
        const xml::DetailRead first = xml::read_detail(entry.path());
        INFO(entry.path() << "\n" << test::sentences(first.problems));
        REQUIRE(first.detail);
        CHECK(read(xml::write_detail(*first.detail)) == *first.detail);
        ++count;
    }
    CHECK(count == 14);
}

TEST_CASE("what a file says wrongly of a post on a member's side is told of its line", "[bad-input]") {
    CHECK(refused("face=\"outside\"", "face=\"front\"", "detail.xml:5: side-fastened: face is none of the accepted"));
    CHECK(refused(" post-bottom=\"9 in\"", "", "side-fastened"));
    CHECK(refused(" below-top=\"6 1/2 in\"", " below-top=\"6.5\"", "detail.xml:7: side-fastened/place[L]: below-top"));
    CHECK(refused("<place id=\"L\"", "<place id=\"U\"", "this id is already used on line 6"));
    CHECK(refused("<notch depth", "<notches depth", "<side-fastened> has no element of this name (found \"notches\""));
    CHECK(refused("<notch depth", "<notch deep=\"1 in\" depth", "<notch> has no attribute of this name"));
    CHECK(refused(" into=\"J2\"", "", "detail.xml:19: side-fastened/tie[T1]: "));
    CHECK(refused(" eccentricity=\"0 in\"", " eccentricity=\"-1 in\"", "eccentricity must not be negative"));
    CHECK(refused(" tension=\"3 kN\"", "", "side-fastened/tie[T2]: "));
    CHECK(refused(on_stringer(), " weld-leg=\"3/16 in\"", "", "side-fastened/bracket: "));
    CHECK(refused(on_stringer(), "angle=\"35.5 deg\"", "angle=\"35.5\"", "angle has no unit"));
}

TEST_CASE("what does not fit is told of its line, that of the anchors too", "[bad-input]") {
    CHECK(refused("member=\"R1\"", "member=\"J1\"", "detail.xml:5: side-fastened: joist J1 does not run along"));
    CHECK(refused("at=\"-2 3/4 in\"", "at=\"-3 1/4 in\"", "detail.xml:5: side-fastened: rim R1 does not lie against"));
    CHECK(refused("into=\"B1\">", "into=\"B2\">", "detail.xml:15: anchors[2]: no joist, rim or block has this id"));
    CHECK(refused("below-top=\"4 1/4 in\"", "below-top=\"9 1/2 in\"", "detail.xml:8: side-fastened/place[M]: "));
    CHECK(refused("<notch depth=\"1 in\" below-top=\"0 in\"/>", "", "detail.xml:4: post: the post is notched"));
    CHECK(refused(on_stringer(), "angle=\"35.5 deg\"", "angle=\"61 deg\"", "detail.xml:17: side-fastened/stringer"));
}

TEST_CASE("a detail has the parts of one kind of mount", "[bad-input]") {
    CHECK(refused("<framing treated=\"yes\">", "<layers/><framing treated=\"yes\">",
                  "<layers> belongs to a post on a plate"));
    CHECK(refused("<framing treated=\"yes\">", "<weld leg=\"1/4 in\" filler=\"e70\"/><framing treated=\"yes\">",
                  "<weld> belongs to a post on a plate"));
    CHECK(refused("<framing treated=\"yes\">", "<plate-from file=\"plates.xml\" id=\"P1\"/><framing treated=\"yes\">",
                  "<base-detail> takes only one of <plate>, <plate-from>, <side-fastened>"));
    CHECK(refused("occupancy=", "plate-below-surface=\"1 in\" occupancy=", "guard: <guard> has no attribute"));
    CHECK(refused("notched=\"yes\"/>",
                  "notched=\"yes\"><shoe attachment=\"welded\" width=\"4 in\" depth=\"4 in\" wall=\"1/8 in\""
                  " height=\"6 in\" metal=\"steel-a36\"/></post>",
                  "detail.xml:4: post/shoe: a shoe stands on a plate"));
    const std::string shod = test::bytes_of(test::good_file("wood-post-in-shoe.xml"));
    const std::size_t from = shod.find("<shoe"), to = shod.find("/>", from) + 2;
    CHECK(refused(shod, shod.substr(from, to - from), "", "post: <post> needs an element <shoe>"));
    const std::string plain = test::plain_detail();
    CHECK(refused(plain, "<anchors>", "<anchors into=\"B1\">", "goes into the member under its hole"));
}

TEST_CASE("schema and reader agree on the form of a post on a member's side", "[process]") {
    const test::TemporaryFolder folder;
    const auto both = [&](const std::string& from, const std::string& to) {
        const std::string text = changed(beside_rim(), from, to);
        test::put_bytes(folder.path() / "detail.xml", text);
        const bool schema =
            test::run("xmllint --nonet --noout --schema " TOEHOLD_DATA_FOLDER "/schema/base-detail.xsd " +
                      (folder.path() / "detail.xml").string()) == 0;
        const bool reader = xml::read_detail_text(text, {}).detail.has_value();
        INFO(to << ": schema " << schema << ", reader " << reader);
        CHECK(schema == reader);
        return schema && reader;
    };
    CHECK(both(" boards-brace-member=\"yes\"", ""));
    CHECK(both(" from=\"1 in\" to=\"8 in\"", " to=\"8 in\""));
    CHECK(both("below-top=\"-1/2 in\"", "below-top=\"1/2 in\""));
    for (const char* attribute : {" member=\"R1\"", " face=\"outside\"", " post-bottom=\"9 in\"", " x=\"1/4 in\"",
                                  " tension=\"1800 lbf\"", " eccentricity=\"0 in\"", " depth=\"2 in\""})
        CHECK_FALSE(both(attribute, ""));
    CHECK_FALSE(both("<tie id=\"T1\"", "<tie id=\"L\""));
    CHECK_FALSE(both("post-bottom=\"9 in\"", "post-bottom=\"-9 in\""));
    CHECK_FALSE(both("<framing treated=\"yes\">", "<layers/><framing treated=\"yes\">"));
}

TEST_CASE("two details that differ in how the post is fastened are told apart", "[unit]") {
    const auto differences = [](const std::string& one, const std::string& other) {
        std::string text;
        for (const xml::Difference& at : xml::detail_differences(read(one), read(other)))
            text += at.place + ": " + at.first + " > " + at.second + "\n";
        return text;
    };
    CHECK(differences(beside_rim(), changed(beside_rim(), "below-top=\"6 1/2 in\"", "below-top=\"7 in\"")) ==
          "side-fastened / place L / below-top: 6.5 in > 7 in\n");
    CHECK(differences(beside_rim(), changed(beside_rim(), "tension=\"1800 lbf\"", "tension=\"1500 lbf\"")) ==
          "side-fastened / tie T1 / tension: 1800 lbf > 1500 lbf\n");
    const std::string kinds = differences(test::plain_detail(), on_stringer());
    CHECK(kinds.find("plate: ") != std::string::npos);
    CHECK(kinds.find("side-fastened:  > ") != std::string::npos);
}

TEST_CASE("a project holds mounts of both kinds, in its order", "[unit]") {
    const Project project = mixed_project();
    const std::string text = xml::write_project(project);
    const xml::ProjectRead read = xml::read_project_text(text, "project.xml");
    INFO(test::sentences(read.problems) << text);
    REQUIRE(read.project);
    CHECK(*read.project == project);
    CHECK(kind(read.project->mounts[0].mount) == MountKind::plate_on_deck);
    CHECK(kind(read.project->mounts[1].mount) == MountKind::side_fastened);
    const test::TemporaryFolder folder;
    test::put_bytes(folder.path() / "project.xml", text);
    CHECK(test::run("xmllint --nonet --noout --schema " TOEHOLD_DATA_FOLDER "/schema/project.xsd " +
                    (folder.path() / "project.xml").string()) == 0);
    const std::string taken = changed(text, "<side-fastened id=\"P1\"", "<side-fastened id=\"M1\"");
    const Problems problems = xml::read_project_text(taken, "project.xml").problems;
    CHECK(test::tells(problems, "this id is already used"));
}

TEST_CASE("a project of one post on a member's side is written as a detail", "[unit]") {
    const BaseDetail detail = read(beside_rim());
    CHECK(xml::write_project(project_of(detail)) == xml::write_detail(detail));
}
